package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;

/**
 * Heat of solution of sodium chloride: 3.88 kJ/mol (66.4 kJ/kg) is taken up from the water at 25 degrees Celsius and infinite
 * dilution, so that dissolving cools. In strong brine less is taken up; the value is an upper bound there.
 *
 * @see "parker1965, as given in crc2005"
 */
public final class Parker1965 {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "parker1965";

    /** Heat taken up per amount of salt [J/mol]. */
    public static final double MOLAR_HEAT = 3.88e3;

    /** Heat taken up per mass of salt [J/kg]. */
    public static final double HEAT = MOLAR_HEAT / PhysicalConstants.MOLAR_MASS_SODIUM_CHLORIDE;

    private Parker1965() {}

    /**
     * Returns how far dissolving cools a brine that exchanges no heat [K], both parts starting at the same temperature.
     *
     * @param temperature temperature before [K]
     * @param saltFraction salt per mass of brine [kg/kg]
     * @return temperature drop [K], not negative
     * @throws IllegalArgumentException if an argument is NaN or outside the range of {@link Melinder2010}
     */
    public static double cooling(double temperature, double saltFraction) {
        Checks.requireFinite("temperature", temperature);
        return saltFraction * HEAT / Melinder2010.heatCapacity(temperature, saltFraction);
    }
}
