package io.github.saltfront.quality;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.Locale;

/**
 * What words such as "medium" mean as a core temperature of red meat. Sources differ by more than 10 K for one word, so a
 * word is only ever shown beside a temperature and never stored in its place.
 */
public final class DonenessWords {
    private final List<DonenessWord> words;

    private DonenessWords(List<DonenessWord> words) {
        this.words = words;
    }

    /** Reads {@code doneness_words.csv}. */
    public static DonenessWords load() {
        return new DonenessWords(CsvTable.load(DonenessWords.class, "doneness_words.csv").rows().stream()
                .map(row -> new DonenessWord(
                        row.text("word"),
                        Scale.valueOf(row.text("scale").toUpperCase(Locale.ROOT)),
                        Temperature.fromCelsius(row.number("core_low_c")),
                        Temperature.fromCelsius(row.number("core_high_c")),
                        Provenance.of(row)))
                .toList());
    }

    /** Returns all words of all scales. */
    public List<DonenessWord> all() {
        return words;
    }

    /**
     * Every meaning of a word.
     *
     * @param word such as {@code medium-rare}; case and hyphens do not matter
     * @return one entry per scale that knows it
     */
    public List<DonenessWord> meaningsOf(String word) {
        String key = key(word);
        return words.stream().filter(w -> key(w.word()).equals(key)).toList();
    }

    /**
     * The word of a scale nearest to a core temperature; a temperature between two words gets the nearer one.
     *
     * @param scale which scale
     * @param temperature core temperature after the rise [K]
     * @return the nearest word of the scale
     */
    public DonenessWord nearest(Scale scale, double temperature) {
        return words.stream()
                .filter(w -> w.scale() == scale)
                .min((a, b) -> Double.compare(a.distanceTo(temperature), b.distanceTo(temperature)))
                .orElseThrow(() -> new IllegalStateException("No doneness word on the scale " + scale + "."));
    }

    private static String key(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', ' ').strip();
    }

    /** Who uses the word so. */
    public enum Scale {
        /** Meat research. */
        RESEARCH,
        /** Government advice to consumers. */
        GOVERNMENT,
        /** Restaurant kitchens; common practice. */
        RESTAURANT
    }

    /**
     * A word on a scale.
     *
     * @param word the word
     * @param scale who uses it so
     * @param coreLow lower end of the core temperature [K]
     * @param coreHigh upper end of the core temperature [K]
     * @param provenance where it comes from
     */
    public record DonenessWord(String word, Scale scale, double coreLow, double coreHigh, Provenance provenance) {
        private double distanceTo(double temperature) {
            return Math.max(0, Math.max(coreLow - temperature, temperature - coreHigh));
        }
    }
}
