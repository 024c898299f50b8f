package io.github.saltfront.app.web;

import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads and writes the JSON of the interface. */
final class WebJson {
    private static final Phrases PHRASES = Phrases.of(WebJson.class);

    static final String TYPE = "application/json; charset=utf-8";

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private WebJson() {}

    static byte[] bytes(Object content) {
        return MAPPER.writeValueAsBytes(content);
    }

    static String text(Object content) {
        return MAPPER.writeValueAsString(content);
    }

    /** Reads an object; anything else is refused. */
    static JsonNode object(byte[] body) {
        try {
            JsonNode node = MAPPER.readTree(body);
            if (node != null && node.isObject()) {
                return node;
            }
        } catch (JacksonException e) {
            throw new Refused(400, "", PHRASES.say("the-body-is-no-json", e.getOriginalMessage()));
        }
        throw new Refused(400, "", PHRASES.say("got-another-json-value-expected"));
    }

    /** Returns the answer to a request that cannot be met, with one problem. */
    static byte[] problem(String field, String message) {
        return problems(List.of(Map.of("field", field, "message", message)));
    }

    static byte[] problems(List<Map<String, String>> problems) {
        return bytes(Map.of("problems", problems));
    }
}
