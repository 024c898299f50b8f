package io.github.saltfront.transport;

/**
 * Errors of the balances of a run: what the state holds at the end less what it held at the start and what came in, relative
 * to the largest of these.
 *
 * @param energy relative error of energy [-]
 * @param salt relative error of salt [-]
 * @param water relative error of water [-]
 */
public record BalanceError(double energy, double salt, double water) {
    /** Returns the largest of the three [-]. */
    public double largest() {
        return Math.max(energy, Math.max(salt, water));
    }
}
