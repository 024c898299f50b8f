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
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Cooks, comparisons and what was learned, for reading. */
public final class NotebookText {
    private static final Phrases PHRASES = Phrases.of(NotebookText.class);

    private static final int SHORT_ID = 8;

    private NotebookText() {}

    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("cooked", PHRASES.say("figure-day"));
        words.put("profile", PHRASES.say("figure-kitchen"));
        words.put("butcher", PHRASES.say("figure-butcher"));
        words.put("tags", PHRASES.say("figure-tags"));
        words.put("meat", PHRASES.say("figure-meat"));
        words.put("treatment", PHRASES.say("figure-salting"));
        words.put("salting_h", PHRASES.say("time-of-salting-h"));
        words.put("appliance", PHRASES.say("cooked-in"));
        words.put("setting_c", PHRASES.say("figure-dial"));
        words.put("oven_c", PHRASES.say("measured-in-the-oven-c"));
        words.put("refrigerator_c", PHRASES.say("measured-in-the-refrigerator-c"));
        words.put("half_thickness_mm", PHRASES.say("half-thickness-as-planned-mm"));
        words.put("thickness_mm", PHRASES.say("thickness-mm"));
        words.put("planned_pull_c", PHRASES.say("take-out-planned-c"));
        words.put("pull_c", PHRASES.say("taken-out-c"));
        words.put("planned_time_low_min", PHRASES.say("time-planned-fast-min"));
        words.put("planned_time_min", PHRASES.say("time-planned-min"));
        words.put("planned_time_high_min", PHRASES.say("time-planned-slow-min"));
        words.put("time_min", PHRASES.say("time-min"));
        words.put("planned_peak_c", PHRASES.say("peak-planned-c"));
        words.put("peak_c", PHRASES.say("figure-peak"));
        words.put("raw_g", PHRASES.say("raw-g"));
        words.put("salted_g", PHRASES.say("salted-g"));
        words.put("cooked_g", PHRASES.say("cooked-g"));
        words.put("planned_gain_low_pct", PHRASES.say("gain-by-salting-planned-low"));
        words.put("planned_gain_pct", PHRASES.say("gain-by-salting-planned"));
        words.put("planned_gain_high_pct", PHRASES.say("gain-by-salting-planned-high"));
        words.put("gain_pct", PHRASES.say("gain-by-salting"));
        words.put("planned_loss_low_pct", PHRASES.say("loss-planned-low"));
        words.put("planned_loss_pct", PHRASES.say("loss-planned"));
        words.put("planned_loss_high_pct", PHRASES.say("loss-planned-high"));
        words.put("loss_pct", PHRASES.say("figure-loss"));
        words.put("planned_salt_pct", PHRASES.say("salt-when-served-planned"));
        words.put("tasters", PHRASES.say("figure-tasters"));
        words.put("salt_just_right_pct", PHRASES.say("salt-just-about-right-of"));
        words.put("salt_too_weak_pct", PHRASES.say("salt-too-weak-of-tasters"));
        words.put("salt_too_strong_pct", PHRASES.say("salt-too-strong-of-tasters"));
        words.put("juice_mean", PHRASES.say("figure-juice-1-to-9"));
        words.put("tenderness_mean", PHRASES.say("figure-tenderness-1-to-9"));
        words.put("crispness_mean", PHRASES.say("figure-crispness-1-to-9"));
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
            return PHRASES.say("nothing-is-noted-yet-write");
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
        words().forEach((name, words) -> {
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
            text.append(PHRASES.say("picture-x", photo.caption(), photo.width(), photo.height()));
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
        words().forEach((name, words) -> {
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
        return PHRASES.say("differs-two-cooks-show-what", table(rows));
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
        StringBuilder text = new StringBuilder(PHRASES.say("kitchen", profile));
        if (known.isEmpty()) {
            return text.append(PHRASES.say("nothing-is-learned-yet-note")).toString();
        }
        known.ovens().forEach((id, oven) -> {
            Optional<Appliance> appliance = catalog.appliances().find(id);
            appliance.ifPresent(a -> text.append("  ")
                    .append(KitchenKnowledge.ovenWords(a, oven).replaceFirst("^using your ", ""))
                    .append('\n'));
        });
        known.refrigerator()
                .ifPresent(v -> line(text, PHRASES.say("refrigerator"), "%.1f °C", v, 1, -Temperature.ZERO_CELSIUS));
        known.salt().ifPresent(v -> line(text, PHRASES.say("salt-of-the-raw-meat"), "%.2f %%", v, 100, 0));
        known.thickness()
                .ifPresent(v -> line(
                        text,
                        PHRASES.say("thickness-over-the-usual"),
                        PHRASES.say("2f-times"),
                        new LearnedValue(Math.exp(v.value()), Math.exp(v.low()), Math.exp(v.high()), v.count()),
                        1,
                        0));
        known.diffusivities()
                .forEach((id, meat) -> line(
                        text,
                        PHRASES.say("speed-of-salt-in", meatName(id, catalog)),
                        PHRASES.say("2f-times"),
                        meat.factor(),
                        1,
                        0));
        return text.append(PHRASES.say("intervals-hold-90-plans-use", profile)).toString();
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
        text.append(Phrases.figures(
                PHRASES.say("s-to-most-likely-d", number, number, unit, number),
                name,
                value.low() * factor + offset,
                value.high() * factor + offset,
                value.value() * factor + offset,
                value.count()));
    }
}
