package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/**
 * When a stage ends before its time is up.
 *
 * @param kind the quantity that is watched
 * @param threshold the value it must reach, in the unit of the kind
 */
public record StopRule(Kind kind, double threshold) {
    /** Never before the time is up. */
    public static final StopRule NEVER = new StopRule(Kind.NEVER, 0);

    /** What is watched. */
    public enum Kind {
        /** Nothing. */
        NEVER,
        /** The middle gets warmer than the threshold [K]. */
        CORE_ABOVE,
        /** The middle gets colder than the threshold [K]. */
        CORE_BELOW,
        /** The first face gets warmer than the threshold [K]. */
        SURFACE_ABOVE,
        /** The mean salt rises above the threshold, salt per wet mass [kg/kg]. */
        MEAN_SALT_ABOVE,
        /** The salt in the middle rises above the threshold, salt per wet mass [kg/kg]. */
        CORE_SALT_ABOVE,
        /** The kill in the worst cell rises above the threshold, in the unit of the kill rate times s. */
        KILL_ABOVE
    }

    /** Checks the values. */
    public StopRule {
        Checks.requireFinite("threshold", threshold);
    }
}
