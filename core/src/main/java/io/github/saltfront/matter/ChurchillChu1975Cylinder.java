package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;

/**
 * Free convection around a long horizontal cylinder.
 *
 * <pre>Nu = { 0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27) }^2</pre>
 *
 * <p>Isothermal surface; properties at the film temperature; length is the diameter. Validity: Ra up to 1e12
 * ({@link #HIGHEST_RAYLEIGH}); beyond it the value is extrapolated.
 *
 * @see "churchill1975; incropera2007, equation 9.34"
 */
public final class ChurchillChu1975Cylinder {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "churchill1975";

    /** Highest published Rayleigh number [-]. */
    public static final double HIGHEST_RAYLEIGH = 1e12;

    private ChurchillChu1975Cylinder() {}

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
        double fluid = Math.pow(1 + Math.pow(0.559 / prandtl, 9 / 16.0), 8 / 27.0);
        double root = 0.60 + 0.387 * Math.pow(rayleigh, 1 / 6.0) / fluid;
        return root * root;
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
