package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;

/**
 * Juice driven out of meat by the contraction of its proteins, cell by cell.
 * <pre>L = s g(salt) [ a_e (X_m + X_s)/2 + a_a X_a ]</pre>
 * L is kg of juice per kg of salted raw mass, X the denatured shares of {@link DenaturationKinetics}, s the factor of the
 * species. Average it over the piece at the end of the rest; what evaporates comes out of the same juice, so that total
 * loss is the larger of expelled and evaporated and drip is what remains.
 *
 * <p>Amplitudes and species factors were fitted by the project to the 33 losses marked so in the validation table, in the program's
 * own solver and media: RMSE 3.1 points, leave-one-out 3.5. Thirty-one losses that were not used are missed by more than 5 points
 * RMSE, as studies of one cut differ by up to 8 among themselves; show {@link #HALF_BAND} (decision 0010). Known faults: it
 * saturates, so it undershoots braises of mature muscle and 14 h at 63 °C, and it knows no time of flow, so it overshoots roasts of
 * beef taken out at 60 °C.
 *
 * @param species factor of the species, s [-]
 */
public record JuiceLoss(Band species) {
    /** Amplitude of the first two protein groups, a_e [kg/kg]. */
    public static final double EARLY_AMPLITUDE = 0.063;

    /** Amplitude of actin, a_a [kg/kg]. */
    public static final double ACTIN_AMPLITUDE = 0.182;

    /** Half width of the band to show around a loss [kg/kg]: holds nine tenths of the losses that were not used for fitting. */
    public static final double HALF_BAND = 0.08;

    /** Half width of the band of the salt factor [-]. */
    public static final double SALT_FACTOR_HALF_BAND = 0.2;

    /** Salt below which no effect on the loss of whole muscle was found [kg/kg of wet mass]. */
    private static final double SALT_WITHOUT_EFFECT = 0.005;

    /** Salt from which the effect is taken as full [kg/kg of wet mass]. */
    private static final double SALT_WITH_FULL_EFFECT = 0.015;

    /** Salt factor at full effect [-]; ground meat goes down to about 0.29 (bae2018, Table 8), whole muscle is unknown. */
    private static final double FULL_SALT_FACTOR = 0.60;

    /** Checks that the factor is positive. */
    public JuiceLoss {
        Checks.requirePositive("species factor of juice loss", species.low(), "-");
    }

    /**
     * Factor by which salt lowers the loss, g(s) [-]: 1 up to 0.5 % salt, falling on a line to 0.60 at 1.5 %, 0.60 above.
     * An assumption between two bounds; carry {@link #SALT_FACTOR_HALF_BAND}.
     *
     * @param saltFraction salt of the wet meat [kg/kg], 0 to 0.3
     * @return the factor [-]
     */
    public static double saltFactor(double saltFraction) {
        Checks.requireInRange("salt fraction", saltFraction, 0, 0.3, "kg/kg");
        double share = (saltFraction - SALT_WITHOUT_EFFECT) / (SALT_WITH_FULL_EFFECT - SALT_WITHOUT_EFFECT);
        return 1 - (1 - FULL_SALT_FACTOR) * Math.max(0, Math.min(1, share));
    }

    /**
     * Local juice loss with the typical species factor [kg/kg of salted raw mass].
     *
     * @param myosin denatured share of myosin [-]
     * @param sarcoplasmic denatured share of sarcoplasmic proteins and collagen [-]
     * @param actin denatured share of actin [-]
     * @param saltFraction salt of the wet meat [kg/kg]
     * @return expelled juice [kg/kg]
     */
    public double expelledFraction(double myosin, double sarcoplasmic, double actin, double saltFraction) {
        return expelledFraction(species.typical(), myosin, sarcoplasmic, actin, saltFactor(saltFraction));
    }

    /**
     * Local juice loss for sampled factors [kg/kg of salted raw mass].
     *
     * @param speciesFactor factor of the species [-], positive
     * @param myosin denatured share of myosin [-]
     * @param sarcoplasmic denatured share of sarcoplasmic proteins and collagen [-]
     * @param actin denatured share of actin [-]
     * @param saltFactor factor of the salt [-], such as {@link #saltFactor}
     * @return expelled juice [kg/kg]
     */
    public static double expelledFraction(
            double speciesFactor, double myosin, double sarcoplasmic, double actin, double saltFactor) {
        Checks.requirePositive("species factor of juice loss", speciesFactor, "-");
        Checks.requireInRange("denatured share of myosin", myosin, 0, 1, "-");
        Checks.requireInRange("denatured share of sarcoplasmic proteins", sarcoplasmic, 0, 1, "-");
        Checks.requireInRange("denatured share of actin", actin, 0, 1, "-");
        Checks.requireInRange("salt factor of juice loss", saltFactor, 0, 2, "-");
        double unsalted = EARLY_AMPLITUDE * (myosin + sarcoplasmic) / 2 + ACTIN_AMPLITUDE * actin;
        return speciesFactor * saltFactor * unsalted;
    }
}
