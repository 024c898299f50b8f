package io.github.saltfront.app.document;

import java.util.Locale;
import java.util.Optional;

/** The formats that can be read. */
public enum DocumentFormat {
    /** YAML 1.2 without anchors, aliases and tags. */
    YAML,
    /** JSON (RFC 8259). */
    JSON;

    /**
     * Returns the format that the end of a file name stands for; a name without an end is taken for YAML, of which JSON is
     * a part.
     *
     * @param fileName name with or without folders
     * @return the format, or empty if the end is another one
     */
    static Optional<DocumentFormat> of(String fileName) {
        String lower = fileName.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".json")) {
            return Optional.of(JSON);
        }
        if (lower.endsWith(".yaml") || lower.endsWith(".yml") || lower.indexOf('.') < 0) {
            return Optional.of(YAML);
        }
        return Optional.empty();
    }
}
