package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;

/**
 * A piece weighed before and after.
 *
 * @param block what it has in common with other pieces: animal, package; empty if nothing
 * @param treatment what was done to it
 * @param before mass before [kg], above zero
 * @param after mass after [kg], above zero
 */
public record WeighedPiece(String block, String treatment, double before, double after) {
    /** Largest yield that is believed [-]; meat takes up less than its own mass of brine. */
    private static final double LARGEST_YIELD = 2;

    /** Checks the masses. */
    public WeighedPiece {
        Checks.requirePositive("mass before", before, "kg");
        Checks.requirePositive("mass after", after, "kg");
        Checks.require(!treatment.isBlank(), "a weighed piece needs a treatment.");
        Checks.requireInRange("mass after over mass before", after / before, 0, LARGEST_YIELD, "-");
    }

    /** Returns the mass kept [kg/kg]. */
    public double yield() {
        return after / before;
    }
}
