package io.github.saltfront.trial;

import io.github.saltfront.numerics.IncompleteBeta;
import io.github.saltfront.units.Checks;

/**
 * Exact tails of the binomial distribution, and the critical numbers that follow from them.
 *
 * <pre>P(X = k) = n! / (k! (n-k)!) p^k (1-p)^(n-k)</pre>
 *
 * The tails are sums of these terms, so nothing is approximated. Cost: one term for each count in the tail.
 */
public final class Binomial {
    /** Most tastings of one trial; a check against typing errors. */
    public static final int MOST = 100_000;

    private Binomial() {}

    /**
     * Returns the probability of exactly this many.
     *
     * @param k how many [-], 0 to n
     * @param n tastings [-], 1 to {@link #MOST}
     * @param p probability of each [-], 0 to 1
     * @return probability [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double exactly(int k, int n, double p) {
        check(k, n, p);
        if (p == 0 || p == 1) {
            return k == (p == 0 ? 0 : n) ? 1 : 0;
        }
        double choose =
                IncompleteBeta.logGamma(n + 1) - IncompleteBeta.logGamma(k + 1) - IncompleteBeta.logGamma(n - k + 1);
        return Math.exp(choose + k * Math.log(p) + (n - k) * Math.log1p(-p));
    }

    /**
     * Returns the probability of this many or more.
     *
     * @param k how many [-], 0 to n + 1
     * @param n tastings [-], 1 to {@link #MOST}
     * @param p probability of each [-], 0 to 1
     * @return probability [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double atLeast(int k, int n, double p) {
        if (k == n + 1) {
            return 0;
        }
        check(k, n, p);
        if (p == 0 || p == 1) {
            return k <= (p == 0 ? 0 : n) ? 1 : 0;
        }
        // the side away from the mean is summed, from its largest term outward
        return k > n * p ? sum(k, n, p) : 1 - (k == 0 ? 0 : sum(n - k + 1, n, 1 - p));
    }

    /**
     * Returns the probability of this many or fewer.
     *
     * @param k how many [-], 0 to n
     * @param n tastings [-], 1 to {@link #MOST}
     * @param p probability of each [-], 0 to 1
     * @return probability [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double atMost(int k, int n, double p) {
        return atLeast(n - k, n, 1 - p);
    }

    private static double sum(int k, int n, double p) {
        double odds = p / (1 - p);
        double term = exactly(k, n, p);
        double total = 0;
        for (int i = k; i <= n && term > 1e-18 * total; i++) {
            total += term;
            term *= odds * (n - i) / (i + 1);
        }
        return Math.min(1, total);
    }

    /**
     * Returns the smallest count that chance reaches or exceeds with at most a given probability.
     *
     * @param n tastings [-], 1 to {@link #MOST}
     * @param p probability of each by chance [-], 0 to 1
     * @param alpha allowed probability [-], 0 to 1
     * @return the critical number; n + 1 if no count is rare enough
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static int critical(int n, double p, double alpha) {
        Checks.requireInRange("alpha", alpha, 0, 1, "-");
        check(0, n, p);
        int low = 0;
        int high = n + 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (atLeast(middle, n, p) <= alpha) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private static void check(int k, int n, double p) {
        Checks.require(n >= 1 && n <= MOST, "tastings must be between 1 and " + MOST + ", got " + n + ".");
        Checks.require(k >= 0 && k <= n, "a count must be between 0 and " + n + ", got " + k + ".");
        Checks.requireInRange("probability", p, 0, 1, "-");
    }
}
