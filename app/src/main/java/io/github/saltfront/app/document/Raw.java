package io.github.saltfront.app.document;

import java.util.List;
import java.util.Map;

/** What stands in a file, with its line and before any meaning is given to it. */
sealed interface Raw {
    /** Returns the line on which it starts, from 1. */
    int line();

    /**
     * A single value, kept as the text that stands in the file.
     *
     * @param text the text without quotes; empty for a null
     * @param line line
     */
    record Scalar(String text, int line) implements Raw {
        /** YAML's null, which Jackson hands over as text, counts as nothing. */
        boolean isEmpty() {
            return text.isBlank() || text.equals("~");
        }
    }

    /**
     * Entries without keys.
     *
     * @param entries in order
     * @param line line
     */
    record Sequence(List<Raw> entries, int line) implements Raw {}

    /**
     * Entries with keys.
     *
     * @param entries in order of the file
     * @param line line
     */
    record Mapping(Map<String, Raw> entries, int line) implements Raw {}
}
