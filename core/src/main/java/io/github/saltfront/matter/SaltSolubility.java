package io.github.saltfront.matter;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import java.util.List;

/**
 * Solubility of sodium chloride in water, by straight lines between the rows of nacl_solubility.csv.
 *
 * <p>Validity: -21.11 degrees Celsius (eutectic) to 108.7 (boiling point of the saturated solution); outside the methods
 * throw. Below 0.1 degrees the solid is the dihydrate, so a brine above 23.3 % that is strong enough at room temperature
 * can drop crystals in a cold refrigerator.
 *
 * @see "saltinstitute2009, table of solubility"
 */
public final class SaltSolubility {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "saltinstitute2009";

    private static final double[] TEMPERATURE;
    private static final double[] FRACTION;

    static {
        List<CsvTable.Row> rows =
                CsvTable.load(SaltSolubility.class, "nacl_solubility.csv").rows();
        TEMPERATURE = rows.stream()
                .mapToDouble(r -> Temperature.fromCelsius(r.number("temperature_c")))
                .toArray();
        FRACTION = rows.stream().mapToDouble(r -> r.number("salt_pct") / 100).toArray();
    }

    private SaltSolubility() {}

    /**
     * Returns the salt mass fraction of the saturated solution [kg/kg].
     *
     * @param temperature temperature [K]
     * @return salt per mass of solution [kg/kg]
     * @throws IllegalArgumentException if the temperature is NaN or outside the range of the class
     */
    public static double saturation(double temperature) {
        int last = TEMPERATURE.length - 1;
        Checks.requireInRange("brine temperature", temperature, TEMPERATURE[0], TEMPERATURE[last], "K");
        int i = 1;
        while (i < last && temperature > TEMPERATURE[i]) {
            i++;
        }
        double share = (temperature - TEMPERATURE[i - 1]) / (TEMPERATURE[i] - TEMPERATURE[i - 1]);
        return FRACTION[i - 1] + share * (FRACTION[i] - FRACTION[i - 1]);
    }

    /** Returns the highest salt mass fraction at any temperature [kg/kg]. */
    public static double highest() {
        return FRACTION[FRACTION.length - 1];
    }
}
