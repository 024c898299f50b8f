package io.github.saltfront.app.cli;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.catalog.Measure.UnitSystem;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.AcidAdvice;
import io.github.saltfront.plan.Bath;
import io.github.saltfront.plan.BrineOrder;
import io.github.saltfront.plan.BrineSheet;
import io.github.saltfront.plan.SoakWindow;
import io.github.saltfront.plan.SoakWindow.Speed;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.plan.SpoonedSalt;
import io.github.saltfront.plan.StrengthBasis;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.SpoonSystem;
import io.github.saltfront.units.Temperature;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Writes a sheet for people, in lines of at most 72 columns. */
final class BrineText {
    private static final int WIDTH = 72;
    private static final int LABEL = 26;
    private static final double TABLE_TEMPERATURE = Temperature.fromCelsius(20);
    private static final double HOUR = 3600;
    private static final double[] TIMES = {1, 2, 4, 8, 12, 24, 48};
    private static final double MILLIGRAM = 1e-6;

    private final StringBuilder text = new StringBuilder();
    private final BrineSheet sheet;
    private final Catalog catalog;

    private BrineText(BrineSheet sheet, Catalog catalog) {
        this.sheet = sheet;
        this.catalog = catalog;
    }

    static String write(BrineSheet sheet, Catalog catalog) {
        BrineText writer = new BrineText(sheet, catalog);
        writer.mix();
        writer.strength();
        writer.time();
        writer.end();
        writer.table();
        writer.cautions();
        return writer.text.toString();
    }

    static String refused(String reason) {
        return wrapped("No brine: " + reason, "", "") + "\n";
    }

    private void mix() {
        Bath bath = sheet.bath();
        BrineOrder order = sheet.order();
        paragraph("Bath for " + mass(order.food().edibleMass()) + " of edible meat ("
                + order.food().name().toLowerCase(Locale.ROOT) + "), at "
                + BrineNumbers.both(order.temperature()));
        heading("Mix");
        Liquid liquid = order.mix().liquid();
        line(
                liquid.name(),
                mass(bath.liquidMass()) + " (" + mass(bath.liquidMass(), KitchenUnits.US) + ", "
                        + QuantityFormat.volume(bath.liquidMass() / liquid.density(), KitchenUnits.METRIC) + ")");
        sheet.iceFromTap()
                .ifPresent(
                        ice -> line(
                                "  of it as ice",
                                mass(ice)
                                        + ", if the tap gives 20 °C and the freezer -18 °C; let all melt before the meat goes in"));
        line("Salt, on a scale", mass(bath.addedSalt()) + " (" + mass(bath.addedSalt(), KitchenUnits.US) + ")");
        spoons(UnitSystem.US, SpoonSystem.US, "or US spoons, level");
        spoons(UnitSystem.METRIC, SpoonSystem.METRIC, "or metric spoons, level");
        if (bath.addedSugar() > 0) {
            line("Sugar", mass(bath.addedSugar()));
        }
        if (bath.liquidSalt() > 0) {
            line("Salt in the liquid", mass(bath.liquidSalt()) + ", counted in");
        }
        if (!bath.allergens().isEmpty()) {
            line(
                    "Allergens",
                    bath.allergens().stream()
                            .map(a -> a.name().toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(", ")));
        }
        if (sheet.isEquilibrium()) {
            paragraph("Equilibrium dose: so weak that the meat ends at "
                    + QuantityFormat.percent(order.levels().typical())
                    + " salt if left for good and can pass it by no more than the twentieth part, for the water it takes up. The shortcut \"target x (meat + water)\""
                    + " would put in " + mass(sheet.shortcutDose())
                    + " in all, counting meat solids as water and no native salt.");
        }
        order.food().label().reason().ifPresent(this::paragraph);
    }

    private void spoons(UnitSystem system, SpoonSystem written, String label) {
        SpoonedSalt spoons =
                SpoonedSalt.of(sheet.bath().addedSalt(), sheet.order().mix().salt(), system, catalog);
        Band error = spoons.relativeError();
        line(
                label,
                QuantityFormat.spoons(spoons.volume(), written)
                        + String.format(
                                Locale.ROOT, " (%+.0f to %+.0f %% salt)", 100 * error.low(), 100 * error.high()));
    }

    private void strength() {
        SaltStrength strength = sheet.bath().strength();
        heading("Strength, said in every way (volumes at 20 C)");
        line("Of the salted water", QuantityFormat.percent(strength.saltFraction()) + " by weight");
        line("Of the water alone", QuantityFormat.percent(strength.saltPerWater()) + " by weight");
        line("For each liter of water", grams(StrengthBasis.PER_LITER_OF_WATER, strength) + " salt");
        line("In each liter of brine", grams(StrengthBasis.PER_LITER_OF_BRINE, strength) + " salt");
        line(
                "Of what water can hold",
                QuantityFormat.percent(strength.saturationShare(sheet.order().temperature())) + " at "
                        + BrineNumbers.celsius(sheet.order().temperature()));
        line("Salometer at 60 F", QuantityFormat.significant(strength.salometer(), 3) + " degrees, if no sugar");
        line("Specific gravity at 60 F", String.format(Locale.ROOT, "%.4f, if no sugar", strength.specificGravity()));
        line("Of the whole bath", QuantityFormat.percent(sheet.bath().saltOfMass()) + " by weight, everything counted");
        if (sheet.bath().addedSugar() > 0) {
            paragraph("A hydrometer in this bath at "
                    + BrineNumbers.celsius(sheet.order().temperature())
                    + " shows specific gravity "
                    + String.format(Locale.ROOT, "%.4f", sheet.hydrometer().specificGravity())
                    + " and, read as salt, "
                    + QuantityFormat.percent(
                            sheet.hydrometer().apparentStrength().saltFraction())
                    + ": it cannot tell sugar from salt.");
        }
    }

