package io.github.saltfront.app.export;

import io.github.saltfront.app.probe.LogProblem;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.MeasuredVerdict;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.units.Temperature;
import java.util.Locale;

/** Writes a result as a page of its own, without scripts and without a request to any host, to be kept and checked again. */
public final class LethalityPage {
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
        out.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">")
                .append("<title>Cooking record: ")
                .append(escape(name))
                .append("</title><style>")
                .append(":root{color-scheme:light dark}body{font:1rem/1.5 system-ui,sans-serif;margin:0}")
                .append("main{max-width:46rem;margin:auto;padding:1rem}table{border-collapse:collapse;width:100%}")
                .append("th,td{text-align:left;vertical-align:top;padding:.2rem .6rem .2rem 0;overflow-wrap:anywhere}")
                .append(
                        "th{width:11rem;font-weight:600}svg{width:100%;height:auto}.verdict{font-size:1.3rem;font-weight:600}")
                .append("</style></head><body><main>\n<h1>Cooking record</h1>\n");
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
                "<svg viewBox=\"0 0 %d %d\" role=\"img\" aria-label=\"Temperature over %s: reading and lower bound\">",
                WIDTH,
                HEIGHT,
                LethalityText.duration(span)));
        line(minimum.temperature(), top, bottom, "official minimum " + minimum.describe());
        polyline(measured, null, start, span, top, bottom, "1");
        polyline(measured, lower, start, span, top, bottom, "2.5");
        out.append(
                        "</svg><p>Thin line: reading. Thick line: lower bound at the coldest spot, which the verdict uses. Time runs ")
                .append(LethalityText.duration(span))
                .append(" to the right.</p>\n");
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
        out.append("<h2>Record</h2><table>");
        row("Official minimum", result.consumerMinimumText() + " (" + ConsumerMinimum.EDITION + ")");
        row("Share of the hold", result.shareText());
        row("Decades killed", result.logReductionText());
        result.completeAfter().ifPresent(after -> row("Complete after", LethalityText.duration(after)));
        row("Table", result.table().title() + ". " + result.table().edition());
        row("Food code", String.join("; ", result.verdict().rule().foodCodeMinimums()));
        row(
                "Meat",
                result.verdict().rule().meat().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        row("Salted", result.verdict().rule().salted() ? "yes" : "not stated");
        row("Vulnerable guests", result.verdict().rule().vulnerableGuests() ? "yes" : "no");
        row("Thermometer", measured.probe().describe());
        row("Place of the tip", measured.placement().describe());
        row(
                "Log",
                name + ", " + result.reading().rows() + " rows, probes: "
                        + String.join(", ", result.reading().probes()));
        row(
                "Gaps",
                measured.gaps() + " (longest time between rows " + LethalityText.duration(measured.longestInterval())
                        + ")");
        row("SHA-256 of the log", result.reading().sha256());
        row("Program", "saltfront " + result.version());
        out.append("</table>\n");
    }

    private void method(LethalityResult result) {
        MeasuredRecord measured = result.measured();
        out.append("<h2>Method</h2><p>")
                .append(escape(String.format(
                        Locale.ROOT,
                        "Share of the hold = sum of dt / hold(T). log10 of the hold is linear between the printed rows of whole"
                                + " degrees Fahrenheit; nothing is credited below %.1f °C, and above the last timed row its time is"
                                + " kept. T is the reading less the error of the thermometer, less the distance from the coldest spot,"
                                + " and while it cools less what a probe with a response time of %.0f s lags. Stretches longer than"
                                + " %.0f s without a reading are credited nothing and start the hold again, as does a fall below"
                                + " 54.4 °C.",
                        Temperature.toCelsius(result.table().lowestTemperature()),
                        measured.responseTime(),
                        measured.longestGap())))
                .append("</p>\n");
    }

    private void rest(LethalityResult result) {
        out.append("<h2>Beside the verdict</h2><ul>");
        for (LimitCheck limit : result.limits()) {
            item(limit.text());
        }
        result.information().forEach(line -> item("For information: " + line));
        result.reading().notes().forEach(this::item);
        for (LogProblem problem : result.reading().problems()) {
            item("Log, " + problem.describe());
        }
        out.append("</ul><h2>Cautions</h2><ul>");
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
