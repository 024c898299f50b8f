package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds the published uptake sets to their hits and known misses, and docs/validation.md to the table. */
class PublishedUptakeTest {
    private static final String BEGIN = "<!-- salt:begin -->";
    private static final String END = "<!-- salt:end -->";
    private static final Path PAGE = Path.of("../docs/validation.md");
    private static final List<PublishedUptake.Row> ROWS = PublishedUptake.rows();

    @TestFactory
    List<DynamicTest> measuredLiesInThePredictedBandButForKnownMisses() {
        return ROWS.stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.set() + ", " + row.what(),
                        () -> assertThat(row.isMet())
                                .as(
                                        "predicted %s, measured %s to %s; %s",
                                        row.predicted(), row.low(), row.high(), row.miss())
                                .isEqualTo(row.miss().isEmpty())))
                .toList();
    }

    @Test
    void pageHoldsTheTable() throws IOException {
        String table = table();
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        int end = page.indexOf(END);
        if (Boolean.getBoolean("update.docs")) {
            Files.writeString(PAGE, page.substring(0, begin) + "\n" + table + page.substring(end));
            return;
        }
        assertThat(page.substring(begin, end).strip())
                .as("docs/validation.md is stale; run the test PublishedUptakeTest with -Dupdate.docs=true")
                .isEqualTo(table.strip());
    }

    private static String table() {
        StringBuilder text = new StringBuilder(
                "| set | what | source | measured | predicted (90 % band) | result |\n|---|---|---|---:|---:|---|\n");
        for (PublishedUptake.Row row : ROWS) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %s %s | %s (%s to %s) | %s%s |\n",
                    row.set(),
                    row.what(),
                    row.source(),
                    row.low() == row.high() ? number(row.low()) : number(row.low()) + " to " + number(row.high()),
                    row.unit(),
                    number(row.predicted().typical()),
                    number(row.predicted().low()),
                    number(row.predicted().high()),
                    row.isMet() ? "in" : "**missed**: " + row.miss(),
                    row.drawn() ? " (drawn)" : ""));
        }
        text.append("\nNot usable:\n\n");
        PublishedUptake.unusable()
                .forEach((set, reason) -> text.append("- ")
                        .append(set)
                        .append(": ")
                        .append(reason)
                        .append(".\n"));
        return text.toString();
    }

    private static String number(double value) {
        String form = Math.abs(value) >= 20 ? "%.0f" : Math.abs(value) >= 3 ? "%.1f" : "%.2f";
        return String.format(Locale.ROOT, form, value);
    }
}
