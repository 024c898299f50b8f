package io.github.saltfront.app.cli;

import io.github.saltfront.plan.BrineOrder;
import io.github.saltfront.plan.BrineSheet;
import io.github.saltfront.plan.HandlingCaution;
import io.github.saltfront.plan.Mending;
import io.github.saltfront.plan.SoakWindow;
import io.github.saltfront.plan.SoakWindow.Speed;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityException;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.QuantityParser;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads {@code --mend} and writes what can be done. */
final class BrineMending {
    private static final double HOUR = 3600;
    private static final double[] TIMES = {0.5, 1, 2, 4, 8, 24};
    private static final String FORM =
            "--mend must be the salt the meat holds now such as \"1.8 %\", or the time it lay in"
                    + " the bath of --strength such as \"20 h\"";

    private BrineMending() {}

    /** What is to be mended: the order's bath is the one it lay in, or only says how much plain water there is. */
    static Mending of(BrineOrder order, String text) {
        double water = order.mix().liquidMass();
        return new Mending(order.food(), present(order, text), order.levels(), water, order.temperature());
    }

    private static Band present(BrineOrder order, String text) {
        if (text.contains("%")) {
            double salt = QuantityParser.parse(text, Dimension.FRACTION);
            if (!(salt >= 0 && salt <= 0.1)) {
                throw new IllegalArgumentException(FORM + "; salt from 0 to 10 %, got \"" + text + "\".");
            }
            return Band.exactly(salt);
        }
        double time;
        try {
            time = QuantityParser.parse(text, Dimension.TIME);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(FORM + ", got \"" + text + "\".", e);
        }
        if (!(time > 0 && time <= BrineSheet.LONGEST) || !(order.goal() instanceof BrineOrder.Strength)) {
            throw new IllegalArgumentException(FORM + ", up to 48 h and with --strength, got \"" + text + "\".");
        }
        SoakWindow window = BrineSheet.of(order).window();
        return new Band(
                window.meanSalt(Speed.SLOW, time),
                window.meanSalt(Speed.MEDIAN, time),
                window.meanSalt(Speed.FAST, time));
    }

    static String text(Mending mending) {
        StringBuilder text = new StringBuilder();
        Band present = mending.present();
        boolean exact = present.high() - present.low() < 1e-9;
        paragraph(
                text,
                mending.food().name() + ", " + mass(mending.food().edibleMass()) + " of edible meat, holds "
                        + percent(present.typical())
                        + (exact ? "" : " (" + percent(present.low()) + " to " + percent(present.high()) + ")")
                        + " salt; wanted are " + percent(mending.levels().typical()) + ", "
                        + percent(mending.levels().low()) + " to "
                        + percent(mending.levels().high()) + " taste right.");
        switch (mending.verdict()) {
            case LEAVE ->
                paragraph(
                        text,
                        "Leave it: it is within what tastes right. Serve it with something unsalted, or salt at"
                                + " the table.");
            case FINISH -> finish(text, mending, exact);
            case SOAK_OUT -> soakOut(text, mending);
        }
        return text.toString();
    }

    private static void finish(StringBuilder text, Mending mending, boolean exact) {
        Band salt = mending.finish();
        paragraph(
                text,
                "Too mild: put " + mass(salt.typical())
                        + (exact ? "" : " (" + mass(salt.low()) + " to " + mass(salt.high()) + ")")
                        + " of salt on the surface, just before the heat or 40 min and more ahead. A second bath is not worth it.");
    }

    private static void soakOut(StringBuilder text, Mending mending) {
        SoakWindow window = mending.soakOut().orElseThrow();
        paragraph(
                text,
                "Too salty: lay it in " + mass(mending.water()) + " of plain cold water, in the refrigerator. Mean salt"
                        + " after (middle; in brackets for fast and for slow meat):");
        for (double hours : TIMES) {
            double time = hours * HOUR;
            text.append(String.format(
                    Locale.ROOT,
                    "  %-10s %s (%s to %s), %s out%n",
                    QuantityFormat.time(time),
                    percent(window.meanSalt(Speed.MEDIAN, time)),
                    percent(window.meanSalt(Speed.FAST, time)),
                    percent(window.meanSalt(Speed.SLOW, time)),
                    mass(out(mending, window, time))));
        }
        paragraph(
                text,
                "No longer too salty after " + time(window.latest().median()) + " ("
                        + time(window.latest().earliest())
                        + " to " + time(window.latest().latest()) + "). In this water it cannot fall below "
                        + percent(mending.end()) + "; fresh water takes more out.");
        paragraph(
                text,
                "Salt is taken as even through the piece: after a short brine most of it is near the face and leaves faster, so"
                        + " take the early end and taste a cooked slice. The meat takes up water and tastes flatter outside than"
                        + " inside. Or do not soak: slice it thin and serve it with an unsalted sauce, rice or potatoes.");
        for (HandlingCaution caution : Mending.cautions()) {
            text.append(BrineText.wrapped(caution.text(), "- ", "  ")).append('\n');
        }
    }

    /** Salt that has left the meat, per its mass before; swelling is small against the band. */
    private static double out(Mending mending, SoakWindow window, double time) {
        return mending.food().edibleMass() * (mending.present().typical() - window.meanSalt(Speed.MEDIAN, time));
    }

    static String json(Mending mending, String version) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("schema", "saltfront-mend-1");
        root.put("version", version);
        root.put("meat", mending.food().name());
        root.put("edible_mass_kg", mending.food().edibleMass());
        root.put("verdict", mending.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        root.put("present_salt_pct", band(mending.present(), 100));
        root.put("levels_pct", band(mending.levels(), 100));
        root.put("finish_g", band(mending.finish(), 1000));
        mending.soakOut().ifPresent(window -> {
            root.put("water_kg", mending.water());
            root.put("left_for_good_pct", 100 * mending.end());
            Map<String, Object> right = new LinkedHashMap<>();
            put(right, "earliest_s", window.latest().earliest());
            put(right, "median_s", window.latest().median());
            put(right, "latest_s", window.latest().latest());
            root.put("no_longer_too_salty", right);
            root.put("longest_s", BrineSheet.LONGEST);
        });
        return Json.text(root);
    }

    private static void put(Map<String, Object> node, String name, OptionalDouble value) {
        if (value.isPresent()) {
            node.put(name, value.getAsDouble());
        }
    }

    private static Map<String, Double> band(Band band, double factor) {
        Map<String, Double> node = new LinkedHashMap<>();
        node.put("low", factor * band.low());
        node.put("median", factor * band.typical());
        node.put("high", factor * band.high());
        return node;
    }

    private static String time(OptionalDouble seconds) {
        return seconds.isPresent() ? QuantityFormat.time(60 * Math.rint(seconds.getAsDouble() / 60)) : "over 2 d";
    }

    private static void paragraph(StringBuilder text, String words) {
        text.append(BrineText.wrapped(words, "", "")).append('\n');
    }

    private static String mass(double kilograms) {
        return QuantityFormat.mass(kilograms, KitchenUnits.METRIC);
    }

    private static String percent(double fraction) {
        return QuantityFormat.percent(fraction);
    }
}
