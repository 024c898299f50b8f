package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Provenance;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;

/**
 * Diffusion coefficient of sodium chloride in a class of muscle, with its spread.
 * <pre>D(T) = D_5 exp[-(Ea/R) (1/T - 1/278.15 K)],  ln D_5 ~ Normal(ln median, ln GSD)</pre>
 * The spread is common to all pieces of a batch. Validity about 0 to 25 °C, brines of 3 to 10 %.
 *
 * @param id key
 * @param name class of muscle
 * @param medianAt5C median at 5 °C [m2/s]
 * @param geometricStandardDeviation spread of the lognormal [-], above 1
 * @param activationEnergy Ea; ends are those of a uniform band [J/mol]
 * @param provenance where it comes from
 */
public record SaltDiffusivity(
        String id,
        String name,
        double medianAt5C,
        double geometricStandardDeviation,
        Band activationEnergy,
        Provenance provenance) {
    /** Temperature of the median [K]. */
    public static final double REFERENCE_TEMPERATURE = Temperature.fromCelsius(5);

    /** Checks magnitudes. */
    public SaltDiffusivity {
        Checks.requireInRange("median diffusivity", medianAt5C, 1e-12, 1e-8, "m2/s");
        Checks.requireInRange("geometric standard deviation", geometricStandardDeviation, 1, 10, "-");
    }

    static SaltDiffusivity read(CsvTable.Row row) {
        return new SaltDiffusivity(
                row.text("id"),
                row.words("name"),
                row.number("diffusivity_median_m2_s"),
                row.number("geometric_sd"),
                Cells.band(row, "activation_energy", "_kj_mol", 1e3),
                Provenance.of(row));
    }

    /**
     * Median with the typical activation energy [m2/s].
     *
     * @param temperature temperature [K]
     * @return D [m2/s]
     */
    public double medianAt(double temperature) {
        return at(temperature, 0, activationEnergy.typical());
    }

    /**
     * A sampled value [m2/s]; capping at the value of free water is left to the caller.
     *
     * @param temperature temperature [K]
     * @param standardNormal how many standard deviations of ln D above the median [-]
     * @param energy activation energy [J/mol]
     * @return D [m2/s]
     */
    public double at(double temperature, double standardNormal, double energy) {
        Checks.requirePositive("temperature", temperature, "K");
        Checks.requireFinite("standard normal variate", standardNormal);
        return medianAt5C
                * Math.pow(geometricStandardDeviation, standardNormal)
                * Math.exp(-energy / PhysicalConstants.MOLAR_GAS * (1 / temperature - 1 / REFERENCE_TEMPERATURE));
    }
}
