package io.github.saltfront.validation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Predicted against measured as an SVG picture: one symbol for each source, the 90 % band as a line, and the line of agreement. */
final class ScatterPlot {
    private static final int SIZE = 420;
    private static final int LEFT = 60;
    private static final int TOP = 20;
    private static final int LEGEND = 190;
    private static final String[] COLORS = {"#1b6ca8", "#b5462c", "#2f7d4f", "#7a4ea3", "#8a6d1a", "#3f3f46", "#a83279"
    };

    private final String unit;
    private final double top;
    private final double grid;
    private final Map<String, Integer> symbols = new LinkedHashMap<>();
    private final List<String> marks = new ArrayList<>();

    ScatterPlot(String unit, double top, double grid) {
        this.unit = unit;
        this.top = top;
        this.grid = grid;
    }

    void add(String source, double measured, double low, double median, double high) {
        int symbol = symbols.computeIfAbsent(source, s -> symbols.size());
        double x = x(measured);
        marks.add(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-opacity=\"0.4\"/>",
                x,
                y(low),
                x,
                y(high),
                color(symbol)));
        marks.add(symbol(symbol, x, y(median)));
    }

    private double x(double value) {
        return LEFT + SIZE * Math.min(1, value / top);
    }

    private double y(double value) {
        return TOP + SIZE * (1 - Math.min(1, value / top));
    }

    private static String color(int symbol) {
        return COLORS[symbol % COLORS.length];
    }

    private static String symbol(int kind, double x, double y) {
        String form = switch (kind % 4) {
            case 0 -> "<circle cx=\"%1$.1f\" cy=\"%2$.1f\" r=\"4\" fill=\"%3$s\"/>";
            case 1 -> "<rect x=\"%4$.1f\" y=\"%5$.1f\" width=\"8\" height=\"8\" fill=\"%3$s\"/>";
            case 2 -> "<path d=\"M%1$.1f %5$.1f l4.5 8 h-9 z\" fill=\"%3$s\"/>";
            default ->
                "<path d=\"M%1$.1f %5$.1f l4 4 l-4 4 l-4 -4 z\" fill=\"none\" stroke=\"%3$s\" stroke-width=\"2\"/>";
        };
        return String.format(Locale.ROOT, form, x, y, color(kind), x - 4, y - 4);
    }

    String svg(String title) {
        StringBuilder svg = new StringBuilder();
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"12\""
                        + " role=\"img\" aria-label=\"%s\">\n<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>\n",
                LEFT + SIZE + LEGEND,
                TOP + SIZE + 50,
                title));
        for (double v = 0; v <= top + 1e-9; v += grid) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%.1f %d v%d M%d %.1f h%d\" stroke=\"#ddd\" fill=\"none\"/>"
                            + "<text x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%.0f</text>"
                            + "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\">%.0f</text>%n",
                    x(v),
                    TOP,
                    SIZE,
                    LEFT,
                    y(v),
                    SIZE,
                    x(v),
                    TOP + SIZE + 16,
                    v,
                    LEFT - 6,
                    y(v) + 4,
                    v));
        }
        svg.append(String.format(
                Locale.ROOT,
                "<path d=\"M%.1f %.1f L%.1f %.1f\" stroke=\"#555\" stroke-dasharray=\"5 4\"/>%n",
                x(0),
                y(0),
                x(top),
                y(top)));
        marks.forEach(mark -> svg.append(mark).append('\n'));
        legend(svg);
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">measured, %s</text>%n"
                        + "<text transform=\"translate(16 %d) rotate(-90)\" text-anchor=\"middle\">predicted, %s</text>%n</svg>%n",
                LEFT + SIZE / 2,
                TOP + SIZE + 38,
                unit,
                TOP + SIZE / 2,
                unit));
        return svg.toString();
    }

    private void legend(StringBuilder svg) {
        int y = TOP + 14;
        for (Map.Entry<String, Integer> entry : symbols.entrySet()) {
            svg.append(symbol(entry.getValue(), LEFT + SIZE + 16, y - 4));
            svg.append(String.format(
                    Locale.ROOT, "<text x=\"%d\" y=\"%d\">%s</text>%n", LEFT + SIZE + 28, y, entry.getKey()));
            y += 18;
        }
    }
}
