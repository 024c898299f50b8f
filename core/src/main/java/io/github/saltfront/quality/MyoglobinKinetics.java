package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * Denaturation of myoglobin, which turns red meat gray: first order with 290 kJ/mol and a pre-exponential factor of
 * 7.98e43 1/min. Color depends on time as well as on temperature; pink is no sign of danger and gray none of safety.
 * Meat of pH above 6.0, smoke, nitrite and bone marrow stay pink at any temperature reached in cooking.
 *
 * @see "geileskey1998, quoted in a thesis"
 */
public final class MyoglobinKinetics {
    /** Denatured share up to which meat looks rare [-]. */
    public static final double LOOKS_RARE = 0.065;

    /** Denatured share from which meat looks well done [-]. */
    public static final double LOOKS_WELL_DONE = 0.93;

    private static final double PRE_EXPONENTIAL_PER_MINUTE = 7.98e43;
    private static final double ACTIVATION_ENERGY = 290e3;

    /** The kinetics, referred to 60 °C. */
    public static final FirstOrderKinetics GEILESKEY_1998 = atReference(Temperature.fromCelsius(60));

    private MyoglobinKinetics() {}

    private static FirstOrderKinetics atReference(double temperature) {
        double perMinute =
                PRE_EXPONENTIAL_PER_MINUTE * Math.exp(-ACTIVATION_ENERGY / (FirstOrderKinetics.GAS * temperature));
        return new FirstOrderKinetics(perMinute / 60, temperature, ACTIVATION_ENERGY);
    }

    /**
     * What the inside looks like.
     *
     * @param denatured denatured share of myoglobin [-], 0 to 1
     * @return the look
     */
    public static Look lookOf(double denatured) {
        Checks.requireInRange("denatured share of myoglobin", denatured, 0, 1, "-");
        if (denatured <= LOOKS_RARE) {
            return Look.RED;
        }
        return denatured < LOOKS_WELL_DONE ? Look.PINK : Look.GRAY;
    }

    /** Color of the inside of red meat. */
    public enum Look {
        /** Looks rare. */
        RED,
        /** Between rare and well done. */
        PINK,
        /** Looks well done. */
        GRAY
    }
}
