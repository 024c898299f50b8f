package io.github.saltfront.app.export;

import io.github.saltfront.plan.SimulatedDay;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.safety.DayLimits;
import io.github.saltfront.safety.HoldTable;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.PredictedVerdict;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What predictions say of safety under the names of the file contract, the same in a plan and a simulation. */
final class SafetyJson {
    private SafetyJson() {}

    /** Returns the findings of a simulated day. */
    static Map<String, Object> of(SimulatedDay day) {
        Map<String, Object> json = verdict(day.verdict(), day.share());
        json.put("consumer_minimum_reached_in_prediction", day.consumerMinimumReached());
        limits(json, day.limits());
        return json;
    }

    /** Returns a verdict with its rule; nothing in it can be taken for a measurement. */
    static Map<String, Object> verdict(PredictedVerdict verdict, double lowShare) {
        SafetyRule rule = verdict.rule();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("proof", "prediction");
        json.put("predicted_met", verdict.isMet());
        json.put("headline", verdict.headline());
        json.put("reasons", verdict.reasons());
        json.put("note", verdict.kitchenNote());
        json.put("hold_table", rule.officialTable().title());
        json.put("hold_table_edition", rule.officialTable().edition());
        json.put("hold_fulfilled_low_end", lowShare >= 1);
        json.put("hold_share_low_end_pct", Math.min(100, Math.floor(100 * lowShare)));
        json.put("salted", rule.salted());
        if (rule.salted()) {
            Map<String, Object> salt = new LinkedHashMap<>();
            salt.put("factor", HoldTable.SALT_ALLOWANCE);
            salt.put("below_c", Temperature.toCelsius(HoldTable.SALT_CEILING));
            salt.put("basis", "our allowance on top of the official table, no rule");
            json.put("salt_allowance", salt);
        }
        Map<String, Object> official = new LinkedHashMap<>();
        official.put(
                "temperature_c", Temperature.toCelsius(rule.consumerMinimum().temperature()));
        official.put("rest_min", rule.consumerMinimum().rest() / 60);
        official.put("edition", ConsumerMinimum.EDITION);
        json.put("consumer_minimum", official);
        return json;
    }

    /** Adds official limits and, apart from them, growth for information. */
    static void limits(Map<String, Object> json, DayLimits limits) {
        List<Map<String, Object>> checks = new ArrayList<>();
        limits.before().forEach(check -> checks.add(limit("before the heat", check)));
        limits.comeUp().forEach(check -> checks.add(limit("come-up", check)));
        limits.after().forEach(check -> checks.add(limit("after the heat", check)));
        json.put("limits", checks);
        Map<String, Object> information = new LinkedHashMap<>();
        information.put("decides", false);
        information.put("salmonella_growth_to_end_of_heat_no_lag_log10", limits.growthBefore());
        information.put("perfringens_growth_after_heat_no_lag_log10", limits.growthAfter());
        json.put("information", information);
    }

    private static Map<String, Object> limit(String when, LimitCheck check) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("when", when);
        json.put("id", check.id());
        json.put("outcome", check.outcome().name().toLowerCase(Locale.ROOT));
        json.put("time_min", check.measured() / 60);
        json.put("limit_min", check.limit() / 60);
        json.put("text", check.text());
        return json;
    }
}
