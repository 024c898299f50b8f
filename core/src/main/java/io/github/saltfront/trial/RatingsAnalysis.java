package io.github.saltfront.trial;

import io.github.saltfront.numerics.FisherDistribution;
import io.github.saltfront.numerics.StudentDistribution;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * What scores of two or more samples by the same tasters show: the mean of each sample and every difference, with intervals, from
 * a linear mixed model with a random level for each taster, fitted by restricted maximum likelihood. Tasters who left out a
 * sample still count.
 *
 * <p>Differences are widened so that all of them hold together at the level (Bonferroni), and their probabilities multiplied
 * by the number of pairs. Assumes that a step on the scale means the same anywhere on it, which a nine-point scale fulfills
 * roughly.
 *
 * @param means mean of each sample, in order of first appearance
 * @param differences every pair
 * @param tasterDeviation standard deviation of tasters' levels [points]
 * @param restDeviation standard deviation of a score around taster and sample [points]
 * @param fisherRatio ratio of variances for "all means are equal" [-]
 * @param probabilityIfEqual probability of a ratio at least as large if they are; null hypothesis of the whole table [-]
 * @param tasters number of tasters [-]
 * @param scores number of scores [-]
 * @param missing cells without a score [-]
 */
public record RatingsAnalysis(
        List<SampleMean> means,
        List<Difference> differences,
        double tasterDeviation,
        double restDeviation,
        double fisherRatio,
        double probabilityIfEqual,
        int tasters,
        int scores,
        int missing) {

    /** Copies the lists. */
    public RatingsAnalysis {
        means = List.copyOf(means);
        differences = List.copyOf(differences);
    }

    /**
     * The mean of a sample.
     *
     * @param sample the sample
     * @param mean mean over tasters, missing cells allowed for, with its interval [points]
     * @param scores scores it got [-]
     */
    public record SampleMean(String sample, Estimate mean, int scores) {}

    /**
     * A difference of two samples.
     *
     * @param first the sample
     * @param second the sample taken off it
     * @param difference first less second with its interval, widened for the number of pairs [points]
     * @param probabilityIfEqual probability of a difference at least as large either way if there is none, for the number of
     *     pairs [-]
     * @param degrees degrees of freedom [-]
     */
    public record Difference(
            String first, String second, Estimate difference, double probabilityIfEqual, double degrees) {
        /** Returns whether a difference is shown: zero lies outside the interval. */
        public boolean isShown() {
            return !difference.holds(0);
        }

        /** Returns the largest difference, either way, that the interval allows [points]. */
        public double largest() {
            return Math.max(Math.abs(difference.low()), Math.abs(difference.high()));
        }
    }

    /**
     * Analyzes scores.
     *
     * @param scores the scores; the order of samples is that of their first appearance
     * @param level level of the intervals [-], 0.5 to 0.9999
     * @return the analysis
     * @throws IllegalArgumentException if there are fewer than two samples or two tasters, or if nothing varies
     */
    public static RatingsAnalysis of(List<Score> scores, double level) {
        Checks.requireInRange("level of an interval", level, 0.5, 0.9999, "-");
        List<String> samples = scores.stream().map(Score::sample).distinct().toList();
        List<String> tasters = scores.stream().map(Score::taster).distinct().toList();
        Checks.require(samples.size() >= 2, "scores must be for two or more samples, got " + samples + ".");
        Checks.require(tasters.size() >= 2, "scores must come from two or more tasters, got " + tasters + ".");
        Checks.require(
                scores.stream()
                                .map(s -> s.taster() + "\n" + s.sample())
                                .distinct()
                                .count()
                        > tasters.size(),
                "no taster scored two samples, so samples and tasters cannot be told apart; let each taste all.");
        MixedModel model = new MixedModel(
                scores.stream().mapToInt(s -> tasters.indexOf(s.taster())).toArray(),
                scores.stream().mapToInt(s -> samples.indexOf(s.sample())).toArray(),
                scores.stream().mapToDouble(Score::value).toArray());
        List<SampleMean> means = new ArrayList<>();
        List<Difference> differences = new ArrayList<>();
        int pairs = samples.size() * (samples.size() - 1) / 2;
        double fewest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < samples.size(); i++) {
            String sample = samples.get(i);
            int got =
                    (int) scores.stream().filter(s -> s.sample().equals(sample)).count();
            double[] one = new double[samples.size()];
            one[i] = 1;
            means.add(new SampleMean(sample, estimate(model, one, level, level), got));
            for (int j = i + 1; j < samples.size(); j++) {
                Difference difference = difference(model, samples, i, j, pairs, level);
                differences.add(difference);
                fewest = Math.min(fewest, difference.degrees());
            }
        }
        double ratio = model.fisherRatio();
        long filled = scores.stream()
                .map(s -> s.taster() + "\n" + s.sample())
                .distinct()
                .count();
        return new RatingsAnalysis(
                means,
                differences,
                Math.sqrt(model.tasterVariance()),
                Math.sqrt(model.restVariance()),
                ratio,
                FisherDistribution.upperTail(ratio, samples.size() - 1, fewest),
                tasters.size(),
                scores.size(),
                (int) (samples.size() * tasters.size() - filled));
    }

    private static Difference difference(
            MixedModel model, List<String> samples, int plus, int minus, int pairs, double level) {
        double[] weights = model.pair(plus, minus);
        double degrees = model.degrees(weights);
        double t = model.contrast(weights) / Math.sqrt(model.variance(weights));
        return new Difference(
                samples.get(plus),
                samples.get(minus),
                estimate(model, weights, 1 - (1 - level) / pairs, level),
                Math.min(1, pairs * StudentDistribution.tailBothSides(t, degrees)),
                degrees);
    }

    private static Estimate estimate(MixedModel model, double[] weights, double share, double level) {
        double value = model.contrast(weights);
        double half = StudentDistribution.middle(share, model.degrees(weights)) * Math.sqrt(model.variance(weights));
        return new Estimate(value - half, value, value + half, level);
    }
}
