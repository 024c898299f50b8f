package io.github.saltfront.app.probe;

import java.util.Optional;

/**
 * What the user says about a log that the file itself may not tell.
 *
 * @param unit unit of the temperatures, if stated
 * @param timeUnit unit of an elapsed time without one in its header, if stated
 * @param probe name of the column to use, if stated; otherwise the lowest reading of all probes counts
 */
public record LogOptions(Optional<TemperatureUnit> unit, Optional<TimeUnit> timeUnit, Optional<String> probe) {
    /** Nothing stated. */
    public static final LogOptions NONE = new LogOptions(Optional.empty(), Optional.empty(), Optional.empty());

    /** Unit of temperatures in a file. */
    public enum TemperatureUnit {
        /** Degrees Celsius. */
        C,
        /** Degrees Fahrenheit. */
        F
    }

    /** Unit of elapsed times in a file. */
    public enum TimeUnit {
        /** Seconds. */
        S(1),
        /** Minutes. */
        MIN(60),
        /** Hours. */
        H(3600),
        /** Milliseconds. */
        MS(1e-3);

        private final double seconds;

        TimeUnit(double seconds) {
            this.seconds = seconds;
        }

        /** Returns the length of the unit [s]. */
        public double seconds() {
            return seconds;
        }
    }

    /**
     * Returns these options with a unit.
     *
     * @param stated unit of the temperatures
     */
    public LogOptions withUnit(TemperatureUnit stated) {
        return new LogOptions(Optional.of(stated), timeUnit, probe);
    }

    /**
     * Returns these options with a unit of time.
     *
     * @param stated unit of elapsed times
     */
    public LogOptions withTimeUnit(TimeUnit stated) {
        return new LogOptions(unit, Optional.of(stated), probe);
    }

    /**
     * Returns these options with a probe.
     *
     * @param name name of its column
     */
    public LogOptions withProbe(String name) {
        return new LogOptions(unit, timeUnit, Optional.of(name));
    }
}
