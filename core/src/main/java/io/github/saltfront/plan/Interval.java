package io.github.saltfront.plan;

import io.github.saltfront.units.Checks;
import java.util.Arrays;

/**
 * A prediction with its 90 % interval.
 *
 * @param low value that 5 % of the ensemble stay below
 * @param median value in the middle
 * @param high value that 5 % of the ensemble exceed
 */
public record Interval(double low, double median, double high) {
    /** Checks the order. */
    public Interval {
        Checks.require(
                low <= median && median <= high,
                "an interval needs low <= median <= high, got " + low + ", " + median + ", " + high + ".");
    }

    /**
     * Returns the interval of a sample.
     *
     * @param values the sample, at least one; not modified
     * @return 5th, 50th and 95th percentile
     */
    public static Interval of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Interval(quantile(sorted, 0.05), quantile(sorted, 0.5), quantile(sorted, 0.95));
    }

    /**
     * Returns a quantile of a sorted sample, by a straight line between its points.
     *
     * @param sorted rising values, at least one; not modified
     * @param share share below [-], 0 to 1
     * @return the quantile
     */
    public static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /**
     * Returns the interval in another unit.
     *
     * @param factor factor, above zero
     * @param offset added after the factor
     * @return the interval
     */
    public Interval scaled(double factor, double offset) {
        return new Interval(low * factor + offset, median * factor + offset, high * factor + offset);
    }
}
