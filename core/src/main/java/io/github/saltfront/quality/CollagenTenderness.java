package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * Time in which collagen-rich meat turns tender, for planning.
 * <pre>t = a 3 h exp[(65000/8.314) (1/T - 1/368.15 K)]</pre>
 * No measured rate with a source was found. The line is our fit to times of the trade (common practice, no source): 57 °C
 * 36 h, 65 °C 21 h, 75 °C 12 h, 85 °C 5 h, 95 °C 3 h, 120 °C 0.8 h, good within {@link #FACTOR}. Validity 57 to 120 °C;
 * below 55 °C collagen does not dissolve in useful time and a result means nothing.
 */
public final class CollagenTenderness {
    /** Factor up and down within which the times of the trade lie [-]. */
    public static final double FACTOR = 1.5;

    /** Age factor of young lamb or pork [-]. */
    public static final double YOUNG = 0.7;

    /** Age factor of mature beef [-]. */
    public static final double MATURE = 1.0;

    /** Age factor of old animals, middle of 1.5 to 2 [-]. */
    public static final double OLD = 1.75;

    private static final double REFERENCE_TIME = 3 * 3600.0;
    private static final double REFERENCE_TEMPERATURE = Temperature.fromCelsius(95);
    private static final double ACTIVATION_ENERGY = 65e3;

    private CollagenTenderness() {}

    /**
     * Time at constant temperature until tender [s].
     *
     * @param temperature core temperature [K]
     * @param ageFactor factor of the animal's age, such as {@link #MATURE} [-]
     * @return time [s]
     */
    public static double tenderTime(double temperature, double ageFactor) {
        Checks.requirePositive("temperature", temperature, "K");
        Checks.requirePositive("age factor", ageFactor, "-");
        return ageFactor
                * REFERENCE_TIME
                * Math.exp(ACTIVATION_ENERGY / FirstOrderKinetics.GAS * (1 / temperature - 1 / REFERENCE_TEMPERATURE));
    }

    /**
     * Share of the way to tender gained per second [1/s]; its integral over a history reaches 1 when tender.
     *
     * @param temperature core temperature [K]
     * @param ageFactor factor of the animal's age [-]
     * @return rate [1/s]
     */
    public static double rate(double temperature, double ageFactor) {
        return 1 / tenderTime(temperature, ageFactor);
    }
}
