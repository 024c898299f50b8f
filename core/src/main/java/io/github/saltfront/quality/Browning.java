package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;

/**
 * How far a surface has browned: 1 is golden brown.
 * <pre>dB/dt = s exp[-E/R (1/T - 1/T_r)] / 300 s   above 88 °C, none below;  E = R ln 2 T_r^2 / 10 K,  T_r = 150 °C</pre>
 *
 * <p>Onset at 88 °C: roasting chicken grows darker once its surface has passed that (rabeler2019, abstract, by the reference on
 * juiciness). The rate doubles for 10 K near 150 °C, the low end of "doubles to triples" (from memory, unconfirmed). The time of 5 min at 150 °C is
 * ours: a crust in a pan at 170 °C is golden in about a minute, a skin at 120 °C in an hour (common practice, no source). So an index is
 * good within {@link #FACTOR}, and water activity, which matters, is left out: a surface only gets hot once it is dry.
 */
public final class Browning {
    private static final Phrases PHRASES = Phrases.of(Browning.class);

    /** Factor up and down within which an index is good [-]. */
    public static final double FACTOR = 3;

    /** Factor of a surface with sugar on it [-]: reducing sugars brown at once (common practice, no source). */
    public static final double SUGAR = 2;

    private static final double ONSET = Temperature.fromCelsius(88);
    private static final double REFERENCE = Temperature.fromCelsius(150);
    private static final double REFERENCE_TIME = 300;
    /** E/R [K]. */
    private static final double ACTIVATION = Math.log(2) * REFERENCE * REFERENCE / 10;

    private Browning() {}

    /**
     * Returns the rate at which a surface browns.
     *
     * @param temperature temperature of the surface [K]
     * @param sugarFactor 1, or {@link #SUGAR} with sugar on it [-]
     * @return rate [1/s]
     */
    public static double rate(double temperature, double sugarFactor) {
        Checks.requirePositive("temperature", temperature, "K");
        Checks.requireInRange("factor of sugar", sugarFactor, 1, 5, "-");
        return temperature < ONSET
                ? 0
                : sugarFactor * Math.exp(-ACTIVATION * (1 / temperature - 1 / REFERENCE)) / REFERENCE_TIME;
    }

    /**
     * Returns the word for an index.
     *
     * @param index index [-]
     * @return the word
     */
    public static String word(double index) {
        Checks.requireInRange("browning index", index, 0, Double.MAX_VALUE, "-");
        if (index < 0.1) {
            return PHRASES.say("pale");
        }
        if (index < 0.5) {
            return PHRASES.say("lightly-colored");
        }
        return index < 2
                ? PHRASES.say("golden-brown")
                : index < 6 ? PHRASES.say("dark-brown") : PHRASES.say("very-dark-near-burnt");
    }
}
