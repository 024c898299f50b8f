package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * Saturation line of water and steam, region 4 of the industrial formulation 1997; pressure and temperature are exact
 * inverses of each other.
 *
 * <pre>
 * b^2 s^2 + n1 b^2 s + n2 b^2 + n3 b s^2 + n4 b s + n5 b + n6 s^2 + n7 s + n8 = 0,
 * b = (p / 1 MPa)^(1/4), s = T + n9 / (T - n10)
 * </pre>
 *
 * <p>Validity: 0 degrees Celsius to 647.096 K (611.213 Pa to 22.064 MPa); outside it the methods throw.
 *
 * @see "iapws2012, R7-97(2012), equations 29 to 31"
 */
public final class IapwsIf97Saturation {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "iapws2012";

    /** Lowest temperature [K]. */
    public static final double LOWEST_TEMPERATURE = Temperature.ZERO_CELSIUS;

    /** Highest temperature, the critical point [K]. */
    public static final double HIGHEST_TEMPERATURE = 647.096;

    /** Lowest pressure [Pa]. */
    public static final double LOWEST_PRESSURE = 611.213;

    /** Highest pressure, the critical point [Pa]. */
    public static final double HIGHEST_PRESSURE = 22.064e6;

    private static final double MEGAPASCAL = 1e6;
    private static final double N1 = 1167.0521452767;
    private static final double N2 = -724213.16703206;
    private static final double N3 = -17.073846940092;
    private static final double N4 = 12020.824702470;
    private static final double N5 = -3232555.0322333;
    private static final double N6 = 14.915108613530;
    private static final double N7 = -4823.2657361591;
    private static final double N8 = 405113.40542057;
    private static final double N9 = -0.23855557567849;
    private static final double N10 = 650.17534844798;

    private IapwsIf97Saturation() {}

    /**
     * Returns the saturation pressure [Pa].
     *
     * @param temperature temperature [K]
     * @return saturation pressure [Pa]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double pressure(double temperature) {
        double s = reduced(temperature);
        double a = (s + N1) * s + N2;
        double b = (N3 * s + N4) * s + N5;
        double c = (N6 * s + N7) * s + N8;
        double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        return MEGAPASCAL * root * root * root * root;
    }

    /**
     * Returns the derivative of the saturation pressure by temperature [Pa/K], from the implicit equation.
     *
     * @param temperature temperature [K]
     * @return derivative [Pa/K]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double pressureDerivative(double temperature) {
        double p = pressure(temperature);
        double s = reduced(temperature);
        double b = Math.sqrt(Math.sqrt(p / MEGAPASCAL));
        double byB = 2 * b * (s * s + N1 * s + N2) + N3 * s * s + N4 * s + N5;
        double byS = b * b * (2 * s + N1) + b * (2 * N3 * s + N4) + 2 * N6 * s + N7;
        double shifted = temperature - N10;
        double byTemperature = 1 - N9 / (shifted * shifted);
        return -byS / byB * byTemperature * 4 * p / b;
    }

    /**
     * Returns the saturation (boiling) temperature [K].
     *
     * @param pressure pressure [Pa]
     * @return temperature [K]
     * @throws IllegalArgumentException if the pressure is NaN or outside the range
     */
    public static double temperature(double pressure) {
        Checks.requireInRange("saturation pressure", pressure, LOWEST_PRESSURE * (1 - 1e-6), HIGHEST_PRESSURE, "Pa");
        double b = Math.sqrt(Math.sqrt(pressure / MEGAPASCAL));
        double e = (b + N3) * b + N6;
        double f = (N1 * b + N4) * b + N7;
        double g = (N2 * b + N5) * b + N8;
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N10 + d;
        return 0.5 * (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d)));
    }

    private static double reduced(double temperature) {
        Checks.requireInRange("temperature", temperature, LOWEST_TEMPERATURE, HIGHEST_TEMPERATURE, "K");
        return temperature + N9 / (temperature - N10);
    }
}
