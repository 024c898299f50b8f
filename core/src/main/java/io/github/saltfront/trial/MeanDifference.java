package io.github.saltfront.trial;

import io.github.saltfront.numerics.StudentDistribution;
import io.github.saltfront.units.Checks;

/**
 * The difference of two means with its interval.
 *
 * <pre>paired: d = mean of differences, e = s_d / sqrt(n), nu = n - 1
 * Welch: d = m1 - m2, e^2 = s1^2/n1 + s2^2/n2, nu = e^4 / ((s1^2/n1)^2/(n1-1) + (s2^2/n2)^2/(n2-1))
 * interval: d +- t(nu) e</pre>
 *
 * Assumes means that spread about normally, which a handful of pieces can neither show nor refute.
 *
 * @param firstMean mean of the first, in the unit of the data
 * @param secondMean mean of the second
 * @param difference first less second with its interval
 * @param spread standard deviation: of the differences if paired, else the root of the mean of both variances
 * @param degrees degrees of freedom [-]
 * @param probabilityIfEqual probability of a difference at least as large either way if there is none [-]
 * @param paired whether values were compared pair by pair
 * @param firstCount values of the first [-]
 * @param secondCount values of the second [-]
 * @see "welch1947, Biometrika 34, 28-35"
 */
public record MeanDifference(
        double firstMean,
        double secondMean,
        Estimate difference,
        double spread,
        double degrees,
        double probabilityIfEqual,
        boolean paired,
        int firstCount,
        int secondCount) {

    /**
     * Compares values that belong together two by two.
     *
     * @param first values, at least two; not modified
     * @param second values in the same order, as many; not modified
     * @param level level of the interval [-], 0.5 to 0.9999
     * @return the comparison
     * @throws IllegalArgumentException if there are fewer than two pairs or all differences are equal
     */
    public static MeanDifference paired(double[] first, double[] second, double level) {
        int n = first.length;
        Checks.require(
                n == second.length && n >= 2,
                "pairs need two or more values on both sides, got " + n + " and " + second.length + ".");
        double[] gaps = new double[n];
        for (int i = 0; i < n; i++) {
            gaps[i] = first[i] - second[i];
        }
        double variance = variance(gaps);
        return of(mean(first), mean(second), variance / n, Math.sqrt(variance), n - 1, true, n, n, level);
    }

    /**
     * Compares two groups whose spreads may differ.
     *
     * @param first values, at least two; not modified
     * @param second values, at least two; not modified
     * @param level level of the interval [-], 0.5 to 0.9999
     * @return the comparison
     * @throws IllegalArgumentException if a group has fewer than two values or nothing varies
     */
    public static MeanDifference welch(double[] first, double[] second, double level) {
        Checks.require(
                first.length >= 2 && second.length >= 2,
                "each group needs two or more values, got " + first.length + " and " + second.length + ".");
        double v1 = variance(first);
        double v2 = variance(second);
        double a = v1 / first.length;
        double b = v2 / second.length;
        double degrees = (a + b) * (a + b) / (a * a / (first.length - 1) + b * b / (second.length - 1));
        return of(
                mean(first),
                mean(second),
                a + b,
                Math.sqrt((v1 + v2) / 2),
                degrees,
                false,
                first.length,
                second.length,
                level);
    }

    private static MeanDifference of(
            double firstMean,
            double secondMean,
            double errorSquared,
            double spread,
            double degrees,
            boolean paired,
            int firstCount,
            int secondCount,
            double level) {
        Checks.require(
                errorSquared > 0 && Double.isFinite(errorSquared),
                "the values do not vary, so no interval can be given; check them or weigh more finely.");
        double gap = firstMean - secondMean;
        double error = Math.sqrt(errorSquared);
        double half = StudentDistribution.middle(level, degrees) * error;
        return new MeanDifference(
                firstMean,
                secondMean,
                new Estimate(gap - half, gap, gap + half, level),
                spread,
                degrees,
                StudentDistribution.tailBothSides(gap / error, degrees),
                paired,
                firstCount,
                secondCount);
    }

    /** Returns whether a difference is shown: zero lies outside the interval. */
    public boolean isShown() {
        return !difference.holds(0);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += Checks.requireFinite("value", value);
        }
        return sum / values.length;
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        double sum = 0;
        for (double value : values) {
            sum += (value - mean) * (value - mean);
        }
        return sum / (values.length - 1);
    }
}
