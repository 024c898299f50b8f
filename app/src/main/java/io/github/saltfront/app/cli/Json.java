package io.github.saltfront.app.cli;

import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes JSON. */
final class Json {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private Json() {}

    static String text(Object content) {
        return MAPPER.writeValueAsString(content) + "\n";
    }
}
