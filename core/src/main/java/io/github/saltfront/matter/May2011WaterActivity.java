package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;

/**
 * Osmotic coefficient, water activity and osmolality of sodium chloride solutions by the Pitzer equation at 25 degrees
 * Celsius.
 *
 * <pre>
 * phi = 1 - 0.3915 sqrt(m)/(1 + 1.2 sqrt(m)) + m (0.07831 + 0.2677 exp(-2 sqrt(m))) + 0.000864 m^2
 * ln aw = -2 m phi Mw
 * </pre>
 *
 * <p>Validity: 0 to 6.15 mol/kg at 25 degrees Celsius; from 0 to 50 degrees the coefficient changes by less than 2 %, which is
 * left out. Above 6.8 mol/kg (saturation at the boiling point) the methods throw.
 *
 * @see "may2011; Debye-Hueckel slope 0.3915 from memory"
 */
public final class May2011WaterActivity {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "may2011";

    private static final double DEBYE_HUECKEL = 0.3915;
    private static final double B = 1.2;
    private static final double ALPHA = 2.0;
    private static final double BETA_0 = 0.07831;
    private static final double BETA_1 = 0.2677;
    private static final double C_PHI = 0.000864;
    private static final double IONS = 2;
    private static final double HIGHEST_MOLALITY = 6.85;

    private May2011WaterActivity() {}

    /**
     * Returns the osmotic coefficient [-].
     *
     * @param molality salt per mass of water [mol/kg]
     * @return osmotic coefficient [-]
     * @throws IllegalArgumentException if the molality is NaN, negative or above saturation
     */
    public static double osmoticCoefficient(double molality) {
        double m = Checks.requireInRange("molality of salt", molality, 0, HIGHEST_MOLALITY, "mol/kg");
        double root = Math.sqrt(m);
        return 1 - DEBYE_HUECKEL * root / (1 + B * root) + m * (BETA_0 + BETA_1 * Math.exp(-ALPHA * root) + C_PHI * m);
    }

    /**
     * Returns the osmolality [mol/kg].
     *
     * @param molality salt per mass of water [mol/kg]
     * @return osmotically active particles per mass of water [mol/kg]
     * @throws IllegalArgumentException if the molality is NaN, negative or above saturation
     */
    public static double osmolality(double molality) {
        return IONS * molality * osmoticCoefficient(molality);
    }

    /**
     * Returns the water activity [-].
     *
     * @param molality salt per mass of water [mol/kg]
     * @return vapor pressure over the solution relative to that over water [-]
     * @throws IllegalArgumentException if the molality is NaN, negative or above saturation
     */
    public static double waterActivity(double molality) {
        return Math.exp(-osmolality(molality) * PhysicalConstants.MOLAR_MASS_WATER);
    }
}
