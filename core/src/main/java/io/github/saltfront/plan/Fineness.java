package io.github.saltfront.plan;

/**
 * How finely a plan is computed.
 *
 * @param members members of the ensemble that the plan is read off
 * @param layers its layers, and those of soaks
 * @param tolerance its error of a step [K]
 * @param searchMembers members of the ensemble that searches for a reading
 * @param searchLayers its layers
 * @param searchTolerance its error of a step [K]
 * @param saltMembers members that a window of a soak is read off
 */
record Fineness(
        int members,
        int layers,
        double tolerance,
        int searchMembers,
        int searchLayers,
        double searchTolerance,
        int saltMembers) {
    /**
     * What a plan is made with. The search can afford more layers than the ensemble, having few members: a piece that dries for a
     * day ends 0.13 K off with 32 layers, and 0.01 K with 40, against 80.
     */
    static final Fineness WHOLE = new Fineness(200, DayEnsemble.LAYERS, 0.1, 20, 40, 0.2, SoakSearch.MEMBERS);

    /** For a look while somebody moves a slider: a reading errs by up to a kelvin, and so few members give rough bands. */
    static final Fineness GLANCE = new Fineness(32, 16, 0.4, 12, 16, 0.4, 16);

    /**
     * To compare ways, each with the same luck. Against whole plans of the examples weights then err by up to 0.012, salt by 3 %, and
     * readings by 1 K, in one by 3 K; all ways err alike.
     */
    static final Fineness SCREENING = new Fineness(8, 14, 0.5, 8, 14, 0.5, 20);
}
