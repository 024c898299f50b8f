package io.github.saltfront.transport;

import io.github.saltfront.shape.Shape;

/**
 * One piece of meat before its day.
 *
 * @param shape its shape
 * @param start its uniform state
 * @param heat its heat properties
 * @param salt how salt and water move in it
 * @param waterFixed true if water may not move, as in exact solutions
 * @param juiceFactor factor on the juice that the denaturation model expels [-]
 */
public record Piece(
        Shape shape,
        InitialState start,
        HeatProperties heat,
        SaltProperties salt,
        boolean waterFixed,
        double juiceFactor) {

    /**
     * Returns the piece as a member of a solver.
     *
     * @param twoFaced true for a grid with two faces
     * @return the member
     */
    public Member member(boolean twoFaced) {
        double extent = twoFaced ? 2 * shape.halfThickness() : shape.halfThickness();
        return new Member(extent, 1, start, heat, salt, waterFixed, juiceFactor);
    }
}
