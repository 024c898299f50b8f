package io.github.saltfront.live;

import io.github.saltfront.plan.Interval;
import io.github.saltfront.units.Checks;
import java.util.Arrays;

/**
 * A prediction with its 50 % and 90 % interval. Infinity stands for a time that does not come within the simulated horizon.
 *
 * @param p05 value that 5 % of the ensemble stay below
 * @param p25 value that a quarter stays below
 * @param p50 value in the middle
 * @param p75 value that a quarter exceeds
 * @param p95 value that 5 % exceed
 */
public record Spread(double p05, double p25, double p50, double p75, double p95) {
    /** Checks the order. */
    public Spread {
        Checks.require(
                p05 <= p25 && p25 <= p50 && p50 <= p75 && p75 <= p95,
                "a spread needs rising quantiles, got " + p05 + ", " + p25 + ", " + p50 + ", " + p75 + ", " + p95
                        + ".");
    }

    /**
     * Returns the spread of a sample of equal weights.
     *
     * @param values the sample, at least one; not modified
     * @return its quantiles
     */
    public static Spread of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Spread(
                quantile(sorted, 0.05),
                quantile(sorted, 0.25),
                quantile(sorted, 0.5),
                quantile(sorted, 0.75),
                quantile(sorted, 0.95));
    }

    private static double quantile(double[] sorted, double share) {
        // between a finite value and infinity there is no straight line
        int above = Math.min(sorted.length - 1, (int) Math.ceil(share * (sorted.length - 1)));
        return sorted[above] == Double.POSITIVE_INFINITY ? sorted[above] : Interval.quantile(sorted, share);
    }

    /**
     * Returns the spread in another unit.
     *
     * @param factor factor, above zero
     * @param offset added after the factor
     * @return the spread
     */
    public Spread scaled(double factor, double offset) {
        return new Spread(
                p05 * factor + offset,
                p25 * factor + offset,
                p50 * factor + offset,
                p75 * factor + offset,
                p95 * factor + offset);
    }

    /**
     * Returns whether the 90 % interval holds a value.
     *
     * @param value the value
     * @return true if it does
     */
    public boolean holds90(double value) {
        return p05 <= value && value <= p95;
    }

    /**
     * Returns whether the 50 % interval holds a value.
     *
     * @param value the value
     * @return true if it does
     */
    public boolean holds50(double value) {
        return p25 <= value && value <= p75;
    }

    /** Returns the width of the 90 % interval, in the unit of the values. */
    public double width90() {
        return p95 - p05;
    }
}
