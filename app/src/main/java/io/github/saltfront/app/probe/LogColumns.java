package io.github.saltfront.app.probe;

import io.github.saltfront.app.probe.LogOptions.TemperatureUnit;
import io.github.saltfront.app.probe.LogOptions.TimeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds out from a header what each column is. */
final class LogColumns {
    private static final Pattern TIME = Pattern.compile(
            "time|date|elapsed|seconds|minutes|stamp|zeit|datum|heure|temps|hora|fecha|tijd|^[st]$|^min$|^sec$");
    private static final Pattern DATE_ONLY = Pattern.compile("^(date|datum|fecha)\\b(?!.*(time|zeit))");
    private static final Pattern OTHER = Pattern.compile(
            "humid|feucht|^rh\\b|batter|volt|signal|rssi|alarm|target|set ?point|^set\\b|dew|press|^(no|nr|index|row|id|#)\\.?$|event|mark");
    private static final Pattern AMBIENT =
            Pattern.compile("ambient|oven|grill|\\bpit\\b|\\bair\\b|bath|chamber|room|smoker|fridge|ofen|garraum");
    private static final Pattern CELSIUS =
            Pattern.compile("°\\s*c\\b|º\\s*c\\b|\\bdeg\\s*c\\b|[(\\[_ /]c[)\\]]?$|celsius|^c$|℃");
    private static final Pattern FAHRENHEIT =
            Pattern.compile("°\\s*f\\b|º\\s*f\\b|\\bdeg\\s*f\\b|[(\\[_ /]f[)\\]]?$|fahrenheit|^f$|℉");

    /** A column with temperatures. */
    record Probe(int index, String name, Optional<TemperatureUnit> unit, boolean ambient) {}

    private final int timeIndex;
    private final int clockIndex;
    private final String timeName;
    private final List<Probe> probes;

    private LogColumns(int timeIndex, int clockIndex, String timeName, List<Probe> probes) {
        this.timeIndex = timeIndex;
        this.clockIndex = clockIndex;
        this.timeName = timeName;
        this.probes = List.copyOf(probes);
    }

    /** Reads a header. Without a recognized time column the first column counts as the time. */
    static LogColumns fromHeader(List<String> header) {
        int time = -1;
        int clock = -1;
        List<Probe> probes = new ArrayList<>();
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i);
            String lower = name.toLowerCase(Locale.ROOT).strip();
            boolean namesUnit = unit(lower).isPresent();
            if (!namesUnit && TIME.matcher(lower).find()) {
                if (time < 0) {
                    time = i;
                } else if (clock < 0
                        && DATE_ONLY
                                .matcher(header.get(time).toLowerCase(Locale.ROOT))
                                .find()) {
                    clock = i;
                }
            } else if (!lower.isEmpty() && !OTHER.matcher(lower).find()) {
                probes.add(
                        new Probe(i, name, unit(lower), AMBIENT.matcher(lower).find()));
            }
        }
        if (time < 0) {
            time = probes.isEmpty() ? 0 : probes.remove(0).index();
        }
        return new LogColumns(time, clock, header.isEmpty() ? "" : header.get(time), probes);
    }

    /** Without a header: the time comes first, every other column is a probe. */
    static LogColumns withoutHeader(int count, boolean dateThenClock) {
        int first = dateThenClock ? 2 : 1;
        List<Probe> probes = new ArrayList<>();
        for (int i = first; i < count; i++) {
            probes.add(new Probe(i, "column " + (i + 1), Optional.empty(), false));
        }
        return new LogColumns(0, dateThenClock ? 1 : -1, "", probes);
    }

    private static Optional<TemperatureUnit> unit(String lower) {
        boolean celsius = CELSIUS.matcher(lower).find();
        boolean fahrenheit = FAHRENHEIT.matcher(lower).find();
        if (celsius == fahrenheit) {
            return Optional.empty();
        }
        return Optional.of(celsius ? TemperatureUnit.C : TemperatureUnit.F);
    }

    /** Returns the unit of elapsed times that the header names. */
    Optional<TimeUnit> timeUnit() {
        String lower = timeName.toLowerCase(Locale.ROOT);
        if (lower.matches(".*(\\bms\\b|_ms$|millis).*")) {
            return Optional.of(TimeUnit.MS);
        }
        if (lower.matches(".*(\\bmin\\b|_min$|minute|minuten).*")) {
            return Optional.of(TimeUnit.MIN);
        }
        if (lower.matches(".*(\\bs\\b|_s$|\\bsec\\b|second|sekunden).*")) {
            return Optional.of(TimeUnit.S);
        }
        return lower.matches(".*(\\bh\\b|_h$|hour|stunden).*") ? Optional.of(TimeUnit.H) : Optional.empty();
    }

    /** Returns how a header says that two-part times are meant: 60 for min:s, 3600 for h:min, or empty. */
    Optional<Integer> twoPartSeconds() {
        String lower = timeName.toLowerCase(Locale.ROOT);
        if (lower.matches(".*(mm?:ss|min:s).*") && !lower.matches(".*h:.*")) {
            return Optional.of(60);
        }
        return lower.matches(".*(hh?:mm|h:min).*") ? Optional.of(3600) : Optional.empty();
    }

    int timeIndex() {
        return timeIndex;
    }

    /** Returns the column with the time of day beside a date column, or -1. */
    int clockIndex() {
        return clockIndex;
    }

    String timeName() {
        return timeName;
    }

    List<Probe> probes() {
        return probes;
    }
}
