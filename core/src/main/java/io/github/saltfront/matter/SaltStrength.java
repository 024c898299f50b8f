package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;

/**
 * Strength of a brine of salt and water as salt per mass of solution, with conversions to and from every other way of
 * saying it. At 6 % the ways differ by 6 % of the salt, at 20 % by about 20 %.
 *
 * <p>Conversions that involve a volume use the densities of {@link RogersPitzer1982} at a stated temperature. The salometer
 * has 100 degrees at 26.395 % of the solution, saturation at 60 degrees Fahrenheit; scales of some canning hydrometers
 * (100 degrees at 25 %) differ.
 *
 * @param saltFraction salt per mass of solution [kg/kg]
 */
public record SaltStrength(double saltFraction) {
    /** Salt per mass of solution at 100 degrees salometer [kg/kg] (saltinstitute2009, solubility at 60 F). */
    public static final double SALOMETER_FULL_SCALE = 0.26395;

    private static final double STEP_TOLERANCE = 1e-15;

    /**
     * Checks the strength.
     *
     * @throws IllegalArgumentException if it is NaN, negative or above the solubility at the boiling point
     */
    public SaltStrength {
        double highest = SaltSolubility.highest();
        Checks.require(
                saltFraction >= 0 && saltFraction <= highest,
                "salt strength must be between 0 and " + highest
                        + " kg/kg of solution, beyond which salt stays undissolved at any temperature, got "
                        + saltFraction
                        + " kg/kg; use less salt.");
    }

    /**
     * From salt per mass of water.
     *
     * @param saltPerWater salt per mass of water [kg/kg]
     * @return the strength
     * @throws IllegalArgumentException if the value is NaN, negative or beyond saturation
     */
    public static SaltStrength ofSaltPerWater(double saltPerWater) {
        Checks.requireInRange("salt per water", saltPerWater, 0, Double.MAX_VALUE, "kg/kg");
        return new SaltStrength(saltPerWater / (1 + saltPerWater));
    }

    /**
     * From salt per volume of the water before the salt goes in; 1 kg/m3 is 1 g per liter.
     *
     * @param saltPerWaterVolume salt per volume of water [kg/m3]
     * @param temperature temperature at which the water is measured [K]
     * @return the strength
     * @throws IllegalArgumentException if a value is NaN, negative or beyond saturation
     */
    public static SaltStrength ofSaltPerWaterVolume(double saltPerWaterVolume, double temperature) {
        return ofSaltPerWater(saltPerWaterVolume / RogersPitzer1982.waterDensity(temperature));
    }

    /**
     * From salt per volume of the finished solution (weight by volume); 1 kg/m3 is 1 g per liter, 10 kg/m3 are 1 % w/v.
     *
     * @param saltPerSolutionVolume salt per volume of solution [kg/m3]
     * @param temperature temperature at which the solution is measured [K]
     * @return the strength
     * @throws IllegalArgumentException if a value is NaN, negative or beyond saturation
     */
    public static SaltStrength ofSaltPerSolutionVolume(double saltPerSolutionVolume, double temperature) {
        double highest = SaltSolubility.highest();
        Checks.requireInRange(
                "salt per volume of solution",
                saltPerSolutionVolume,
                0,
                highest * RogersPitzer1982.density(temperature, highest),
                "kg/m3");
        double w = saltPerSolutionVolume / RogersPitzer1982.density(temperature, 0);
        // w rho(w) rises with w and rho changes slowly, so the fixed point contracts by about 0.15 a step
        for (int i = 0; i < 60; i++) {
            double next = saltPerSolutionVolume / RogersPitzer1982.density(temperature, Math.min(w, highest));
            if (Math.abs(next - w) <= STEP_TOLERANCE) {
                break;
            }
            w = next;
        }
        return new SaltStrength(Math.min(w, highest));
    }

    /**
     * From a share of saturation at a temperature.
     *
     * @param share salt per mass of solution relative to that of the saturated solution [-], 0 to 1
     * @param temperature temperature [K]
     * @return the strength
     * @throws IllegalArgumentException if the share is NaN or outside 0 to 1
     */
    public static SaltStrength ofSaturation(double share, double temperature) {
        Checks.requireInRange("share of saturation", share, 0, 1, "-");
        return new SaltStrength(share * SaltSolubility.saturation(temperature));
    }

