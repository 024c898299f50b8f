package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * Air with water vapor as a mixture of ideal gases: humidity ratio, enthalpy, volume, density, dew point, thermodynamic wet
 * bulb.
 *
 * <p>Above 100 degrees Celsius relative humidity is a poor measure; carry the vapor pressure or the humidity ratio.
 *
 * @see "ashrae2017, chapter 1, equations 20, 26, 30, 33 and 35 (numbers from memory)"
 */
public final class MoistAir {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "ashrae2017";

    /** Molar mass of water over that of dry air [-] (equation 20). */
    public static final double MASS_RATIO = 0.621945;

    private static final double GAS_CONSTANT = 287.042;
    private static final double VOLUME_FACTOR = 1.607858;
    private static final double AIR_HEAT = 1006;
    private static final double VAPOR_HEAT = 1860;
    private static final double LIQUID_HEAT = 4186;
    private static final double ICE_HEAT = 2100;
    private static final double EVAPORATION = 2501e3;
    private static final double EVAPORATION_SLOPE = 2326;
    private static final double SUBLIMATION = 2830e3;
    private static final double SUBLIMATION_SLOPE = 240;
    private static final double HIGHEST = Temperature.fromCelsius(400);
    private static final double LOWEST = Temperature.fromCelsius(-60);
    private static final int BISECTIONS = 80;

    private MoistAir() {}

    /**
     * Returns vapor per dry air [kg/kg].
     *
     * @param vaporPressure partial pressure of the vapor [Pa]
     * @param pressure total pressure [Pa]
     * @return humidity ratio [kg/kg]
     * @throws IllegalArgumentException if a value is NaN or the vapor pressure is negative or reaches the total
     */
    public static double humidityRatio(double vaporPressure, double pressure) {
        Checks.requirePositive("pressure", pressure, "Pa");
        Checks.require(
                vaporPressure >= 0 && vaporPressure < pressure,
                "vapor pressure must be at least 0 and below the total of " + pressure + " Pa, got " + vaporPressure
                        + " Pa.");
        return MASS_RATIO * vaporPressure / (pressure - vaporPressure);
    }

    /**
     * Returns the partial pressure of the vapor [Pa], the inverse of {@link #humidityRatio}.
     *
     * @param humidityRatio vapor per dry air [kg/kg]
     * @param pressure total pressure [Pa]
     * @return vapor pressure [Pa]
     * @throws IllegalArgumentException if a value is NaN or negative
     */
    public static double vaporPressure(double humidityRatio, double pressure) {
        Checks.requirePositive("pressure", pressure, "Pa");
        Checks.requireInRange("humidity ratio", humidityRatio, 0, Double.MAX_VALUE, "kg/kg");
        return pressure * humidityRatio / (MASS_RATIO + humidityRatio);
    }

    /**
     * Returns the enthalpy per dry air, zero for dry air at 0 degrees Celsius and liquid water [J/kg].
     *
     * @param temperature temperature [K]
     * @param humidityRatio vapor per dry air [kg/kg]
     * @return enthalpy per dry air [J/kg]
     */
    public static double enthalpy(double temperature, double humidityRatio) {
        double t = Temperature.toCelsius(temperature);
        return AIR_HEAT * t + humidityRatio * (EVAPORATION + VAPOR_HEAT * t);
    }

    /**
     * Returns the volume per dry air [m3/kg].
     *
     * @param temperature temperature [K]
     * @param humidityRatio vapor per dry air [kg/kg]
     * @param pressure total pressure [Pa]
     * @return volume per dry air [m3/kg]
     */
    public static double volume(double temperature, double humidityRatio, double pressure) {
        return GAS_CONSTANT * temperature * (1 + VOLUME_FACTOR * humidityRatio) / pressure;
    }

    /**
     * Returns the density of the moist air [kg/m3].
     *
     * @param temperature temperature [K]
     * @param humidityRatio vapor per dry air [kg/kg]
     * @param pressure total pressure [Pa]
     * @return density [kg/m3]
     */
    public static double density(double temperature, double humidityRatio, double pressure) {
        return (1 + humidityRatio) / volume(temperature, humidityRatio, pressure);
    }

