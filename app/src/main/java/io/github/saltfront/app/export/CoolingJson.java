package io.github.saltfront.app.export;

import io.github.saltfront.plan.CoolingAdvice;
import io.github.saltfront.plan.CoolingForecast;
import io.github.saltfront.plan.HotFood;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.units.Temperature;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Advice on cooling under the names of the file contract. */
public final class CoolingJson {
    /** Name of the contract. */
    public static final String SCHEMA = "saltfront.cooling";

    /** Version of the contract; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    private CoolingJson() {}

    /**
     * Returns the advice as nested maps and lists.
     *
     * @param advice the advice
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(CoolingAdvice advice, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        json.put("food", food(advice.asked().food()));
        json.put("verdict", verdict(advice));
        json.put("cautious", forecast(advice.asked()));
        json.put("typical", forecast(advice.typical()));
        json.put("changes", advice.changes().stream().map(CoolingJson::change).toList());
        advice.smallestChange().ifPresent(change -> json.put("smallest_change", change(change)));
        json.put("ice_kg", advice.ice());
        Map<String, Object> keeping = new LinkedHashMap<>();
        keeping.put("food", advice.storage().food());
        keeping.put("days_low", advice.storage().daysLow());
        keeping.put("days_high", advice.storage().daysHigh());
        keeping.put("at_most_c", Temperature.toCelsius(Temperature.fromFahrenheit(40)));
        keeping.put("reheat_c", Temperature.toCelsius(advice.reheating().temperature()));
        keeping.put("reheat_edition", ConsumerMinimum.EDITION);
        json.put("keeping", keeping);
        return json;
    }

    private static Map<String, Object> food(HotFood food) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", food.name());
        json.put("kind", food.kind().name().toLowerCase(Locale.ROOT));
        json.put("mass_g", food.mass() * 1000);
        json.put("thickness_mm", food.thickness() * 1000);
        json.put("start_temperature_c", Temperature.toCelsius(food.start()));
        return json;
    }

    private static Map<String, Object> verdict(CoolingAdvice advice) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("predicted_to_keep_limits", advice.asked().keepsLimits());
        json.put("headline", CoolingText.headline(advice));
        json.put("proof", "prediction");
        json.put("note", CoolingText.proof());
        return json;
    }

    private static Map<String, Object> forecast(CoolingForecast forecast) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("medium", forecast.medium().id());
        json.put("medium_temperature_c", Temperature.toCelsius(forecast.medium().temperature()));
        json.put("predicted_to_keep_limits", forecast.keepsLimits());
        limit(json, "to_21_c", forecast.timeToFirst(), forecast.firstStep());
        limit(json, "to_5_c", forecast.timeToTotal(), forecast.total());
        json.put("information_perfringens_growth_no_lag_log10", forecast.growth());
        return json;
    }

    private static void limit(Map<String, Object> json, String name, OptionalDouble taken, LimitCheck check) {
        Map<String, Object> limit = new LinkedHashMap<>();
        taken.ifPresent(seconds -> limit.put("time_min", seconds / 60));
        limit.put("limit_min", check.limit() / 60);
        limit.put("kept", check.outcome() == LimitCheck.Outcome.PASS);
        json.put(name, limit);
    }

    private static Map<String, Object> change(CoolingAdvice.Change change) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("words", change.words());
        change.thickness().ifPresent(thickness -> json.put("portion_thickness_mm", thickness * 1000));
        json.put("forecast", forecast(change.forecast()));
        return json;
    }
}
