package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.live.Reading;
import io.github.saltfront.units.Temperature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class GrowingLogTest {
    @TempDir
    private Path folder;

    private long touched = 1_000_000_000_000L;

    private static List<String> words(List<Reading> readings) {
        return readings.stream()
                .map(r -> r.probe() + " " + Math.round(r.time()) + " "
                        + Math.round(10 * Temperature.toCelsius(r.temperature())) / 10.0)
                .toList();
    }

    /** Adds to the file and moves its time on, as a clock of coarse steps may not. */
    private void append(Path log, String text) throws IOException {
        Files.writeString(log, text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        touched += 1000;
        Files.setLastModifiedTime(log, FileTime.fromMillis(touched));
    }

    @Test
    void onlyWhatIsNewAndWholeIsGiven() throws IOException {
        LogProbes probes = new LogProbes();
        new CommandLine(CommandLine.Model.CommandSpec.create())
                .addMixin("probes", probes)
                .parseArgs("--probe", "core_c", "--air", "air_c");
        Path log = folder.resolve("log.csv");
        GrowingLog growing = new GrowingLog(log, probes);
        assertThat(growing.poll()).isEmpty();
        assertThat(growing.problem()).contains("no file");
        append(log, "time_min,core_c,air_c\n0,4.2,1");
        assertThat(growing.poll()).isEmpty();
        append(log, "60.5\n1,4.3,161\n2,4");
        assertThat(words(growing.poll()))
                .containsExactly("core 0 4.2", "oven-air 0 160.5", "core 60 4.3", "oven-air 60 161.0");
        assertThat(growing.problem()).isEmpty();
        assertThat(growing.poll()).isEmpty();
        append(log, ".4,162\n");
        assertThat(words(growing.poll())).containsExactly("core 120 4.4", "oven-air 120 162.0");
    }
}
