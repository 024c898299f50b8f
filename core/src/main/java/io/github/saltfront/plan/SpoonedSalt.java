package io.github.saltfront.plan;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Measure;
import io.github.saltfront.catalog.Measure.UnitSystem;
import io.github.saltfront.catalog.SaltForm;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Checks;
import java.util.Locale;

/**
 * A mass of salt in level cups and spoons, and what these hold in truth. A scale comes first; the spoon's band shows what it
 * costs to go without.
 *
 * @param wanted salt asked for [kg]
 * @param system whose spoons
 * @param quarterCups quarter cups
 * @param tablespoons tablespoons
 * @param eighthTeaspoons eighths of a teaspoon
 * @param volume volume of them all [m3]
 * @param mass what they hold, with the spread of the grain [kg]
 */
public record SpoonedSalt(
        double wanted,
        UnitSystem system,
        int quarterCups,
        int tablespoons,
        int eighthTeaspoons,
        double volume,
        Band mass) {
    /** Checks the counts. */
    public SpoonedSalt {
        Checks.requireInRange("salt asked for", wanted, 0, 1000, "kg");
        Checks.require(
                quarterCups >= 0 && tablespoons >= 0 && eighthTeaspoons >= 0,
                "counts of spoons must not be negative, got " + quarterCups + ", " + tablespoons + " and "
                        + eighthTeaspoons + ".");
    }

    /**
     * Returns the spoons nearest to a mass: to an eighth of a teaspoon below one teaspoon, to a quarter above.
     *
     * @param wanted salt asked for [kg], not negative
     * @param form the grain
     * @param system whose spoons
     * @param catalog where the spoons are listed
     * @return the spoons
     */
    public static SpoonedSalt of(double wanted, SaltForm form, UnitSystem system, Catalog catalog) {
        double teaspoon = volume(catalog, system, "teaspoon");
        double tablespoon = volume(catalog, system, "tablespoon");
        double quarterCup = volume(catalog, system, "cup") / 4;
        double left = form.volumeOf(wanted);
        double step = left < teaspoon ? teaspoon / 8 : teaspoon / 4;
        // half a step of slack, so that 3.99 spoons are written as the next larger measure
        int cups = (int) Math.floor((left + step / 2) / quarterCup);
        left = Math.max(0, left - cups * quarterCup);
        int tables = (int) Math.floor((left + step / 2) / tablespoon);
        left = Math.max(0, left - tables * tablespoon);
        int eighths = (int) Math.round(left / step) * (int) Math.round(8 * step / teaspoon);
        double volume = cups * quarterCup + tables * tablespoon + eighths * teaspoon / 8;
        return new SpoonedSalt(
                wanted, system, cups, tables, eighths, volume, volume > 0 ? form.massOf(volume) : Band.exactly(0));
    }

    private static double volume(Catalog catalog, UnitSystem system, String measure) {
        Measure found = catalog.measures().get(system.name().toLowerCase(Locale.ROOT) + "-" + measure);
        return found.volume();
    }

    /** Returns how far the spoons can be below and above what was asked for, as shares of it [-]; exact for nothing. */
    public Band relativeError() {
        if (wanted == 0) {
            return Band.exactly(0);
        }
        return new Band(mass.low() / wanted - 1, mass.typical() / wanted - 1, mass.high() / wanted - 1);
    }
}
