package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.trial.ClopperPearson1934;
import io.github.saltfront.trial.Discrimination;
import io.github.saltfront.trial.Estimate;
import io.github.saltfront.trial.MeanDifference;
import io.github.saltfront.trial.RatingsAnalysis;
import io.github.saltfront.trial.Score;
import io.github.saltfront.trial.TastingMethod;
import io.github.saltfront.trial.TrialPower;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Numbers against published analyses and against trial_reference.py, which computes them with other means. */
class TrialReferenceTest {
    @Test
    void likelihoodIntervalsAreThoseOfTheReference() {
        for (Map.Entry<String, Map<String, Double>> entry :
                reference("likelihood").entrySet()) {
            String[] words = entry.getKey().split("[ /]");
            Discrimination found = new Discrimination(
                    TastingMethod.get(words[0]), Integer.parseInt(words[1]), Integer.parseInt(words[2]), 0.95);
            Map<String, Double> expected = entry.getValue();
            close(entry.getKey(), found.distance().value(), expected.get("distance"), 1e-6);
            close(entry.getKey(), found.distance().low(), expected.get("low"), 1e-6);
            close(entry.getKey(), found.distance().high(), expected.get("high"), 1e-6);
            close(entry.getKey(), found.probabilityByGuessing() / expected.get("p"), 1, 1e-8);
        }
    }

    @Test
    void powerOfPairedMeansIsThatOfTheNoncentralDistribution() {
        for (Map.Entry<String, Map<String, Double>> entry :
                reference("paired-power").entrySet()) {
            String[] words = entry.getKey().split(" ");
            double power = TrialPower.pairedMeans(
                    Integer.parseInt(words[0]),
                    Double.parseDouble(words[1]),
                    Double.parseDouble(words[2]),
                    Double.parseDouble(words[3]));
            close(entry.getKey(), power, entry.getValue().get("power"), 1e-6);
        }
    }

    @Test
    void mixedModelIsThatOfFullMatrices() {
        for (Map.Entry<String, Map<String, Double>> entry : reference("reml").entrySet()) {
            RatingsAnalysis found = RatingsAnalysis.of(scores(entry.getKey()), 0.95);
            Map<String, Double> expected = entry.getValue();
            found.means()
                    .forEach(m -> close(entry.getKey(), m.mean().value(), expected.get("mean " + m.sample()), 1e-5));
            close(entry.getKey(), found.tasterDeviation(), expected.get("taster sd"), 1e-5);
            close(entry.getKey(), found.restDeviation(), expected.get("rest sd"), 1e-5);
            close(entry.getKey(), found.fisherRatio(), expected.get("ratio"), 1e-4);
            for (RatingsAnalysis.Difference difference : found.differences()) {
                String pair = expected.containsKey("degrees " + difference.first() + "-" + difference.second())
                        ? difference.first() + "-" + difference.second()
                        : difference.second() + "-" + difference.first();
                close(entry.getKey() + pair, difference.degrees(), expected.get("degrees " + pair), 2e-3);
            }
        }
    }

    /**
     * Pinheiro, Bates 2000, Mixed-Effects Models in S and S-PLUS, p. 13 (from memory): deviations 1.332 of subjects and 1.100 of the
     * rest, means 8.556 and steps 3.889, 2.222, 0.667 with a standard error of 0.519 on 24 degrees of freedom.
     */
    @Test
    void stoolsAreAsPrinted() {
        RatingsAnalysis found = RatingsAnalysis.of(scores("stool"), 0.95);
        assertThat(found.tasterDeviation()).isCloseTo(1.332, within(0.0005));
        assertThat(found.restDeviation()).isCloseTo(1.100, within(0.0005));
        RatingsAnalysis.Difference first = found.differences().get(0);
        assertThat(first.difference().value()).isCloseTo(-3.889, within(0.0005));
        assertThat(first.degrees()).isCloseTo(24, within(1e-3));
        // Bonferroni for six pairs: t of 0.05/12 on 24 degrees is 2.8751 (scipy)
        assertThat(first.difference().high() - first.difference().value()).isCloseTo(2.8751 * 0.51868, within(5e-4));
    }

