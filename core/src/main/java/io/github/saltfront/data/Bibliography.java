package io.github.saltfront.data;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The one bibliography: every {@code source_id} in a table or a model is a key here. */
public final class Bibliography {
    private final Map<String, Reference> references;

    private Bibliography(Map<String, Reference> references) {
        this.references = references;
    }

    /**
     * Reads {@code references.csv}.
     *
     * @return the bibliography
     * @throws DataException if an id stands twice with different contents or a row is incomplete
     */
    public static Bibliography load() {
        Map<String, Reference> read = new TreeMap<>();
        List<String> twice = new ArrayList<>();
        for (CsvTable.Row row :
                CsvTable.load(Bibliography.class, "references.csv").rows()) {
            Reference reference = new Reference(
                    row.text("source_id"),
                    row.text("authors"),
                    row.text("year"),
                    row.text("title"),
                    row.text("venue"),
                    row.text("doi"),
                    row.text("note"));
            if (read.put(reference.id(), reference) != null) {
                twice.add(reference.id());
            }
        }
        if (!twice.isEmpty()) {
            throw new DataException("references.csv: ids that stand twice: " + twice + ".");
        }
        return new Bibliography(new LinkedHashMap<>(read));
    }

    /**
     * Looks a source up.
     *
     * @param id the key
     * @return the source, if there is one
     */
    public Optional<Reference> find(String id) {
        return Optional.ofNullable(references.get(id));
    }

    /** Returns all sources, sorted by id. */
    public Collection<Reference> all() {
        return List.copyOf(references.values());
    }
}
