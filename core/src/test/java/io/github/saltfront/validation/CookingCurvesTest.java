package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.plan.Interval;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Cooking times, carry-over and warming in a bath against charts and measurements, with the media of the catalog as they are, and
 * the figures of docs/validation.md that follow.
 */
class CookingCurvesTest {
    private static final List<CookingTimes.Row> TIMES = CookingTimes.rows();
    private static final List<String> SETS = List.of("roast", "bone", "bird", "part", "simmer", "grill");

    @TestFactory
    List<DynamicTest> chartedTimesLieInTheBandButForKnownMisses() {
        return TIMES.stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.id(),
                        () -> assertThat(row.isCovered())
                                .as("predicted %s, printed %s to %s min", row.predicted(), row.low(), row.high())
                                .isEqualTo(row.miss().isEmpty())))
                .toList();
    }

    /** A rise and its prediction [K]. */
    private record Rise(String what, double low, double high, Interval predicted, String miss) {
        boolean isCovered() {
            return predicted.low() <= high && low <= predicted.high();
        }

        double error() {
            return predicted.median() - Math.min(Math.max(predicted.median(), low), high);
        }
    }

    private static List<Rise> rises() {
        return CsvTable.load(CookingCurvesTest.class, "carry_over.csv").rows().stream()
                .map(row -> {
                    OptionalDouble thickness = row.findNumber("thickness_mm");
                    MeasuredCook cook = new MeasuredCook(
                            row.text("cut"),
                            OptionalDouble.empty(),
                            thickness.isPresent() ? OptionalDouble.of(thickness.getAsDouble() / 1000) : thickness,
                            row.text("appliance"),
                            row.number("setting_c"),
                            4);
                    return new Rise(
                            row.text("what") + " from " + row.text("pull_c") + " °C",
                            row.number("rise_low_k"),
                            row.number("rise_high_k"),
                            cook.rise(row.number("pull_c"), row.number("rest_min")),
                            row.text("known_miss"));
                })
                .toList();
    }

    private static final List<Rise> RISES = rises();

    @TestFactory
    List<DynamicTest> risesOfTheMiddleLieInTheBandButForKnownMisses() {
        return RISES.stream()
                .map(rise -> DynamicTest.dynamicTest(
                        rise.what(),
                        () -> assertThat(rise.isCovered())
                                .as("predicted %s, measured %s to %s K", rise.predicted(), rise.low(), rise.high())
                                .isEqualTo(rise.miss().isEmpty())))
                .toList();
    }

    /** Core of a slab in the default bath at the time at which the review has it within 0.5 K [degrees C]. */
    private static double[] bathErrors() {
        List<Double> errors = new ArrayList<>();
        for (CsvTable.Row row :
                CsvTable.load(CookingCurvesTest.class, "bath_times.csv").rows()) {
            MeasuredCook cook = new MeasuredCook(
                    "pork-loin-chop",
                    OptionalDouble.of(0.26 * row.number("thickness_mm")),
                    OptionalDouble.of(row.number("thickness_mm") / 1000),
                    "water-bath",
                    60,
                    5);
            errors.add(cook.warming(59.5, row.number("time_min"), 3 * row.number("time_min"))
                            .core()
                    - 59.5);
        }
        return errors.stream().mapToDouble(e -> e).toArray();
    }

    @Test
    void aBathWarmsSlabsAsTheReviewSaysWithinTwoKelvin() {
        double[] errors = bathErrors();
        for (double error : errors) {
            assertThat(error).isBetween(-2.0, 2.0);
        }
    }

    @Test
    void pageHoldsTheTimes() throws IOException {
        StringBuilder text =
                new StringBuilder("| cook | source | printed | predicted (90 % band) | middle at the printed time |"
                        + " result |\n|---|---|---:|---:|---:|---|\n");
        for (CookingTimes.Row row : TIMES) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s, %s | %s | %s min | %.0f (%.0f to %.0f) | %.0f °C, wanted %.0f | %s%s |%n",
                    row.set(),
                    row.what(),
                    row.source(),
                    range(row.low(), row.high()),
                    row.predicted().median(),
                    row.predicted().low(),
                    row.predicted().high(),
                    row.core(),
                    row.target(),
                    row.isCovered() ? "in" : "**missed**: " + row.miss(),
                    row.drawn() ? " (drawn)" : ""));
        }
        PageSection.hold("cook-times", text.toString());
        ScatterPlot plot = new ScatterPlot("min", 320, 40);
        for (CookingTimes.Row row : TIMES) {
            Interval p = row.predicted();
            plot.add(row.set() + ", " + row.source(), row.middle(), p.low(), p.median(), p.high());
        }
        PageSection.holdFile("cook-times.svg", plot.svg("Predicted against printed cooking times"));
    }

    @Test
    void pageHoldsTheRises() throws IOException {
        StringBuilder text =
                new StringBuilder("| cook | measured | predicted (90 % band) | result |\n|---|---:|---:|---|\n");
        for (Rise rise : RISES) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s K | %.1f (%.1f to %.1f) | %s |%n",
                    rise.what(),
                    range(rise.low(), rise.high()),
                    rise.predicted().median(),
                    rise.predicted().low(),
                    rise.predicted().high(),
                    rise.isCovered() ? "in" : "**missed**: " + rise.miss()));
        }
        PageSection.hold("carry-over", text.toString());
    }

    @Test
    void pageHoldsTheFigures() throws IOException {
        StringBuilder text = new StringBuilder("| figure | rows | value | target | met |\n|---|---:|---:|---:|---|\n");
        double bath = Math.sqrt(
                java.util.Arrays.stream(bathErrors()).map(e -> e * e).average().orElseThrow());
        figure(text, "water bath, core RMSE", 11, bath, "K", 2);
        for (String set : SETS) {
            List<CookingTimes.Row> rows = TIMES.stream()
                    .filter(r -> r.set().equals(set) && !r.drawn())
                    .toList();
            double core = Scores.rootMeanSquare(rows, r -> r.core() - r.target());
            figure(text, set + ", core RMSE at the middle of the printed times", rows.size(), core, "K", 5);
            double time = 100 * Scores.rootMeanSquare(rows, CookingTimes.Row::error);
            figure(text, set + ", RMS error of time outside the printed range", rows.size(), time, "%", 15);
        }
        figure(text, "carry-over, RMSE of the peak", RISES.size(), Scores.rootMeanSquare(RISES, Rise::error), "K", 5);
        List<CookingTimes.Row> honest = TIMES.stream().filter(r -> !r.drawn()).toList();
        double covered = 100 * Scores.share(honest, CookingTimes.Row::isCovered);
        text.append(String.format(
                Locale.ROOT,
                "| 90 %% bands of time that hold the middle of the printed range | %d | %.0f %% | 85 to 95 %% | %s |%n",
                honest.size(),
                covered,
                covered >= 85 && covered <= 95 ? "yes" : "**no**"));
        PageSection.hold("cook-figures", text.toString());
    }

    private static void figure(StringBuilder text, String what, int rows, double value, String unit, double target) {
        text.append(String.format(
                Locale.ROOT,
                "| %s | %d | %.1f %s | %.0f %s | %s |%n",
                what,
                rows,
                value,
                unit,
                target,
                unit,
                value <= target ? "yes" : "**no**"));
    }

    private static String range(double low, double high) {
        return low == high ? number(low) : number(low) + " to " + number(high);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f" : "%.1f", value);
    }
}
