package io.github.saltfront.app.export;

import io.github.saltfront.plan.Outcome;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.plan.Sensitivity;
import io.github.saltfront.plan.Slack;
import io.github.saltfront.plan.Way;
import io.github.saltfront.plan.Wish;
import io.github.saltfront.units.Temperature;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Alternatives, what matters most and the slack of a plan, under the names of the file contract. */
public final class AdviceJson {
    private AdviceJson() {}

    /**
     * Returns a plan with its advice.
     *
     * @param found the plan and its alternatives
     * @param programVersion version of the program
     * @return content for a JSON writer: that of {@link PlanJson} and more
     */
    public static Map<String, Object> of(PlanSearch.Found found, String programVersion) {
        Map<String, Object> json = PlanJson.of(found.plan(), programVersion);
        json.put("slack", slack(found.plan()));
        json.put(
                "sensitivities",
                found.plan().sensitivities().stream()
                        .map(AdviceJson::sensitivity)
                        .toList());
        json.put(
                "levers",
                found.levers().stream()
                        .map(lever -> Map.of("change", lever.change(), "effect", lever.effect()))
                        .toList());
        found.compared().ifPresent(outcome -> json.put("compared", outcome(outcome)));
        json.put(
                "alternatives",
                found.alternatives().stream().map(a -> alternative(a, found)).toList());
        Map<String, Object> screening = new LinkedHashMap<>();
        screening.put("tried", found.tried());
        Map<String, Object> dropped = new LinkedHashMap<>();
        for (PlanSearch.Dropped reason : PlanSearch.Dropped.values()) {
            dropped.put(key(reason), found.dropped().getOrDefault(reason, 0));
        }
        screening.put("dropped", dropped);
        json.put("screening", screening);
        return json;
    }

    private static Map<String, Object> slack(Plan plan) {
        Slack slack = Slack.of(plan);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("early_min", slack.early() / 60);
        json.put("bath_min", slack.bath() / 60);
        json.put("words", slack.words(plan));
        return json;
    }

    private static Map<String, Object> sensitivity(Sensitivity sensitivity) {
        Map<String, Object> json = new LinkedHashMap<>();
        double effect = Math.abs(sensitivity.effect());
        switch (sensitivity.result()) {
            case TIME_TO_PULL -> {
                json.put("result", "time_to_pull_min");
                json.put("effect", effect / 60);
            }
            case MEAN_SALT -> {
                json.put("result", "mean_salt_pct");
                json.put("effect", 100 * effect);
            }
            case MASS_LOSS -> {
                json.put("result", "mass_loss_pct");
                json.put("effect", 100 * effect);
            }
        }
        json.put("input", key(sensitivity.input()));
        json.put("words", sensitivity.input().words());
        json.put("share_of_variance", sensitivity.share());
        return json;
    }

    private static Map<String, Object> alternative(PlanSearch.Alternative alternative, PlanSearch.Found found) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("title", WayWords.title(alternative.way(), found.plan()));
        json.put("balance", WayWords.balance(alternative, found.outcome()));
        json.put("wins", keys(alternative.wins()));
        json.put("loses", keys(alternative.loses()));
        Way way = alternative.way();
        json.put("treatment", key(way.treatment()));
        way.strength().ifPresent(s -> json.put("strength_pct_of_water", 100 * s));
        way.time().ifPresent(t -> json.put("time_min", t / 60));
        json.put("appliance", way.appliance().id());
        json.put("setting_c", Temperature.toCelsius(way.setting()));
        way.core().ifPresent(c -> json.put("core_c", Temperature.toCelsius(c)));
        json.put("outcome", outcome(alternative.outcome()));
        return json;
    }

    private static Map<String, Object> outcome(Outcome outcome) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("weight_left_pct", 100 * outcome.weightLeft());
        json.put("tenderness", 100 * outcome.tenderness());
        json.put("salt_evenness_pct", 100 * outcome.evenness());
        json.put("outside_c", Temperature.toCelsius(outcome.outside()));
        json.put("work_min", outcome.work());
        json.put("whole_time_min", outcome.wholeTime() / 60);
        json.put("sodium_mg", outcome.sodium() * 1e6);
        json.put("mean_salt_pct", 100 * outcome.meanSalt());
        json.put("pull_temperature_c", Temperature.toCelsius(outcome.pullTemperature()));
        return json;
    }

    private static List<String> keys(List<Wish> wishes) {
        return wishes.stream().map(Wish::key).toList();
    }

    private static String key(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
