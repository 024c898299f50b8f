package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * Saturation properties of water by the auxiliary equations that go with the scientific formulation; used for the latent
 * heat of evaporation.
 *
 * <pre>
 * ln(p/pc) = (Tc/T) sum a_i tau^(e_i),  tau = 1 - T/Tc
 * rho'/rhoc = 1 + sum b_i tau^(f_i),    ln(rho''/rhoc) = sum c_i tau^(g_i)
 * h'' - h' = T (1/rho'' - 1/rho') dp/dT                                     (Clapeyron)
 * </pre>
 *
 * <p>Validity: 273.16 to 647.096 K. The methods accept 0 degrees Celsius too and throw outside.
 *
 * @see "wagner1993, equations 1, 2 and 3"
 */
public final class WagnerPruss1993 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "wagner1993";

    private static final double CRITICAL_TEMPERATURE = 647.096;
    private static final double CRITICAL_PRESSURE = 22.064e6;
    private static final double CRITICAL_DENSITY = 322;
    private static final double LOWEST = Temperature.ZERO_CELSIUS;

    private static final double[] A = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502};
    private static final double[] A_POWER = {1, 1.5, 3, 3.5, 4, 7.5};
    private static final double[] B = {1.99274064, 1.09965342, -0.510839303, -1.75493479, -45.5170352, -6.74694450e5};
    private static final double[] B_POWER = {1 / 3.0, 2 / 3.0, 5 / 3.0, 16 / 3.0, 43 / 3.0, 110 / 3.0};
    private static final double[] C = {-2.03150240, -2.68302940, -5.38626492, -17.2991605, -44.7586581, -63.9201063};
    private static final double[] C_POWER = {2 / 6.0, 4 / 6.0, 8 / 6.0, 18 / 6.0, 37 / 6.0, 71 / 6.0};

    private WagnerPruss1993() {}

    /**
     * Returns the saturation pressure [Pa].
     *
     * @param temperature temperature [K]
     * @return saturation pressure [Pa]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double pressure(double temperature) {
        double tau = tau(temperature);
        return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / temperature * sum(A, A_POWER, tau));
    }

    /**
     * Returns the derivative of the saturation pressure by temperature [Pa/K].
     *
     * @param temperature temperature [K]
     * @return derivative [Pa/K]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double pressureDerivative(double temperature) {
        double tau = tau(temperature);
        double slope = 0;
        for (int i = 0; i < A.length; i++) {
            slope += A[i] * A_POWER[i] * Math.pow(tau, A_POWER[i] - 1);
        }
        double p = pressure(temperature);
        return -p / temperature * (Math.log(p / CRITICAL_PRESSURE) + slope);
    }

    /**
     * Returns the density of the boiling liquid [kg/m3].
     *
     * @param temperature temperature [K]
     * @return density [kg/m3]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double liquidDensity(double temperature) {
        return CRITICAL_DENSITY * (1 + sum(B, B_POWER, tau(temperature)));
    }

    /**
     * Returns the density of the saturated vapor [kg/m3].
     *
     * @param temperature temperature [K]
     * @return density [kg/m3]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double vaporDensity(double temperature) {
        return CRITICAL_DENSITY * Math.exp(sum(C, C_POWER, tau(temperature)));
    }

    /**
     * Returns the latent heat of evaporation [J/kg].
     *
     * @param temperature temperature [K]
     * @return heat of evaporation [J/kg]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range
     */
    public static double latentHeat(double temperature) {
        double volume = 1 / vaporDensity(temperature) - 1 / liquidDensity(temperature);
        return temperature * volume * pressureDerivative(temperature);
    }

    private static double tau(double temperature) {
        Checks.requireInRange("temperature", temperature, LOWEST, CRITICAL_TEMPERATURE, "K");
        return 1 - temperature / CRITICAL_TEMPERATURE;
    }

    private static double sum(double[] coefficients, double[] powers, double tau) {
        double sum = 0;
        for (int i = 0; i < coefficients.length; i++) {
            sum += coefficients[i] * Math.pow(tau, powers[i]);
        }
        return sum;
    }
}
