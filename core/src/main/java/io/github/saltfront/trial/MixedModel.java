package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;

/**
 * Scores of samples by tasters who each use the scale in their own way: a linear mixed model with a mean for each sample and a
 * random level for each taster, fitted by restricted maximum likelihood. Cells may be missing.
 *
 * <pre>y = mean of the sample + level of the taster + rest,  levels ~ N(0, theta s^2), rest ~ N(0, s^2)
 * V = s^2 (I + theta J) for each taster, so the inverse is I - theta/(1 + n theta) J
 * criterion(theta) = (N-p) ln(s^2) + sum ln(1 + n theta) + ln det(X' V^-1 X) s^2p</pre>
 *
 * One number, theta, is searched for, on a grid of its logarithm and then by golden section; zero is tried too. Degrees of
 * freedom of a contrast c are Satterthwaite's, 2 f^2 / (g' A g), with f its variance, g the slope of f in the two variances and A
 * the inverse of half the curvature of the criterion there; both by central differences. Where theta is zero they are N - p.
 *
 * <p>Immutable after construction.
 *
 * @see "patterson1971, Biometrika 58, 545-554 (REML); giesbrecht1985, Biometrics 41, 477-486 (degrees of freedom)"
 */
final class MixedModel {
    private static final double GRID_FROM = -9;
    private static final double GRID_TO = 9;
    private static final int GRID_STEPS = 72;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final double STEP = 1e-3;

    private final int samples;
    private final int count;
    private final double[][] cells;
    private final double[][] cellSums;
    private final double sumOfSquares;
    private final double center;
    private final double theta;
    private final Fit best;

