package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/**
 * One piece of meat as the layered solver sees it: a member of an ensemble, or the only one.
 *
 * @param extent half thickness or radius of a symmetric grid, whole thickness of a two-faced one [m]
 * @param conductanceFactor factor on the conductances for heat between layers [-], 1 for exact slabs, cylinders and spheres;
 *     for finite pieces it makes the slowest mode of the layered piece that of the real one
 * @param start uniform state before the first stage
 * @param heat heat properties
 * @param salt how salt and water move
 * @param waterFixed true if water may not move: no uptake, no juice, and evaporation takes heat only
 * @param juiceFactor factor on the juice that the denaturation model expels [-]
 */
public record Member(
        double extent,
        double conductanceFactor,
        InitialState start,
        HeatProperties heat,
        SaltProperties salt,
        boolean waterFixed,
        double juiceFactor) {

    /** Checks the values. */
    public Member {
        Checks.requireInRange("juice factor", juiceFactor, 0, 5, "-");
        Checks.requireInRange("half thickness or radius", extent, 1e-4, 1, "m");
        Checks.requireInRange("conductance factor", conductanceFactor, 0.1, 10, "-");
    }

    /**
     * Creates a member whose juice is that of the denaturation model.
     *
     * @param extent half thickness, radius or whole thickness [m]
     * @param conductanceFactor factor on the conductances for heat [-]
     * @param start uniform state before the first stage
     * @param heat heat properties
     * @param salt how salt and water move
     * @param waterFixed true if water may not move
     */
    public Member(
            double extent,
            double conductanceFactor,
            InitialState start,
            HeatProperties heat,
            SaltProperties salt,
            boolean waterFixed) {
        this(extent, conductanceFactor, start, heat, salt, waterFixed, 1);
    }
}
