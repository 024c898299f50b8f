package io.github.saltfront.app.follow;

import io.github.saltfront.app.store.StoredReading;
import io.github.saltfront.live.Reading;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What is refused before it is kept: what no thermometer in a kitchen shows, and times that only a wrong clock tells. Whether a
 * reading counts is judged later, and it is kept in any case.
 */
final class ReadingCheck {
    private static final Phrases PHRASES = Phrases.of(ReadingCheck.class);

    private static final double COLDEST_C = -50;
    private static final double HOTTEST_C = 420;

    /** How far a clock may go ahead [s]. */
    private static final double AHEAD = 90;

    /** How long before the heat readings are taken [s]: brine and refrigerator. */
    private static final double BEFORE = 2 * 86400.0;

    private static final double LONGEST = 4 * 86400.0;
    private static final int LONGEST_NAME = 40;

    /** Names that say where a probe is. */
    static final Map<String, Reading.Role> ROLES = Map.of(
            "core", Reading.Role.CORE,
            "second-core", Reading.Role.SECOND_CORE,
            "surface", Reading.Role.SURFACE,
            "oven-air", Reading.Role.OVEN_AIR,
            "refrigerator", Reading.Role.REFRIGERATOR,
            "brine", Reading.Role.BRINE);

    private final CookClock clock;
    private final String cook;
    private final String unit;
    private final Map<String, String> known;

    /**
     * @param unit unit where a reading does not say
     * @param known role of each probe that was heard of
     */
    ReadingCheck(String cook, CookClock clock, String unit, Map<String, String> known) {
        this.cook = cook;
        this.clock = clock;
        this.unit = unit;
        this.known = known;
    }

    /**
     * Checks a reading.
     *
     * @throws IllegalArgumentException with what was got and expected
     */
    StoredReading check(SentReading sent, String source, long now) {
        String probe = probe(sent.probe());
        String role = role(probe, sent.role());
        String scale = unit(sent.unit());
        double celsius = Temperature.toCelsius(kelvin(sent.value(), scale));
        if (!(COLDEST_C <= celsius && celsius <= HOTTEST_C)) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-from-probe-expected-to", plain(sent.value()), scale, probe, COLDEST_C, HOTTEST_C));
        }
        double time = time(sent, now);
        return new StoredReading(cook, probe, role, Math.round(1000 * time), sent.value(), scale, source, now);
    }

    private static String probe(String name) {
        String plain = name.strip();
        if (plain.isEmpty() || plain.length() > LONGEST_NAME || plain.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-as-the-name-of", ReadingText.shown(name), LONGEST_NAME));
        }
        return plain;
    }

    private String role(String probe, Optional<String> said) {
        Optional<String> before = Optional.ofNullable(known.get(probe));
        String role = said.map(text -> text.strip().toLowerCase(Locale.ROOT).replace('_', '-'))
                .or(() -> before)
                .orElse(probe.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-'));
        if (!ROLES.containsKey(role)) {
            throw new IllegalArgumentException(PHRASES.say("probe-does-not-say-where", probe));
        }
        if (before.isPresent() && !before.get().equals(role)) {
            throw new IllegalArgumentException(PHRASES.say("probe-was-in-the-role", probe, before.get(), role));
        }
        return role;
    }

    private String unit(Optional<String> said) {
        String plain =
                said.orElse(unit).strip().replace("°", "").replace("º", "").toUpperCase(Locale.ROOT);
        return switch (plain) {
            case "C", "CELSIUS" -> "C";
            case "F", "FAHRENHEIT" -> "F";
            default ->
                throw new IllegalArgumentException(
                        PHRASES.say("got-the-unit-expected-c", ReadingText.shown(said.orElse(""))));
        };
    }

    static double kelvin(double value, String unit) {
        return unit.equals("F") ? Temperature.fromFahrenheit(value) : Temperature.fromCelsius(value);
    }

    private double time(SentReading sent, long now) {
        double present = clock.at(now);
        double time = sent.seconds().isPresent()
                ? sent.seconds().getAsDouble()
                : sent.instant().isPresent() ? clock.at(sent.instant().getAsLong()) : present;
        if (!(time <= present + AHEAD * clock.speed())) {
            throw new IllegalArgumentException(PHRASES.say("the-time-of-this-reading", span(time - present)));
        }
        if (!(time >= -BEFORE && time <= LONGEST)) {
            throw new IllegalArgumentException(
                    time < 0 ? PHRASES.say("long-before", span(-time)) : PHRASES.say("long-after", span(time)));
        }
        return time;
    }

    private static String span(double seconds) {
        if (!Double.isFinite(seconds)) {
            return PHRASES.say("far");
        }
        return seconds < 5400
                ? Math.round(seconds / 60) + " min"
                : seconds < 172_800
                        ? Math.round(seconds / 3600) + " h"
                        : PHRASES.say("days", Math.round(seconds / 86400));
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? String.valueOf((long) value)
                : String.valueOf(value);
    }
}
