package io.github.saltfront.app.notebook;

import io.github.saltfront.learn.SaltTaste;
import io.github.saltfront.units.Temperature;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A cook as its cook noted it, in SI units.
 *
 * @param title what it was
 * @param cooked the day
 * @param place where it was
 * @param measured what was measured
 * @param tags tags
 * @param notes anything else
 * @param ratings what tasters said
 */
public record CookNote(
        String title,
        LocalDate cooked,
        Place place,
        Measured measured,
        List<String> tags,
        String notes,
        List<Rating> ratings) {
    /** Copies the lists. */
    public CookNote {
        tags = List.copyOf(tags);
        ratings = List.copyOf(ratings);
    }

    /**
     * Where it was.
     *
     * @param profile name of the kitchen, whose oven, refrigerator and table learn from it
     * @param butcher where the meat is from; may be empty
     */
    public record Place(String profile, String butcher) {}

    /**
     * What was measured; what was not is empty.
     *
     * @param thickness thickness of a piece at its thickest [m]
     * @param refrigerator reading in the refrigerator [K]
     * @param oven reading of a thermometer in the oven [K]
     * @param masses masses on the way
     * @param pull when it was taken out
     * @param peak highest reading after it was out [K]
     */
    public record Measured(
            OptionalDouble thickness,
            OptionalDouble refrigerator,
            OptionalDouble oven,
            Masses masses,
            Optional<Pull> pull,
            OptionalDouble peak) {}

    /**
     * Masses of all pieces together.
     *
     * @param raw as bought [kg]
     * @param salted after salting, patted dry [kg]
     * @param cooked when served [kg]
     */
    public record Masses(OptionalDouble raw, OptionalDouble salted, OptionalDouble cooked) {
        /** Returns what was gained by salting per raw mass [kg/kg]. */
        public OptionalDouble gain() {
            return raw.isPresent() && salted.isPresent()
                    ? OptionalDouble.of(salted.getAsDouble() / raw.getAsDouble() - 1)
                    : OptionalDouble.empty();
        }

        /** Returns what was lost from raw to served per raw mass [kg/kg]. */
        public OptionalDouble loss() {
            return raw.isPresent() && cooked.isPresent()
                    ? OptionalDouble.of(1 - cooked.getAsDouble() / raw.getAsDouble())
                    : OptionalDouble.empty();
        }
    }

    /**
     * When it was taken out.
     *
     * @param reading what the thermometer showed [K]
     * @param time time in the heat [s]
     * @param thermometer name of the thermometer; may be empty
     */
    public record Pull(double reading, double time, String thermometer) {}

    /**
     * What one taster said.
     *
     * @param taster the taster
     * @param saltiness on the just-about-right scale
     * @param juice 1 very dry to 9 very juicy
     * @param tenderness 1 very tough to 9 very tender
     * @param crispness 1 very soft to 9 very crisp, of the outside
     */
    public record Rating(
            String taster,
            Optional<SaltTaste.Rating> saltiness,
            OptionalInt juice,
            OptionalInt tenderness,
            OptionalInt crispness) {}

    /** Returns the note under the names of the cook file, as it can be read again. */
    public Map<String, Object> toJson() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("title", title);
        json.put("cooked", cooked.toString());
        json.put("profile", place.profile());
        if (!place.butcher().isEmpty()) {
            json.put("butcher", place.butcher());
        }
        Map<String, Object> values = measuredJson();
        if (!values.isEmpty()) {
            json.put("measured", values);
        }
        if (!tags.isEmpty()) {
            json.put("tags", tags);
        }
        if (!notes.isEmpty()) {
            json.put("notes", notes);
        }
        if (!ratings.isEmpty()) {
            json.put("ratings", ratings.stream().map(CookNote::ratingJson).toList());
        }
        return json;
    }

    private Map<String, Object> measuredJson() {
        Map<String, Object> json = new LinkedHashMap<>();
        put(json, "thickness", measured.thickness(), 1e3, 0, "%.1f mm");
        put(json, "refrigerator", measured.refrigerator(), 1, -Temperature.ZERO_CELSIUS, "%.1f °C");
        put(json, "oven", measured.oven(), 1, -Temperature.ZERO_CELSIUS, "%.1f °C");
        put(json, "raw", measured.masses().raw(), 1e3, 0, "%.1f g");
        put(json, "salted", measured.masses().salted(), 1e3, 0, "%.1f g");
        put(json, "cooked", measured.masses().cooked(), 1e3, 0, "%.1f g");
        measured.pull().ifPresent(pull -> {
            Map<String, Object> own = new LinkedHashMap<>();
            put(own, "reading", OptionalDouble.of(pull.reading()), 1, -Temperature.ZERO_CELSIUS, "%.1f °C");
            put(own, "time", OptionalDouble.of(pull.time()), 1.0 / 60, 0, "%.2f min");
            if (!pull.thermometer().isEmpty()) {
                own.put("thermometer", pull.thermometer());
            }
            json.put("pull", own);
        });
        put(json, "peak", measured.peak(), 1, -Temperature.ZERO_CELSIUS, "%.1f °C");
        return json;
    }

    private static void put(
            Map<String, Object> json, String key, OptionalDouble value, double factor, double offset, String form) {
        value.ifPresent(v -> json.put(key, String.format(Locale.ROOT, form, factor * v + offset)));
    }

    private static Map<String, Object> ratingJson(Rating rating) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("taster", rating.taster());
        rating.saltiness().ifPresent(said -> json.put("saltiness", said.words()));
        rating.juice().ifPresent(value -> json.put("juice", value));
        rating.tenderness().ifPresent(value -> json.put("tenderness", value));
        rating.crispness().ifPresent(value -> json.put("crispness", value));
        return json;
    }

    /** Returns what the tasters said of the salt. */
    public List<SaltTaste.Rating> saltRatings() {
        List<SaltTaste.Rating> said = new ArrayList<>();
        ratings.forEach(rating -> rating.saltiness().ifPresent(said::add));
        return said;
    }
}
