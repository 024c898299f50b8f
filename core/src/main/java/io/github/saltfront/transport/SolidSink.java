package io.github.saltfront.transport;

/** Sees every accepted step of a {@link SolidSolver}, before the state moves on. */
@FunctionalInterface
public interface SolidSink {
    /** Sees nothing. */
    SolidSink NONE = (solver, start, end) -> {};

    /**
     * Sees one step. Values within it come from the solver's dense output.
     *
     * @param solver the solver, whose dense output covers this step until the call returns
     * @param start time at the start of the step since the start of the stage [s]
     * @param end time at its end [s]
     */
    void accept(SolidSolver solver, double start, double end);
}
