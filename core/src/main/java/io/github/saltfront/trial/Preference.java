package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.Optional;

/**
 * Which of two samples do people like better? There is no right answer and no direction fixed before, so both tails count.
 * Answers without a preference are set aside and reported. The share has the exact interval ({@link ClopperPearson1934}).
 *
 * @param first people who like the first sample better [-]
 * @param second people who like the second sample better [-]
 * @param without people without a preference [-]
 * @param level level of the interval [-]
 * @see "iso5495 (two-sided paired test)"
 */
public record Preference(int first, int second, int without, double level) {
    /** Checks the counts. */
    public Preference {
        Checks.require(
                first >= 0 && second >= 0 && without >= 0,
                "counts must not be negative, got " + first + ", " + second + " and " + without + ".");
        Checks.require(
                first + second >= 1 && first + second <= Binomial.MOST,
                "a preference needs at least one answer that names a sample, got " + (first + second) + ".");
        Checks.requireInRange("level of an interval", level, 0.5, 0.9999, "-");
    }

    /** Returns the answers that name a sample [-]. */
    public int decided() {
        return first + second;
    }

    /** Returns the probability of a split at least as uneven if nobody on the whole prefers either, both tails [-]. */
    public double probabilityIfEven() {
        return Math.min(1, 2 * Binomial.atLeast(Math.max(first, second), decided(), 0.5));
    }

    /** Returns the share of decided people who like the first sample better, with the exact interval [-]. */
    public Estimate shareOfFirst() {
        return ClopperPearson1934.interval(first, decided(), level);
    }

    /**
     * Returns how many of the decided must agree to call it a preference.
     *
     * @return the critical number, two-sided at 1 - level; empty if there are too few
     */
    public Optional<Integer> needed() {
        int critical = critical(decided(), 1 - level);
        return critical > decided() ? Optional.empty() : Optional.of(critical);
    }

    /** Returns whether a preference is shown, two-sided at 1 - level. */
    public boolean isPreferenceShown() {
        return needed().map(critical -> Math.max(first, second) >= critical).orElse(false);
    }

    /**
     * Returns the smallest majority that is called a preference.
     *
     * @param decided answers that name a sample [-], at least 1
     * @param alpha allowed probability if nobody prefers either, both tails together [-], 0 to 1
     * @return critical number; one more than the answers if none is rare enough
     */
    public static int critical(int decided, double alpha) {
        return Math.max(Binomial.critical(decided, 0.5, alpha / 2), decided / 2 + 1);
    }
}
