package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;

/**
 * Proximate composition of meat as mass fractions of the wet mass that sum to one. Ash holds all minerals, native salt
 * included.
 *
 * @param water mass fraction of water [kg/kg]
 * @param protein mass fraction of protein [kg/kg]
 * @param fat mass fraction of fat [kg/kg]
 * @param carbohydrate mass fraction of carbohydrate [kg/kg]
 * @param ash mass fraction of ash [kg/kg]
 */
public record Composition(double water, double protein, double fat, double carbohydrate, double ash) {
    /** Lowest sum of a printed composition that {@link #ofPrinted} accepts [kg/kg]. */
    public static final double LOWEST_PRINTED_SUM = 0.97;

    /** Highest sum of a printed composition that {@link #ofPrinted} accepts [kg/kg]. */
    public static final double HIGHEST_PRINTED_SUM = 1.03;

    private static final double ROUNDING = 1e-9;

    /**
     * Checks the fractions.
     *
     * @throws IllegalArgumentException if a fraction is NaN or outside 0 to 1, or if they do not sum to one within 1e-9
     */
    public Composition {
        Checks.requireInRange("water fraction", water, 0, 1, "kg/kg");
        Checks.requireInRange("protein fraction", protein, 0, 1, "kg/kg");
        Checks.requireInRange("fat fraction", fat, 0, 1, "kg/kg");
        Checks.requireInRange("carbohydrate fraction", carbohydrate, 0, 1, "kg/kg");
        Checks.requireInRange("ash fraction", ash, 0, 1, "kg/kg");
        double sum = water + protein + fat + carbohydrate + ash;
        Checks.require(
                Math.abs(sum - 1) <= ROUNDING,
                "composition must sum to 1, got " + sum + "; use Composition.ofPrinted for rounded table values.");
    }

    /**
     * Returns a composition from table values, divided by their sum. Printed compositions rarely sum to one: they are
     * rounded, and the analyses are independent.
     *
     * @param water mass fraction of water as printed [kg/kg]
     * @param protein mass fraction of protein as printed [kg/kg]
     * @param fat mass fraction of fat as printed [kg/kg]
     * @param carbohydrate mass fraction of carbohydrate as printed [kg/kg]
     * @param ash mass fraction of ash as printed [kg/kg]
     * @return the composition, summing to one
     * @throws IllegalArgumentException if the sum is outside {@link #LOWEST_PRINTED_SUM} to
     *     {@link #HIGHEST_PRINTED_SUM} or a fraction is negative or NaN
     */
    public static Composition ofPrinted(double water, double protein, double fat, double carbohydrate, double ash) {
        double sum = water + protein + fat + carbohydrate + ash;
        Checks.requireInRange("sum of the printed composition", sum, LOWEST_PRINTED_SUM, HIGHEST_PRINTED_SUM, "kg/kg");
        return new Composition(water / sum, protein / sum, fat / sum, carbohydrate / sum, ash / sum);
    }

    /**
     * Returns the composition of everything but the water.
     *
     * @return the dry matter, per kg of itself
     * @throws IllegalArgumentException if there is nothing but water
     */
    public DryMatter dryMatter() {
        double solids = protein + fat + carbohydrate + ash;
        Checks.require(solids > 0, "composition must hold dry matter, got water fraction " + water + ".");
        return new DryMatter(protein / solids, fat / solids, carbohydrate / solids, ash / solids);
    }

    /**
     * Returns the water per mass of dry matter [kg/kg].
     *
     * @throws IllegalArgumentException if there is nothing but water
     */
    public double waterPerSolids() {
        double solids = protein + fat + carbohydrate + ash;
        Checks.require(solids > 0, "composition must hold dry matter, got water fraction " + water + ".");
        return water / solids;
    }
}
