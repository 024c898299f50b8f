package io.github.saltfront.app.export;

import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.TimedDay;
import io.github.saltfront.plan.TimedDays;
import io.github.saltfront.units.Temperature;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The day of a plan with stages of other lengths, under the names of the file contract. */
public final class TimedDayJson {
    /** Name of the contract. */
    public static final String SCHEMA = "saltfront.stages";

    /** Version of the contract; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    private static final double CELSIUS = -Temperature.ZERO_CELSIUS;

    private TimedDayJson() {}

    /**
     * Returns the day as nested maps and lists.
     *
     * @param days the days of the plan
     * @param day the one that is told
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(TimedDays days, TimedDay day, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        json.put("members", day.members());
        json.put("pull_temperature_c", rounded(Temperature.toCelsius(day.pullTemperature()), 10));
        json.put("time_to_pull_min", interval(day.timeToPull(), 1.0 / 60, 0, 10));
        json.put("peak_core_temperature_c", interval(day.peak(), 1, CELSIUS, 10));
        json.put("predicted_met", day.verdict().isMet());
        json.put("headline", day.verdict().headline());
        List<Fronts.Span> spans = day.fronts().spans();
        Fronts.Span last = spans.get(spans.size() - 1);
        json.put(
                "served",
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        last.clock().plusSeconds(Math.round(last.end() - last.start()))));
        List<Map<String, Object>> stages = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            stages.add(stage(days, day, i));
        }
        json.put("stages", stages);
        json.put("fronts", FrontsJson.of(day.fronts(), programVersion));
        return json;
    }

    private static Map<String, Object> stage(TimedDays days, TimedDay day, int i) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", day.fronts().spans().get(i).kind());
        json.put("planned_s", rounded(days.plannedLengths().get(i), 10));
        json.put("shortest_s", days.bounds().get(i).shortest());
        json.put("longest_s", days.bounds().get(i).longest());
        TimedDay.End end = day.ends().get(i);
        json.put("core_temperature_c", interval(end.coreTemperature(), 1, CELSIUS, 10));
        json.put("salt_core_pct", interval(end.coreSalt(), 100, 0, 1000));
        json.put("salt_mean_pct", interval(end.meanSalt(), 100, 0, 1000));
        json.put("weight_pct", interval(end.weight(), 100, 0, 10));
        json.put("kill_share_of_hold", interval(end.holdShare(), 1, 0, 1000));
        return json;
    }

    private static Map<String, Double> interval(Interval interval, double factor, double offset, double steps) {
        Interval scaled = interval.scaled(factor, offset);
        Map<String, Double> json = new LinkedHashMap<>();
        json.put("low", rounded(scaled.low(), steps));
        json.put("median", rounded(scaled.median(), steps));
        json.put("high", rounded(scaled.high(), steps));
        return json;
    }

    private static double rounded(double value, double steps) {
        return Math.rint(value * steps) / steps;
    }
}
