package io.github.saltfront.app.notebook;

import io.github.saltfront.app.probe.LogOptions;
import io.github.saltfront.app.probe.LogReadException;
import io.github.saltfront.app.probe.TemperatureLogReader;
import io.github.saltfront.safety.TemperatureLog;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * Readings of the thermometer in the meat, thinned for keeping.
 *
 * @param timesS times since the first reading [s]
 * @param coreC readings [°C], as many
 */
public record CookReadings(List<Double> timesS, List<Double> coreC) {
    private static final Phrases PHRASES = Phrases.of(CookReadings.class);

    /** Most readings that are kept of one cook [-]. */
    public static final int MOST = 2000;

    /** Largest log [byte]. */
    public static final int LARGEST_LOG = 5_000_000;

    /** Copies the lists and checks them. */
    public CookReadings {
        timesS = List.copyOf(timesS);
        coreC = List.copyOf(coreC);
        if (timesS.size() != coreC.size() || timesS.size() > MOST) {
            throw new IllegalArgumentException(
                    PHRASES.say("readings-need-as-many-times", MOST, timesS.size(), coreC.size()));
        }
        for (double value : timesS) {
            requireFinite(value);
        }
        for (double value : coreC) {
            requireFinite(value);
        }
    }

    private static void requireFinite(double value) {
        if (!(Math.abs(value) < 1e9)) {
            throw new IllegalArgumentException(PHRASES.say("readings-must-be-numbers-got", value));
        }
    }

    /**
     * Reads a log, the lowest of all probes at each time.
     *
     * @param log the log as CSV
     * @return its readings, thinned evenly
     * @throws IllegalArgumentException if it cannot be read
     */
    public static CookReadings ofLog(byte[] log) {
        if (log.length > LARGEST_LOG) {
            throw new IllegalArgumentException(PHRASES.say("got-a-log-of-mb", log.length / 1_000_000));
        }
        try {
            TemperatureLog read =
                    TemperatureLogReader.read(log, LogOptions.NONE).log();
            List<Double> times = new ArrayList<>();
            List<Double> core = new ArrayList<>();
            int stride = Math.max(1, (read.size() + MOST - 1) / MOST);
            for (int i = 0; i < read.size(); i += stride) {
                times.add(read.time(i) - read.time(0));
                core.add(Temperature.toCelsius(read.reading(i)));
            }
            return new CookReadings(times, core);
        } catch (LogReadException e) {
            throw new IllegalArgumentException(PHRASES.say("log", e.getMessage()), e);
        }
    }

    /**
     * Reads what {@link #text} wrote.
     *
     * @param json the JSON; an object without keys for no readings
     * @return the readings
     */
    public static CookReadings read(JsonNode json) {
        List<Double> times = new ArrayList<>();
        List<Double> core = new ArrayList<>();
        json.path("time_s").forEach(t -> times.add(t.asDouble(Double.NaN)));
        json.path("core_c").forEach(t -> core.add(t.asDouble(Double.NaN)));
        return new CookReadings(times, core);
    }

    /** Returns the readings as JSON. */
    String text() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("time_s", timesS);
        json.put("core_c", coreC);
        return NotebookJson.text(json);
    }
}