    private String grams(StrengthBasis basis, SaltStrength strength) {
        return QuantityFormat.significant(basis.write(strength, TABLE_TEMPERATURE), 3) + " g";
    }

    private void time() {
        SoakWindow window = sheet.window();
        Band levels = window.levels();
        heading("Time in the bath (middle; in brackets 90 % band of salt speed)");
        crossing("Seasoned, " + QuantityFormat.percent(levels.low()), window.first());
        if (!sheet.isEquilibrium()) {
            crossing("Wanted, " + QuantityFormat.percent(levels.typical()), window.best());
            crossing("Too salty, " + QuantityFormat.percent(levels.high()), window.latest());
        }
        text.append('\n');
        line("Salt of the raw meat", "middle (90 % band), mean of the piece");
        for (double hours : TIMES) {
            line(
                    "  after " + QuantityFormat.time(hours * HOUR),
                    salt(window, Speed.MEDIAN, hours) + " (" + salt(window, Speed.SLOW, hours) + " to "
                            + salt(window, Speed.FAST, hours) + ")");
        }
        advice(window);
        paragraph(
                "Not in the band: thickness, outline and temperature of your piece. The thick end is less salty than the mean,"
                        + " the thin end more; a rest in the refrigerator evens it out.");
    }

    private void advice(SoakWindow window) {
        if (window.first().median().isEmpty()) {
            paragraph(
                    "Even the lowest level is not reached in two days, the longest a bath may stand: salt the surface dry"
                            + " instead, or cut the meat smaller.");
        } else if (!window.isWiderThanItsUncertainty()) {
            paragraph(
                    "No single time suits both slow and fast meat here: what is known of the speed of salt is wider than the"
                            + " window. "
                            + (sheet.isEquilibrium()
                                    ? "Leave the meat longer: this bath hardly over-salts it."
                                    : "A weaker bath or the equilibrium dose (--target without --strength) is the safer choice."));
        }
        if (sheet.order().food().hasSkin()) {
            paragraph(
                    "Skin with its fat holds salt back by an amount that was never measured for poultry; it is taken here as"
                            + " nearly closed, on every face. Cut faces and an open cavity let more in: expect more salt near them.");
        }
    }

    private static String salt(SoakWindow window, Speed speed, double hours) {
        return QuantityFormat.percent(window.meanSalt(speed, Math.min(hours * HOUR, BrineSheet.LONGEST)));
    }

    private void crossing(String label, SoakWindow.Crossing crossing) {
        line(
                label,
                time(crossing.median()) + " (" + time(crossing.earliest()) + " to " + time(crossing.latest()) + ")");
    }

    private static String time(OptionalDouble seconds) {
        return seconds.isPresent() ? QuantityFormat.time(60 * Math.rint(seconds.getAsDouble() / 60)) : "over 2 d";
    }

    private void end() {
        heading("If left for good (days to weeks in thick pieces)");
        line("Salt of the meat", QuantityFormat.percent(sheet.equilibrium().meatSaltFraction()) + " of its weight");
        line(
                "Strength of the bath",
                QuantityFormat.percent(sheet.equilibrium().bathSaltFraction()) + " of the salted water");
        Band gain = sheet.netGain();
        line(
                "Gain of lean meat",
                String.format(
                        Locale.ROOT,
                        "%+.0f %% of its weight (%+.0f to %+.0f)",
                        100 * gain.typical(),
                        100 * gain.low(),
                        100 * gain.high()));
        if (sheet.acid() != AcidAdvice.NONE) {
            paragraph(sheet.acid().words());
        }
    }

    private void table() {
        double sodium = sheet.servingSodium();
        heading("At the table, if the raw meat holds the wanted salt");
        line(
                "Sodium of 85 g cooked",
                QuantityFormat.significant(Sodium.declared(sodium) / MILLIGRAM, 4) + " mg, "
                        + Sodium.dailyValuePercent(sodium) + " % of the Daily Value");
        line(
                "Pan juices as they run",
                QuantityFormat.percent(sheet.panJuiceSalt()) + " salt: taste before salting a gravy");
    }

    private void cautions() {
        heading("Take care (your local food code comes first)");
        sheet.cautions().forEach(c -> text.append(wrapped(c.text(), "- ", "  ")).append('\n'));
    }

    private void heading(String words) {
        text.append('\n').append(words).append('\n');
    }

    private void line(String label, String value) {
        String left = String.format(Locale.ROOT, "  %-" + LABEL + "s", label);
        if (label.length() >= LABEL) {
            text.append(left).append('\n');
            left = " ".repeat(LABEL + 2);
        }
        text.append(wrapped(value, left, " ".repeat(LABEL + 2))).append('\n');
    }

    private void paragraph(String words) {
        text.append(wrapped(words, "", "")).append('\n');
    }

    private static String mass(double kilograms) {
        return mass(kilograms, KitchenUnits.METRIC);
    }

    private static String mass(double kilograms, KitchenUnits units) {
        return QuantityFormat.mass(kilograms, units);
    }

    /** Breaks at spaces; a word longer than a line stands alone. */
    static String wrapped(String words, String first, String rest) {
        StringBuilder lines = new StringBuilder();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : words.split(" ", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                lines.append(line).append('\n');
                line = new StringBuilder(rest);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        return lines.append(line).toString();
    }
}
