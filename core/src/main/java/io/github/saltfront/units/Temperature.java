package io.github.saltfront.units;

/**
 * Conversions between temperature scales. The only place in the repository that knows the offset of the Celsius scale.
 */
public final class Temperature {
    /** Zero of the Celsius scale [K], exact by definition (BIPM, SI Brochure, 9th edition, 2019, section 2.3.1). */
    public static final double ZERO_CELSIUS = 273.15;

    private Temperature() {}

    /**
     * Converts to kelvin.
     *
     * @param celsius temperature in degrees Celsius
     * @return temperature [K]
     */
    public static double fromCelsius(double celsius) {
        return celsius + ZERO_CELSIUS;
    }

    /**
     * Converts to degrees Celsius.
     *
     * @param kelvin temperature [K]
     * @return temperature in degrees Celsius
     */
    public static double toCelsius(double kelvin) {
        return kelvin - ZERO_CELSIUS;
    }

    /**
     * Converts to kelvin.
     *
     * @param fahrenheit temperature in degrees Fahrenheit
     * @return temperature [K]
     */
    public static double fromFahrenheit(double fahrenheit) {
        return fromCelsius((fahrenheit - 32) / 1.8);
    }

    /**
     * Converts to degrees Fahrenheit.
     *
     * @param kelvin temperature [K]
     * @return temperature in degrees Fahrenheit
     */
    public static double toFahrenheit(double kelvin) {
        return toCelsius(kelvin) * 1.8 + 32;
    }
}
