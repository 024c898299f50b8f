package io.github.saltfront.plan;

import io.github.saltfront.matter.RogersPitzer1982;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.units.Checks;

/** Whether meat floats in a brine and has to be weighed down. */
public final class Floating {
    private Floating() {}

    /**
     * Tells whether meat floats.
     *
     * @param meatDensity density of the meat [kg/m3]
     * @param brine strength of the brine
     * @param temperature temperature of the brine [K], 0 to 50 degrees Celsius
     * @return true if the brine is denser
     */
    public static boolean floats(double meatDensity, SaltStrength brine, double temperature) {
        Checks.requireInRange("density of the meat", meatDensity, 800, 1300, "kg/m3");
        return brine.density(temperature) > meatDensity;
    }

    /**
     * Returns the strength above which meat floats.
     *
     * @param meatDensity density of the meat [kg/m3]
     * @param temperature temperature of the brine [K]
     * @return the strength; 0 if it floats in plain water
     */
    public static SaltStrength floatsAbove(double meatDensity, double temperature) {
        Checks.requireInRange("density of the meat", meatDensity, 800, 1200, "kg/m3");
        double water = RogersPitzer1982.waterDensity(temperature);
        return meatDensity <= water ? new SaltStrength(0) : SaltStrength.ofDensity(meatDensity, temperature);
    }
}
