package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;

/**
 * Freezing point, density and heat capacity of sodium chloride solutions in water.
 *
 * <pre>
 * x = w - 0.133897, y = T - 285.7679 K; each property is a polynomial in x and y
 * </pre>
 *
 * <p>Validity: salt 0 to 0.23 kg/kg, from the freezing line to 40 degrees Celsius ({@link #isPublishedAt}). Up to
 * 0.265 kg/kg (saturation) and 100 degrees the polynomials are extrapolated; beyond that the methods throw.
 *
 * @see "melinder2010, aqueous sodium chloride; coefficients read second hand in the data file of an open property library"
 */
public final class Melinder2010 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "melinder2010";

    /** Highest published salt mass fraction [kg/kg]. */
    public static final double HIGHEST_PUBLISHED = 0.23;

    /** Eutectic salt mass fraction [kg/kg] (saltinstitute2009, table of solubility). */
    public static final double EUTECTIC = 0.2331;

    private static final double HIGHEST = 0.265;
    private static final double HIGHEST_TEMPERATURE = 373.2;
    private static final double HIGHEST_PUBLISHED_TEMPERATURE = 313.2;
    private static final double MEAN_FRACTION = 0.133897;
    private static final double MEAN_TEMPERATURE = 285.7679;

    private Melinder2010() {}

    /**
     * Returns the temperature at which ice begins to form [K].
     *
     * @param saltFraction salt per mass of solution [kg/kg], 0 to {@link #EUTECTIC}
     * @return freezing point [K]
     * @throws IllegalArgumentException if the fraction is outside; above the eutectic dihydrate, not ice, forms first
     */
    public static double freezingPoint(double saltFraction) {
        Checks.requireInRange("salt mass fraction", saltFraction, 0, EUTECTIC, "kg/kg");
        double x = saltFraction - MEAN_FRACTION;
        return 263.767 + x * (-90.39 + x * (-220.4 + x * (-482.7 + x * 224.7)));
    }

    /**
     * Returns how much salt lowers the freezing point of water [K]; zero without salt.
     *
     * @param saltFraction salt per mass of salt and water [kg/kg], 0 to 1; above {@link #EUTECTIC} the last ice melts at
     *     the eutectic temperature whatever the strength, so its value is returned
     * @return lowering, not negative [K]
     * @throws IllegalArgumentException if the fraction is NaN or outside 0 to 1
     */
    public static double freezingPointDepression(double saltFraction) {
        Checks.requireInRange("salt mass fraction", saltFraction, 0, 1, "kg/kg");
        return freezingPoint(0) - freezingPoint(Math.min(saltFraction, EUTECTIC));
    }

    /**
     * Returns the density [kg/m3].
     *
     * @param temperature temperature [K]
     * @param saltFraction salt per mass of solution [kg/kg]
     * @return density [kg/m3]
     * @throws IllegalArgumentException if an argument is NaN or outside the range of the class
     */
    public static double density(double temperature, double saltFraction) {
        check(temperature, saltFraction);
        double x = saltFraction - MEAN_FRACTION;
        double y = temperature - MEAN_TEMPERATURE;
        double constant = 1099.0 + x * (772.3 + x * (256.7 + x * (110.8 - x * 1686)));
        double linear = -0.3758 + x * (-1.426 + x * (3.994 + x * 0.3522));
        double quadratic = -2.023e-3 + x * (1.535e-2 - x * 7.281e-2);
        return constant + y * (linear + y * quadratic);
    }

    /**
     * Returns the specific heat capacity [J/(kg.K)].
     *
     * @param temperature temperature [K]
     * @param saltFraction salt per mass of solution [kg/kg]
     * @return heat capacity per mass of solution [J/(kg.K)]
     * @throws IllegalArgumentException if an argument is NaN or outside the range of the class
     */
    public static double heatCapacity(double temperature, double saltFraction) {
        check(temperature, saltFraction);
        double x = saltFraction - MEAN_FRACTION;
        double y = temperature - MEAN_TEMPERATURE;
        double constant = 3593 + x * (-3248 + x * (6453 + x * (-16290 + x * 23310)));
        double linear = 1.669 + x * (-3.331 + x * (-93.14 + x * 792.7));
        double quadratic = -2.019e-2 + x * (-0.1164 + x * 2.236);
        return constant + y * (linear + y * quadratic);
    }

    /**
     * Tells whether the source claims density and heat capacity at a state.
     *
     * @param temperature temperature [K]
     * @param saltFraction salt per mass of solution [kg/kg]
     * @return true inside the published range
     */
    public static boolean isPublishedAt(double temperature, double saltFraction) {
        return saltFraction >= 0
                && saltFraction <= HIGHEST_PUBLISHED
                && temperature <= HIGHEST_PUBLISHED_TEMPERATURE
                && temperature >= freezingPoint(saltFraction);
    }

    private static void check(double temperature, double saltFraction) {
        Checks.requireInRange("salt mass fraction", saltFraction, 0, HIGHEST, "kg/kg");
        double lowest = freezingPoint(Math.min(saltFraction, EUTECTIC));
        Checks.requireInRange("brine temperature", temperature, lowest, HIGHEST_TEMPERATURE, "K");
    }
}
