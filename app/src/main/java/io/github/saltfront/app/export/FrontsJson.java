package io.github.saltfront.app.export;

import io.github.saltfront.plan.Fronts;
import io.github.saltfront.units.Temperature;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** The two fronts of a plan under the names of the file contract: time by depth, for pictures made elsewhere. */
public final class FrontsJson {
    /** Name of the contract. */
    public static final String SCHEMA = "saltfront.fronts";

    /** Version of the contract; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    private FrontsJson() {}

    /**
     * Returns the fronts as nested maps and lists.
     *
     * @param fronts the fronts
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(Fronts fronts, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        json.put("name", fronts.plan().request().food().meat().name());
        json.put("depth_total_mm", rounded(fronts.depth() * 1000, 1000));
        json.put("two_faced", fronts.isTwoFaced());
        json.put(
                "pull_temperature_c",
                rounded(Temperature.toCelsius(fronts.plan().cooking().pullTemperature()), 10));
        json.put("target_salt_pct", rounded(100 * fronts.plan().salting().target(), 1000));
        json.put("stages", fronts.spans().stream().map(FrontsJson::stage).toList());
        json.put("time_s", series(fronts, fronts::time, 1, 10));
        json.put("depth_mm", rounded(fronts.depths(), 1000, 0, 1000));
        List<double[]> temperatures = new ArrayList<>();
        List<double[]> salts = new ArrayList<>();
        for (int i = 0; i < fronts.size(); i++) {
            temperatures.add(rounded(fronts.temperatures(i), 1, -Temperature.ZERO_CELSIUS, 100));
            salts.add(rounded(fronts.salts(i), 100, 0, 10000));
        }
        json.put("temperature_c", temperatures);
        json.put("salt_pct", salts);
        json.put("kill_share_of_hold", series(fronts, fronts::killShare, 1, 10000));
        json.put("weight_pct", series(fronts, fronts::weight, 100, 100));
        return json;
    }

    private static Map<String, Object> stage(Fronts.Span span) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", span.kind());
        json.put("start_s", rounded(span.start(), 10));
        json.put("end_s", rounded(span.end(), 10));
        json.put("start", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(span.clock()));
        return json;
    }

    private static double[] series(Fronts fronts, IntToDoubleFunction of, double factor, double steps) {
        double[] values = new double[fronts.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = rounded(factor * of.applyAsDouble(i), steps);
        }
        return values;
    }

    private static double[] rounded(double[] values, double factor, double offset, double steps) {
        double[] result = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            result[i] = rounded(factor * values[i] + offset, steps);
        }
        return result;
    }

    /** Rounded to a share of one; more digits than the model is good for only make the file long. */
    private static double rounded(double value, double steps) {
        return Math.rint(value * steps) / steps;
    }
}
