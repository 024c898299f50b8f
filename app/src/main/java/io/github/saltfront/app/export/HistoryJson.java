package io.github.saltfront.app.export;

import io.github.saltfront.app.request.SimulationFile;
import io.github.saltfront.plan.SimulatedDay;
import io.github.saltfront.transport.Diagnostics;
import io.github.saltfront.transport.History;
import io.github.saltfront.transport.History.Series;
import io.github.saltfront.transport.StageRecord;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** A simulated history under the names of the file contract, for JSON and CSV. */
public final class HistoryJson {
    /** Name of the contract. */
    public static final String SCHEMA = "saltfront.simulation";

    /** Version of the contract; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    private HistoryJson() {}

    /**
     * Returns the history as nested maps and lists.
     *
     * @param file what was simulated
     * @param history what came out
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(SimulationFile file, History history, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        Map<String, Object> organism = new LinkedHashMap<>();
        organism.put("d_value_s", file.organism().dValue());
        organism.put(
                "reference_temperature_c", Temperature.toCelsius(file.organism().referenceTemperature()));
        organism.put("z_value_k", file.organism().zValue());
        organism.put(
                "basis",
                file.organismDeclared()
                        ? "declared in the file"
                        : "line on the safe side of the official hold table; the table itself gives official_hold_share_*");
        json.put("organism", organism);
        json.put("series", columns(history));
        json.put("stages", history.stages().stream().map(HistoryJson::stage).toList());
        json.put("safety", SafetyJson.of(SimulatedDay.of(history, file.rule())));
        json.put("diagnostics", diagnostics(history.diagnostics()));
        if (history.depths().length > 0) {
            json.put("field", field(history));
        }
        return json;
    }

    /**
     * Returns the series under their names, in order.
     *
     * @param history the history
     * @return one array a name, all equally long
     */
    public static Map<String, double[]> columns(History history) {
        Map<String, double[]> columns = new LinkedHashMap<>();
        DoubleUnaryOperator celsius = Temperature::toCelsius;
        DoubleUnaryOperator percent = x -> 100 * x;
        DoubleUnaryOperator same = x -> x;
        columns.put("time_s", mapped(history, Series.TIME, same));
        columns.put("core_temperature_c", mapped(history, Series.CORE_TEMPERATURE, celsius));
        columns.put("surface_temperature_c", mapped(history, Series.SURFACE_TEMPERATURE, celsius));
        columns.put("surface2_temperature_c", mapped(history, Series.SECOND_SURFACE_TEMPERATURE, celsius));
        columns.put("mean_temperature_c", mapped(history, Series.MEAN_TEMPERATURE, celsius));
        columns.put("salt_mean_pct", mapped(history, Series.MEAN_SALT, percent));
        columns.put("salt_core_pct", mapped(history, Series.CORE_SALT, percent));
        columns.put("water_loss_pct", mapped(history, Series.MASS_LOSS, percent));
        columns.put("log_reduction_core", mapped(history, Series.CORE_KILL, same));
        columns.put("log_reduction_min", mapped(history, Series.LEAST_KILL, same));
        columns.put("official_hold_share_core_pct", mapped(history, Series.CORE_SECOND_KILL, percent));
        columns.put("official_hold_share_min_pct", mapped(history, Series.LEAST_SECOND_KILL, percent));
        return columns;
    }

    private static double[] mapped(History history, Series series, DoubleUnaryOperator unit) {
        double[] values = history.series(series);
        for (int i = 0; i < values.length; i++) {
            values[i] = unit.applyAsDouble(values[i]);
        }
        return values;
    }

    private static Map<String, Object> stage(StageRecord stage) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", stage.kind());
        json.put("start_s", stage.start());
        json.put("end_s", stage.end());
        json.put("ended_by", endedBy(stage));
        return json;
    }

    private static String endedBy(StageRecord stage) {
        if (!stage.stopped() || stage.rule().kind() == StopRule.Kind.NEVER) {
            return "time";
        }
        return switch (stage.rule().kind()) {
            case CORE_ABOVE -> "core";
            case CORE_BELOW -> "core_below";
            case SURFACE_ABOVE -> "surface";
            case MEAN_SALT_ABOVE -> "mean_salt";
            case CORE_SALT_ABOVE -> "core_salt";
            case KILL_ABOVE -> "log_reduction";
            case NEVER -> "time";
        };
    }

    private static Map<String, Object> diagnostics(Diagnostics diagnostics) {
        Map<String, Object> json = new LinkedHashMap<>();
        boolean solid = diagnostics.solver() == Diagnostics.Solver.SOLID;
        json.put("solver", solid ? "3d" : "1d");
        json.put("steps", diagnostics.steps());
        json.put("rejected_steps", diagnostics.rejected());
        json.put(solid ? "cells" : "layers", diagnostics.cells());
        json.put("core_discretization_error_k", diagnostics.discretizationError());
        Map<String, Object> balance = new LinkedHashMap<>();
        balance.put("energy", diagnostics.balance().energy());
        balance.put("salt", diagnostics.balance().salt());
        balance.put("water", diagnostics.balance().water());
        json.put("balance_errors", balance);
        return json;
    }

    private static Map<String, Object> field(History history) {
        Map<String, Object> json = new LinkedHashMap<>();
        double[] depths = history.depths();
        for (int i = 0; i < depths.length; i++) {
            depths[i] *= 1000;
        }
        json.put("depth_mm", depths);
        List<double[]> temperatures = new ArrayList<>();
        List<double[]> salts = new ArrayList<>();
        for (int sample = 0; sample < history.size(); sample++) {
            double[] t = history.temperatures(sample);
            double[] s = history.salts(sample);
            for (int i = 0; i < t.length; i++) {
                t[i] = Temperature.toCelsius(t[i]);
                s[i] *= 100;
            }
            temperatures.add(t);
            salts.add(s);
        }
        json.put("temperature_c", temperatures);
        json.put("salt_pct", salts);
        return json;
    }

    /**
     * Returns the series as CSV with a header.
     *
     * @param history the history
     * @return the text
     */
    public static String csv(History history) {
        Map<String, double[]> columns = columns(history);
        StringBuilder text = new StringBuilder(String.join(",", columns.keySet())).append('\n');
        for (int i = 0; i < history.size(); i++) {
            boolean first = true;
            for (double[] column : columns.values()) {
                text.append(first ? "" : ",").append(String.format(Locale.ROOT, "%.8g", column[i]));
                first = false;
            }
            text.append('\n');
        }
        return text.toString();
    }
}
