package io.github.saltfront.transport;

/** Sees every accepted step of every member, before the state moves on. */
@FunctionalInterface
public interface StepSink {
    /** Sees nothing. */
    StepSink NONE = (solver, member, start, end) -> {};

    /**
     * Sees one step. Values within it come from {@link LayerSolver}'s dense output.
     *
     * @param solver the solver, whose dense output covers this step of this member until the call returns
     * @param member which member
     * @param start time at the start of the step since the start of the stage [s]
     * @param end time at its end [s]
     */
    void accept(LayerSolver solver, int member, double start, double end);
}
