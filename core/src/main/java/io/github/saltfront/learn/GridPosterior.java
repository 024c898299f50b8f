package io.github.saltfront.learn;

import io.github.saltfront.units.Checks;
import java.util.function.DoubleUnaryOperator;

/** A distribution of one quantity on an even grid, normalized. Immutable. */
final class GridPosterior {
    private final double low;
    private final double step;
    private final double[] weights;

    private GridPosterior(double low, double step, double[] weights) {
        this.low = low;
        this.step = step;
        this.weights = weights;
    }

    /**
     * Evaluates a density.
     *
     * @param low low end of the grid
     * @param high high end, above it
     * @param points number of points, at least 3
     * @param logDensity logarithm of the density, up to a constant
     */
    static GridPosterior of(double low, double high, int points, DoubleUnaryOperator logDensity) {
        double step = (high - low) / (points - 1);
        double[] logs = new double[points];
        for (int i = 0; i < points; i++) {
            logs[i] = logDensity.applyAsDouble(low + i * step);
        }
        return new GridPosterior(low, step, normalized(logs));
    }

    /** Weights that sum to one, from logarithms of weights up to a constant. */
    static double[] normalized(double[] logs) {
        double largest = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            largest = Math.max(largest, log);
        }
        Checks.requireFinite("largest logarithm of the posterior density", largest);
        double[] weights = new double[logs.length];
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            weights[i] = Math.exp(logs[i] - largest);
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    double mean() {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * (low + i * step);
        }
        return sum;
    }

    double deviation() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double apart = low + i * step - mean;
            sum += weights[i] * apart * apart;
        }
        return Math.sqrt(sum);
    }

    /** Value below which a share lies, each point's weight spread evenly over its step. */
    double quantile(double share) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (sum + weights[i] >= share) {
                return low + step * (i - 0.5 + (share - sum) / weights[i]);
            }
            sum += weights[i];
        }
        return low + step * (weights.length - 0.5);
    }

    /** Middle and 90 % interval. */
    LearnedValue learned(int count) {
        return new LearnedValue(quantile(0.5), quantile(0.05), quantile(0.95), count);
    }
}
