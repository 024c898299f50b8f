package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;

/**
 * What is left of meat without its water, as mass fractions that sum to one. Salt that is added later is not part of it;
 * the native minerals are (ash).
 *
 * @param protein mass fraction of protein [kg/kg]
 * @param fat mass fraction of fat [kg/kg]
 * @param carbohydrate mass fraction of carbohydrate [kg/kg]
 * @param ash mass fraction of ash [kg/kg]
 */
public record DryMatter(double protein, double fat, double carbohydrate, double ash) {
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the fractions.
     *
     * @throws IllegalArgumentException if a fraction is NaN or outside 0 to 1, or if they do not sum to one within 1e-9
     */
    public DryMatter {
        Checks.requireInRange("protein fraction of the dry matter", protein, 0, 1, "kg/kg");
        Checks.requireInRange("fat fraction of the dry matter", fat, 0, 1, "kg/kg");
        Checks.requireInRange("carbohydrate fraction of the dry matter", carbohydrate, 0, 1, "kg/kg");
        Checks.requireInRange("ash fraction of the dry matter", ash, 0, 1, "kg/kg");
        double sum = protein + fat + carbohydrate + ash;
        Checks.require(Math.abs(sum - 1) <= ROUNDING, "dry matter must sum to 1, got " + sum + ".");
    }
}
