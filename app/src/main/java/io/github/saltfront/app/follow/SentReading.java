package io.github.saltfront.app.follow;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * A reading as it was sent, not checked yet.
 *
 * @param probe name of the probe
 * @param role where the probe is, if it was said
 * @param instant when it was taken [ms since 1970], if it was said so
 * @param seconds time since the meat went into the heat [s], if it was said so; with neither it was taken now
 * @param value what the probe showed
 * @param unit unit of the value, if it was said
 */
record SentReading(
        String probe,
        Optional<String> role,
        OptionalLong instant,
        OptionalDouble seconds,
        double value,
        Optional<String> unit) {

    /** What a probe is called where nobody says it. */
    static final String USUAL_PROBE = "core";

    static SentReading now(double value) {
        return new SentReading(
                USUAL_PROBE, Optional.empty(), OptionalLong.empty(), OptionalDouble.empty(), value, Optional.empty());
    }

    SentReading withProbe(String name, Optional<String> place) {
        return new SentReading(name, place, instant, seconds, value, unit);
    }

    SentReading withUnit(String name) {
        return new SentReading(probe, role, instant, seconds, value, Optional.of(name));
    }

    SentReading at(double time) {
        return new SentReading(probe, role, OptionalLong.empty(), OptionalDouble.of(time), value, unit);
    }

    SentReading at(long time) {
        return new SentReading(probe, role, OptionalLong.of(time), OptionalDouble.empty(), value, unit);
    }
}
