package io.github.saltfront.app.notebook;

import io.github.saltfront.words.Phrases;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes the JSON of the notebook. */
final class NotebookJson {
    private static final Phrases PHRASES = Phrases.of(NotebookJson.class);

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private NotebookJson() {}

    static String text(Object content) {
        return MAPPER.writeValueAsString(content);
    }

    static JsonNode read(String text) {
        return MAPPER.readTree(text);
    }

    static JsonNode read(byte[] content) {
        return MAPPER.readTree(content);
    }

    /** Reads an object; anything else is refused. */
    static ObjectNode object(byte[] content, String what) {
        try {
            if (MAPPER.readTree(content) instanceof ObjectNode object) {
                return object;
            }
        } catch (JacksonException e) {
            throw new IllegalArgumentException(PHRASES.say("is-no-json", what, e.getOriginalMessage()), e);
        }
        throw new IllegalArgumentException(PHRASES.say("got-another-json-value-for", what));
    }
}
