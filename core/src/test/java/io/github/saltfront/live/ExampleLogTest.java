package io.github.saltfront.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The example log is what it says: one piece of the model by a seed of its own, with the true time in its head. */
class ExampleLogTest {
    private static final Path LOG = Path.of("../examples/live/loin.csv");
    private static final long SEED = 15;

    /** Lines before the readings. */
    private static final int HEAD = 4;

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

    /** A later solver may differ a little; what the file claims must hold all the same. */
    @Test
    void theExampleIsOnePieceOfTheModelAndTellsItsTruth() throws IOException {
        List<String> made = lines();
        List<String> file = Files.readAllLines(LOG);
        assertThat(file).hasSameSizeAs(made);
        assertThat(number(file.get(2), "after ([0-9.]+) min"))
                .isCloseTo(number(made.get(2), "after ([0-9.]+) min"), within(0.3));
        for (int i = HEAD; i < made.size(); i++) {
            assertThat(number(file.get(i), ",(.+)$"))
                    .as(made.get(i))
                    .isCloseTo(number(made.get(i), ",(.+)$"), within(0.2));
        }
    }

    private static double number(String line, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(line);
        assertThat(matcher.find()).as(line).isTrue();
        return Double.parseDouble(matcher.group(1));
    }
}
