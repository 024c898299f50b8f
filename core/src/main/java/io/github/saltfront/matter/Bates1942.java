package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;

/**
 * Density of sucrose solutions at 20 degrees Celsius.
 *
 * <pre>Bx = 182.46007 SG^3 - 775.68212 SG^2 + 1262.7794 SG - 669.56218, SG at 20/20 degrees</pre>
 *
 * <p>Validity: 0 to 0.40 kg/kg sugar; outside it the methods throw. The polynomial reads -0.0048 Bx for water itself, so
 * that the specific gravity of no sugar is 1.00002, two units of the fifth decimal too high.
 *
 * @see "bates1942, NBS Circular 440, polynomial through the table of specific gravity"
 */
public final class Bates1942 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "bates1942";

    /** Highest published sugar mass fraction [kg/kg]. */
    public static final double HIGHEST = 0.40;

    /** Density of water at 20 degrees Celsius in the same table [kg/m3]. */
    public static final double WATER_DENSITY = 998.203;

    private static final double HIGHEST_GRAVITY = 1.18;

    private Bates1942() {}

    /**
     * Returns the sugar mass fraction of a specific gravity [kg/kg].
     *
     * @param specificGravity density relative to water, both at 20 degrees Celsius [-], 1 to 1.18
     * @return sugar per mass of solution [kg/kg]; may be below zero by 5e-5 at a gravity of 1
     * @throws IllegalArgumentException if the gravity is NaN or outside its range
     */
    public static double sugarFraction(double specificGravity) {
        double g = Checks.requireInRange("specific gravity", specificGravity, 1, HIGHEST_GRAVITY, "-");
        return (((182.46007 * g - 775.68212) * g + 1262.7794) * g - 669.56218) / 100;
    }

    /**
     * Returns the specific gravity of a sugar mass fraction [-], the inverse of {@link #sugarFraction}.
     *
     * @param sugarFraction sugar per mass of solution [kg/kg], 0 to 0.40
     * @return density relative to water, both at 20 degrees Celsius [-]
     * @throws IllegalArgumentException if the fraction is NaN or outside its range
     */
    public static double specificGravity(double sugarFraction) {
        Checks.requireInRange("sugar mass fraction", sugarFraction, 0, HIGHEST, "kg/kg");
        double low = 1;
        double high = HIGHEST_GRAVITY;
        double middle = 0.5 * (low + high);
        while (low < middle && middle < high) {
            if (sugarFraction(middle) < sugarFraction) {
                low = middle;
            } else {
                high = middle;
            }
            middle = 0.5 * (low + high);
        }
        return middle;
    }

    /**
     * Returns the density at 20 degrees Celsius [kg/m3].
     *
     * @param sugarFraction sugar per mass of solution [kg/kg], 0 to 0.40
     * @return density [kg/m3]
     * @throws IllegalArgumentException if the fraction is NaN or outside its range
     */
    public static double density(double sugarFraction) {
        return WATER_DENSITY * specificGravity(sugarFraction);
    }
}
