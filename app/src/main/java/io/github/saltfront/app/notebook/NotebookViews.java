package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.app.store.StoredPhoto;
import io.github.saltfront.learn.KitchenKnowledge;
import io.github.saltfront.learn.LearnedValue;
import io.github.saltfront.safety.InstrumentCheck;
import io.github.saltfront.safety.InstrumentHistory;
import io.github.saltfront.units.Temperature;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Cooks, comparisons, what was learned and thermometers under the names of the file contract. */
public final class NotebookViews {
    /** Version of the contracts; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    /** Temperature at which a correction is shown [K]: 63 °C, amid the holds. */
    public static final double SHOWN_AT = Temperature.fromCelsius(63);

    private NotebookViews() {}

    private static Map<String, Object> start(String schema, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", schema);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        return json;
    }

    /**
     * Returns a list of cooks.
     *
     * @param cooks the cooks
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> list(List<NotedCook> cooks, String programVersion) {
        Map<String, Object> json = start("saltfront.notebook-list", programVersion);
        json.put("cooks", cooks.stream().map(CookFigures::of).toList());
        return json;
    }

    /**
     * Returns a whole cook.
     *
     * @param cook the cook
     * @param photos its pictures
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> cook(NotedCook cook, List<StoredPhoto> photos, String programVersion) {
        Map<String, Object> json = start("saltfront.cook", programVersion);
        json.putAll(content(cook, photos));
        return json;
    }

    /** What a cook is made of, without the head of a document. */
    static Map<String, Object> content(NotedCook cook, List<StoredPhoto> photos) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", cook.id());
        json.put("created", cook.created());
        json.put("changed", cook.changed());
        json.put("planned_by", cook.programVersion());
        json.put("figures", CookFigures.of(cook));
        json.put("note", NotebookJson.read(cook.document()));
        json.put("planned", NotebookJson.read(cook.planned()));
        json.put("readings", NotebookJson.read(cook.readings()));
        json.put("photos", photos.stream().map(NotebookViews::photo).toList());
        return json;
    }

    private static Map<String, Object> photo(StoredPhoto photo) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", photo.id());
        json.put("caption", photo.caption());
        json.put("width", photo.width());
        json.put("height", photo.height());
        json.put("added", photo.added());
        return json;
    }

    /**
     * Returns cooks side by side.
     *
     * @param cooks two or more cooks
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> compare(List<NotedCook> cooks, String programVersion) {
        Map<String, Object> json = start("saltfront.notebook-compare", programVersion);
        List<Map<String, Object>> figures = cooks.stream().map(CookFigures::of).toList();
        json.put(
                "cooks",
                cooks.stream()
                        .map(cook -> Map.of("id", cook.id(), "title", cook.title(), "cooked", cook.cookedOn()))
                        .toList());
        List<Map<String, Object>> rows = new ArrayList<>();
        for (String name : CookFigures.NAMES) {
            if (figures.stream().anyMatch(f -> f.containsKey(name))
                    && !List.of("id", "notes").contains(name)) {
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("name", name);
                row.put(
                        "values",
                        figures.stream()
                                .map(f -> Optional.ofNullable(f.get(name)).orElse(""))
                                .toList());
                row.put(
                        "differs",
                        figures.stream()
                                        .map(f ->
                                                Optional.ofNullable(f.get(name)).orElse(""))
                                        .distinct()
                                        .count()
                                > 1);
                rows.add(row);
            }
        }
        json.put("rows", rows);
        json.put(
                "readings",
                cooks.stream().map(cook -> NotebookJson.read(cook.readings())).toList());
        json.put(
                "requests",
                cooks.stream()
                        .map(cook -> NotebookJson.read(cook.document()).path("request"))
                        .toList());
        return json;
    }

    /**
     * Returns what was learned.
     *
     * @param profile the kitchen
     * @param known what it learned
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> learned(String profile, KitchenKnowledge known, String programVersion) {
        Map<String, Object> json = start("saltfront.notebook-learned", programVersion);
        json.put("profile", profile);
        List<Map<String, Object>> ovens = new ArrayList<>();
        known.ovens().forEach((id, oven) -> {
            Map<String, Object> own = new LinkedHashMap<>();
            own.put("appliance", id);
            own.put("cooks", oven.cooks());
            own.put("offset_k", value(oven.offset(), 1, 0));
            own.put("coefficient_factor", value(oven.coefficient(), 1, 0));
            ovens.add(own);
        });
        json.put("ovens", ovens);
        known.refrigerator().ifPresent(v -> json.put("refrigerator_c", value(v, 1, -Temperature.ZERO_CELSIUS)));
        known.salt().ifPresent(v -> json.put("raw_salt_pct", value(v, 100, 0)));
        known.thickness()
                .ifPresent(v -> json.put(
                        "thickness_factor",
                        value(
                                new LearnedValue(Math.exp(v.value()), Math.exp(v.low()), Math.exp(v.high()), v.count()),
                                1,
                                0)));
        List<Map<String, Object>> meats = new ArrayList<>();
        known.diffusivities().forEach((id, meat) -> {
            Map<String, Object> own = new LinkedHashMap<>();
            own.put("meat", id);
            own.put("speed_of_salt_factor", value(meat.factor(), 1, 0));
            meats.add(own);
        });
        json.put("meats", meats);
        return json;
    }

    private static Map<String, Object> value(LearnedValue value, double factor, double offset) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("low", value.low() * factor + offset);
        json.put("value", value.value() * factor + offset);
        json.put("high", value.high() * factor + offset);
        json.put("count", value.count());
        return json;
    }

    /**
     * Returns the history of a thermometer.
     *
     * @param instrument its name
     * @param checks its checks
     * @param history the same for the core
     * @param today the day it is
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> thermometer(
            String instrument,
            List<StoredCheck> checks,
            InstrumentHistory history,
            LocalDate today,
            String programVersion) {
        Map<String, Object> json = start("saltfront.thermometer", programVersion);
        json.put("instrument", instrument);
        json.put("days_left", history.daysLeft(today, InstrumentHistory.USUAL_DAYS, SHOWN_AT));
        history.dueOn(InstrumentHistory.USUAL_DAYS, SHOWN_AT).ifPresent(day -> json.put("due", day.toString()));
        history.drift(SHOWN_AT).ifPresent(drift -> json.put("drift_at_63_k", drift));
        json.put("checks", checks.stream().map(NotebookViews::check).toList());
        return json;
    }

    private static Map<String, Object> check(StoredCheck stored) {
        InstrumentCheck check = Thermometers.check(stored);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("day", stored.day());
        json.put("ice_c", stored.iceC());
        stored.boiling().ifPresent(b -> {
            json.put("boiling_c", b.readingC());
            json.put("boiling_point_c", b.pointC());
            json.put("boiling_bound_k", b.boundK());
        });
        json.put("step_k", stored.stepK());
        json.put("correction_at_63_k", check.corrected(SHOWN_AT) - SHOWN_AT);
        json.put("bound_at_63_k", check.bound(SHOWN_AT));
        json.put("within_food_code_tolerance", check.isWithinFoodCodeTolerance());
        if (!stored.note().isEmpty()) {
            json.put("note", stored.note());
        }
        return json;
    }
}
