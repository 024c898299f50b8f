package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;

/**
 * Free convection around a sphere.
 *
 * <pre>Nu = 2 + 0.589 Ra^(1/4) / [1 + (0.469/Pr)^(9/16)]^(4/9)</pre>
 *
 * <p>Isothermal surface; properties at the film temperature; length is the diameter. Validity: Pr from 0.7, Ra up to 1e11
 * ({@link #HIGHEST_RAYLEIGH}); beyond it the value is extrapolated.
 *
 * @see "churchill1983; incropera2007, equation 9.35"
 */
public final class Churchill1983Sphere {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "churchill1983";

    /** Highest published Rayleigh number [-]. */
    public static final double HIGHEST_RAYLEIGH = 1e11;

    private Churchill1983Sphere() {}

    /**
     * Returns the mean Nusselt number on the diameter [-].
     *
     * @param rayleigh Rayleigh number on the diameter [-], not negative
     * @param prandtl Prandtl number [-]
     * @return Nusselt number [-]
     * @throws IllegalArgumentException if a value is NaN, infinite or out of range
     */
    public static double nusselt(double rayleigh, double prandtl) {
        Checks.requireInRange("Rayleigh number", rayleigh, 0, Double.MAX_VALUE, "-");
        Checks.requirePositive("Prandtl number", prandtl, "-");
        double fluid = Math.pow(1 + Math.pow(0.469 / prandtl, 9 / 16.0), 4 / 9.0);
        return 2 + 0.589 * Math.pow(rayleigh, 0.25) / fluid;
    }

    /**
     * Returns the mean heat transfer coefficient in air [W/(m2.K)].
     *
     * @param surface surface temperature [K]
     * @param air air temperature [K]
     * @param diameter diameter [m]
     * @param pressure pressure [Pa]
     * @return heat transfer coefficient [W/(m2.K)]
     * @throws IllegalArgumentException if a value is NaN or out of range
     */
    public static double coefficient(double surface, double air, double diameter, double pressure) {
        double film = DryAir.film(surface, air);
        double rayleigh = DryAir.rayleigh(surface, air, diameter, pressure);
        return nusselt(rayleigh, DryAir.prandtl(film)) * DryAir.conductivity(film) / diameter;
    }
}
