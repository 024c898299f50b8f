package io.github.saltfront.matter;

import io.github.saltfront.units.Temperature;

/**
 * The default saturation pressure and heat of evaporation of water: {@link IapwsIf97Saturation} and {@link WagnerPruss1993}
 * from 0 degrees Celsius up, {@link HylandWexler1983} over ice below. Fits made for weather (Magnus, Tetens) are 1 to 2 %
 * off at 100 degrees and are not used.
 *
 * <p>Validity: -100 degrees Celsius to the critical point; outside the methods throw. At 0 degrees the two pressures
 * differ by 0.02 %.
 */
public final class WaterVapor {
    private WaterVapor() {}

    /**
     * Returns the saturation pressure, over ice below 0 degrees Celsius [Pa].
     *
     * @param temperature temperature [K]
     * @return saturation pressure [Pa]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double saturationPressure(double temperature) {
        return temperature < Temperature.ZERO_CELSIUS
                ? HylandWexler1983.pressureOverIce(temperature)
                : IapwsIf97Saturation.pressure(temperature);
    }

    /**
     * Returns the heat that turns water into vapor, that of sublimation below 0 degrees Celsius [J/kg].
     *
     * @param temperature temperature [K]
     * @return latent heat [J/kg]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double latentHeat(double temperature) {
        return temperature < Temperature.ZERO_CELSIUS
                ? HylandWexler1983.heatOfSublimation(temperature)
                : WagnerPruss1993.latentHeat(temperature);
    }

    /**
     * Returns the boiling temperature of water in the standard atmosphere [K].
     *
     * @param altitude height above the sea [m]
     * @return boiling temperature [K]
     * @throws IllegalArgumentException if the altitude is NaN or outside the range of {@link StandardAtmosphere}
     */
    public static double boilingTemperature(double altitude) {
        return IapwsIf97Saturation.temperature(StandardAtmosphere.pressure(altitude));
    }
}
