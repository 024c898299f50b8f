package io.github.saltfront.app.export;

import io.github.saltfront.app.probe.LogProblem;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.MeasuredVerdict;
import io.github.saltfront.words.Phrases;
import java.util.Locale;

/** Writes a result for a terminal, at most 72 columns wide. */
public final class LethalityText {
    private static final Phrases PHRASES = Phrases.of(LethalityText.class);

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
        row(PHRASES.say("official-minimum"), result.consumerMinimumText());
        row(PHRASES.say("required-hold"), result.table().title());
        row(PHRASES.say("share-of-it"), result.shareText());
        row(PHRASES.say("decades-killed"), result.logReductionText());
        result.completeAfter().ifPresent(after -> row(PHRASES.say("complete-after"), duration(after)));
        row(PHRASES.say("table"), result.table().edition());
        row(PHRASES.say("thermometer"), result.measured().probe().describe());
        row(PHRASES.say("place"), result.measured().placement().describe());
        double span = result.measured().log().time(result.measured().log().size() - 1)
                - result.measured().log().time(0);
        row(
                PHRASES.say("log"),
                PHRASES.say(
                        "rows-over-gaps",
                        result.reading().rows(),
                        duration(span),
                        result.measured().gaps()));
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
            paragraph(PHRASES.say("for-information"), line);
        }
        int shown = 0;
        for (LogProblem problem : result.reading().problems()) {
            if (shown++ < MOST_PROBLEMS) {
                paragraph(PHRASES.say("log-2"), problem.describe());
            }
        }
        if (shown > MOST_PROBLEMS) {
            paragraph(PHRASES.say("log-2"), PHRASES.say("more-problems-json-lists-them", (shown - MOST_PROBLEMS)));
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
        return minutes < 60 ? minutes + " min" : Phrases.figures("%d h %02d min", minutes / 60, minutes % 60);
    }
}
