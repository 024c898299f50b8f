package io.github.saltfront.app.export;

import io.github.saltfront.app.probe.LogProblem;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.MeasuredVerdict;
import java.util.Locale;

/** Writes a result for a terminal, at most 72 columns wide. */
public final class LethalityText {
    private static final int WIDTH = 72;
    private static final int MOST_PROBLEMS = 10;

    private final StringBuilder out = new StringBuilder();

    private LethalityText() {}

    /**
     * Writes a result.
     *
     * @param result the result
     * @return the text, lines closed
     */
    public static String write(LethalityResult result) {
        LethalityText text = new LethalityText();
        text.verdict(result);
        text.evidence(result);
        text.beside(result);
        return text.out.toString();
    }

    private void verdict(LethalityResult result) {
        MeasuredVerdict verdict = result.verdict();
        paragraph("", verdict.headline());
        for (String reason : verdict.reasons()) {
            paragraph("- ", reason);
        }
        paragraph("", verdict.kitchenNote());
        out.append('\n');
    }

    private void evidence(LethalityResult result) {
        MeasuredVerdict verdict = result.verdict();
        row("Official minimum", result.consumerMinimumText());
        row("Required hold", result.table().title());
        row("Share of it", result.shareText());
        row("Decades killed", result.logReductionText());
        result.completeAfter().ifPresent(after -> row("Complete after", duration(after)));
        row("Table", result.table().edition());
        row("Thermometer", result.measured().probe().describe());
        row("Place", result.measured().placement().describe());
        double span = result.measured().log().time(result.measured().log().size() - 1)
                - result.measured().log().time(0);
        row(
                "Log",
                result.reading().rows() + " rows over " + duration(span) + ", gaps: "
                        + result.measured().gaps());
        for (String note : result.reading().notes()) {
            row("", note);
        }
        out.append('\n');
    }

    private void beside(LethalityResult result) {
        for (LimitCheck limit : result.limits()) {
            paragraph("", limit.text());
        }
        for (String line : result.information()) {
            paragraph("For information: ", line);
        }
        int shown = 0;
        for (LogProblem problem : result.reading().problems()) {
            if (shown++ < MOST_PROBLEMS) {
                paragraph("Log, ", problem.describe());
            }
        }
        if (shown > MOST_PROBLEMS) {
            paragraph("Log, ", (shown - MOST_PROBLEMS) + " more problems; --json lists them.");
        }
        for (Caution caution : result.cautions()) {
            if (caution.cannotBeSwitchedOff()) {
                paragraph("! ", caution.text());
            }
        }
    }

    private void row(String label, String value) {
        wrap(String.format(Locale.ROOT, "%-17s ", label), value, 18);
    }

    private void paragraph(String mark, String text) {
        wrap(mark, text, mark.length() <= 2 ? mark.length() : 2);
    }

    private void wrap(String start, String text, int indent) {
        StringBuilder line = new StringBuilder(start);
        boolean fresh = true;
        for (String word : text.split(" ")) {
            if (!fresh && line.length() + 1 + word.length() > WIDTH) {
                out.append(line).append('\n');
                line = new StringBuilder(" ".repeat(indent));
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        out.append(line).append('\n');
    }

    /**
     * Writes a duration in plain words.
     *
     * @param seconds duration [s]
     * @return such as {@code "1 h 05 min"} or {@code "40 s"}
     */
    static String duration(double seconds) {
        long whole = (long) Math.ceil(seconds - 1e-6);
        if (whole < 120) {
            return whole + " s";
        }
        long minutes = (whole + 59) / 60;
        return minutes < 60
                ? minutes + " min"
                : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    }
}
