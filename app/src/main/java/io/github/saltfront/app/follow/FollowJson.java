package io.github.saltfront.app.follow;

import io.github.saltfront.words.Phrases;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON as it is kept and sent. */
final class FollowJson {
    private static final Phrases PHRASES = Phrases.of(FollowJson.class);

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private FollowJson() {}

    static String text(Object content) {
        return MAPPER.writeValueAsString(content);
    }

    static byte[] bytes(Object content) {
        return MAPPER.writeValueAsBytes(content);
    }

    /**
     * Reads what was sent.
     *
     * @throws IllegalArgumentException if it is no JSON
     */
    static JsonNode read(byte[] content) {
        try {
            return MAPPER.readTree(content);
        } catch (JacksonException e) {
            throw new IllegalArgumentException(PHRASES.say("got-what-is-no-json", e.getOriginalMessage()), e);
        }
    }

    /** Reads what this program wrote. */
    static JsonNode stored(String content) {
        return MAPPER.readTree(content);
    }
}
