package io.github.saltfront.transport;

/**
 * How a simulation went.
 *
 * @param steps accepted steps
 * @param rejected rejected steps
 * @param layers layers of the grid
 * @param balance relative errors of the balances
 * @param discretizationError estimated error of the core temperature that comes from the layers, largest over time [K]
 */
public record Diagnostics(int steps, int rejected, int layers, BalanceError balance, double discretizationError) {}
