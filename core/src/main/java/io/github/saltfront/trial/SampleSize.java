package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * How many tasters a trial needs. Exact power is a saw, so there are two answers: the first number that reaches it, and the
 * number from which on it never falls below again. Plan with the second: if a taster stays away, the power still holds.
 *
 * @param first first number that reaches the power [-]
 * @param stable number from which on the power is never below, as far as searched [-]
 * @param powerAtFirst power there [-]
 * @param powerAtStable power there [-]
 */
public record SampleSize(int first, int stable, double powerAtFirst, double powerAtStable) {
    /** Largest number searched; no kitchen seats more. */
    public static final int MOST = 5000;

    /**
     * Returns the number for a test with right and wrong answers.
     *
     * @param method the test
     * @param shareRight true share of right answers [-], guess rate to 1
     * @param alpha allowed probability of calling alike samples different [-], 0 to 1
     * @param power wanted power [-], 0.5 to 0.999
     * @return the number; empty above {@link #MOST}
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Optional<SampleSize> discrimination(
            TastingMethod method, double shareRight, double alpha, double power) {
        return search(n -> TrialPower.discrimination(method, n, shareRight, alpha), 1, power);
    }

    /**
     * Returns the number for a preference test.
     *
     * @param share true share that likes one sample better [-], 0 to 1
     * @param alpha allowed probability of calling an even split a preference [-], 0 to 1
     * @param power wanted power [-], 0.5 to 0.999
     * @return the number; empty above {@link #MOST}
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Optional<SampleSize> preference(double share, double alpha, double power) {
        return search(n -> TrialPower.preference(n, share, alpha), 1, power);
    }

    /**
     * Returns the number for ratings or weights in pairs; this power is no saw, so both answers agree.
     *
     * @param gap true mean difference, in the unit of the spread
     * @param spread standard deviation of the differences, above zero
     * @param alpha allowed probability of calling equal means different [-], 0.0001 to 0.5
     * @param power wanted power [-], 0.5 to 0.999
     * @return the number; empty above {@link #MOST}
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static Optional<SampleSize> pairedMeans(double gap, double spread, double alpha, double power) {
        Checks.requireInRange("wanted power", power, 0.5, 0.999, "-");
        int low = 1;
        int high = 2;
        while (TrialPower.pairedMeans(high, gap, spread, alpha) < power) {
            if (high >= MOST) {
                return Optional.empty();
            }
            low = high;
            high = Math.min(MOST, 2 * high);
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (TrialPower.pairedMeans(middle, gap, spread, alpha) < power) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double reached = TrialPower.pairedMeans(high, gap, spread, alpha);
        return Optional.of(new SampleSize(high, high, reached, reached));
    }

    /**
     * The teeth shrink as n grows while the power between them rises, so the last fall below lies near the first rise above:
     * searched are twice the first number and forty more.
     */
    private static Optional<SampleSize> search(IntToDoubleFunction power, int from, double wanted) {
        Checks.requireInRange("wanted power", wanted, 0.5, 0.999, "-");
        int first = from;
        while (power.applyAsDouble(first) < wanted) {
            first++;
            if (first > MOST) {
                return Optional.empty();
            }
        }
        int stable = first;
        for (int n = first; n <= 2 * first + 40; n++) {
            if (power.applyAsDouble(n) < wanted) {
                stable = n + 1;
            }
        }
        return Optional.of(new SampleSize(first, stable, power.applyAsDouble(first), power.applyAsDouble(stable)));
    }
}
