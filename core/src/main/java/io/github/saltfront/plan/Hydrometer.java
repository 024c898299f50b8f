package io.github.saltfront.plan;

import io.github.saltfront.matter.RogersPitzer1982;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.units.Temperature;

/**
 * What a hydrometer shows in a bath of salt, sugar and water. It weighs the liquid and nothing else: sugar reads as salt, about
 * 0.55 % salt for each percent of sugar, and a bath that is not at the temperature of the scale reads wrong.
 *
 * @param density density of the bath at its temperature [kg/m3]
 * @param specificGravity density over that of water at 60 degrees Fahrenheit, as a common scale reads it [-]
 * @param apparentStrength strength a salt scale would show if it took all the weight for salt, corrected for temperature
 * @param apparentSalometer reading of a salometer made for 60 degrees Fahrenheit, not corrected [degrees]
 * @param sugarAsSalt salt that is in truth sugar, per mass of solution [kg/kg]
 */
public record Hydrometer(
        double density,
        double specificGravity,
        SaltStrength apparentStrength,
        double apparentSalometer,
        double sugarAsSalt) {
    private static final double SCALE = Temperature.fromFahrenheit(60);
    private static final double TABLE = Temperature.fromCelsius(20);

    /**
     * Returns the reading in a bath.
     *
     * @param bath the bath
     * @param temperature its temperature [K], 0 to 50 degrees Celsius
     * @return the reading
     */
    public static Hydrometer in(Bath bath, double temperature) {
        double salt = bath.strength().saltFraction();
        // the table of sugar is for 20 degrees; salt water of the same salt carries the change with temperature
        double shift = RogersPitzer1982.density(temperature, salt) / RogersPitzer1982.density(TABLE, salt);
        double density = bath.density() * shift;
        SaltStrength apparent = strengthAt(density, temperature);
        double gravity = density / RogersPitzer1982.waterDensity(SCALE);
        double uncorrected = strengthAt(density, SCALE).salometer();
        double ownShare = bath.saltOfMass();
        return new Hydrometer(density, gravity, apparent, uncorrected, apparent.saltFraction() - ownShare);
    }

    /** A scale ends at water: what floats higher than in water shows nothing. */
    private static SaltStrength strengthAt(double density, double temperature) {
        double water = RogersPitzer1982.density(temperature, 0);
        return density <= water ? new SaltStrength(0) : SaltStrength.ofDensity(density, temperature);
    }
}
