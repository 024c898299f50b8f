package io.github.saltfront.live;

import io.github.saltfront.units.Checks;

/** Something the cook did, or vouches for. */
public sealed interface CookEvent {
    /** Returns when it was, since the meat went into the heat [s]. */
    double time();

    /**
     * The appliance was set to another temperature.
     *
     * @param time when [s]
     * @param setting new setting [K]
     */
    record SettingChanged(double time, double setting) implements CookEvent {
        /** Checks the values. */
        public SettingChanged {
            Checks.requireInRange("time of an event", time, 0, 4 * 86400.0, "s");
            Checks.requireInRange("setting", setting, 270, 800, "K");
        }
    }

    /**
     * The door or the lid was open.
     *
     * @param time when it was opened [s]
     * @param duration for how long [s]
     */
    record DoorOpened(double time, double duration) implements CookEvent {
        /** Checks the values. */
        public DoorOpened {
            Checks.requireInRange("time of an event", time, 0, 4 * 86400.0, "s");
            Checks.requireInRange("time the door was open", duration, 1, 3600, "s");
        }
    }

    /**
     * The piece was turned over. Counts only where one face is heated at a time.
     *
     * @param time when [s]
     */
    record Flipped(double time) implements CookEvent {
        /** Checks the time. */
        public Flipped {
            Checks.requireInRange("time of an event", time, 0, 4 * 86400.0, "s");
        }
    }

    /**
     * The piece went on into the next heat of its sequence, earlier or later than by the plan's clock.
     *
     * @param time when [s]
     * @param number number of the heat that began, counted from 1; 2 to 20
     */
    record HeatBegun(double time, int number) implements CookEvent {
        /** Checks the values. */
        public HeatBegun {
            Checks.requireInRange("time of an event", time, 0, 4 * 86400.0, "s");
            Checks.requireInRange("number of the heat that began", number, 2, 20, "-");
        }
    }

    /**
     * The piece was taken out of the heat and rests.
     *
     * @param time when [s]
     */
    record TakenOut(double time) implements CookEvent {
        /** Checks the time. */
        public TakenOut {
            Checks.requireInRange("time of an event", time, 0, 4 * 86400.0, "s");
        }
    }

    /**
     * A probe was put into another spot.
     *
     * @param time when [s]
     * @param probe which probe
     */
    record ProbeMoved(double time, String probe) implements CookEvent {
        /** Checks the time. */
        public ProbeMoved {
            Checks.requireInRange("time of an event", time, 0, 4 * 86400.0, "s");
        }
    }

    /**
     * The cook vouches that the readings of a probe are in the unit they were taken for.
     *
     * @param time when [s]
     * @param probe which probe
     */
    record UnitConfirmed(double time, String probe) implements CookEvent {
        /** Checks the time. */
        public UnitConfirmed {
            Checks.requireInRange("time of an event", time, 0, 4 * 86400.0, "s");
        }
    }
}
