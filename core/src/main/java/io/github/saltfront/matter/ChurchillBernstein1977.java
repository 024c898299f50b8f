package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;

/**
 * Forced convection across a cylinder.
 *
 * <pre>Nu = 0.3 + 0.62 Re^(1/2) Pr^(1/3) / [1 + (0.4/Pr)^(2/3)]^(1/4) [1 + (Re/282000)^(5/8)]^(4/5)</pre>
 *
 * <p>Smooth stream; properties at the film temperature; length is the diameter. The turbulence of an oven fan usually raises
 * the coefficient. Validity: Re Pr from 0.2 ({@link #LOWEST_PECLET}); below it the value is extrapolated.
 *
 * @see "churchill1977; incropera2007, equation 7.54"
 */
public final class ChurchillBernstein1977 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "churchill1977";

    /** Lowest published product of Reynolds and Prandtl numbers [-]. */
    public static final double LOWEST_PECLET = 0.2;

    private ChurchillBernstein1977() {}

    /**
     * Returns the mean Nusselt number on the diameter [-].
     *
     * @param reynolds Reynolds number on the diameter [-], not negative
     * @param prandtl Prandtl number [-]
     * @return Nusselt number [-]
     * @throws IllegalArgumentException if a value is NaN, infinite or out of range
     */
    public static double nusselt(double reynolds, double prandtl) {
        Checks.requireInRange("Reynolds number", reynolds, 0, Double.MAX_VALUE, "-");
        Checks.requirePositive("Prandtl number", prandtl, "-");
        double fluid = Math.pow(1 + Math.pow(0.4 / prandtl, 2 / 3.0), 0.25);
        double wake = Math.pow(1 + Math.pow(reynolds / 282000, 5 / 8.0), 0.8);
        return 0.3 + 0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl) / fluid * wake;
    }

    /**
     * Returns the mean heat transfer coefficient in air [W/(m2.K)].
     *
     * @param film film temperature, mean of surface and air [K]
     * @param speed speed of the air [m/s]
     * @param diameter diameter [m]
     * @param pressure pressure [Pa]
     * @return heat transfer coefficient [W/(m2.K)]
     * @throws IllegalArgumentException if a value is NaN or out of range
     */
    public static double coefficient(double film, double speed, double diameter, double pressure) {
        double reynolds = DryAir.reynolds(film, speed, diameter, pressure);
        return nusselt(reynolds, DryAir.prandtl(film)) * DryAir.conductivity(film) / diameter;
    }
}
