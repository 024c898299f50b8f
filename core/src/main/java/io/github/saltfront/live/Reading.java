package io.github.saltfront.live;

import io.github.saltfront.units.Checks;

/**
 * One reading of one probe.
 *
 * @param probe name of the probe; readings of one name belong together
 * @param role where the probe is
 * @param time time since the meat went into the heat [s]
 * @param temperature what it showed [K]
 */
public record Reading(String probe, Role role, double time, double temperature) {
    /** Longest time from the start of the heat [s]: four days. */
    private static final double LONGEST = 4 * 86400.0;

    /** Where a probe is. */
    public enum Role {
        /** In the meat, aimed at the coldest spot. */
        CORE(true),
        /** In the same piece, in another spot. */
        SECOND_CORE(true),
        /** On the surface of the meat. */
        SURFACE(false),
        /** In the air of the oven. */
        OVEN_AIR(false),
        /** In the refrigerator. */
        REFRIGERATOR(false),
        /** In the brine. */
        BRINE(false);

        private final boolean inMeat;

        Role(boolean inMeat) {
            this.inMeat = inMeat;
        }

        /** Returns whether the tip is inside the meat. */
        public boolean isInMeat() {
            return inMeat;
        }
    }

    /** Checks the values. */
    public Reading {
        Checks.require(!probe.isBlank(), "a reading needs the name of its probe, got none.");
        Checks.requireInRange("time of a reading", time, -LONGEST, LONGEST, "s");
        Checks.requireInRange("reading", temperature, 150, 700, "K");
    }
}
