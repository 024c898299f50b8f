package io.github.saltfront.app.export;

import io.github.saltfront.app.probe.LogProblem;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.MeasuredVerdict;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.util.Locale;

/** Writes a result as a page of its own, without scripts and without a request to any host, to be kept and checked again. */
public final class LethalityPage {
    private static final Phrases PHRASES = Phrases.of(LethalityPage.class);

    private static final int WIDTH = 720;
    private static final int HEIGHT = 260;
    private static final int MARGIN = 36;
    private static final int MOST_POINTS = 1500;

    private final StringBuilder out = new StringBuilder();

    private LethalityPage() {}

    /**
     * Writes a result.
     *
     * @param result the result
     * @param name name of the log file
     * @return the page
     */
    public static String write(LethalityResult result, String name) {
        LethalityPage page = new LethalityPage();
        page.head(name);
        page.verdict(result.verdict());
        page.chart(result.measured(), result.verdict().consumerMinimum());
        page.record(result, name);
        page.method(result);
        page.rest(result);
        page.out.append("</main></body></html>\n");
        return page.out.toString();
    }

    private void head(String name) {
        out.append("<!DOCTYPE html>\n<html lang=\"" + Language.spoken().tag() + "\"><head><meta charset=\"utf-8\">")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">")
                .append("<title>" + PHRASES.say("cooking-record") + ": ")
                .append(escape(name))
                .append("</title><style>")
                .append(":root{color-scheme:light dark}body{font:1rem/1.5 system-ui,sans-serif;margin:0}")
                .append("main{max-width:46rem;margin:auto;padding:1rem}table{border-collapse:collapse;width:100%}")
                .append("th,td{text-align:left;vertical-align:top;padding:.2rem .6rem .2rem 0;overflow-wrap:anywhere}")
                .append(
                        "th{width:11rem;font-weight:600}svg{width:100%;height:auto}.verdict{font-size:1.3rem;font-weight:600}")
                .append("</style></head><body><main>\n<h1>" + PHRASES.say("cooking-record") + "</h1>\n");
    }

    private void verdict(MeasuredVerdict verdict) {
        out.append("<p class=\"verdict\">").append(escape(verdict.headline())).append("</p>\n");
        if (!verdict.reasons().isEmpty()) {
            out.append("<ul>");
            verdict.reasons().forEach(r -> out.append("<li>").append(escape(r)).append("</li>"));
            out.append("</ul>\n");
        }
        out.append("<p>").append(escape(verdict.kitchenNote())).append("</p>\n");
    }

    private void chart(MeasuredRecord measured, ConsumerMinimum minimum) {
        TemperatureHistory lower = measured.lowerHistory();
        double start = lower.time(0);
        double span = Math.max(1, lower.time(lower.size() - 1) - start);
        double top = Math.max(measured.log().highest(), minimum.temperature()) + 3;
        double bottom = Math.min(Temperature.fromCelsius(0), lowest(lower));
        out.append(String.format(
                Locale.ROOT,
                "<svg viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"%s\">",
                WIDTH,
                HEIGHT,
                PHRASES.say("temperature-over", LethalityText.duration(span))));
        line(minimum.temperature(), top, bottom, PHRASES.say("official-minimum", minimum.describe()));
        polyline(measured, null, start, span, top, bottom, "1");
        polyline(measured, lower, start, span, top, bottom, "2.5");
        out.append("</svg><p>")
                .append(PHRASES.say("thin-line", LethalityText.duration(span)))
                .append("</p>\n");
    }

    private static double lowest(TemperatureHistory history) {
        double lowest = history.temperature(0);
        for (int i = 1; i < history.size(); i++) {
            lowest = Math.min(lowest, history.temperature(i));
        }
        return lowest;
    }

    private void line(double kelvin, double top, double bottom, String label) {
        double y = y(kelvin, top, bottom);
        out.append(String.format(
                Locale.ROOT,
                "<line x1=\"%d\" x2=\"%d\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"currentColor\" stroke-dasharray=\"5 4\"/>"
                        + "<text x=\"%d\" y=\"%.1f\" fill=\"currentColor\" font-size=\"12\">%s</text>",
                MARGIN,
                WIDTH,
                y,
                y,
                MARGIN + 4,
                y - 4,
                escape(label)));
    }

    private void polyline(
            MeasuredRecord measured,
            @org.jspecify.annotations.Nullable TemperatureHistory lower,
            double start,
            double span,
            double top,
            double bottom,
            String width) {
        int size = lower == null ? measured.log().size() : lower.size();
        int step = 1 + (size - 1) / MOST_POINTS;
        out.append("<polyline fill=\"none\" stroke=\"currentColor\" stroke-width=\"")
                .append(width)
                .append("\" points=\"");
        for (int i = 0; i < size; i += step) {
            double time = lower == null ? measured.log().time(i) : lower.time(i);
            double kelvin = lower == null ? measured.log().reading(i) : lower.temperature(i);
            out.append(String.format(
                    Locale.ROOT,
                    "%.1f,%.1f ",
                    MARGIN + (WIDTH - MARGIN) * (time - start) / span,
                    y(kelvin, top, bottom)));
        }
        out.append("\"/>");
    }

    private static double y(double kelvin, double top, double bottom) {
        return 4 + (HEIGHT - 8) * (top - kelvin) / (top - bottom);
    }

    private void record(LethalityResult result, String name) {
        MeasuredRecord measured = result.measured();
        out.append("<h2>" + PHRASES.say("record") + "</h2><table>");
        row(PHRASES.say("official-minimum-2"), result.consumerMinimumText() + " (" + ConsumerMinimum.EDITION + ")");
        row(PHRASES.say("share-of-the-hold"), result.shareText());
        row(PHRASES.say("decades-killed"), result.logReductionText());
        result.completeAfter().ifPresent(after -> row(PHRASES.say("complete-after"), LethalityText.duration(after)));
        row(PHRASES.say("table"), result.table().title() + ". " + result.table().edition());
        row(PHRASES.say("food-code"), String.join("; ", result.verdict().rule().foodCodeMinimums()));
        row(
                PHRASES.say("meat"),
                PHRASES.say("meat."
                        + result.verdict()
                                .rule()
                                .meat()
                                .name()
                                .toLowerCase(Locale.ROOT)
                                .replace('_', '-')));
        row(PHRASES.say("salted"), result.verdict().rule().salted() ? PHRASES.say("yes") : PHRASES.say("not-stated"));
        row(
                PHRASES.say("vulnerable-guests"),
                result.verdict().rule().vulnerableGuests() ? PHRASES.say("yes") : PHRASES.say("no"));
        row(PHRASES.say("thermometer"), measured.probe().describe());
        row(PHRASES.say("place-of-the-tip"), measured.placement().describe());
        row(
                PHRASES.say("log"),
                PHRASES.say(
                        "rows-probes",
                        name,
                        result.reading().rows(),
                        String.join(", ", result.reading().probes())));
        row(
                PHRASES.say("gaps"),
                PHRASES.say(
                        "longest-time-between-rows",
                        measured.gaps(),
                        LethalityText.duration(measured.longestInterval())));
        row(PHRASES.say("sha-256-of-the-log"), result.reading().sha256());
        row(PHRASES.say("program"), "saltfront " + result.version());
        out.append("</table>\n");
    }

    private void method(LethalityResult result) {
        MeasuredRecord measured = result.measured();
        out.append("<h2>" + PHRASES.say("method") + "</h2><p>")
                .append(escape(PHRASES.say(
                        "share-of-the-hold-sum",
                        Temperature.toCelsius(result.table().lowestTemperature()),
                        measured.responseTime(),
                        measured.longestGap())))
                .append("</p>\n");
    }

    private void rest(LethalityResult result) {
        out.append("<h2>" + PHRASES.say("beside-the-verdict") + "</h2><ul>");
        for (LimitCheck limit : result.limits()) {
            item(limit.text());
        }
        result.information().forEach(line -> item(PHRASES.say("for-information", line)));
        result.reading().notes().forEach(this::item);
        for (LogProblem problem : result.reading().problems()) {
            item(PHRASES.say("log-2", problem.describe()));
        }
        out.append("</ul><h2>" + PHRASES.say("cautions") + "</h2><ul>");
        for (Caution caution : result.cautions()) {
            item(caution.text());
        }
        out.append("</ul>\n");
    }

    private void item(String text) {
        out.append("<li>").append(escape(text)).append("</li>");
    }

    private void row(String label, String value) {
        out.append("<tr><th scope=\"row\">")
                .append(escape(label))
                .append("</th><td>")
                .append(escape(value))
                .append("</td></tr>");
    }

    /** Makes a text harmless inside a page. */
    static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
