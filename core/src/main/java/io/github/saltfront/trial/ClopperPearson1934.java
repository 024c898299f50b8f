package io.github.saltfront.trial;

import io.github.saltfront.numerics.Roots;
import io.github.saltfront.units.Checks;

/**
 * The exact interval of a share: all shares that neither tail of the binomial distribution rules out.
 *
 * <pre>low: P(X >= k | low) = (1 - level)/2,  high: P(X <= k | high) = (1 - level)/2</pre>
 *
 * It holds the truth at least as often as its level says, for few tastings often more; that is why it is preferred here to
 * Wilson's, which is shorter and sometimes holds it less often.
 *
 * @see "clopper1934, Biometrika 26, 404-413"
 */
public final class ClopperPearson1934 {
    private static final double TOLERANCE = 1e-12;

    private ClopperPearson1934() {}

    /**
     * Returns the interval.
     *
     * @param k how many [-], 0 to n
     * @param n of how many [-], 1 to {@link Binomial#MOST}
     * @param level level [-], 0.5 to 0.9999
     * @return share with both ends [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Estimate interval(int k, int n, double level) {
        Checks.requireInRange("level of an interval", level, 0.5, 0.9999, "-");
        double tail = (1 - level) / 2;
        return new Estimate(lower(k, n, tail), (double) k / n, upper(k, n, tail), level);
    }

    /**
     * Returns the share below which the count is too large to be believed.
     *
     * @param k how many [-], 0 to n
     * @param n of how many [-], 1 to {@link Binomial#MOST}
     * @param tail probability given to the tail [-], above 0, below 0.5
     * @return lower limit [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double lower(int k, int n, double tail) {
        Checks.requireInRange("tail", tail, 1e-9, 0.5, "-");
        if (k == 0) {
            return 0;
        }
        double middle = (double) k / n;
        return Roots.find(p -> Binomial.atLeast(k, n, p) - tail, 0, middle, TOLERANCE);
    }

    /**
     * Returns the share above which the count is too small to be believed.
     *
     * @param k how many [-], 0 to n
     * @param n of how many [-], 1 to {@link Binomial#MOST}
     * @param tail probability given to the tail [-], above 0, below 0.5
     * @return upper limit [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double upper(int k, int n, double tail) {
        return 1 - lower(n - k, n, tail);
    }
}
