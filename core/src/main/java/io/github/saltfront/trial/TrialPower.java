package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;

/**
 * The probability that a trial shows what is there, exactly. Adding a taster can lower it, because the critical number moves in
 * whole steps: power against tasters is a saw. {@link SampleSize} deals with that.
 */
public final class TrialPower {
    private TrialPower() {}

    /**
     * Returns the power of a test with right and wrong answers.
     *
     * @param method the test
     * @param tastings answers [-], 1 to {@link Binomial#MOST}
     * @param shareRight true share of right answers [-], guess rate to 1
     * @param alpha allowed probability of calling alike samples different [-], 0 to 1
     * @return power [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double discrimination(TastingMethod method, int tastings, double shareRight, double alpha) {
        Checks.requireInRange("share of right answers", shareRight, method.guessRate(), 1, "-");
        return Binomial.atLeast(Binomial.critical(tastings, method.guessRate(), alpha), tastings, shareRight);
    }

    /**
     * Returns the power of a preference test, in either direction.
     *
     * @param decided answers that name a sample [-], 1 to {@link Binomial#MOST}
     * @param share true share that likes one sample better [-], 0 to 1
     * @param alpha allowed probability of calling an even split a preference [-], 0 to 1
     * @return power [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double preference(int decided, double share, double alpha) {
        int critical = Preference.critical(decided, alpha);
        return Binomial.atLeast(critical, decided, share) + Binomial.atLeast(critical, decided, 1 - share);
    }

    /**
     * Returns the power of a comparison of two ratings, or two weights, of the same tasters or matched pieces: the exact power
     * of the paired t test, from the distribution of the standard deviation.
     *
     * <pre>power = int [1 - Phi(t s - g) + Phi(-t s - g)] f(s) ds,  g = gap sqrt(n)/spread,  s^2 ~ chi2(n-1)/(n-1)</pre>
     *
     * @param pairs tasters or pairs of pieces [-], 2 to {@link Binomial#MOST}
     * @param gap true mean difference, in the unit of the spread
     * @param spread standard deviation of the differences, above zero
     * @param alpha allowed probability of calling equal means different [-], 0.0001 to 0.5
     * @return power [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double pairedMeans(int pairs, double gap, double spread, double alpha) {
        Checks.require(
                pairs >= 2 && pairs <= Binomial.MOST,
                "pairs must be between 2 and " + Binomial.MOST + ", got " + pairs + ".");
        Checks.requireFinite("gap", gap);
        Checks.requirePositive("spread", spread, "-");
        return NoncentralStudent.powerBothSides(Math.abs(gap) * Math.sqrt(pairs) / spread, pairs - 1, alpha);
    }
}
