package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * Density of water and of sodium chloride solutions near atmospheric pressure.
 *
 * <pre>
 * rho = rho_water(t) + w (763.584 - 3.22208 t + 0.0298676 t^2) + w^2 (28.7204 + 5.35207 t - 0.0574515 t^2) + 366.58 w^3
 * </pre>
 *
 * <p>with t in degrees Celsius. The polynomial is a least-squares fit, made for this program, to the specific volumes of
 * Rogers and Pitzer (0 to 50 degrees, 0.1 to 5 mol/kg): largest residual 0.18, root mean square 0.07 kg/m3. The water
 * polynomial is a fit to handbook densities of water from 0 to 50 degrees within 0.02 kg/m3.
 *
 * <p>Validity: 0 to 50 degrees Celsius, salt up to 0.226 kg/kg ({@link #isPublishedAt}); up to saturation (0.2846) and
 * from -22 to 110 degrees it is extrapolated, beyond that the methods throw. Below 0 degrees see {@link Melinder2010}.
 *
 * @see "rogers1982, tables of specific volume"
 */
public final class RogersPitzer1982 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "rogers1982";

    /** Highest salt mass fraction of the fitted data [kg/kg]. */
    public static final double HIGHEST_PUBLISHED = 0.226;

    private static final double HIGHEST = 0.2846;

    private RogersPitzer1982() {}

    /**
     * Returns the density of water [kg/m3].
     *
     * @param temperature temperature [K]
     * @return density [kg/m3]
     * @throws IllegalArgumentException if the temperature is NaN or outside -22 to 110 degrees Celsius
     */
    public static double waterDensity(double temperature) {
        double t = celsius(temperature);
        return 999.842414 + t * (6.56696784e-2 + t * (-8.63836173e-3 + t * (7.12052720e-5 - t * 3.84166806e-7)));
    }

    /**
     * Returns the density of brine [kg/m3].
     *
     * @param temperature temperature [K]
     * @param saltFraction salt per mass of solution [kg/kg]
     * @return density [kg/m3]
     * @throws IllegalArgumentException if an argument is NaN or outside the range of the class
     */
    public static double density(double temperature, double saltFraction) {
        double t = celsius(temperature);
        double w = Checks.requireInRange("salt mass fraction", saltFraction, 0, HIGHEST, "kg/kg");
        double first = 763.584 + t * (-3.22208 + t * 0.0298676);
        double second = 28.7204 + t * (5.35207 - t * 0.0574515);
        return waterDensity(temperature) + w * (first + w * (second + w * 366.58));
    }

    /**
     * Tells whether a state lies inside the fitted data.
     *
     * @param temperature temperature [K]
     * @param saltFraction salt per mass of solution [kg/kg]
     * @return true inside
     */
    public static boolean isPublishedAt(double temperature, double saltFraction) {
        double t = Temperature.toCelsius(temperature);
        return t >= 0 && t <= 50 && saltFraction >= 0 && saltFraction <= HIGHEST_PUBLISHED;
    }

    private static double celsius(double temperature) {
        return Temperature.toCelsius(Checks.requireInRange(
                "solution temperature", temperature, Temperature.fromCelsius(-22), Temperature.fromCelsius(110), "K"));
    }
}