    /** An R session on mixed models in the book of J. Faraway (read): deviations 3.43 and 4.34, steps 1, 5, 2, F 1.24. */
    @Test
    void penicillinIsAsPrinted() {
        RatingsAnalysis found = RatingsAnalysis.of(scores("penicillin"), 0.95);
        assertThat(found.tasterDeviation()).isCloseTo(3.43, within(0.005));
        assertThat(found.restDeviation()).isCloseTo(4.34, within(0.005));
        assertThat(found.fisherRatio()).isCloseTo(1.24, within(0.005));
        // printed by aov of the same session: Pr(>F) 0.34 on 3 and 12 degrees
        assertThat(found.probabilityIfEqual()).isCloseTo(0.34, within(0.005));
        assertThat(found.differences().get(1).difference().value()).isCloseTo(-5, within(1e-9));
    }

    /** Taste test in incomplete blocks, open course of the University of South Carolina (read): F = 16, P below 0.0001. */
    @Test
    void tasteTestWithMissingCellsIsAsPrinted() {
        RatingsAnalysis found = RatingsAnalysis.of(scores("taste"), 0.95);
        assertThat(found.missing()).isEqualTo(20);
        assertThat(found.fisherRatio()).isCloseTo(16, within(0.5));
        assertThat(found.probabilityIfEqual()).isLessThan(1e-4);
        // which pairs differ, as printed from Tukey's intervals; ours by Bonferroni agree
        for (RatingsAnalysis.Difference difference : found.differences()) {
            boolean low = List.of("f1", "f5").contains(difference.first());
            boolean otherLow = List.of("f1", "f5").contains(difference.second());
            assertThat(difference.isShown())
                    .as(difference.first() + " " + difference.second())
                    .isEqualTo(low != otherLow);
        }
    }

    /** Hours of sleep by two drugs, Student 1908; intervals printed in an open R session (read), Welch's from memory. */
    @Test
    void sleepIsAsPrinted() {
        double[] first = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
        double[] second = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
        assertEnds(MeanDifference.paired(first, second, 0.95).difference(), -2.4599, -0.7001, 0.00005);
        MeanDifference welch = MeanDifference.welch(first, second, 0.95);
        assertEnds(welch.difference(), -3.3654832, 0.2054832, 1e-6);
        assertThat(welch.degrees()).isCloseTo(17.776, within(0.0005));
    }

    /** A page on Welch's test in R (read): t = 0.51703, df = 9.48, p = 0.617, from -1.935420 to 3.093754. */
    @Test
    void welchIsAsPrinted() {
        MeanDifference found = MeanDifference.welch(
                new double[] {5.1, 2.0, 4.1, 6.2, 7.1, 8.3},
                new double[] {1.5, 6.4, 3.3, 5.8, 4.8, 7.2, 5.6, 4.5},
                0.95);
        assertEnds(found.difference(), -1.935420, 3.093754, 1e-6);
        assertThat(found.degrees()).isCloseTo(9.48, within(0.005));
        assertThat(found.probabilityIfEqual()).isCloseTo(0.617, within(0.0005));
    }

    /** Conover 1999 as quoted on a page on intervals of proportions (read): 5 of 25, 0.068 to 0.407. */
    @Test
    void exactIntervalIsAsPrinted() {
        assertEnds(ClopperPearson1934.interval(5, 25, 0.95), 0.068, 0.407, 0.0005);
    }

    private static void assertEnds(Estimate found, double low, double high, double tolerance) {
        assertThat(found.low()).isCloseTo(low, within(tolerance));
        assertThat(found.high()).isCloseTo(high, within(tolerance));
    }

    private static void close(String what, double found, double expected, double tolerance) {
        if (Double.isInfinite(expected)) {
            assertThat(found).as(what).isEqualTo(expected);
        } else {
            assertThat(found).as(what).isCloseTo(expected, Offset.offset(tolerance));
        }
    }

    private static List<Score> scores(String data) {
        return CsvTable.load(TrialReferenceTest.class, "trial_scores.csv").rows().stream()
                .filter(r -> r.text("data").equals(data))
                .map(r -> new Score(r.text("taster"), r.text("sample"), r.number("score")))
                .toList();
    }

    private static Map<String, Map<String, Double>> reference(String group) {
        Map<String, Map<String, Double>> cases = new HashMap<>();
        for (CsvTable.Row row :
                CsvTable.load(TrialReferenceTest.class, "trial_reference.csv").rows()) {
            if (row.text("group").equals(group)) {
                double value = row.text("value").equals("inf") ? Double.POSITIVE_INFINITY : row.number("value");
                cases.computeIfAbsent(row.text("case"), c -> new HashMap<>()).put(row.text("quantity"), value);
            }
        }
        assertThat(cases).isNotEmpty();
        return cases;
    }
}