    /**
     * Fits the model.
     *
     * @param taster taster of each score, from 0 without gaps; not modified
     * @param sample sample of each score, from 0 without gaps; not modified
     * @param score the scores, as many; not modified
     * @throws IllegalArgumentException if the samples are not tied together by tasters or nothing is left to vary
     */
    MixedModel(int[] taster, int[] sample, double[] score) {
        count = score.length;
        int tasters = 0;
        int most = 0;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            tasters = Math.max(tasters, taster[i] + 1);
            most = Math.max(most, sample[i] + 1);
            sum += Checks.requireFinite("score", score[i]);
        }
        samples = most;
        center = sum / count;
        cells = new double[tasters][samples];
        cellSums = new double[tasters][samples];
        double squares = 0;
        for (int i = 0; i < count; i++) {
            double y = score[i] - center;
            cells[taster[i]][sample[i]]++;
            cellSums[taster[i]][sample[i]] += y;
            squares += y * y;
        }
        sumOfSquares = squares;
        Checks.require(
                count > samples + 1,
                "a comparison of " + samples + " samples needs more than " + (samples + 1) + " scores, got " + count
                        + ".");
        theta = search();
        best = fit(theta);
    }

    private double search() {
        double bestLog = GRID_FROM;
        double lowest = Double.POSITIVE_INFINITY;
        double step = (GRID_TO - GRID_FROM) / GRID_STEPS;
        for (int i = 0; i <= GRID_STEPS; i++) {
            double at = GRID_FROM + i * step;
            double value = criterion(at);
            if (value < lowest) {
                lowest = value;
                bestLog = at;
            }
        }
        double low = bestLog - step;
        double high = bestLog + step;
        while (high - low > 1e-9) {
            double a = high - GOLDEN * (high - low);
            double b = low + GOLDEN * (high - low);
            if (criterion(a) < criterion(b)) {
                high = b;
            } else {
                low = a;
            }
        }
        double found = (low + high) / 2;
        return profile(fit(0)) <= criterion(found) ? 0 : Math.exp(found);
    }

    private double criterion(double logTheta) {
        return profile(fit(Math.exp(logTheta)));
    }

    private double profile(Fit fit) {
        int degrees = count - samples;
        Checks.require(
                fit.rest > 1e-9 * sumOfSquares && sumOfSquares > 0,
                "the scores do not vary beyond tasters and samples, so no interval can be given; check the table.");
        return degrees * Math.log(fit.rest / degrees) + fit.logDeterminants;
    }

    /** What generalized least squares gives for one ratio of variances; rest is the weighted sum of squares left over. */
    private record Fit(Cholesky normal, MeansHolder means, double rest, double logDeterminants) {}

    /** Keeps the array out of the record's contract. */
    private static final class MeansHolder {
        private final double[] values;

        MeansHolder(double[] values) {
            this.values = values;
        }
    }

    private Fit fit(double ratio) {
        double[][] normal = new double[samples][samples];
        double[] right = new double[samples];
        double rest = sumOfSquares;
        double logs = 0;
        for (int t = 0; t < cells.length; t++) {
            double n = 0;
            double total = 0;
            for (int j = 0; j < samples; j++) {
                n += cells[t][j];
                total += cellSums[t][j];
            }
            double weight = ratio / (1 + n * ratio);
            logs += Math.log1p(n * ratio);
            rest -= weight * total * total;
            for (int j = 0; j < samples; j++) {
                normal[j][j] += cells[t][j];
                right[j] += cellSums[t][j] - weight * cells[t][j] * total;
                for (int k = 0; k < samples; k++) {
                    normal[j][k] -= weight * cells[t][j] * cells[t][k];
                }
            }
        }
        Cholesky factor = new Cholesky(normal);
        double[] means = factor.solve(right);
        for (int j = 0; j < samples; j++) {
            rest -= means[j] * right[j];
        }
        return new Fit(factor, new MeansHolder(means), rest, logs + factor.logDeterminant());
    }

    /** Returns the variance of a score around its taster and sample [score squared]. */
    double restVariance() {
        return best.rest / (count - samples);
    }

    /** Returns the variance between tasters [score squared]. */
    double tasterVariance() {
        return theta * restVariance();
    }

    /** Returns a weighted sum of the sample means; the weights add up to 1 or to 0. */
    double contrast(double[] weights) {
        double sum = 0;
        double offset = 0;
        for (int j = 0; j < samples; j++) {
            sum += weights[j] * best.means.values[j];
            offset += weights[j];
        }
        return sum + offset * center;
    }

    /** Returns the variance of that sum. */
    double variance(double[] weights) {
        return restVariance() * quadratic(best, weights);
    }

    private static double quadratic(Fit fit, double[] weights) {
        double[] solved = fit.normal.solve(weights);
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += weights[j] * solved[j];
        }
        return sum;
    }

    /** Returns the degrees of freedom of that variance, at least 1. */
    double degrees(double[] weights) {
        double most = count - samples;
        if (theta == 0) {
            return most;
        }
        double b = Math.log(tasterVariance());
        double e = Math.log(restVariance());
        double hbb = (deviance(b + STEP, e) - 2 * deviance(b, e) + deviance(b - STEP, e)) / (STEP * STEP);
        double hee = (deviance(b, e + STEP) - 2 * deviance(b, e) + deviance(b, e - STEP)) / (STEP * STEP);
        double hbe = (deviance(b + STEP, e + STEP)
                        - deviance(b + STEP, e - STEP)
                        - deviance(b - STEP, e + STEP)
                        + deviance(b - STEP, e - STEP))
                / (4 * STEP * STEP);
        double gb = (variance(b + STEP, e, weights) - variance(b - STEP, e, weights)) / (2 * STEP);
        double ge = (variance(b, e + STEP, weights) - variance(b, e - STEP, weights)) / (2 * STEP);
        double determinant = hbb * hee - hbe * hbe;
        double spread = 2 * (hee * gb * gb - 2 * hbe * gb * ge + hbb * ge * ge) / determinant;
        double f = variance(weights);
        // at the edge of the parameter space the curvature can lose its meaning; then the fewest degrees are taken
        double found = determinant > 0 && spread > 0 ? 2 * f * f / spread : count - samples - (cells.length - 1);
        return Math.max(1, Math.min(most, found));
    }

    private double deviance(double logTaster, double logRest) {
        Fit fit = fit(Math.exp(logTaster - logRest));
        return (count - samples) * logRest + fit.rest / Math.exp(logRest) + fit.logDeterminants;
    }

    private double variance(double logTaster, double logRest, double[] weights) {
        return Math.exp(logRest) * quadratic(fit(Math.exp(logTaster - logRest)), weights);
    }

    /** Returns the ratio of variances for the hypothesis that all sample means are equal. */
    double fisherRatio() {
        int others = samples - 1;
        double[] gaps = new double[others];
        double[][] covariance = new double[others][others];
        for (int j = 0; j < others; j++) {
            double[] weights = pair(j + 1, 0);
            gaps[j] = contrast(weights);
            double[] solved = best.normal.solve(weights);
            for (int k = 0; k < others; k++) {
                covariance[j][k] = restVariance() * (solved[k + 1] - solved[0]);
            }
        }
        double[] solved = new Cholesky(covariance).solve(gaps);
        double sum = 0;
        for (int j = 0; j < others; j++) {
            sum += gaps[j] * solved[j];
        }
        return sum / others;
    }

    /** Returns the weights of the difference of two sample means. */
    double[] pair(int plus, int minus) {
        double[] weights = new double[samples];
        weights[plus] += 1;
        weights[minus] -= 1;
        return weights;
    }
}
