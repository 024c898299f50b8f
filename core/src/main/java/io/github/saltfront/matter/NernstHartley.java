package io.github.saltfront.matter;

import io.github.saltfront.units.Temperature;

/**
 * Diffusion coefficient of sodium chloride in water at infinite dilution: the ceiling for meat.
 *
 * <pre>D25 = 2 D+ D- / (D+ + D-) = 1.611e-9 m2/s,  D = D25 (T / 298.15 K) mu25 / mu(T)</pre>
 *
 * <p>with the viscosity of {@link Patek2009Viscosity}, whose range it shares.
 *
 * @see "crc2005, ionic conductivity and diffusion at infinite dilution (D+ 1.334e-9, D- 2.032e-9 m2/s at 25 C)"
 */
public final class NernstHartley {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "crc2005";

    private static final double SODIUM = 1.334e-9;
    private static final double CHLORIDE = 2.032e-9;
    private static final double REFERENCE = Temperature.fromCelsius(25);

    private NernstHartley() {}

    /**
     * Returns the diffusion coefficient [m2/s].
     *
     * @param temperature temperature [K]
     * @return diffusion coefficient of the salt in water [m2/s]
     * @throws IllegalArgumentException if the temperature is NaN or outside 253 to 383 K
     */
    public static double diffusionCoefficient(double temperature) {
        double atReference = 2 * SODIUM * CHLORIDE / (SODIUM + CHLORIDE);
        double fluidity = Patek2009Viscosity.viscosity(REFERENCE) / Patek2009Viscosity.viscosity(temperature);
        return atReference * temperature / REFERENCE * fluidity;
    }
}