    /**
     * Returns the dew point [K], the frost point below 0 degrees Celsius.
     *
     * @param vaporPressure partial pressure of the vapor [Pa]
     * @return dew point [K]
     * @throws IllegalArgumentException if the pressure is NaN or belongs to a temperature below -60 degrees Celsius
     */
    public static double dewPoint(double vaporPressure) {
        if (vaporPressure >= IapwsIf97Saturation.LOWEST_PRESSURE) {
            return IapwsIf97Saturation.temperature(vaporPressure);
        }
        double low = LOWEST;
        double high = Temperature.ZERO_CELSIUS;
        Checks.requireInRange(
                "vapor pressure",
                vaporPressure,
                HylandWexler1983.pressureOverIce(low),
                IapwsIf97Saturation.LOWEST_PRESSURE,
                "Pa");
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (HylandWexler1983.pressureOverIce(middle) < vaporPressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /**
     * Returns the humidity ratio from a wet bulb reading [kg/kg]; may be negative if the pair is impossible.
     *
     * @param temperature dry bulb temperature [K]
     * @param wetBulb wet bulb temperature [K], not above the dry bulb; below 0 degrees Celsius the bulb is iced
     * @param pressure total pressure [Pa]
     * @return humidity ratio [kg/kg]
     * @throws IllegalArgumentException if a value is NaN or the wet bulb is above the dry bulb or the boiling point
     */
    public static double humidityRatioFromWetBulb(double temperature, double wetBulb, double pressure) {
        Checks.require(
                wetBulb <= temperature,
                "wet bulb must not exceed the dry bulb of " + temperature + " K, got " + wetBulb + " K.");
        double saturated = humidityRatio(WaterVapor.saturationPressure(wetBulb), pressure);
        double t = Temperature.toCelsius(temperature);
        double w = Temperature.toCelsius(wetBulb);
        if (w >= 0) {
            // equation 33
            return ((EVAPORATION - EVAPORATION_SLOPE * w) * saturated - AIR_HEAT * (t - w))
                    / (EVAPORATION + VAPOR_HEAT * t - LIQUID_HEAT * w);
        }
        // equation 35
        return ((SUBLIMATION - SUBLIMATION_SLOPE * w) * saturated - AIR_HEAT * (t - w))
                / (SUBLIMATION + VAPOR_HEAT * t - ICE_HEAT * w);
    }

    /**
     * Returns the thermodynamic wet bulb temperature [K]. Near 0 degrees Celsius both a wet and an iced bulb can be in balance;
     * the wet one is returned if it is not below 0 degrees.
     *
     * @param temperature dry bulb temperature [K], up to 400 degrees Celsius
     * @param humidityRatio vapor per dry air [kg/kg], not above saturation
     * @param pressure total pressure [Pa]
     * @return wet bulb temperature [K]
     * @throws IllegalArgumentException if a value is NaN or out of range, or the air is supersaturated
     */
    public static double wetBulb(double temperature, double humidityRatio, double pressure) {
        Checks.requireInRange("dry bulb temperature", temperature, LOWEST, HIGHEST, "K");
        double vapor = vaporPressure(humidityRatio, pressure);
        double boiling = IapwsIf97Saturation.temperature(pressure);
        double high = Math.min(temperature, boiling - 1e-9);
        Checks.require(
                temperature >= boiling || vapor <= WaterVapor.saturationPressure(temperature) * (1 + 1e-12),
                "humidity ratio must not exceed saturation at " + temperature + " K, got " + humidityRatio + " kg/kg.");
        double low = LOWEST;
        double ice = Temperature.ZERO_CELSIUS;
        if (high >= ice && humidityRatioFromWetBulb(temperature, ice, pressure) <= humidityRatio) {
            low = ice;
        } else {
            high = Math.min(high, Math.nextDown(ice));
        }
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (humidityRatioFromWetBulb(temperature, middle, pressure) < humidityRatio) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }
}
