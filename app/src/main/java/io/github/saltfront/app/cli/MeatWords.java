package io.github.saltfront.app.cli;

import io.github.saltfront.safety.Meat;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The words for meats on the command line. */
final class MeatWords {
    private static final Map<String, Meat> WORDS = new TreeMap<>(Map.ofEntries(
            Map.entry("chicken", Meat.CHICKEN),
            Map.entry("turkey", Meat.TURKEY),
            Map.entry("duck", Meat.OTHER_POULTRY),
            Map.entry("goose", Meat.OTHER_POULTRY),
            Map.entry("poultry", Meat.OTHER_POULTRY),
            Map.entry("mixed", Meat.MIXED_WITH_POULTRY),
            Map.entry("beef", Meat.INTACT),
            Map.entry("veal", Meat.INTACT),
            Map.entry("pork", Meat.INTACT),
            Map.entry("lamb", Meat.INTACT),
            Map.entry("fish", Meat.FISH),
            Map.entry("shellfish", Meat.FISH)));

    private MeatWords() {}

    /**
     * Finds the class of a meat.
     *
     * @param word what the user wrote
     * @param ground whether it is ground
     * @param pierced whether it is injected, tumbled, bladed or stuffed
     */
    static Meat find(String word, boolean ground, boolean pierced) {
        Meat meat = WORDS.get(word.toLowerCase(Locale.ROOT).strip());
        if (meat == null) {
            throw new IllegalArgumentException(
                    "--meat: got \"" + word + "\", expected one of " + String.join(", ", WORDS.keySet()) + ".");
        }
        if (meat == Meat.FISH && (ground || pierced)) {
            throw new IllegalArgumentException(
                    "--meat: got fish that is ground, pierced or stuffed, expected whole fish; the retail food code asks for 68 °C"
                            + " (155 °F) for 17 s where it is ground, and for 74 °C (165 °F) where it is stuffed. Judge by those.");
        }
        if (!meat.isIntact()) {
            return meat;
        }
        if (ground) {
            return Meat.GROUND;
        }
        return pierced ? Meat.TENDERIZED_OR_INJECTED : meat;
    }
}
