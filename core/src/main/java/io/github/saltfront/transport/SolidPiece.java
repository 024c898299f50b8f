package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/**
 * One piece of meat as the three-dimensional solver sees it; its size and form are those of the grid.
 *
 * <p>Water does not travel from cell to cell: evaporation takes heat and counts as lost mass, but does not dry the surface, and
 * a bath gives salt without swelling. Use the layer solver where drying or swelling matters.
 *
 * @param start uniform state before the first stage
 * @param heat heat properties
 * @param salt how salt moves; its ratio of water diffusion is not used
 * @param waterFixed true if protein changes expel no juice
 * @param juiceFactor factor on the juice that the denaturation model expels [-]
 */
public record SolidPiece(
        InitialState start, HeatProperties heat, SaltProperties salt, boolean waterFixed, double juiceFactor) {
    /** Checks the factor. */
    public SolidPiece {
        Checks.requireInRange("juice factor", juiceFactor, 0, 5, "-");
    }

    /**
     * Creates a piece whose juice is that of the denaturation model.
     *
     * @param start uniform state before the first stage
     * @param heat heat properties
     * @param salt how salt moves
     * @param waterFixed true if protein changes expel no juice
     */
    public SolidPiece(InitialState start, HeatProperties heat, SaltProperties salt, boolean waterFixed) {
        this(start, heat, salt, waterFixed, 1);
    }

    /**
     * Returns a member of an ensemble as the three-dimensional solver sees it.
     *
     * @param member the member; its extent is left to the grid
     * @return the same start and properties
     */
    public static SolidPiece of(Member member) {
        return new SolidPiece(member.start(), member.heat(), member.salt(), member.waterFixed(), member.juiceFactor());
    }

    /**
     * Returns a piece as the three-dimensional solver sees it.
     *
     * @param piece the piece; its shape is left to the grid
     * @return the same start and properties
     */
    public static SolidPiece of(Piece piece) {
        return new SolidPiece(piece.start(), piece.heat(), piece.salt(), piece.waterFixed(), piece.juiceFactor());
    }
}
