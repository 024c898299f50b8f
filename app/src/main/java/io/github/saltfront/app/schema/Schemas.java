package io.github.saltfront.app.schema;

import io.github.saltfront.units.NearestName;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Finds the schemas by name. */
public final class Schemas {
    private static final Map<String, String> NAMES = names();

    private Schemas() {}

    private static Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("plan-request", "the file that plan reads");
        names.put("meal-request", "the file that meal reads");
        names.put("simulation", "the file that simulate reads");
        names.put("trial", "the file that trial design reads");
        names.put("cook-file", "the file that notebook add reads");
        names.put("plan", "what plan --json writes");
        names.put("meal", "what meal --json writes");
        names.put("history", "what simulate writes as JSON");
        names.put("fronts", "what plan --format fronts writes");
        names.put("outlook", "what follow --json writes");
        names.put("trial-power", "what trial power --json writes");
        names.put("trial-design", "what trial design --json writes");
        names.put("trial-analysis", "what trial analyze --json writes");
        names.put("notebook-list", "what notebook list --json writes");
        names.put("cook", "what notebook show --json writes");
        names.put("notebook-compare", "what notebook compare --json writes");
        names.put("notebook-learned", "what notebook learned --json writes");
        names.put("thermometer", "what thermometer history --json writes for each");
        return names;
    }

    /** Returns the names with a line on each. */
    public static String list() {
        StringBuilder text = new StringBuilder();
        NAMES.forEach((name, what) -> text.append(String.format("%-17s %s%n", name, what)));
        return text.toString();
    }

    /**
     * Returns a schema.
     *
     * @param name its name, such as {@code plan-request}
     * @return the JSON text
     * @throws IllegalArgumentException if there is no such schema
     */
    public static String text(String name) {
        if (!NAMES.containsKey(name)) {
            String question = NearestName.question(name, NAMES.keySet());
            throw new IllegalArgumentException("Got the schema \"" + name + "\", expected one of "
                    + String.join(", ", NAMES.keySet()) + (question.isEmpty() ? "; choose one of them." : question));
        }
        try (InputStream stream = Schemas.class.getResourceAsStream(name + ".schema.json")) {
            if (stream == null) {
                throw new IllegalStateException("the schema " + name + " is not in the program's archive.");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
