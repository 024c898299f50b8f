package io.github.saltfront.app.follow;

import io.github.saltfront.app.store.StoredReading;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The record of a cook as files. */
final class CookLog {
    static final String SCHEMA = "saltfront.cook-log";
    private static final int SCHEMA_VERSION = 1;

    private CookLog() {}

    static String csv(RunningCook cook) {
        Set<String> fahrenheit = cook.fahrenheit();
        Set<String> probes = new LinkedHashSet<>();
        TreeMap<Long, Map<String, Double>> rows = new TreeMap<>();
        for (StoredReading reading : cook.readings()) {
            probes.add(reading.probe());
            String unit = fahrenheit.contains(reading.probe()) ? "F" : reading.unit();
            double celsius = Temperature.toCelsius(ReadingCheck.kelvin(reading.value(), unit));
            rows.computeIfAbsent(reading.time(), time -> new LinkedHashMap<>())
                    .merge(reading.probe(), celsius, Math::min);
        }
        StringBuilder text = new StringBuilder("# ")
                .append(oneLine(cook.stored().title()))
                .append(", in the heat from ")
                .append(CookJson.iso(cook.stored().started()))
                .append('\n');
        text.append("time_s");
        probes.forEach(probe -> text.append(',').append(cell(probe + "_c")));
        text.append('\n');
        rows.forEach((time, values) -> {
            text.append(number(time / 1000.0));
            probes.forEach(probe -> text.append(',')
                    .append(Optional.ofNullable(values.get(probe))
                            .map(CookLog::number)
                            .orElse("")));
            text.append('\n');
        });
        return text.toString();
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\R", " ");
    }

    /** A spreadsheet takes a cell that begins with a sign for a formula. */
    private static String cell(String text) {
        String safe = text.matches("[=+\\-@].*") ? "'" + text : text;
        return safe.matches("[^,;\"\\t]*") ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.replaceFirst("\\.?0+$", "");
    }

    static Map<String, Object> json(RunningCook cook, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        json.put("id", cook.id());
        json.put("title", cook.stored().title());
        json.put("started", CookJson.iso(cook.stored().started()));
        cook.stored().ended().ifPresent(time -> json.put("ended", CookJson.iso(time)));
        json.put("speed", cook.stored().speed());
        json.put("request", FollowJson.stored(cook.stored().request()));
        json.put("options", FollowJson.stored(cook.stored().options()));
        List<Map<String, Object>> readings = new ArrayList<>();
        for (StoredReading reading : cook.readings()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("probe", reading.probe());
            one.put("role", reading.role());
            one.put("time_s", reading.time() / 1000.0);
            one.put("value", reading.value());
            one.put("unit", reading.unit());
            one.put("source", reading.source());
            one.put("received", CookJson.iso(reading.received()));
            readings.add(one);
        }
        json.put("readings", readings);
        json.put("events", CookJson.events(cook));
        json.put("alarms", CookJson.told(cook).get("alarms"));
        return json;
    }
}
