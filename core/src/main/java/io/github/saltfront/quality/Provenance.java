package io.github.saltfront.quality;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Checks;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where the figures of a table row come from.
 *
 * @param sourceIds keys of the bibliography, at least one
 * @param locator table, page or entry in the sources, or empty
 * @param confidence how well the figures are known
 * @param note what to beware of, or empty
 */
public record Provenance(List<String> sourceIds, String locator, Confidence confidence, String note) {
    /** Copies the list; at least one source is required. */
    public Provenance {
        sourceIds = List.copyOf(sourceIds);
        Checks.require(!sourceIds.isEmpty(), "A row must name a source, got none; use common-practice or estimate.");
    }

    /**
     * Reads the columns {@code source_id}, {@code locator}, {@code confidence} and {@code note}.
     *
     * @param row a table row
     * @return its provenance
     */
    public static Provenance of(CsvTable.Row row) {
        List<String> ids = Stream.of(row.text("source_id").split(";", -1))
                .map(String::strip)
                .filter(id -> !id.isEmpty())
                .toList();
        return new Provenance(ids, row.text("locator"), Confidence.of(row.text("confidence")), row.text("note"));
    }

    /** How a figure is known. */
    public enum Confidence {
        /** Read in the source itself, its abstract or its table. */
        READ_IN_SOURCE("read in source"),
        /** Read where somebody else quotes or recomputes it. */
        SECOND_HAND("second hand"),
        /** Remembered and not confirmed. */
        FROM_MEMORY("from memory"),
        /** Our engineering estimate or a fact of the trade. */
        ESTIMATED("estimated");

        private final String text;

        Confidence(String text) {
            this.text = text;
        }

        /** Returns the words used in tables. */
        public String text() {
            return text;
        }

        /**
         * Reads the words used in tables.
         *
         * @param text such as {@code read in source}
         * @return the confidence
         */
        public static Confidence of(String text) {
            for (Confidence confidence : values()) {
                if (confidence.text.equals(text)) {
                    return confidence;
                }
            }
            throw new IllegalArgumentException("confidence must be one of read in source, second hand, from memory, "
                    + "estimated, got \"" + text + "\".");
        }
    }
}
