package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The contract of {@code simulate}: its JSON, its CSV and its file. */
class SimulateCommandTest {
    private static final String SLAB = "../examples/slab.yaml";

    /** A day with everything that moves, at the models' own properties. */
    private static final String DAY = """
            altitude: 500 m
            piece:
              shape: {kind: box, length: 120 mm, width: 80 mm, thickness: 30 mm}
              meat: chicken-breast-skinless
              start_temperature: 4 °C
            stages:
              - {kind: soak, strength: 6 % of water, temperature: 4 °C, time: 3 h}
              - {kind: air-dry, medium: 4 °C, humidity: 70 %, time: 10 min}
              - {kind: heat, appliance: oven-fan, setting: 180 °C, until: {core: 66 °C}, at_most: 3 h}
              - {kind: rest, medium: {time_constant: 5 min, start: 40 °C, end: 21 °C}, time: 10 min}
              - {kind: chill, medium: 3 °C, until: {core_below: 10 °C}, at_most: 5 h}
            output: {every: 90 s, field: yes}
            """;

    @TempDir
    private Path folder;

    @Test
    void seriesAreEquallyLongAndInOrder() throws IOException {
        for (JsonNode json : List.of(CommandRun.of("simulate", SLAB).json(), day().json())) {
            JsonNode series = json.get("series");
            double[] time = SimulateExactTest.values(series, "time_s");
            assertThat(time).isSorted().startsWith(0);
            for (Map.Entry<String, JsonNode> one : series.properties()) {
                assertThat(one.getValue().size()).as(one.getKey()).isEqualTo(time.length);
                assertThat(SimulateExactTest.values(series, one.getKey()))
                        .as(one.getKey())
                        .matches(v -> java.util.Arrays.stream(v).allMatch(Double::isFinite));
            }
        }
    }

    @Test
    void stagesFollowEachOtherAndSayWhatEndedThem() throws IOException {
        JsonNode json = day().json();
        JsonNode stages = json.get("stages");
        List<String> kinds =
                stages.valueStream().map(s -> s.get("kind").asString()).toList();
        List<String> ends =
                stages.valueStream().map(s -> s.get("ended_by").asString()).toList();
        assertThat(kinds).containsExactly("soak", "air-dry", "heat", "rest", "chill");
        assertThat(ends).containsExactly("time", "time", "core", "time", "core_below");
        double end = 0;
        for (JsonNode stage : stages) {
            assertThat(stage.get("start_s").asDouble()).isEqualTo(end);
            end = stage.get("end_s").asDouble();
        }
        double[] time = SimulateExactTest.values(json.get("series"), "time_s");
        assertThat(time[time.length - 1]).isEqualTo(end);
    }

    @Test
    void fieldHasARowForEachSampleAndAValueForEachDepth() throws IOException {
        JsonNode json = day().json();
        JsonNode field = json.get("field");
        int samples = json.get("series").get("time_s").size();
        for (String name : List.of("temperature_c", "salt_pct")) {
            assertThat(field.get(name).size()).isEqualTo(samples);
            assertThat(field.get(name)
                            .valueStream()
                            .map(JsonNode::size)
                            .distinct()
                            .toList())
                    .containsExactly(field.get("depth_mm").size());
        }
    }

    @Test
    void balancesCloseBelowAMillionth() throws IOException {
        for (JsonNode json : List.of(CommandRun.of("simulate", SLAB).json(), day().json())) {
            JsonNode errors = json.get("diagnostics").get("balance_errors");
            for (String name : List.of("energy", "salt", "water")) {
                assertThat(errors.get(name).asDouble()).as(name).isCloseTo(0, within(1e-6));
            }
        }
    }

    @Test
    void csvHoldsTheNumbersOfTheJson() {
        JsonNode series = CommandRun.of("simulate", SLAB, "--json").json().get("series");
        List<String> lines =
                CommandRun.of("simulate", SLAB, "--csv").out().lines().toList();
        List<String> names = List.of(lines.get(0).split(","));
        assertThat(names).containsExactlyElementsOf(series.propertyNames());
        assertThat(lines).hasSize(1 + series.get("time_s").size());
        for (int row = 1; row < lines.size(); row++) {
            String[] cells = lines.get(row).split(",");
            assertThat(cells).hasSize(names.size());
            for (int column = 0; column < cells.length; column++) {
                double json = series.get(names.get(column)).get(row - 1).asDouble();
                // half a unit of the eighth digit
                assertThat(Double.parseDouble(cells[column]))
                        .as(names.get(column))
                        .isCloseTo(json, within(5e-8 * Math.abs(json) + 1e-300));
            }
        }
    }

    @Test
    void fileIsWhatStandardOutputWouldBeAndReplacesTheOldOne() throws IOException {
        Path file = folder.resolve("slab.csv");
        Files.writeString(file, "old");
        CommandRun run = CommandRun.of("simulate", SLAB, "--csv", "-o", file.toString());
        assertThat(run).isEqualTo(new CommandRun(0, "", ""));
        assertThat(Files.readString(file))
                .isEqualTo(CommandRun.of("simulate", SLAB, "--csv").out());
        assertThat(listing()).containsExactly("slab.csv");
    }

    @Test
    void fileThatCannotBeWrittenIsSaid() throws IOException {
        CommandRun missing = CommandRun.of(
                "simulate", SLAB, "-o", folder.resolve("none/slab.json").toString());
        assertThat(missing.code()).isEqualTo(2);
        assertThat(missing.err())
                .contains("its folder does not exist; make the folder first.")
                .hasLineCount(1);
        CommandRun over = CommandRun.of("simulate", SLAB, "-o", folder.toString());
        assertThat(over.code()).isEqualTo(2);
        assertThat(over.err()).contains("it is a folder, expected a file").hasLineCount(1);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void badFileLeavesTheOutputAlone() throws IOException {
        Path file = folder.resolve("slab.csv");
        Files.writeString(file, "old");
        CommandRun run =
                CommandRun.of("simulate", "src/test/resources/bad/simulate-many.yaml", "--csv", "-o", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(Files.readString(file)).isEqualTo("old");
    }

    @Test
    void csvAndJsonExcludeEachOther() {
        CommandRun run = CommandRun.of("simulate", SLAB, "--csv", "--json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("exclude each other");
    }

    private CommandRun day() throws IOException {
        Path file = folder.resolve("day.yaml");
        Files.writeString(file, DAY);
        CommandRun run = CommandRun.of("simulate", file.toString());
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    private List<String> listing() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> String.valueOf(f.getFileName())).toList();
        }
    }
}
