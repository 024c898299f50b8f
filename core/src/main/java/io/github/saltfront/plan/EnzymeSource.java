package io.github.saltfront.plan;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Provenance;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A plant whose fresh juice digests meat. It acts in the fridge, fastest while the meat warms through about 50 to 70 degrees
 * Celsius (from memory), and turns the face to mush; half an hour to two hours at most. It is not modeled.
 *
 * @param id key
 * @param words what it is called
 * @param enzyme its enzyme
 * @param inactiveWhen in which form it does nothing
 * @param provenance where this comes from
 */
public record EnzymeSource(String id, List<String> words, String enzyme, String inactiveWhen, Provenance provenance) {
    /** Longest time in fresh juice [s]; trade figure. */
    public static final double LONGEST = 2 * 3600;

    /** Copies the list. */
    public EnzymeSource {
        words = List.copyOf(words);
    }

    /** Reads the table. */
    public static List<EnzymeSource> load() {
        return CsvTable.load(EnzymeSource.class, "enzyme_sources.csv").rows().stream()
                .map(r -> new EnzymeSource(
                        r.text("id"),
                        List.of(r.text("words").split(";", -1)),
                        r.text("enzyme"),
                        r.text("inactive_when"),
                        Provenance.of(r)))
                .toList();
    }

    /**
     * Finds the plant a description names.
     *
     * @param text such as {@code fresh pineapple juice}, or the id of a liquid
     * @return the plant, if one is named and no word says it was canned, pasteurized, dried or cooked
     */
    public static Optional<EnzymeSource> findIn(String text) {
        List<String> words = List.of(text.toLowerCase(Locale.ROOT).strip().split("[^\\p{L}]+", -1));
        if (words.stream()
                .anyMatch(w -> w.equals("canned")
                        || w.startsWith("pasteuri")
                        || w.equals("dried")
                        || w.equals("cooked")
                        || w.equals("ground"))) {
            return Optional.empty();
        }
        return load().stream()
                .filter(e -> e.words().stream().anyMatch(words::contains))
                .findFirst();
    }
}
