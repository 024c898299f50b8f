package io.github.saltfront.plan;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Provenance;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * What to take care of when meat is salted. Local food code comes before every one of these.
 *
 * @param id key
 * @param applies {@code always}, or the word a caller asks by
 * @param level how grave it is
 * @param text what to do, in plain words
 * @param provenance where it comes from
 */
public record HandlingCaution(String id, String applies, Level level, String text, Provenance provenance) {
    private static final String ALWAYS = "always";

    /** Words that name nitrite cures. */
    private static final List<String> CURES =
            List.of("curing", "cure", "nitrite", "nitrate", "saltpeter", "saltpetre", "prague");

    /** Words that tell pink rock salt from pink curing salt. */
    private static final List<String> ROCKS = List.of("rock", "himalayan", "himalaya", "mountain");

    /** How grave. */
    public enum Level {
        /** Can make ill. */
        DANGER,
        /** Can spoil the work. */
        WARNING,
        /** Good to know. */
        ADVICE
    }

    /** Reads the table. */
    public static List<HandlingCaution> load() {
        return CsvTable.load(HandlingCaution.class, "handling_cautions.csv").rows().stream()
                .map(HandlingCaution::read)
                .toList();
    }

    /**
     * Returns one caution.
     *
     * @param id its key
     * @return the caution
     * @throws io.github.saltfront.data.DataException if there is none
     */
    public static HandlingCaution of(String id) {
        return read(
                CsvTable.load(HandlingCaution.class, "handling_cautions.csv").row("id", id));
    }

    private static HandlingCaution read(CsvTable.Row row) {
        return new HandlingCaution(
                row.text("id"),
                row.text("applies"),
                Level.valueOf(row.text("level").toUpperCase(Locale.ROOT)),
                row.words("text"),
                Provenance.of(row));
    }

    /**
     * Returns the cautions that always hold and those for the given occasions, gravest first.
     *
     * @param occasions such as {@code soak}, {@code dry-salt}, {@code acid}, {@code enzyme}, {@code ice}, {@code float},
     *     {@code dairy}, {@code hydrometer}, {@code spices}, {@code potassium} or {@code curing}
     * @return the cautions
     */
    public static List<HandlingCaution> forOccasions(List<String> occasions) {
        return load().stream()
                .filter(c -> c.applies().equals(ALWAYS) || occasions.contains(c.applies()))
                .sorted(Comparator.comparing(HandlingCaution::level))
                .toList();
    }

    /**
     * Tells whether the name of a salt means a cure with nitrite or nitrate, which is refused.
     *
     * @param saltName what the cook calls the salt
     * @return true if it does; pink rock salt without nitrite, such as from a mountain, is named by its rock
     */
    public static boolean isCuringSalt(String saltName) {
        List<String> words =
                Arrays.asList(saltName.toLowerCase(Locale.ROOT).strip().split("[^\\p{L}]+", -1));
        if (words.stream().anyMatch(CURES::contains)) {
            return true;
        }
        return words.contains("pink") && words.stream().noneMatch(ROCKS::contains);
    }
}
