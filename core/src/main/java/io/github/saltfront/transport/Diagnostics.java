package io.github.saltfront.transport;

/**
 * How a simulation went.
 *
 * @param solver which solver ran
 * @param steps accepted steps
 * @param rejected rejected steps
 * @param cells layers of the layer solver; cells of the part that the three-dimensional solver computes
 * @param balance relative errors of the balances
 * @param discretizationError estimated error of the core temperature that comes from the grid, largest over time [K]
 */
public record Diagnostics(
        Solver solver, int steps, int rejected, int cells, BalanceError balance, double discretizationError) {
    /** A solver. */
    public enum Solver {
        /** {@link LayerSolver}. */
        LAYERS,
        /** {@link SolidSolver}. */
        SOLID
    }

    static Diagnostics ofLayers(int steps, int rejected, int layers, BalanceError balance) {
        return new Diagnostics(Solver.LAYERS, steps, rejected, layers, balance, 0);
    }

    Diagnostics withError(double error) {
        return new Diagnostics(solver, steps, rejected, cells, balance, error);
    }
}
