package io.github.saltfront.app.follow;

import io.github.saltfront.app.probe.LogOptions;
import io.github.saltfront.app.probe.LogReadException;
import io.github.saltfront.app.probe.TemperatureLogReader;
import io.github.saltfront.live.Reading;
import io.github.saltfront.safety.TemperatureLog;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The file of a logger, with a column for time and one for each probe. Columns that say where the probe is (core, oven-air, with
 * or without a unit behind) are taken as such; of others the lowest at each time is taken for the core.
 */
final class LoggerFile {
    /** Times that are small are counted from when the meat went in; others are a clock's, and count from the first row [s]. */
    private static final double LONGEST_ELAPSED = 4 * 86400.0;

    private LoggerFile() {}

    /** Returns whether the first line names columns, none of them "value". */
    static boolean isOne(String text) {
        String head = head(text).toLowerCase(Locale.ROOT);
        return head.matches("\"?(time|date|elapsed|min|sec|zeit).*") && !head.matches(".*\\bvalue\\b.*");
    }

    private static String head(String text) {
        return text.lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .findFirst()
                .orElse("");
    }

    /** Reads a file; the readings of all its probes. */
    static List<Reading> readings(byte[] content, String text) {
        Map<String, String> columns = new LinkedHashMap<>();
        for (String cell : head(text).split("[,;\t]")) {
            String name = cell.strip().replaceAll("^\"|\"$", "");
            String place = name.toLowerCase(Locale.ROOT)
                    .replaceFirst("[ _]*[(\\[]?°?[cf][)\\]]?$", "")
                    .replace('_', '-')
                    .replace(' ', '-');
            if (ReadingCheck.ROLES.containsKey(place)) {
                columns.put(place, name);
            }
        }
        try {
            List<Reading> readings = new ArrayList<>();
            if (columns.isEmpty()) {
                add(readings, content, SentReading.USUAL_PROBE, LogOptions.NONE);
            }
            for (Map.Entry<String, String> column : columns.entrySet()) {
                add(readings, content, column.getKey(), LogOptions.NONE.withProbe(column.getValue()));
            }
            return readings;
        } catch (LogReadException | IllegalArgumentException e) {
            throw Problems.of("", String.valueOf(e.getMessage()));
        }
    }

    private static void add(List<Reading> readings, byte[] content, String place, LogOptions options)
            throws LogReadException {
        TemperatureLog log = TemperatureLogReader.read(content, options).log();
        double start = Math.abs(log.time(0)) < LONGEST_ELAPSED ? 0 : log.time(0);
        Reading.Role role = ReadingCheck.ROLES.getOrDefault(place, Reading.Role.CORE);
        for (int i = 0; i < log.size(); i++) {
            readings.add(new Reading(place, role, log.time(i) - start, log.reading(i)));
        }
    }
}
