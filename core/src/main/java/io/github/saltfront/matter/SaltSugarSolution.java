package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;

/**
 * Water with salt and sugar. Volumes are additive: each solute keeps the apparent volume it has alone in the same water.
 *
 * <pre>V = V_water + [V(water + salt) - V_water] + [V(water + sugar) - V_water], per mass of water</pre>
 *
 * <p>Without one of the solutes this is exactly the density of the other's solution. No table of mixtures was found; the
 * error is judged to be below 2 kg/m3 up to 10 % of each. A hydrometer cannot tell salt from sugar.
 *
 * @param saltPerWater salt per mass of water [kg/kg]
 * @param sugarPerWater sucrose per mass of water [kg/kg]
 */
public record SaltSugarSolution(double saltPerWater, double sugarPerWater) {
    /** Molar mass of sucrose [kg/mol] (IUPAC atomic weights). */
    public static final double MOLAR_MASS_SUCROSE = 0.3422965;

    private static final double TABLE_TEMPERATURE = Temperature.fromCelsius(20);

    /** Growth of the osmotic coefficient of sucrose with its molality [kg/mol]; from memory. */
    private static final double SUCROSE_NON_IDEALITY = 0.1;

    /**
     * Checks the contents.
     *
     * @throws IllegalArgumentException if a value is NaN or negative, salt is beyond saturation or sugar beyond 0.40 of its
     *     solution
     */
    public SaltSugarSolution {
        Checks.requireInRange("salt per water", saltPerWater, 0, Double.MAX_VALUE, "kg/kg");
        double highest = Bates1942.HIGHEST / (1 - Bates1942.HIGHEST);
        Checks.requireInRange("sugar per water", sugarPerWater, 0, highest, "kg/kg");
        SaltStrength.ofSaltPerWater(saltPerWater);
    }

    /** Returns the salt per mass of solution [kg/kg]. */
    public double saltFraction() {
        return saltPerWater / (1 + saltPerWater + sugarPerWater);
    }

    /** Returns the sugar per mass of solution [kg/kg]. */
    public double sugarFraction() {
        return sugarPerWater / (1 + saltPerWater + sugarPerWater);
    }

    /** Returns the density at 20 degrees Celsius [kg/m3]. */
    public double density() {
        double salted =
                (1 + saltPerWater) / SaltStrength.ofSaltPerWater(saltPerWater).density(TABLE_TEMPERATURE);
        // the excess of the sugar solution over its own solvent, so that the two water densities need not agree
        double water = 1 / Bates1942.density(0);
        double sugared = (1 + sugarPerWater) / Bates1942.density(sugarPerWater / (1 + sugarPerWater));
        return (1 + saltPerWater + sugarPerWater) / (salted + sugared - water);
    }

    /** Returns the amount of sugar per mass of water [mol/kg]. */
    public double sugarMolality() {
        return sugarPerWater / MOLAR_MASS_SUCROSE;
    }

    /** Returns the osmolality [mol/kg], the sum of those of the two solutions; sucrose as m (1 + 0.1 m), from memory. */
    public double osmolality() {
        double sugar = sugarMolality();
        double salt = SaltStrength.ofSaltPerWater(saltPerWater).molality();
        return May2011WaterActivity.osmolality(salt) + sugar * (1 + SUCROSE_NON_IDEALITY * sugar);
    }

    /** Returns the water activity [-], the product of those of the two solutions (ross1975, from memory). */
    public double waterActivity() {
        return Math.exp(-osmolality() * PhysicalConstants.MOLAR_MASS_WATER);
    }
}
