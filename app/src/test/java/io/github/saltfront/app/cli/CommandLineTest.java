package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Exit codes and streams of all commands: 0 done, 1 not feasible, refused or not met, 2 wrong input; never a stack trace. */
class CommandLineTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"plan", "simulate", "brine", "lethality", "catalog", "schema"})
    void helpSaysHowTo(String command) {
        CommandRun run = CommandRun.of(command, "--help");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Usage: saltfront " + command);
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(run.err()).isEmpty();
    }

    @Test
    void noCommandListsThem() {
        CommandRun run = CommandRun.of();
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("plan", "simulate", "brine", "lethality", "catalog", "schema");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "pan ../examples/sunday-chicken.yaml | Did you mean",
                "plan | Missing required parameter: 'FILE'",
                "plan ../examples/sunday-chicken.yaml --seed one | 'one' is not a long",
                "plan ../examples/sunday-chicken.yaml --jsn | Unknown option: '--jsn'",
                "simulate | Missing required parameter: 'FILE'",
                "simulate ../examples/slab.yaml -o | Missing required parameter for option '--output'",
                "brine | Missing required option: '--mass",
                "brine --mass=1.2 --cut=pork-loin-chop --strength=6% | --mass: \"1.2\" has no unit",
                "brine --mass=1kg --cut=pork-lion-chop --strength=6% | pork-loin-chop",
                "brine --mass=1kg --cut=pork-loin-chop --strength=60% | Use less salt.",
                "lethality --meat=chicken | Missing required parameter: 'LOG.csv'",
                "lethality none.csv --meat=chicken | none.csv",
                "lethality none.csv | Missing required option: '--meat",
                "catalog cats | expected one of cuts, salts, liquids, appliances",
                "schema plans | did you mean \"plan\"",
            })
    void wrongInputIsSaidInOneMessage(String line, String part) {
        CommandRun run = CommandRun.of(line.split(" "));
        assertThat(run.code()).as(run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(part).doesNotContain("Exception", "\tat ", "Usage:");
        assertThat(run.err().lines().count()).isBetween(1L, 3L);
    }

    @Test
    void logThatIsNoneIsSaid() throws IOException {
        for (String text : List.of("", "time,temperature\n", "a,b,c\n1,2\n", "\u0000\u0001\u0002")) {
            Path file = folder.resolve("log.csv");
            Files.writeString(file, text);
            CommandRun run = CommandRun.of("lethality", file.toString(), "--meat=chicken");
            assertThat(run.code()).as(run.err()).isEqualTo(2);
            assertThat(run.err()).isNotBlank().doesNotContain("Exception", "\tat ");
            assertThat(run.out()).isEmpty();
        }
    }

    @Test
    void holdThatIsNotMetIsCodeOne() throws IOException {
        Path file = folder.resolve("log.csv");
        Files.writeString(file, "time_min,core_c\n0,4\n1,10\n2,20\n3,30\n");
        CommandRun run = CommandRun.of("lethality", file.toString(), "--meat=chicken");
        assertThat(run.code()).as(run.err()).isEqualTo(1);
        assertThat(run.out()).isNotBlank();
    }

    @Test
    void catalogShowsWhatHoldsTheWord() {
        CommandRun text = CommandRun.of("catalog", "cuts", "turkey");
        assertThat(text.code()).isZero();
        assertThat(text.out()).contains("turkey");
        CommandRun json = CommandRun.of("catalog", "--json");
        assertThat(json.json().get("cuts").size()).isGreaterThanOrEqualTo(20);
        assertThat(json.json().get("salts").size()).isGreaterThanOrEqualTo(5);
        assertThat(json.json().get("liquids").size()).isGreaterThanOrEqualTo(8);
        assertThat(json.json().get("appliances").size()).isGreaterThanOrEqualTo(6);
    }
}
