package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;

/**
 * Dynamic viscosity of liquid water at 0.1 MPa.
 *
 * <pre>mu = 1e-6 sum a_i (T / 300 K)^b_i</pre>
 *
 * <p>Validity: 253.15 to 383.15 K, uncertainty 1 % (the lower part is supercooled); outside it the method throws.
 *
 * @see "patek2009, equation for viscosity (also IAPWS SR6-08)"
 */
public final class Patek2009Viscosity {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "patek2009";

    private static final double LOWEST = 253.1;
    private static final double HIGHEST = 383.2;

    private Patek2009Viscosity() {}

    /**
     * Returns the viscosity [Pa.s].
     *
     * @param temperature temperature [K]
     * @return dynamic viscosity [Pa.s]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range of the class
     */
    public static double viscosity(double temperature) {
        double t = Checks.requireInRange("water temperature", temperature, LOWEST, HIGHEST, "K") / 300;
        return 1e-6
                * (280.68 * Math.pow(t, -1.9)
                        + 511.45 * Math.pow(t, -7.7)
                        + 61.131 * Math.pow(t, -19.6)
                        + 0.45903 * Math.pow(t, -40));
    }
}
