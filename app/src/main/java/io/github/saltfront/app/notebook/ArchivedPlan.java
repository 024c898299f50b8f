package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.SavedPlan;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A saved plan in the archive of a notebook: its request, which goes through the usual readers when it is opened. */
final class ArchivedPlan {
    private static final Phrases PHRASES = Phrases.of(ArchivedPlan.class);

    private static final int LONGEST_TITLE = 200;
    private static final int LONGEST_REQUEST = 100_000;
    private static final int MOST = 20_000;

    private ArchivedPlan() {}

    static Map<String, Object> toJson(SavedPlan plan) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", plan.id());
        json.put("title", plan.title());
        json.put("program_version", plan.programVersion());
        json.put("created", plan.created());
        json.put("changed", plan.changed());
        json.put("request", NotebookJson.read(plan.request()));
        return json;
    }

    /**
     * Reads plans back.
     *
     * @param nodes the list of the archive; none in an archive of before
     * @return the plans
     * @throws IllegalArgumentException if one is not what {@link #toJson} writes
     */
    static List<SavedPlan> read(JsonNode nodes) {
        if (nodes.size() > MOST) {
            throw broken(PHRASES.say("more-than-saved-plans", MOST));
        }
        List<SavedPlan> plans = new ArrayList<>();
        for (JsonNode node : nodes) {
            String id = node.path("id").asString("");
            String title = node.path("title").asString("").strip();
            boolean isTitle = !title.isEmpty()
                    && title.length() <= LONGEST_TITLE
                    && title.chars().noneMatch(Character::isISOControl);
            if (!id.matches("[A-Za-z0-9-]{1,64}") || !isTitle) {
                throw broken(PHRASES.say("a-saved-plan-without-a"));
            }
            if (!(node.path("request") instanceof ObjectNode request)) {
                throw broken(PHRASES.say("a-saved-plan-without-a-2"));
            }
            String text = NotebookJson.text(request);
            if (text.length() > LONGEST_REQUEST) {
                throw broken(PHRASES.say("a-saved-plan-whose-request", LONGEST_REQUEST));
            }
            plans.add(new SavedPlan(
                    id,
                    title,
                    text,
                    node.path("program_version").asString("unknown"),
                    node.path("created").asLong(0),
                    node.path("changed").asLong(0)));
        }
        return plans;
    }

    private static IllegalArgumentException broken(String what) {
        return new IllegalArgumentException(PHRASES.say("the-archive-is-refused-it", what));
    }
}
