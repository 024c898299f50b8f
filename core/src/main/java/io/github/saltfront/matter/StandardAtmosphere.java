package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;

/**
 * Pressure of the standard atmosphere.
 *
 * <pre>p = 101325 (1 - 2.25577e-5 z)^5.2559</pre>
 *
 * <p>Validity: -5000 to 11000 m; outside it the methods throw. Weather moves the pressure by about 3 kPa, the boiling point by
 * 0.8 K.
 *
 * @see "ashrae2017, chapter 1, equation 3 and Table 1"
 */
public final class StandardAtmosphere {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "ashrae2017";

    private static final double SLOPE = 2.25577e-5;
    private static final double POWER = 5.2559;
    private static final double LOWEST = -5000;
    private static final double HIGHEST = 11000;

    private StandardAtmosphere() {}

    /**
     * Returns the pressure [Pa].
     *
     * @param altitude height above the sea [m]
     * @return pressure [Pa]
     * @throws IllegalArgumentException if the altitude is NaN or outside -5000 to 11000 m
     */
    public static double pressure(double altitude) {
        Checks.requireInRange("altitude", altitude, LOWEST, HIGHEST, "m");
        return PhysicalConstants.STANDARD_ATMOSPHERE * Math.pow(1 - SLOPE * altitude, POWER);
    }

    /**
     * Returns the height at which the standard atmosphere has a pressure [m], the inverse of {@link #pressure}.
     *
     * @param pressure pressure [Pa]
     * @return height above the sea [m]
     * @throws IllegalArgumentException if the pressure is NaN or belongs to no height in the range
     */
    public static double altitude(double pressure) {
        Checks.requireInRange("atmospheric pressure", pressure, pressure(HIGHEST), pressure(LOWEST), "Pa");
        return (1 - Math.pow(pressure / PhysicalConstants.STANDARD_ATMOSPHERE, 1 / POWER)) / SLOPE;
    }
}
