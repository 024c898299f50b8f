package io.github.saltfront.live;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.units.Temperature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The example log is what it says: one piece of the model by a seed of its own, with the true time in its head. */
class ExampleLogTest {
    private static final Path LOG = Path.of("../examples/live/loin.csv");
    private static final long SEED = 15;

    /** Minutes the log goes on after the piece should have come out. */
    private static final int AFTER = 9;

    static List<String> lines() {
        TwinCook twin = TwinCook.of(Cooks.loin(), SEED);
        double truth = twin.pullTime() / 60;
        List<String> lines = new ArrayList<>(List.of(
                "# Invented: one piece of the program's own model, drawn at random, with a tip beside the coldest spot, noise and a drifting error.",
                "# Not a measurement; it proves nothing about real meat.",
                String.format(
                        Locale.ROOT,
                        "# Truth: it should come out after %.1f min. The tip is %.1f K warmer than the coldest spot half way, %.1f K then.",
                        truth,
                        twin.above(30 * truth),
                        twin.above(60 * truth)),
                "time_min,core_c"));
        for (int minute = 0; minute <= truth + AFTER; minute++) {
            double shown = Temperature.toCelsius(twin.reading(60 * minute).temperature());
            lines.add(String.format(Locale.ROOT, "%d,%.1f", minute, shown));
        }
        return lines;
    }

    @Test
    void theExampleIsOnePieceOfTheModelAndTellsItsTruth() throws IOException {
        assertThat(Files.readAllLines(LOG)).isEqualTo(lines());
    }
}
