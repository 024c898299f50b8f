package io.github.saltfront.numerics;

/** A computation that did not reach its tolerance. */
public final class ConvergenceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param what what failed and where
     * @param iterations iterations or steps done
     * @param residual residual reached, in the unit of the tolerance
     * @param tolerance tolerance asked for
     */
    public ConvergenceException(String what, int iterations, double residual, double tolerance) {
        super(what + " after " + iterations + " iterations (residual " + residual + ", tolerance " + tolerance + ").");
    }
}
