package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * A caution that a person must see, short enough to be read.
 *
 * @param id key
 * @param text the words
 * @param cannotBeSwitchedOff whether it must be shown whenever it applies
 */
public record Caution(String id, String text, boolean cannotBeSwitchedOff) {
    /** Things that make a caution apply. */
    public enum Situation {
        /** Any cook. */
        ALWAYS,
        /** A hold below the consumer minimum is used. */
        HOLD,
        /** Vulnerable guests eat. */
        VULNERABLE_GUESTS,
        /** A poultry table is used. */
        POULTRY,
        /** The meat is ground, pierced, injected, tumbled or stuffed. */
        NOT_INTACT,
        /** An oven without moisture, or a grill with the lid down. */
        DRY_HEAT,
        /** Salt, brine or marinade went in. */
        SALTED,
        /** The piece lay in brine or marinade. */
        BRINED,
        /** Slow warming. */
        SLOW_COME_UP,
        /** It is fried in deep or shallow fat. */
        HOT_FAT,
        /** It is cooked under pressure. */
        PRESSURE,
        /** Cooling and keeping. */
        COOLING,
        /** A food business. */
        PROFESSIONAL,
        /** Fish or shellfish. */
        FISH
    }

    /**
     * Returns the cautions for a rule and its situation, those that cannot be switched off first.
     *
     * @param rule the rule; brings guests, meat and kitchen
     * @param situations what else applies
     * @return the cautions
     */
    public static List<Caution> select(SafetyRule rule, Set<Situation> situations) {
        List<Caution> first = new ArrayList<>();
        List<Caution> then = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.load(Caution.class, "cautions.csv").rows()) {
            boolean applies = Arrays.stream(row.text("applies").split(" "))
                    .map(Situation::valueOf)
                    .anyMatch(s -> situations.contains(s) || holds(rule, s));
            // fish has one official figure and no hold that salt could lengthen
            boolean isOfHolds = row.text("id").equals("salt");
            if (applies && !(isOfHolds && rule.meat() == Meat.FISH)) {
                Caution caution = new Caution(
                        row.text("id"),
                        row.words("text"),
                        row.text("cannot_be_switched_off").equals("yes"));
                (caution.cannotBeSwitchedOff ? first : then).add(caution);
            }
        }
        first.addAll(then);
        return List.copyOf(first);
    }

    private static boolean holds(SafetyRule rule, Situation situation) {
        return switch (situation) {
            case ALWAYS -> true;
            case HOLD -> rule.allowsHold();
            case VULNERABLE_GUESTS -> rule.vulnerableGuests();
            case POULTRY -> rule.meat().bird().isPresent();
            case NOT_INTACT ->
                rule.meat() == Meat.GROUND
                        || rule.meat() == Meat.TENDERIZED_OR_INJECTED
                        || rule.meat() == Meat.MIXED_WITH_POULTRY;
            case FISH -> rule.meat() == Meat.FISH;
            case PROFESSIONAL -> rule.kitchen() == Kitchen.PROFESSIONAL;
            case SALTED -> rule.salted() && rule.meat() != Meat.FISH;
            case DRY_HEAT, BRINED, SLOW_COME_UP, HOT_FAT, PRESSURE, COOLING -> false;
        };
    }
}
