package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.plan.Interval;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Losses of mass on cooking against measurements, those used for fitting apart from true predictions. */
class CookingLossTest {
    private static final List<CookingLosses.Row> LOSSES = CookingLosses.rows();

    @TestFactory
    List<DynamicTest> measuredLossesLieInTheShownBandButForKnownMisses() {
        return LOSSES.stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.id(),
                        () -> assertThat(row.isCovered())
                                .as("predicted %s, measured %s %%", row.predicted(), row.measured())
                                .isEqualTo(row.miss().isEmpty())))
                .toList();
    }

    /** What evaporates is drawn from the juice and not put on top. */
    @Test
    void theEvaporatedPartIsNeverMoreThanTheLoss() {
        assertThat(LOSSES)
                .allMatch(row -> row.evaporated().median() <= row.predicted().median() + 1e-6);
    }

    @Test
    void pageHoldsTheLosses() throws IOException {
        StringBuilder text = new StringBuilder(
                "| cook | source | measured | predicted (shown band) | of it evaporated | result |\n|---|---|---:|---:|---:|---|\n");
        ScatterPlot plot = new ScatterPlot("% of the raw mass", 45, 5);
        for (CookingLosses.Row row : LOSSES) {
            Interval p = row.predicted();
            text.append(String.format(
                    Locale.ROOT,
                    "| %s, %s | %s | %.1f %% | %.1f (%.1f to %.1f) | %.1f | %s%s |%n",
                    row.set(),
                    row.what(),
                    row.source(),
                    row.measured(),
                    p.median(),
                    p.low(),
                    p.high(),
                    row.evaporated().median(),
                    row.isCovered() ? "in" : "**missed**: " + row.miss(),
                    switch (row.use()) {
                        case FITTED -> " (fitted)";
                        case VIEWED -> " (drawn)";
                        case NONE -> "";
                    }));
            plot.add(row.set() + ", " + row.source(), row.measured(), p.low(), p.median(), p.high());
        }
        PageSection.hold("cook-losses", text.toString());
        PageSection.holdFile("cook-losses.svg", plot.svg("Predicted against measured loss on cooking"));
    }

    @Test
    void pageHoldsTheFigures() throws IOException {
        StringBuilder text = new StringBuilder(
                "| rows | number | RMSE | mean error | in the shown band |\n|---|---:|---:|---:|---:|\n");
        figures(text, "not used for fitting: true predictions", r -> r.use() == CookingLosses.Use.NONE);
        figures(text, "in view when a factor was set", r -> r.use() == CookingLosses.Use.VIEWED);
        figures(text, "used for fitting", r -> r.use() == CookingLosses.Use.FITTED);
        for (String set : List.of("bath", "braise", "part", "bird", "roast", "chop", "steak")) {
            figures(
                    text,
                    set + ", not used for fitting",
                    r -> r.use() == CookingLosses.Use.NONE && r.set().equals(set));
        }
        PageSection.hold("loss-figures", text.toString());
    }

    private static void figures(
            StringBuilder text, String what, java.util.function.Predicate<CookingLosses.Row> which) {
        List<CookingLosses.Row> rows = LOSSES.stream().filter(which).toList();
        if (rows.isEmpty()) {
            return;
        }
        text.append(String.format(
                Locale.ROOT,
                "| %s | %d | %.1f points | %+.1f | %.0f %% |%n",
                what,
                rows.size(),
                Scores.rootMeanSquare(rows, CookingLosses.Row::error),
                Scores.mean(rows, CookingLosses.Row::error),
                100 * Scores.share(rows, CookingLosses.Row::isCovered)));
    }
}
