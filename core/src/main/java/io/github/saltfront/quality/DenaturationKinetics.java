package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * Denaturation of the three groups of meat proteins, each first order: myosin first, sarcoplasmic proteins with collagen
 * next, actin last.
 *
 * <p>Activation energies and the actin rates are published (kajitani2011, abstract, cured pork). The reference rates of
 * the first two groups are ours: {@code k(T_peak) = beta Ea / (R T_peak^2)} with the heating rate beta = 5 K/min and
 * peaks at 57 and 66 °C; that rule gives 0.101 1/min for actin at 70 °C where 0.10 is published. Published disagreement
 * is large (751, 152 and 331 kJ/mol by an isoconversional study of pork loin). Used from about 45 to 100 °C; outside it
 * the value is an extrapolation.
 *
 * <p>Salt speeds up actin in the published runs but tends to slow it in others, and salted meat loses less juice, not
 * more: {@link #actinSaltFactor} is for texture and doneness only and must stay out of {@link JuiceLoss}.
 *
 * @param myosin myosin and actomyosin
 * @param sarcoplasmic sarcoplasmic proteins and collagen
 * @param actin actin
 * @see "kajitani2011, abstract; kijowski1988 for the peaks"
 */
public record DenaturationKinetics(
        FirstOrderKinetics myosin, FirstOrderKinetics sarcoplasmic, FirstOrderKinetics actin) {
    private static final double SECONDS_PER_MINUTE = 60;

    /** ln(1.75/0.10) over 38 g/kg of salt, the published rates at 2 and 40 mg/g [kg/kg of wet mass]. */
    private static final double ACTIN_SALT_SLOPE = Math.log(1.75 / 0.10) / 0.038;

    /** Salt of the meat for which the actin rate is given [kg/kg of wet mass]. */
    private static final double ACTIN_REFERENCE_SALT = 0.002;

    /** The constants above, for lean meat of normal saltiness. */
    public static final DenaturationKinetics KAJITANI_2011 = new DenaturationKinetics(
            perMinute(1.33, 57, 241e3), perMinute(1.70, 66, 326e3), perMinute(0.10, 70, 250e3));

    /**
     * Factor by which salt speeds up the denaturation of actin [-], {@code exp(75.3 (s - 0.002))}.
     * Validity: 0.002 to 0.04, the two published points; outside it is extrapolated.
     *
     * @param saltFraction salt of the wet meat [kg/kg], 0 to 0.1
     * @return factor on the rate constant, 1 at 0.002 [-]
     */
    public static double actinSaltFactor(double saltFraction) {
        Checks.requireInRange("salt fraction", saltFraction, 0, 0.1, "kg/kg");
        return Math.exp(ACTIN_SALT_SLOPE * (saltFraction - ACTIN_REFERENCE_SALT));
    }

    private static FirstOrderKinetics perMinute(double rate, double referenceCelsius, double activationEnergy) {
        return new FirstOrderKinetics(
                rate / SECONDS_PER_MINUTE, Temperature.fromCelsius(referenceCelsius), activationEnergy);
    }
}
