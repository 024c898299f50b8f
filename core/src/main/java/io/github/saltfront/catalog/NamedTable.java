package io.github.saltfront.catalog;

import io.github.saltfront.data.DataException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Entries that can be found by id, name or alias, and by a near miss of one.
 *
 * @param <T> kind of entry
 */
public final class NamedTable<T extends CatalogEntry> {
    private final String kind;
    private final List<T> entries;
    private final Map<String, T> byWords;

    NamedTable(String kind, List<T> entries) {
        this.kind = kind;
        this.entries = List.copyOf(entries);
        this.byWords = new LinkedHashMap<>();
        Map<String, T> ids = new LinkedHashMap<>();
        for (T entry : entries) {
            if (ids.put(entry.id(), entry) != null) {
                throw new DataException(kind + " table: id \"" + entry.id() + "\" stands twice.");
            }
        }
        // ids before names before aliases, so that a loose alias never hides an exact id
        entries.forEach(e -> byWords.putIfAbsent(NameMatch.normalize(e.id()), e));
        entries.forEach(e -> byWords.putIfAbsent(NameMatch.normalize(e.name()), e));
        entries.forEach(e -> e.aliases().forEach(a -> byWords.putIfAbsent(NameMatch.normalize(a), e)));
    }

    /** Returns all entries in the order of the table. */
    public List<T> all() {
        return entries;
    }

    /**
     * Finds an entry by its id, name or one of its aliases; case, hyphens and punctuation do not matter.
     *
     * @param text what was asked for
     * @return the entry, if exactly these words name one
     */
    public Optional<T> find(String text) {
        return Optional.ofNullable(byWords.get(NameMatch.normalize(text)));
    }

    /**
     * Returns an entry by its id, name or alias.
     *
     * @param text what was asked for
     * @return the entry
     * @throws IllegalArgumentException if there is none; the message names the nearest
     */
    public T get(String text) {
        return find(text)
                .orElseThrow(() -> new IllegalArgumentException(kind + " must be one of the catalog, got \"" + text
                        + "\"; nearest: "
                        + nearest(text, 3).stream().map(CatalogEntry::id).toList() + "."));
    }

    /**
     * The entries whose words are nearest to a text, best first; by matching words and by edit distance of words.
     *
     * @param text what was asked for
     * @param count how many to return at most, at least 1
     * @return the nearest entries
     */
    public List<T> nearest(String text, int count) {
        if (count < 1) {
            throw new IllegalArgumentException("count must be at least 1, got " + count + ".");
        }
        List<Scored<T>> scored = new ArrayList<>();
        entries.forEach(e -> scored.add(new Scored<>(e, distance(text, e))));
        scored.sort(Comparator.comparingDouble(Scored::distance));
        return scored.stream().limit(count).map(Scored::entry).toList();
    }

    private static double distance(String text, CatalogEntry entry) {
        double best = Math.min(NameMatch.distance(text, entry.id()), NameMatch.distance(text, entry.name()));
        for (String alias : entry.aliases()) {
            best = Math.min(best, NameMatch.distance(text, alias));
        }
        return best;
    }

    private record Scored<E>(E entry, double distance) {}
}