    /**
     * From degrees salometer.
     *
     * @param degrees salometer reading at 60 degrees Fahrenheit [-], 0 to 100
     * @return the strength
     * @throws IllegalArgumentException if the reading is NaN or outside 0 to 100
     */
    public static SaltStrength ofSalometer(double degrees) {
        Checks.requireInRange("salometer reading", degrees, 0, 100, "degrees");
        return new SaltStrength(degrees / 100 * SALOMETER_FULL_SCALE);
    }

    /**
     * From the density of the solution, which must hold nothing but salt and water.
     *
     * @param density density [kg/m3]
     * @param temperature temperature of the solution [K]
     * @return the strength
     * @throws IllegalArgumentException if a value is NaN or the density is below that of water or beyond saturation
     */
    public static SaltStrength ofDensity(double density, double temperature) {
        double low = 0;
        double high = SaltSolubility.highest();
        Checks.requireInRange(
                "density of the brine",
                density,
                RogersPitzer1982.density(temperature, low),
                RogersPitzer1982.density(temperature, high),
                "kg/m3");
        while (high - low > STEP_TOLERANCE) {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high) {
                break;
            }
            if (RogersPitzer1982.density(temperature, middle) < density) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new SaltStrength(0.5 * (low + high));
    }

    /**
     * From the amount of salt per mass of water.
     *
     * @param molality molality [mol/kg]
     * @return the strength
     * @throws IllegalArgumentException if the value is NaN, negative or beyond saturation
     */
    public static SaltStrength ofMolality(double molality) {
        return ofSaltPerWater(molality * PhysicalConstants.MOLAR_MASS_SODIUM_CHLORIDE);
    }

    /** Returns the salt per mass of water [kg/kg]. */
    public double saltPerWater() {
        return saltFraction / (1 - saltFraction);
    }

    /**
     * Returns the salt per volume of water measured before the salt goes in [kg/m3].
     *
     * @param temperature temperature of the water [K]
     */
    public double saltPerWaterVolume(double temperature) {
        return saltPerWater() * RogersPitzer1982.waterDensity(temperature);
    }

    /**
     * Returns the salt per volume of solution [kg/m3].
     *
     * @param temperature temperature of the solution [K]
     */
    public double saltPerSolutionVolume(double temperature) {
        return saltFraction * density(temperature);
    }

    /**
     * Returns the salt relative to the saturated solution, both per mass of solution [-].
     *
     * @param temperature temperature [K]
     */
    public double saturationShare(double temperature) {
        return saltFraction / SaltSolubility.saturation(temperature);
    }

    /** Returns the salometer reading at 60 degrees Fahrenheit [degrees]; above 100 beyond its scale. */
    public double salometer() {
        return 100 * saltFraction / SALOMETER_FULL_SCALE;
    }

    /**
     * Returns the density [kg/m3].
     *
     * @param temperature temperature [K]
     */
    public double density(double temperature) {
        return RogersPitzer1982.density(temperature, saltFraction);
    }

    /** Returns the specific gravity at 60 degrees Fahrenheit relative to water at 60 degrees Fahrenheit [-]. */
    public double specificGravity() {
        double temperature = Temperature.fromFahrenheit(60);
        return density(temperature) / RogersPitzer1982.waterDensity(temperature);
    }

    /** Returns the amount of salt per mass of water [mol/kg]. */
    public double molality() {
        return saltPerWater() / PhysicalConstants.MOLAR_MASS_SODIUM_CHLORIDE;
    }

    /** Returns the water activity at 25 degrees Celsius [-]; see {@link May2011WaterActivity}. */
    public double waterActivity() {
        return May2011WaterActivity.waterActivity(molality());
    }

    /**
     * Returns this strength if it can exist as a clear solution.
     *
     * @param temperature temperature of the brine [K]
     * @return this
     * @throws IllegalArgumentException if salt would stay undissolved, with the solubility
     */
    public SaltStrength requireDissolved(double temperature) {
        double saturation = SaltSolubility.saturation(temperature);
        Checks.require(
                saltFraction <= saturation,
                "salt strength must be at most " + saturation + " kg/kg of solution at " + temperature
                        + " K (saturation), got " + saltFraction + " kg/kg; the rest would stay as crystals.");
        return this;
    }
}
