package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;

/**
 * Diffusion coefficient of water vapor in air.
 *
 * <pre>D = 2.178e-5 (T / T0)^1.81 (101325 / p), T0 at 0 degrees Celsius</pre>
 *
 * <p>Validity: 0 to 100 degrees Celsius; extrapolated from 200 to 700 K, outside that the methods throw. Other sources lie up
 * to 6 % higher.
 *
 * @see "massman1998"
 */
public final class Massman1998 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "massman1998";

    private static final double AT_ZERO = 2.178e-5;
    private static final double POWER = 1.81;

    private Massman1998() {}

    /**
     * Returns the diffusion coefficient [m2/s].
     *
     * @param temperature temperature [K]
     * @param pressure pressure [Pa]
     * @return diffusion coefficient [m2/s]
     * @throws IllegalArgumentException if a value is NaN or out of range
     */
    public static double diffusionCoefficient(double temperature, double pressure) {
        Checks.requireInRange("air temperature", temperature, 200, 700, "K");
        Checks.requirePositive("pressure", pressure, "Pa");
        return AT_ZERO
                * Math.pow(temperature / Temperature.ZERO_CELSIUS, POWER)
                * PhysicalConstants.STANDARD_ATMOSPHERE
                / pressure;
    }

    /**
     * Returns the Lewis factor Le^(2/3) of vapor in dry air [-], Le = k / (rho c D); the mass transfer coefficient is
     * {@code h / (rho c Le^(2/3))} (incropera2007, chapter 6). It does not depend on pressure.
     *
     * @param temperature film temperature [K]
     * @return Lewis factor [-]
     * @throws IllegalArgumentException if the temperature is NaN or out of range
     */
    public static double lewisFactor(double temperature) {
        double pressure = PhysicalConstants.STANDARD_ATMOSPHERE;
        double lewis = DryAir.conductivity(temperature)
                / (DryAir.density(temperature, pressure)
                        * DryAir.heatCapacity(temperature)
                        * diffusionCoefficient(temperature, pressure));
        return Math.pow(lewis, 2 / 3.0);
    }
}
