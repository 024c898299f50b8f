package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;

/**
 * Growth by the square-root relation in the cold.
 *
 * <pre>mu(T) = mu_ref ((T - T0)/(T_ref - T0))^2</pre>
 *
 * Zero below T0. Meant for refrigerated keeping; nothing bounds it above, and warmer than 15 deg C it overstates.
 *
 * @param referenceRate rate at the reference temperature [log10/s]
 * @param zero temperature at which the line meets zero [K]
 * @param reference reference temperature [K]
 * @see "fda2003, Appendix 8 Table 1"
 */
public record SquareRootModel(double referenceRate, double zero, double reference) implements GrowthModel {
    /** Checks the values. */
    public SquareRootModel {
        Checks.requirePositive("reference rate", referenceRate, "log10/s");
        Checks.require(
                zero < reference, "zero must lie below the reference, got " + zero + " and " + reference + " K.");
    }

    @Override
    public double rate(double kelvin) {
        double share = Math.max(0, kelvin - zero) / (reference - zero);
        return referenceRate * share * share;
    }
}
