package io.github.saltfront.app.export;

import io.github.saltfront.plan.Fronts;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;

/**
 * The picture of the two fronts as SVG: time to the right along the day, depth from the surface down to the middle; salt above,
 * temperature below it on the same clock; the stages as a band on top, kill and weight as lines at the foot. It stands by
 * itself: light background, no script, no request to any host.
 */
public final class FrontsSvg {
    private static final Phrases PHRASES = Phrases.of(FrontsSvg.class);

    /** Width of the picture [px]. */
    public static final int WIDTH = 960;

    /** Height of the picture [px]. */
    public static final int HEIGHT = 596;

    private static final double LEFT = 92;
    private static final double RIGHT = 846;
    private static final double BAND_TOP = 40;
    private static final double BAND_HEIGHT = 24;
    private static final double SALT_TOP = 72;
    private static final double HEAT_TOP = 234;
    private static final double FIELD_HEIGHT = 152;
    private static final double KILL_TOP = 400;
    private static final double WEIGHT_TOP = 476;
    private static final double LINE_HEIGHT = 62;
    private static final double AXIS = 552;

    private static final int LEVELS = 96;
    private static final double HOTTEST_C = 100;
    private static final double[] SALT_SCALES = {0.01, 0.02, 0.03, 0.05, 0.1, 0.3};
    private static final double[] ISOTHERMS_C = {20, 40, 60, 80};
    private static final double[] ISOHALINES = {0.0025, 0.005, 0.01, 0.02, 0.04, 0.08};
    /** Share of all salt values that the scale takes in [-]. */
    private static final double SHOWN = 0.9;

    private static final double SHORTEST_LINE = 24;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private final Fronts fronts;
    private final FrontsScale scale;
    private final double saltTop;
    private final StringBuilder out = new StringBuilder();

    private FrontsSvg(Fronts fronts) {
        this.fronts = fronts;
        scale = FrontsScale.of(fronts, LEFT, RIGHT);
        saltTop = saltTop(fronts);
    }

    /**
     * Draws the fronts.
     *
     * @param fronts the fronts
     * @return an SVG document
     */
    public static String of(Fronts fronts) {
        return new FrontsSvg(fronts).draw();
    }

    /** The smallest of some round scales that leaves only the outermost salt out. */
    private static double saltTop(Fronts fronts) {
        double[] all = new double[fronts.size() * fronts.depths().length];
        int count = 0;
        for (int i = 0; i < fronts.size(); i++) {
            for (double salt : fronts.salts(i)) {
                all[count++] = salt;
            }
        }
        Arrays.sort(all);
        double high = all[(int) (SHOWN * (all.length - 1))];
        for (double top : SALT_SCALES) {
            if (high <= top) {
                return top;
            }
        }
        return SALT_SCALES[SALT_SCALES.length - 1];
    }

