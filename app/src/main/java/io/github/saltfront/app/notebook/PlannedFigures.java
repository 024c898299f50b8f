package io.github.saltfront.app.notebook;

import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.units.Temperature;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** What a plan said, as it is kept beside what was measured. */
final class PlannedFigures {
    private static final double CELSIUS = -Temperature.ZERO_CELSIUS;

    private PlannedFigures() {}

    static Map<String, Object> of(Plan plan) {
        Request request = plan.request();
        Map<String, Object> json = new LinkedHashMap<>();
        request.food().cut().ifPresent(cut -> json.put("cut", cut.id()));
        json.put("name", request.food().meat().name());
        json.put(
                "treatment",
                plan.salting().treatment().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        json.put("salt_g", 1000 * plan.salting().salt());
        json.put("salting_h", plan.salting().time() / 3600);
        json.put("appliance", request.cook().appliance().id());
        json.put("setting_c", Temperature.toCelsius(request.cook().setting()));
        json.put("half_thickness_mm", 1000 * request.food().shape().halfThickness());
        json.put("pull_c", Temperature.toCelsius(plan.cooking().pullTemperature()));
        interval(json, "time", "min", plan.cooking().timeToPull(), 1.0 / 60, 0);
        interval(json, "peak", "c", plan.cooking().peak(), 1, CELSIUS);
        interval(json, "raw_salt", "pct", plan.salting().after(), 100, 0);
        interval(json, "salt", "pct", plan.result().meanSalt(), 100, 0);
        interval(json, "gain", "pct", plan.result().massGain(), 100, 0);
        interval(json, "loss", "pct", plan.result().massLoss(), 100, 0);
        json.put("hold_met", plan.cooking().verdict().isMet());
        return json;
    }

    private static void interval(
            Map<String, Object> json, String name, String unit, Interval interval, double factor, double offset) {
        Interval shown = interval.scaled(factor, offset);
        json.put(name + "_low_" + unit, shown.low());
        json.put(name + "_" + unit, shown.median());
        json.put(name + "_high_" + unit, shown.high());
    }
}
