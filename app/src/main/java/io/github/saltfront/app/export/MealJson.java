package io.github.saltfront.app.export;

import io.github.saltfront.plan.Meal;
import io.github.saltfront.units.Temperature;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** A meal as a tree for JSON. Its names are a contract; see meal.schema.json. */
public final class MealJson {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ISO_OFFSET_DATE_TIME;

    private MealJson() {}

    /**
     * Returns the meal as nested maps and lists.
     *
     * @param meal the meal
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(Meal meal, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", "saltfront-meal");
        json.put("version", 1);
        json.put("program_version", programVersion);
        json.put(
                "dishes",
                meal.courses().stream()
                        .map(course -> course(course, programVersion))
                        .toList());
        json.put("clock", meal.clock().stream().map(MealJson::step).toList());
        json.put("uses", meal.uses().stream().map(MealJson::use).toList());
        json.put("notes", meal.notes());
        return json;
    }

    private static Map<String, Object> course(Meal.Course course, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", course.dish().name());
        json.put("waits_min", course.delay() / 60);
        json.put("plan", PlanJson.of(course.plan(), programVersion));
        return json;
    }

    private static Map<String, Object> step(Meal.Step step) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("time", TIME.format(step.step().time()));
        json.put("dish", step.dish());
        json.put("kind", step.step().kind().name().toLowerCase(Locale.ROOT));
        json.put("words", step.step().words());
        json.put("work_min", step.minutes());
        return json;
    }

    private static Map<String, Object> use(Meal.Use use) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("appliance", use.appliance());
        json.put("dish", use.dish());
        json.put("setting_c", Temperature.toCelsius(use.setting()));
        json.put("from", TIME.format(use.from()));
        json.put("to", TIME.format(use.to()));
        return json;
    }
}
