package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Checks;

/**
 * Composition of the raw edible part, as analyzed. The five parts are separate analyses and add up to 0.99 to 1.025;
 * {@link #normalized} makes them add up to 1.
 *
 * @param water water [kg/kg]
 * @param protein protein [kg/kg]
 * @param fat fat [kg/kg]
 * @param carbohydrate carbohydrate [kg/kg]
 * @param ash ash, native salt included [kg/kg]
 * @param nativeSalt sodium as sodium chloride, already there before seasoning [kg/kg]
 * @param density density at 4 °C without air, by the mixing rule [kg/m3]
 */
public record CutComposition(
        double water, double protein, double fat, double carbohydrate, double ash, double nativeSalt, double density) {
    /** Checks that fractions lie in 0 to 1 and add up to about 1. */
    public CutComposition {
        Checks.requireInRange("water", water, 0, 1, "kg/kg");
        Checks.requireInRange("protein", protein, 0, 1, "kg/kg");
        Checks.requireInRange("fat", fat, 0, 1, "kg/kg");
        Checks.requireInRange("carbohydrate", carbohydrate, 0, 1, "kg/kg");
        Checks.requireInRange("ash", ash, 0, 1, "kg/kg");
        Checks.requireInRange("native salt", nativeSalt, 0, 0.1, "kg/kg");
        Checks.requireInRange("density", density, 900, 1200, "kg/m3");
        Checks.requireInRange(
                "sum of the composition", water + protein + fat + carbohydrate + ash, 0.98, 1.03, "kg/kg");
    }

    static CutComposition read(CsvTable.Row row) {
        return new CutComposition(
                Cells.percent(row, "water_pct"),
                Cells.percent(row, "protein_pct"),
                Cells.percent(row, "fat_pct"),
                Cells.percent(row, "carbohydrate_pct"),
                Cells.percent(row, "ash_pct"),
                Cells.percent(row, "native_salt_pct"),
                row.number("density_kg_m3"));
    }

    /** Returns the five parts scaled so that they add up to 1; native salt and density stay as they are. */
    public CutComposition normalized() {
        double sum = water + protein + fat + carbohydrate + ash;
        return new CutComposition(
                water / sum, protein / sum, fat / sum, carbohydrate / sum, ash / sum, nativeSalt, density);
    }
}
