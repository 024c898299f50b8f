package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.learn.SaltTaste;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityParser;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;

/** The figures of one cook, planned beside measured, under names with their units. What is not known is left out. */
public final class CookFigures {
    /** Names of all figures in the order of tables. */
    public static final List<String> NAMES = List.of(
            "id",
            "title",
            "cooked",
            "profile",
            "butcher",
            "tags",
            "meat",
            "treatment",
            "salting_h",
            "appliance",
            "setting_c",
            "oven_c",
            "refrigerator_c",
            "half_thickness_mm",
            "thickness_mm",
            "planned_pull_c",
            "pull_c",
            "planned_time_low_min",
            "planned_time_min",
            "planned_time_high_min",
            "time_min",
            "planned_peak_c",
            "peak_c",
            "raw_g",
            "salted_g",
            "cooked_g",
            "planned_gain_low_pct",
            "planned_gain_pct",
            "planned_gain_high_pct",
            "gain_pct",
            "planned_loss_low_pct",
            "planned_loss_pct",
            "planned_loss_high_pct",
            "loss_pct",
            "planned_salt_pct",
            "tasters",
            "salt_just_right_pct",
            "salt_too_weak_pct",
            "salt_too_strong_pct",
            "juice_mean",
            "tenderness_mean",
            "crispness_mean",
            "notes");

    private static final List<String> SAME =
            List.of("treatment", "salting_h", "appliance", "setting_c", "half_thickness_mm");

    private CookFigures() {}

    /**
     * Returns the figures of a cook.
     *
     * @param cook the cook
     * @return text or number by name, in the order of {@link #NAMES}
     */
    public static Map<String, Object> of(NotedCook cook) {
        JsonNode note = NotebookJson.read(cook.document());
        JsonNode planned = NotebookJson.read(cook.planned());
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("id", cook.id());
        all.put("title", cook.title());
        all.put("cooked", cook.cookedOn());
        all.put("profile", cook.profile());
        text(all, "butcher", note.path("butcher"));
        if (!cook.tags().isEmpty()) {
            all.put("tags", String.join(" ", cook.tags()));
        }
        text(all, "meat", planned.path("name"));
        SAME.forEach(name -> value(all, name, planned.path(name)));
        for (String name : List.of("pull_c", "time_low_min", "time_min", "time_high_min", "peak_c", "gain_low_pct")) {
            value(all, "planned_" + name, planned.path(name));
        }
        for (String name :
                List.of("gain_pct", "gain_high_pct", "loss_low_pct", "loss_pct", "loss_high_pct", "salt_pct")) {
            value(all, "planned_" + name, planned.path(name));
        }
        measured(all, note.path("measured"));
        ratings(all, note.path("ratings"));
        text(all, "notes", note.path("notes"));
        Map<String, Object> sorted = new LinkedHashMap<>();
        NAMES.forEach(name -> {
            Object value = all.get(name);
            if (value != null) {
                sorted.put(name, value);
            }
        });
        return sorted;
    }

    private static void text(Map<String, Object> all, String name, JsonNode node) {
        if (node.isString() && !node.asString().isEmpty()) {
            all.put(name, node.asString());
        }
    }

    private static void value(Map<String, Object> all, String name, JsonNode node) {
        if (node.isNumber()) {
            all.put(name, node.asDouble());
        } else {
            text(all, name, node);
        }
    }

    private static void measured(Map<String, Object> all, JsonNode measured) {
        quantity(all, "thickness_mm", measured.path("thickness"), Dimension.LENGTH, 1e3);
        temperature(all, "refrigerator_c", measured.path("refrigerator"));
        temperature(all, "oven_c", measured.path("oven"));
        temperature(all, "pull_c", measured.path("pull").path("reading"));
        quantity(all, "time_min", measured.path("pull").path("time"), Dimension.TIME, 1.0 / 60);
        temperature(all, "peak_c", measured.path("peak"));
        quantity(all, "raw_g", measured.path("raw"), Dimension.MASS, 1e3);
        quantity(all, "salted_g", measured.path("salted"), Dimension.MASS, 1e3);
        quantity(all, "cooked_g", measured.path("cooked"), Dimension.MASS, 1e3);
        change(all, "gain_pct", "salted_g", 1);
        change(all, "loss_pct", "cooked_g", -1);
    }

    private static void change(Map<String, Object> all, String name, String after, double sign) {
        if (all.get("raw_g") instanceof Double raw && all.get(after) instanceof Double mass) {
            all.put(name, 100 * sign * (mass / raw - 1));
        }
    }

    private static void quantity(
            Map<String, Object> all, String name, JsonNode node, Dimension dimension, double factor) {
        if (node.isString()) {
            all.put(name, factor * QuantityParser.parse(node.asString(), dimension));
        }
    }

    private static void temperature(Map<String, Object> all, String name, JsonNode node) {
        if (node.isString()) {
            all.put(name, Temperature.toCelsius(QuantityParser.parse(node.asString(), Dimension.TEMPERATURE)));
        }
    }

    private static void ratings(Map<String, Object> all, JsonNode ratings) {
        if (ratings.isEmpty()) {
            return;
        }
        all.put("tasters", (double) ratings.size());
        List<String> said = new ArrayList<>();
        ratings.forEach(r -> {
            if (r.path("saltiness").isString()) {
                said.add(r.path("saltiness").asString());
            }
        });
        if (!said.isEmpty()) {
            all.put("salt_just_right_pct", share(said, SaltTaste.Rating.JUST_RIGHT.words()));
            all.put("salt_too_weak_pct", share(said, "weak"));
            all.put("salt_too_strong_pct", share(said, "strong"));
        }
        for (String name : List.of("juice", "tenderness", "crispness")) {
            OptionalDouble mean = ratings.valueStream()
                    .map(r -> r.path(name))
                    .filter(JsonNode::isNumber)
                    .mapToDouble(JsonNode::asDouble)
                    .average();
            mean.ifPresent(value -> all.put(name + "_mean", value));
        }
    }

    private static double share(List<String> said, String end) {
        return 100.0 * said.stream().filter(words -> words.endsWith(end)).count() / said.size();
    }
}
