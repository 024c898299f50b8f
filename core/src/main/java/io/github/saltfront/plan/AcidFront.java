package io.github.saltfront.plan;

import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Checks;
import java.util.Optional;

/**
 * How deep acid goes into meat: it diffuses in and is used up by the buffer of the meat, so that a front moves inward.
 *
 * <pre>depth = sqrt(2 D C t / B)</pre>
 *
 * <p>A rough estimate, good to a factor of two: buffer and ratios of diffusion are from memory. Salt goes about twice as deep.
 *
 * @param diffusivity diffusion coefficient of the acid in the meat, D [m2/s]
 * @param freeAcid acid of the liquid that can still be taken up, C [mol/m3]
 * @param buffer acid a volume of meat uses up on its way to pH 4.5, B [mol/m3]
 */
public record AcidFront(double diffusivity, double freeAcid, double buffer) {
    /** Buffer of meat from pH 5.7 to 4.5 [mol/m3]: 1.2 units at 50 mmol/kg a unit; from memory. */
    public static final double MEAT_BUFFER = 60;

    private static final double GRAM_PER_MOL = 1e-3;

    /** Checks the values. */
    public AcidFront {
        Checks.requireInRange("diffusion coefficient of the acid", diffusivity, 1e-13, 1e-8, "m2/s");
        Checks.requireInRange("free acid", freeAcid, 0, 20_000, "mol/m3");
        Checks.requireInRange("buffer of the meat", buffer, 1, 1000, "mol/m3");
    }

    /**
     * Returns the front of a liquid, if it holds acid.
     *
     * @param liquid the liquid
     * @param share its share of the bath by volume [-], above 0 to 1
     * @param saltDiffusivity diffusion coefficient of salt in the meat [m2/s]
     * @return the front
     */
    public static Optional<AcidFront> of(Liquid liquid, double share, double saltDiffusivity) {
        Checks.requireInRange("share of the liquid", share, 0, 1, "-");
        if (liquid.acid().name().isEmpty() || liquid.acid().fraction().typical() == 0) {
            return Optional.empty();
        }
        CsvTable.Row row = CsvTable.load(AcidFront.class, "acids.csv")
                .row("id", liquid.acid().name());
        double molar = row.number("molar_mass_g_mol") * GRAM_PER_MOL;
        double acid = liquid.acid().fraction().typical() * liquid.density() / molar;
        return Optional.of(new AcidFront(
                row.number("diffusion_ratio") * saltDiffusivity, share * acid * row.number("free_share"), MEAT_BUFFER));
    }

    /**
     * Returns how deep the acid has gone [m].
     *
     * @param time time in the liquid [s], not negative
     * @return depth of the front
     */
    public double depth(double time) {
        Checks.requireInRange("time", time, 0, Double.MAX_VALUE, "s");
        return Math.sqrt(2 * diffusivity * freeAcid * time / buffer);
    }
}