    private String draw() {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 %d %d\""
                        + " width=\"%d\" height=\"%d\" role=\"img\" font-family=\"Helvetica, Arial, sans-serif\" font-size=\"13\""
                        + " fill=\"#1b1b1b\">\n",
                WIDTH, HEIGHT, WIDTH, HEIGHT);
        add("<title>%s</title>\n<desc>%s</desc>\n", escape(title()), escape(describe(fronts)));
        add("<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>\n", WIDTH, HEIGHT);
        add("<text x=\"%.0f\" y=\"22\" font-size=\"16\" font-weight=\"bold\">%s</text>\n", LEFT, escape(title()));
        bands();
        double hottest = Temperature.fromCelsius(HOTTEST_C);
        double coldest = Temperature.fromCelsius(0);
        field(fronts::salts, SALT_TOP, ColorScale.SALT, 0, saltTop);
        lines(fronts::salts, SALT_TOP, ISOHALINES, 100, 0, " %", saltTop);
        field(fronts::temperatures, HEAT_TOP, ColorScale.HEAT, coldest, hottest);
        double[] isotherms =
                Arrays.stream(ISOTHERMS_C).map(Temperature::fromCelsius).toArray();
        lines(fronts::temperatures, HEAT_TOP, isotherms, 1, -Temperature.ZERO_CELSIUS, " °C", hottest);
        depthAxis(SALT_TOP, PHRASES.say("salt"));
        depthAxis(HEAT_TOP, PHRASES.say("heat"));
        key(SALT_TOP, ColorScale.SALT, "0 %", PHRASES.say("or-more", percent(saltTop)));
        key(HEAT_TOP, ColorScale.HEAT, "0 °C", PHRASES.say("100-c-or-more"));
        kill();
        weight();
        timeAxis();
        add("</svg>\n");
        return out.toString();
    }

    private String title() {
        return PHRASES.say(
                "thick-salt-and-heat-on",
                fronts.plan().request().food().meat().name(),
                QuantityFormat.length(2 * fronts.plan().request().food().shape().halfThickness(), KitchenUnits.METRIC));
    }

    /**
     * Says in words what the picture shows, for those who do not see it.
     *
     * @param fronts the fronts
     * @return some sentences
     */
    static String describe(Fronts fronts) {
        int last = fronts.size() - 1;
        double[] depths = fronts.depths();
        int middle = fronts.isTwoFaced() ? depths.length / 2 : depths.length - 1;
        double[] salts = fronts.salts(last);
        StringBuilder words =
                new StringBuilder(PHRASES.say("when-it-is-served-the", 100 * salts[0], 100 * salts[middle]));
        double peak = Double.NEGATIVE_INFINITY;
        int enough = -1;
        for (int i = 0; i <= last; i++) {
            peak = Math.max(peak, fronts.temperatures(i)[middle]);
            enough = enough < 0 && fronts.killShare(i) >= 1 ? i : enough;
        }
        words.append(PHRASES.say("the-middle-comes-to-c", Temperature.toCelsius(peak)));
        words.append(
                enough < 0
                        ? PHRASES.say("the-required-kill-is-not")
                        : PHRASES.say(
                                "the-required-kill-is-reached", CLOCK.format(clock(fronts, fronts.time(enough)))));
        words.append(PHRASES.say("it-ends-at-of-its", 100 * fronts.weight(last)));
        return words.toString();
    }

    private static ZonedDateTime clock(Fronts fronts, double time) {
        for (Fronts.Span span : fronts.spans()) {
            if (time <= span.end()) {
                return span.clock().plusSeconds(Math.round(time - span.start()));
            }
        }
        throw new AssertionError("no stage at " + time + " s");
    }

    private void bands() {
        for (Fronts.Span span : fronts.spans()) {
            double left = scale.x(span.start() + 1e-6 * (span.end() - span.start()));
            double right = scale.x(span.end());
            boolean hot = span.kind().startsWith("heat");
            add(
                    "<rect x=\"%.1f\" y=\"%.0f\" width=\"%.1f\" height=\"%.0f\" fill=\"%s\" stroke=\"#1b1b1b\"/>\n",
                    left, BAND_TOP, Math.max(1, right - left), BAND_HEIGHT, hot ? "#d9d9d9" : "#f5f5f5");
            String words = bandWords(span);
            boolean fits = right - left > 7.2 * words.length() + 8;
            String shown = fits ? words : PHRASES.find("kind." + span.kind()).orElse(span.kind());
            if (right - left > 7.2 * shown.length()) {
                add(
                        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%s</text>\n",
                        0.5 * (left + right), BAND_TOP + 17, escape(shown));
            }
        }
    }

    private String bandWords(Fronts.Span span) {
        String length = QuantityFormat.time(60 * Math.rint((span.end() - span.start()) / 60));
        return switch (span.kind()) {
            case "soak" -> PHRASES.say("in-the-bath", length);
            case "dry-salt" -> PHRASES.say("salted-refrigerator", length);
            case "heat" ->
                Phrases.within(fronts.plan().request().cook().appliance().name()) + ", " + length;
            case "heat-before" -> PHRASES.say("first-heat", length);
            case "heat-after" -> PHRASES.say("last-heat", length);
            case "rest" -> PHRASES.say("rest", length);
            default -> span.kind() + ", " + length;
        };
    }

    private void field(IntFunction<double[]> of, double top, ColorScale colors, double low, double high) {
        for (FrontsScale.Part part : scale.parts()) {
            int columns = Math.max(2, (int) Math.rint(part.right() - part.left()));
            FrontsField field = FrontsField.of(fronts, of, part, columns, (int) FIELD_HEIGHT);
            add(
                    "<image x=\"%.1f\" y=\"%.0f\" width=\"%.1f\" height=\"%.0f\" preserveAspectRatio=\"none\" xlink:href=\"%s\"/>\n",
                    part.left(),
                    top,
                    part.right() - part.left(),
                    FIELD_HEIGHT,
                    PalettePng.dataAddress(field.shares(low, high), colors, LEVELS));
            add(
                    "<rect x=\"%.1f\" y=\"%.0f\" width=\"%.1f\" height=\"%.0f\" fill=\"none\" stroke=\"#1b1b1b\"/>\n",
                    part.left(), top, part.right() - part.left(), FIELD_HEIGHT);
        }
    }

    private void lines(
            IntFunction<double[]> of,
            double top,
            double[] values,
            double factor,
            double offset,
            String unit,
            double most) {
        for (FrontsScale.Part part : scale.parts()) {
            int columns = Math.max(2, (int) Math.rint(part.right() - part.left()));
            FrontsField field = FrontsField.of(fronts, of, part, columns, (int) FIELD_HEIGHT);
            for (int i = 0; i < values.length; i++) {
                double value = values[i];
                double along = 0.75 - 0.1 * i;
                if (value < most) {
                    String label = QuantityFormat.significant(value * factor + offset, 2) + unit;
                    field.lines(value).forEach(line -> isoline(line, along, part.left(), top, label));
                }
            }
        }
    }

    private void isoline(List<FrontsField.Point> line, double along, double left, double top, String label) {
        double length = 0;
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < line.size(); i++) {
            FrontsField.Point p = line.get(i);
            points.append(String.format(Locale.ROOT, "%.1f,%.1f ", left + p.x(), top + p.y()));
            length += i > 0
                    ? Math.hypot(
                            p.x() - line.get(i - 1).x(), p.y() - line.get(i - 1).y())
                    : 0;
        }
        if (length < SHORTEST_LINE) {
            return;
        }
        // light under dark, to be seen on both ends of the scale
        add(
                "<polyline points=\"%s\" fill=\"none\" stroke=\"#ffffff\" stroke-opacity=\"0.7\" stroke-width=\"2.6\"/>",
                points);
        add("<polyline points=\"%s\" fill=\"none\" stroke=\"#1b1b1b\" stroke-width=\"1\"/>\n", points);
        FrontsField.Point at = line.get((int) (along * (line.size() - 1)));
        double x = Math.max(left + 16, Math.min(RIGHT - 22, left + at.x()));
        double y = Math.max(top + 12, Math.min(top + FIELD_HEIGHT - 4, top + at.y() + 4));
        add(
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"11\" stroke=\"#ffffff\" stroke-width=\"3\""
                        + " stroke-linejoin=\"round\">%s</text>",
                x, y, label);
        add("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"11\">%s</text>\n", x, y, label);
    }

    private void depthAxis(double top, String name) {
        double bottom = top + FIELD_HEIGHT;
        String end = fronts.isTwoFaced() ? PHRASES.say("other-face") : PHRASES.say("middle");
        add("<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"end\">%s</text>", LEFT - 8, top + 11, PHRASES.say("surface"));
        add("<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"end\">%s</text>", LEFT - 8, bottom - 2, end);
        add(
                "<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"end\" font-size=\"11\">%s</text>",
                LEFT - 8, bottom - 16, PHRASES.say("deep", 1000 * fronts.depth()));
        add(
                "<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"end\" font-weight=\"bold\">%s</text>\n",
                LEFT - 8, 0.5 * (top + bottom) + 4, name);
    }

    private void key(double top, ColorScale colors, String low, String high) {
        double x = RIGHT + 14;
        int steps = 24;
        double height = FIELD_HEIGHT - 34;
        for (int i = 0; i < steps; i++) {
            add(
                    "<rect x=\"%.0f\" y=\"%.2f\" width=\"14\" height=\"%.2f\" fill=\"#%06x\"/>",
                    x, top + 17 + height * i / steps, height / steps + 0.4, colors.at(1 - (i + 0.5) / steps));
        }
        add(
                "<rect x=\"%.0f\" y=\"%.0f\" width=\"14\" height=\"%.0f\" fill=\"none\" stroke=\"#1b1b1b\"/>",
                x, top + 17, height);
        add("<text x=\"%.0f\" y=\"%.0f\" font-size=\"11\">%s</text>", x, top + 11, high);
        add("<text x=\"%.0f\" y=\"%.0f\" font-size=\"11\">%s</text>\n", x, top + FIELD_HEIGHT - 4, low);
    }

    private void kill() {
        frame(KILL_TOP, PHRASES.say("kill"), PHRASES.say("worst-place"));
        double top = 1.25;
        double enough = KILL_TOP + LINE_HEIGHT * (1 - 1 / top);
        add(
                "<line x1=\"%.0f\" x2=\"%.0f\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#1b1b1b\" stroke-dasharray=\"2 3\"/>",
                LEFT, RIGHT, enough, enough);
        add("<text x=\"%.0f\" y=\"%.1f\" font-size=\"11\">%s</text>\n", RIGHT + 6, enough + 4, PHRASES.say("enough"));
        curve(fronts::killShare, KILL_TOP, 0, top, "");
    }

    private void weight() {
        double low = 1;
        double high = 1;
        for (int i = 0; i < fronts.size(); i++) {
            low = Math.min(low, fronts.weight(i));
            high = Math.max(high, fronts.weight(i));
        }
        low = Math.floor(low * 20 - 0.2) / 20;
        high = Math.ceil(high * 20 + 0.2) / 20;
        frame(WEIGHT_TOP, PHRASES.say("weight"), PHRASES.say("of-raw"));
        add("<text x=\"%.0f\" y=\"%.0f\" font-size=\"11\">%.0f %%</text>", RIGHT + 6, WEIGHT_TOP + 10, 100 * high);
        add(
                "<text x=\"%.0f\" y=\"%.0f\" font-size=\"11\">%.0f %%</text>\n",
                RIGHT + 6, WEIGHT_TOP + LINE_HEIGHT, 100 * low);
        curve(fronts::weight, WEIGHT_TOP, low, high, " stroke-dasharray=\"8 3\"");
    }

    private void frame(double top, String name, String under) {
        for (FrontsScale.Part part : scale.parts()) {
            add(
                    "<rect x=\"%.1f\" y=\"%.0f\" width=\"%.1f\" height=\"%.0f\" fill=\"none\" stroke=\"#8a8a8a\"/>",
                    part.left(), top, part.right() - part.left(), LINE_HEIGHT);
        }
        add("<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"end\" font-weight=\"bold\">%s</text>", LEFT - 8, top + 28, name);
        add("<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"end\" font-size=\"11\">%s</text>\n", LEFT - 8, top + 43, under);
    }

    private void curve(IntToDoubleFunction of, double top, double low, double high, String dash) {
        for (FrontsScale.Part part : scale.parts()) {
            StringBuilder points = new StringBuilder();
            for (int i = 0; i < fronts.size(); i++) {
                double time = fronts.time(i);
                if (time >= part.start() - 1e-6 && time <= part.end() + 1e-6) {
                    double share = Math.min(1, Math.max(0, (of.applyAsDouble(i) - low) / (high - low)));
                    points.append(
                            String.format(Locale.ROOT, "%.1f,%.1f ", part.x(time), top + LINE_HEIGHT * (1 - share)));
                }
            }
            add("<polyline points=\"%s\" fill=\"none\" stroke=\"#1b1b1b\" stroke-width=\"2.4\"%s/>\n", points, dash);
        }
    }

    private void timeAxis() {
        for (FrontsScale.Tick tick : scale.ticks()) {
            add(
                    "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"%.0f\" y2=\"%.0f\" stroke=\"#1b1b1b\"/>",
                    tick.x(), tick.x(), WEIGHT_TOP + LINE_HEIGHT, WEIGHT_TOP + LINE_HEIGHT + 5);
            add(
                    "<text x=\"%.1f\" y=\"%.0f\" text-anchor=\"middle\" font-size=\"12\">%s</text>",
                    tick.x(), AXIS + 2, tick.words());
            if (!tick.day().isEmpty()) {
                add(
                        "<text x=\"%.1f\" y=\"%.0f\" text-anchor=\"middle\" font-size=\"12\">%s</text>",
                        tick.x(), AXIS + 17, tick.day());
            }
        }
        if (scale.parts().size() > 1) {
            add("<text x=\"%.0f\" y=\"%.0f\" font-size=\"11\">%s</text>", LEFT, AXIS + 36, PHRASES.say("the-gap"));
        }
        add("\n");
    }

    private static String percent(double fraction) {
        return QuantityFormat.percent(fraction);
    }

    private static String escape(String text) {
        return LethalityPage.escape(text);
    }

    private void add(String form, Object... values) {
        out.append(values.length == 0 ? form : String.format(Locale.ROOT, form, values));
    }
}
