package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.StoredPhoto;
import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.learn.KitchenKnowledge;
import io.github.saltfront.learn.LearnedValue;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Cooks, comparisons and what was learned, for reading. */
public final class NotebookText {
    private static final int SHORT_ID = 8;
    private static final Map<String, String> WORDS = words();

    private NotebookText() {}

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("cooked", "day");
        words.put("profile", "kitchen");
        words.put("butcher", "butcher");
        words.put("tags", "tags");
        words.put("meat", "meat");
        words.put("treatment", "salting");
        words.put("salting_h", "time of salting, h");
        words.put("appliance", "cooked in");
        words.put("setting_c", "dial, °C");
        words.put("oven_c", "measured in the oven, °C");
        words.put("refrigerator_c", "measured in the refrigerator, °C");
        words.put("half_thickness_mm", "half thickness as planned, mm");
        words.put("thickness_mm", "thickness, mm");
        words.put("planned_pull_c", "take out, planned, °C");
        words.put("pull_c", "taken out, °C");
        words.put("planned_time_low_min", "time, planned, fast, min");
        words.put("planned_time_min", "time, planned, min");
        words.put("planned_time_high_min", "time, planned, slow, min");
        words.put("time_min", "time, min");
        words.put("planned_peak_c", "peak, planned, °C");
        words.put("peak_c", "peak, °C");
        words.put("raw_g", "raw, g");
        words.put("salted_g", "salted, g");
        words.put("cooked_g", "cooked, g");
        words.put("planned_gain_low_pct", "gain by salting, planned, low, %");
        words.put("planned_gain_pct", "gain by salting, planned, %");
        words.put("planned_gain_high_pct", "gain by salting, planned, high, %");
        words.put("gain_pct", "gain by salting, %");
        words.put("planned_loss_low_pct", "loss, planned, low, %");
        words.put("planned_loss_pct", "loss, planned, %");
        words.put("planned_loss_high_pct", "loss, planned, high, %");
        words.put("loss_pct", "loss, %");
        words.put("planned_salt_pct", "salt when served, planned, %");
        words.put("tasters", "tasters");
        words.put("salt_just_right_pct", "salt just about right, % of tasters");
        words.put("salt_too_weak_pct", "salt too weak, % of tasters");
        words.put("salt_too_strong_pct", "salt too strong, % of tasters");
        words.put("juice_mean", "juice, 1 to 9");
        words.put("tenderness_mean", "tenderness, 1 to 9");
        words.put("crispness_mean", "crispness, 1 to 9");
        return words;
    }

    /**
     * Lists cooks.
     *
     * @param cooks the cooks
     * @return a line for each
     */
    public static String list(List<NotedCook> cooks) {
        if (cooks.isEmpty()) {
            return "Nothing is noted yet. Write a cook file and add it: ./run notebook add examples/notebook/sunday.yaml\n";
        }
        StringBuilder text = new StringBuilder();
        for (NotedCook cook : cooks) {
            text.append(shortId(cook))
                    .append("  ")
                    .append(cook.cookedOn())
                    .append("  ")
                    .append(cook.title())
                    .append(cook.tags().isEmpty() ? "" : "  [" + String.join(" ", cook.tags()) + "]")
                    .append('\n');
        }
        return text.toString();
    }

    /** First characters of an id, enough to find it. */
    private static String shortId(NotedCook cook) {
        return cook.id().substring(0, Math.min(SHORT_ID, cook.id().length()));
    }

    /**
     * Writes a cook.
     *
     * @param cook the cook
     * @param photos its pictures
     * @return lines
     */
    public static String show(NotedCook cook, List<StoredPhoto> photos) {
        StringBuilder text = new StringBuilder(cook.title()).append("\n\n");
        Map<String, Object> figures = CookFigures.of(cook);
        WORDS.forEach((name, words) -> {
            Object value = figures.get(name);
            if (value != null) {
                text.append(String.format(Locale.ROOT, "  %-38s %s%n", words, shown(value)));
            }
        });
        Object notes = figures.get("notes");
        if (notes != null) {
            text.append('\n').append(notes).append('\n');
        }
        for (StoredPhoto photo : photos) {
            text.append(String.format(
                    Locale.ROOT, "  picture %s, %d x %d%n", photo.caption(), photo.width(), photo.height()));
        }
        return text.append("\nid ").append(cook.id()).append('\n').toString();
    }

    private static String shown(Object value) {
        return value instanceof Double number ? String.format(Locale.ROOT, "%.1f", number) : String.valueOf(value);
    }

    /**
     * Writes cooks side by side; a mark stands where they differ.
     *
     * @param cooks two or more cooks
     * @return a table
     */
    public static String compare(List<NotedCook> cooks) {
        List<Map<String, Object>> figures = cooks.stream().map(CookFigures::of).toList();
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of("", ""));
        cooks.forEach(cook -> head.add(cook.title()));
        rows.add(head);
        WORDS.forEach((name, words) -> {
            if (figures.stream().anyMatch(f -> f.containsKey(name))) {
                List<String> values = figures.stream()
                        .map(f -> Optional.ofNullable(f.get(name))
                                .map(NotebookText::shown)
                                .orElse("-"))
                        .toList();
                List<String> row = new ArrayList<>();
                row.add(values.stream().distinct().count() > 1 ? "*" : "");
                row.add(words);
                row.addAll(values);
                rows.add(row);
            }
        });
        return table(rows)
                + "\n* differs. Two cooks show what happened twice, not why: design a trial to learn what makes the"
                + " difference.\n";
    }

    private static String table(List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        int columns = rows.get(0).size();
        int[] width = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                width[i] = Math.max(width[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                line.append(row.get(i)).append(" ".repeat(width[i] - row.get(i).length() + (i == 0 ? 1 : 2)));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    /**
     * Writes what a kitchen learned.
     *
     * @param profile the kitchen
     * @param known what it learned
     * @param catalog the catalog, for names
     * @return lines
     */
    public static String learned(String profile, KitchenKnowledge known, Catalog catalog) {
        StringBuilder text = new StringBuilder("Kitchen \"" + profile + "\"\n");
        if (known.isEmpty()) {
            return text.append(
                            "  Nothing is learned yet. Note when you take the meat out, what it weighs before and after, and\n"
                                    + "  what your guests say of the salt.\n")
                    .toString();
        }
        known.ovens().forEach((id, oven) -> {
            Optional<Appliance> appliance = catalog.appliances().find(id);
            appliance.ifPresent(a -> text.append("  ")
                    .append(KitchenKnowledge.ovenWords(a, oven).replaceFirst("^using your ", ""))
                    .append('\n'));
        });
        known.refrigerator().ifPresent(v -> line(text, "refrigerator", "%.1f °C", v, 1, -Temperature.ZERO_CELSIUS));
        known.salt().ifPresent(v -> line(text, "salt of the raw meat", "%.2f %%", v, 100, 0));
        known.thickness()
                .ifPresent(v -> line(
                        text,
                        "thickness over the usual",
                        "%.2f times",
                        new LearnedValue(Math.exp(v.value()), Math.exp(v.low()), Math.exp(v.high()), v.count()),
                        1,
                        0));
        known.diffusivities()
                .forEach((id, meat) ->
                        line(text, "speed of salt in " + meatName(id, catalog), "%.2f times", meat.factor(), 1, 0));
        return text.append("Intervals hold 90 %. Plans use this with --notebook or \"notebook: " + profile
                        + "\" in the request.\n")
                .toString();
    }

    private static String meatName(String id, Catalog catalog) {
        return catalog.cuts().all().stream()
                .map(Cut::saltDiffusivity)
                .filter(d -> d.id().equals(id))
                .map(SaltDiffusivity::name)
                .findFirst()
                .orElse(id);
    }

    private static void line(
            StringBuilder text, String name, String form, LearnedValue value, double factor, double offset) {
        String unit = form.substring(4);
        String number = form.substring(0, 4);
        text.append(String.format(
                Locale.ROOT,
                "  %s: " + number + " to " + number + unit + ", most likely " + number + " (%d)%n",
                name,
                value.low() * factor + offset,
                value.high() * factor + offset,
                value.value() * factor + offset,
                value.count()));
    }
}
