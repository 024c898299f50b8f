package io.github.saltfront.app.export;

import io.github.saltfront.plan.BrineSheet;
import io.github.saltfront.plan.CookSequence;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Loads;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.plan.SolidCheck;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.units.Temperature;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A plan under the names of the file contract. */
public final class PlanJson {
    /** Name of the contract. */
    public static final String SCHEMA = "saltfront.plan";

    /** Version of the contract; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    private static final double CELSIUS = -Temperature.ZERO_CELSIUS;

    private PlanJson() {}

    /**
     * Returns the plan as nested maps and lists.
     *
     * @param plan the plan
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(Plan plan, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        json.put("food", food(plan.request().food()));
        plan.thawing().ifPresent(thawing -> json.put("thaw_min", interval(thawing.time(), 1.0 / 60, 0)));
        json.put("salting", SaltJson.of(plan.request(), plan.salting()));
        json.put("cooking", cooking(plan));
        json.put("result", result(plan.result()));
        json.put("clock", plan.clock().stream().map(PlanJson::step).toList());
        json.put("cautions", plan.cautions().stream().map(c -> c.text()).toList());
        json.put("assumptions", plan.request().assumptions());
        json.put("ensemble", Map.of("members", plan.members(), "seed", plan.seed()));
        return json;
    }

    private static Map<String, Object> food(Request.Food food) {
        Map<String, Object> json = new LinkedHashMap<>();
        food.cut().ifPresent(cut -> json.put("cut", cut.id()));
        json.put("name", food.meat().name());
        json.put("pieces", food.pieces());
        json.put("piece_mass_g", food.pieceMass() * 1000);
        json.put("half_thickness_mm", food.shape().halfThickness() * 1000);
        json.put("start_temperature_c", Temperature.toCelsius(food.startTemperature()));
        return json;
    }

    private static Map<String, Object> cooking(Plan plan) {
        Plan.CookPlan cook = plan.cooking();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("appliance", plan.request().cook().appliance().id());
        json.put("setting_c", Temperature.toCelsius(plan.request().cook().setting()));
        json.put("altitude_m", plan.request().cook().altitude());
        json.put("wished_core_c", Temperature.toCelsius(cook.wished()));
        json.put("pull_temperature_c", Temperature.toCelsius(cook.pullTemperature()));
        json.put("raised_for_safety", cook.isRaised());
        json.put("by_time_alone", !plan.request().equipment().thermometer());
        json.put("by_hold", plan.endsByHold());
        if (cook.loads().count() > 1) {
            json.put("loads", loads(cook.loads()));
        }
        json.put("reasons", cook.reasons());
        json.put("time_to_pull_min", interval(cook.timeToPull(), 1.0 / 60, 0));
        json.put("peak_core_temperature_c", interval(cook.peak(), 1, CELSIUS));
        json.put("time_to_peak_min", interval(cook.timeToPeak(), 1.0 / 60, 0));
        json.put("time_near_target_min", interval(cook.timeNearTarget(), 1.0 / 60, 0));
        json.put("rest_min", cook.rest() / 60);
        json.put("served_core_temperature_c", interval(cook.served(), 1, CELSIUS));
        json.put("rest_under_foil", plan.request().cook().sequence().rest().foil());
        json.put("before", steps(plan.request().cook().sequence().before()));
        json.put("after", steps(plan.request().cook().sequence().after()));
        cook.check()
                .ifPresentOrElse(
                        check -> json.put("check_3d", check(check)),
                        () -> SolidCheck.whyNot(plan.request()).ifPresent(why -> json.put("no_check_3d", why)));
        Map<String, Object> safety =
                SafetyJson.verdict(cook.verdict(), cook.holdShare().low());
        cook.holdAtTarget().ifPresent(hold -> safety.put("hold_at_peak_s", hold));
        SafetyJson.limits(safety, cook.warmth().limits());
        safety.put("come_up_min", interval(cook.warmth().comeUp(), 1.0 / 60, 0));
        safety.put("warm_before_heat_min", interval(cook.warmth().before(), 1.0 / 60, 0));
        safety.put("hot_after_min", interval(cook.warmth().hotAfter(), 1.0 / 60, 0));
        safety.put("serving", serving());
        json.put("safety", safety);
        return json;
    }

    private static Map<String, Object> loads(Loads loads) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("count", loads.count());
        json.put("pieces", loads.pieces());
        json.put("cycle_min", loads.cycle() / 60);
        json.put("first_kept_hot_min", loads.delay() / 60);
        return json;
    }

    private static List<Object> steps(List<CookSequence.Step> steps) {
        List<Object> all = new ArrayList<>();
        for (CookSequence.Step step : steps) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("appliance", step.appliance().id());
            json.put("setting_c", Temperature.toCelsius(step.setting()));
            json.put("time_min", step.time() / 60);
            all.add(json);
        }
        return all;
    }

    private static Map<String, Object> serving() {
        OfficialLimits.Serving rules = OfficialLimits.serving();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("hot_holding_c", Temperature.toCelsius(rules.hotHolding()));
        json.put("out_at_most_min", rules.out() / 60);
        json.put("out_in_hot_air_at_most_min", rules.outInHotAir() / 60);
        return json;
    }

    private static Map<String, Object> check(SolidCheck check) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("solver", "3d");
        json.put("cells", check.cells());
        json.put("time_to_pull_min", check.time() / 60);
        json.put("layers_time_to_pull_min", check.layerTime() / 60);
        json.put("peak_core_temperature_c", Temperature.toCelsius(check.peak()));
        json.put("layers_peak_core_temperature_c", Temperature.toCelsius(check.layerPeak()));
        json.put("hold_share_min_pct", 100 * check.holdShare());
        json.put("layers_hold_share_min_pct", 100 * check.layerHoldShare());
        return json;
    }

    private static Map<String, Object> result(Plan.Result result) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("raw_salt_mean_pct", interval(result.rawMeanSalt(), 100, 0));
        json.put("salt_mean_pct", interval(result.meanSalt(), 100, 0));
        json.put("salt_outer_5mm_pct", interval(result.outerSalt(), 100, 0));
        json.put("salt_core_pct", interval(result.coreSalt(), 100, 0));
        json.put("mass_gain_pct", interval(result.massGain(), 100, 0));
        json.put("mass_loss_pct", interval(result.massLoss(), 100, 0));
        json.put("evaporated_pct", interval(result.evaporated(), 100, 0));
        json.put("quality", QualitySection.json(result.quality()));
        double sodium = result.servingSodium().median();
        Map<String, Object> table = new LinkedHashMap<>();
        table.put("serving_cooked_g", BrineSheet.SERVING * 1000);
        table.put("sodium_mg", interval(result.servingSodium(), 1e6, 0));
        table.put("sodium_declared_mg", Math.rint(Sodium.declared(sodium) * 1e6));
        table.put("daily_value_pct", Sodium.dailyValuePercent(sodium));
        result.juiceSalt().ifPresent(juice -> table.put("pan_juice_salt_pct", interval(juice, 100, 0)));
        json.put("table", table);
        return json;
    }

    static Map<String, Double> interval(Interval interval, double factor, double offset) {
        Interval shown = interval.scaled(factor, offset);
        Map<String, Double> json = new LinkedHashMap<>();
        json.put("low", shown.low());
        json.put("median", shown.median());
        json.put("high", shown.high());
        return json;
    }

    private static Map<String, Object> step(Plan.Step step) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("time", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(step.time()));
        json.put("kind", step.kind().name().toLowerCase(Locale.ROOT));
        json.put("words", step.words());
        json.put("active", step.active());
        return json;
    }
}
