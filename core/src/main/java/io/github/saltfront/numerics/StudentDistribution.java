package io.github.saltfront.numerics;

import io.github.saltfront.units.Checks;

/** Student's t distribution; degrees of freedom may be fractions. */
public final class StudentDistribution {
    private StudentDistribution() {}

    /**
     * Returns the probability of a value up to t.
     *
     * @param t value [-]
     * @param degrees degrees of freedom [-], above zero
     * @return probability [-]
     * @throws IllegalArgumentException if an argument is not finite or the degrees are not above zero
     */
    public static double cumulative(double t, double degrees) {
        Checks.requireFinite("t", t);
        double tail = tailBothSides(t, degrees) / 2;
        return t > 0 ? 1 - tail : tail;
    }

    /**
     * Returns the probability of a value at least as far from zero.
     *
     * @param t value [-], either sign
     * @param degrees degrees of freedom [-], above zero
     * @return probability [-]
     * @throws IllegalArgumentException if an argument is not finite or the degrees are not above zero
     */
    public static double tailBothSides(double t, double degrees) {
        Checks.requireFinite("t", t);
        Checks.requirePositive("degrees of freedom", degrees, "-");
        return IncompleteBeta.regularized(degrees / (degrees + t * t), degrees / 2, 0.5);
    }

    /**
     * Returns the value that the middle share of the distribution reaches on either side.
     *
     * @param share share between minus and plus the value [-], above 0, up to 0.999999
     * @param degrees degrees of freedom [-], at least 0.5
     * @return the value [-], above zero
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double middle(double share, double degrees) {
        Checks.requireInRange("share", share, 1e-6, 0.999999, "-");
        Checks.requireInRange("degrees of freedom", degrees, 0.5, 1e9, "-");
        double high = 2;
        while (tailBothSides(high, degrees) > 1 - share) {
            high *= 2;
        }
        return Roots.find(t -> tailBothSides(t, degrees) - (1 - share), 0, high, 1e-10 * high);
    }
}
