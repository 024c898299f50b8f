package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** What {@code simulate} writes for constant properties is the exact solution, through file, program and JSON. */
class SimulateExactTest {
    /** Demand of the project on temperatures of exact cases [K]. */
    private static final double TOLERANCE = 0.05;

    private static final double START = 4;
    private static final double RISE = 100;

    /** L2 / alpha for half of 30 mm, 1000 kg/m3, 4000 J/(kg.K), 0.5 W/(m.K) [s]. */
    private static final double UNIT_OF_TIME = 1800;

    private static final Path ROWS =
            Path.of("../core/src/test/resources/io/github/saltfront/verification/analytic_checks.csv");
    private static final Pattern INPUTS = Pattern.compile("Bi=([^;]+);Fo=(.+)");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "slab, 0.5", "slab, 5", "slab, 50",
        "cylinder, 0.5", "cylinder, 5", "cylinder, 50",
        "sphere, 0.5", "sphere, 5", "sphere, 50",
    })
    void temperaturesFollowTheSeries(String shape, double biot) throws IOException {
        Series exact = Series.convection(shape, biot);
        JsonNode series = heat(shape, biot, 18, 3600).get("series");
        double[] time = values(series, "time_s");
        double[] core = values(series, "core_temperature_c");
        double[] surface = values(series, "surface_temperature_c");
        double[] mean = values(series, "mean_temperature_c");
        assertThat(time).hasSize(201);
        for (int i = 1; i < time.length; i++) {
            double fourier = time[i] / UNIT_OF_TIME;
            String at = shape + " Bi " + biot + " Fo " + fourier;
            assertThat(core[i]).as(at).isCloseTo(celsius(exact.left(fourier, 0)), within(TOLERANCE));
            assertThat(surface[i]).as(at).isCloseTo(celsius(exact.left(fourier, 1)), within(TOLERANCE));
            assertThat(mean[i]).as(at).isCloseTo(celsius(exact.meanLeft(fourier)), within(TOLERANCE));
        }
    }

    // rows of group SER: Carslaw and Jaeger 1959, chapters 3, 7, 9, as computed there
    @Test
    void temperaturesAreThoseOfTheCheckedTable() throws IOException {
        Map<String, List<CsvTable.Row>> cases = new LinkedHashMap<>();
        for (CsvTable.Row row : CsvTable.read("analytic_checks.csv", new StringReader(Files.readString(ROWS)))
                .rows()) {
            if (row.text("group").equals("SER")) {
                String name = List.of("slab", "cylinder", "sphere").stream()
                                .filter(row.text("geometry")::contains)
                                .findFirst()
                                .orElseThrow()
                        + " "
                        + inputs(row).group(1);
                cases.computeIfAbsent(name, k -> new ArrayList<>()).add(row);
            }
        }
        int compared = 0;
        for (Map.Entry<String, List<CsvTable.Row>> one : cases.entrySet()) {
            String[] name = one.getKey().split(" ");
            double biot = name[1].equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(name[1]);
            JsonNode series = heat(name[0], biot, 18, 9000).get("series");
            for (CsvTable.Row row : one.getValue()) {
                int sample = (int) Math.round(Double.parseDouble(inputs(row).group(2)) * UNIT_OF_TIME / 18);
                String quantity = row.text("quantity");
                String column = quantity.endsWith("centre") ? "core" : quantity.substring("theta_".length());
                double shown = values(series, column + "_temperature_c")[sample];
                assertThat(shown).as(row.text("id")).isCloseTo(celsius(row.number("value")), within(TOLERANCE));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(858);
    }

    @ParameterizedTest
    @CsvSource({"slab, 1", "slab, 5", "cylinder, 1", "cylinder, 5", "sphere, 1", "sphere, 5"})
    void soakFollowsTheSeriesOfALimitedBath(String shape, double solution) throws IOException {
        double strength = 0.06;
        double water = 0.75;
        double diffusivity = 1e-9;
        JsonNode series = run("piece:\n  shape: " + shape(shape)
                        + "\n  meat: {water: 75 %, protein: 22 %, fat: 2 %, ash: 1 %}\n  start_temperature: 4 °C\n"
                        + "  constants: {salt_diffusivity: 1e-9 m2/s, partition: 1, water: fixed}\n"
                        + "stages:\n  - {kind: soak, strength: 6 % of solution, solution: " + solution
                        + " kg per kg meat, temperature: 4 °C, time: 225000 s}\noutput: {every: 2250 s}\n")
                .get("series");
        // water of the bath over water of the meat; salt stays in the water phase of either
        double alpha = solution * (1 - strength) / water;
        Series exact = Series.limitedBath(shape, alpha);
        double last = strength / (1 - strength) * alpha / (1 + alpha);
        double[] time = values(series, "time_s");
        double[] mean = values(series, "salt_mean_pct");
        assertThat(time).hasSize(101);
        for (int i = 1; i < time.length; i++) {
            double fourier = time[i] * diffusivity / (0.015 * 0.015);
            double saltPerWater = exact.uptake(fourier) * last;
            double expected = 100 * saltPerWater * water / (1 + saltPerWater * water);
            // a hundredth of a percent of salt is a tenth of what a taster tells apart
            assertThat(mean[i]).as(shape + " Fo " + fourier).isCloseTo(expected, within(0.01));
        }
    }

    private JsonNode heat(String shape, double biot, int every, int time) throws IOException {
        double coefficient = Double.isInfinite(biot) ? 1e9 : biot * 0.5 / 0.015;
        return run("piece:\n  shape: " + shape(shape)
                + "\n  meat: chicken-breast-skinless\n  start_temperature: 4 °C\n"
                + "  constants: {density: 1000 kg/m3, heat_capacity: 4000 J/(kg.K), conductivity: 0.5 W/(m.K),"
                + " water: fixed}\n"
                + "stages:\n  - {kind: heat, medium: 104 °C, coefficient: " + coefficient
                + " W/(m2.K), emissivity: 0, evaporation: off, time: " + time + " s}\noutput: {every: " + every
                + " s}\n");
    }

    private static String shape(String name) {
        return String.format(
                Locale.ROOT, "{kind: %s, %s: 30 mm}", name, name.equals("slab") ? "thickness" : "diameter");
    }

    private JsonNode run(String file) throws IOException {
        Path path = folder.resolve("exact.yaml");
        Files.writeString(path, file);
        CommandRun run = CommandRun.of("simulate", path.toString());
        assertThat(run.code()).as(run.err()).isZero();
        return run.json();
    }

    private static Matcher inputs(CsvTable.Row row) {
        Matcher matcher = INPUTS.matcher(row.text("inputs"));
        assertThat(matcher.matches()).as(row.text("inputs")).isTrue();
        return matcher;
    }

    private static double celsius(double left) {
        return START + RISE * (1 - left);
    }

    static double[] values(JsonNode series, String name) {
        double[] values = new double[series.get(name).size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = series.get(name).get(i).asDouble();
        }
        return values;
    }
}
