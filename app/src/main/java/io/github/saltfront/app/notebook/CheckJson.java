package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.words.Phrases;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** Checks of thermometers in the archive of a notebook. */
final class CheckJson {
    private static final Phrases PHRASES = Phrases.of(CheckJson.class);

    private CheckJson() {}

    static Map<String, Object> of(StoredCheck check) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", check.id());
        json.put("instrument", check.instrument());
        json.put("day", check.day());
        json.put("ice_c", check.iceC());
        check.boiling().ifPresent(b -> {
            json.put("boiling_c", b.readingC());
            json.put("boiling_point_c", b.pointC());
            json.put("boiling_bound_k", b.boundK());
        });
        json.put("step_k", check.stepK());
        json.put("note", check.note());
        json.put("created", check.created());
        return json;
    }

    /** Reads checks; each must be one that the bench itself would take. */
    static List<StoredCheck> read(JsonNode nodes) {
        List<StoredCheck> checks = new ArrayList<>();
        for (JsonNode node : nodes) {
            StoredCheck check = new StoredCheck(
                    node.path("id").asString(""),
                    node.path("instrument").asString(""),
                    day(node.path("day").asString("")),
                    node.path("ice_c").asDouble(Double.NaN),
                    node.has("boiling_c")
                            ? Optional.of(new StoredCheck.Boiling(
                                    node.path("boiling_c").asDouble(Double.NaN),
                                    node.path("boiling_point_c").asDouble(Double.NaN),
                                    node.path("boiling_bound_k").asDouble(Double.NaN)))
                            : Optional.empty(),
                    node.path("step_k").asDouble(Double.NaN),
                    node.path("note").asString(""),
                    node.path("created").asLong(0));
            if (!check.id().matches("[A-Za-z0-9-]{1,64}") || check.instrument().isBlank()) {
                throw new IllegalArgumentException(PHRASES.say("a-check-of-a-thermometer"));
            }
            Thermometers.check(check);
            checks.add(check);
        }
        return checks;
    }

    private static String day(String text) {
        try {
            return LocalDate.parse(text).toString();
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(PHRASES.say("a-check-of-a-thermometer-2", text), e);
        }
    }
}
