package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * Writes the accuracy table to {@code target/accuracy.md} and holds the README to it. With {@code -Dupdate.docs=true} the README
 * is rewritten instead.
 */
class AccuracyTableTest {
    private static final String BEGIN = "<!-- accuracy:begin -->";
    private static final String END = "<!-- accuracy:end -->";
    private static final Path README = Path.of("../README.md");

    @Test
    void readmeHoldsTheMeasuredAccuracy() throws IOException {
        String table = table();
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target/accuracy.md"), table);
        String readme = Files.readString(README);
        int begin = readme.indexOf(BEGIN);
        int end = readme.indexOf(END);
        if (begin < 0 || end < begin) {
            return;
        }
        String before = readme.substring(0, begin + BEGIN.length());
        String after = readme.substring(end);
        if (Boolean.getBoolean("update.docs")) {
            Files.writeString(README, before + "\n" + table + after);
            return;
        }
        assertThat(readme.substring(begin + BEGIN.length(), end).strip())
                .as("the accuracy table of README.md is stale; run the test AccuracyTableTest with -Dupdate.docs=true")
                .isEqualTo(table.strip());
    }

    private static String table() {
        StringBuilder text = new StringBuilder(
                        "| group | exact solution | rows | largest error | its derived bound | in |\n")
                .append("|---|---|---:|---:|---:|---|\n");
        for (CheckedGroup group : CheckedGroup.values()) {
            Check worst = group.checks().stream()
                    .max(Comparator.comparingDouble(Check::error))
                    .orElseThrow();
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %d | %s | %s | %s |\n",
                    group,
                    group.content(),
                    group.checks().size(),
                    roundedUp(worst.error()),
                    roundedUp(worst.bound()),
                    group.unit()));
        }
        return text.toString();
    }

    /** One digit, rounded up, so that the last bits of another machine do not show. */
    private static String roundedUp(double value) {
        double unit = Math.pow(10, Math.floor(Math.log10(value)));
        return String.format(Locale.ROOT, "%.0e", Math.ceil(value / unit) * unit);
    }
}
