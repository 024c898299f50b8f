package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;

/**
 * Saturation pressure over water and over ice.
 *
 * <pre>
 * water: ln p = C8/T + C9 + C10 T + C11 T^2 + C12 T^3 + C13 ln T
 * ice:   ln p = C1/T + C2 + C3 T + C4 T^2 + C5 T^3 + C6 T^4 + C7 ln T
 * </pre>
 *
 * <p>Validity: water 0 to 200 degrees Celsius, ice -100 to 0; outside the methods throw.
 *
 * @see "hyland1983, as given in ashrae2017, chapter 1, equations 5 and 6"
 */
public final class HylandWexler1983 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "hyland1983";

    private static final double C1 = -5.6745359e3;
    private static final double C2 = 6.3925247;
    private static final double C3 = -9.677843e-3;
    private static final double C4 = 6.2215701e-7;
    private static final double C5 = 2.0747825e-9;
    private static final double C6 = -9.484024e-13;
    private static final double C7 = 4.1635019;
    private static final double C8 = -5.8002206e3;
    private static final double C9 = 1.3914993;
    private static final double C10 = -4.8640239e-2;
    private static final double C11 = 4.1764768e-5;
    private static final double C12 = -1.4452093e-8;
    private static final double C13 = 6.5459673;

    private HylandWexler1983() {}

    /**
     * Returns the saturation pressure over liquid water [Pa].
     *
     * @param temperature temperature [K]
     * @return saturation pressure [Pa]
     * @throws IllegalArgumentException if the temperature is NaN or outside 0 to 200 degrees Celsius
     */
    public static double pressureOverWater(double temperature) {
        double t = Checks.requireInRange(
                "temperature over water", temperature, Temperature.ZERO_CELSIUS, Temperature.fromCelsius(200), "K");
        return Math.exp(C8 / t + C9 + t * (C10 + t * (C11 + t * C12)) + C13 * Math.log(t));
    }

    /**
     * Returns the saturation pressure over ice [Pa].
     *
     * @param temperature temperature [K]
     * @return saturation pressure [Pa]
     * @throws IllegalArgumentException if the temperature is NaN or outside -100 to 0 degrees Celsius
     */
    public static double pressureOverIce(double temperature) {
        double t = ice(temperature);
        return Math.exp(C1 / t + C2 + t * (C3 + t * (C4 + t * (C5 + t * C6))) + C7 * Math.log(t));
    }

    /**
     * Returns the heat of sublimation of ice [J/kg], by Clapeyron with the vapor taken as ideal and the volume of ice left out.
     *
     * <pre>L = (R/M) T^2 d(ln p)/dT</pre>
     *
     * @param temperature temperature [K]
     * @return heat of sublimation [J/kg]
     * @throws IllegalArgumentException if the temperature is NaN or outside -100 to 0 degrees Celsius
     */
    public static double heatOfSublimation(double temperature) {
        double t = ice(temperature);
        double slope = -C1 / (t * t) + C3 + t * (2 * C4 + t * (3 * C5 + t * 4 * C6)) + C7 / t;
        return PhysicalConstants.MOLAR_GAS / PhysicalConstants.MOLAR_MASS_WATER * t * t * slope;
    }

    private static double ice(double temperature) {
        return Checks.requireInRange(
                "temperature over ice", temperature, Temperature.fromCelsius(-100), Temperature.ZERO_CELSIUS, "K");
    }
}
