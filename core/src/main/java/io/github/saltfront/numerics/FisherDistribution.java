package io.github.saltfront.numerics;

import io.github.saltfront.units.Checks;

/** The F distribution of ratios of variances. */
public final class FisherDistribution {
    private FisherDistribution() {}

    /**
     * Returns the probability of a ratio at least as large.
     *
     * @param ratio the ratio [-], not negative
     * @param above degrees of freedom of the numerator [-], above zero
     * @param below degrees of freedom of the denominator [-], above zero
     * @return probability [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double upperTail(double ratio, double above, double below) {
        Checks.requireInRange("ratio of variances", ratio, 0, 1e12, "-");
        return IncompleteBeta.regularized(below / (below + above * ratio), below / 2, above / 2);
    }
}
