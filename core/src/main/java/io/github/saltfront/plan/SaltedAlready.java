package io.github.saltfront.plan;

import io.github.saltfront.catalog.Cut;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Meat that was salted before it was bought: what the label says, and whether a strong brine may follow.
 *
 * <p>"Contains p % solution" counts the solution on 100 parts of meat without it, so that it is p / (100 + p) of the pack
 * (cfr9-317). Part of the declared sodium may be phosphate, which does not taste as salty; it is counted as salt here, which
 * errs toward too little salt.
 *
 * @param solutionPerMeat solution per mass of meat without it [kg/kg], as on the label; empty if the label names none
 * @param labelSodium sodium of the pack per mass [kg/kg], as on the label; empty if unknown
 * @param nativeSalt salt of the same meat unsalted [kg/kg]
 * @param isKosher true if it was soaked and salted at the plant
 * @param isSaltierByNature true for fish, shellfish and dark poultry, for which the sodium rule does not hold
 */
public record SaltedAlready(
        OptionalDouble solutionPerMeat,
        OptionalDouble labelSodium,
        double nativeSalt,
        boolean isKosher,
        boolean isSaltierByNature) {
    private static final Phrases PHRASES = Phrases.of(SaltedAlready.class);

    /** Added salt above which a strong brine is refused [kg/kg]; judgement. */
    public static final double REFUSE_ABOVE = 0.003;

    /** Sodium per mass above which plain meat is taken for salted [kg/kg] (usda2015: plain lean meat 44-124 mg/100 g). */
    public static final double SODIUM_LIMIT = 130e-5;

    /** Sodium per mass from which one cannot tell [kg/kg]. */
    public static final double SODIUM_GREY = 110e-5;

    /** Salt the outer meat of a kosher-salted bird holds if the label is silent [kg/kg] (mast1983: 4-6 times plain). */
    public static final double KOSHER_SALT = 0.0085;

    /** Salt of plain lean meat [kg/kg], where only that of the salted kind is known (usda2015: 44-124 mg sodium/100 g). */
    private static final double PLAIN_SALT = 0.0015;

    /** Checks the values. */
    public SaltedAlready {
        solutionPerMeat.ifPresent(p -> Checks.requireInRange("added solution", p, 0, 1, "kg/kg"));
        labelSodium.ifPresent(s -> Checks.requireInRange("sodium on the label", s, 0, 0.05, "kg/kg"));
        Checks.requireInRange("native salt", nativeSalt, 0, 0.05, "kg/kg");
    }

    /**
     * Returns meat about which nothing is known but that it is plain.
     *
     * @param nativeSalt salt it holds by nature [kg/kg]
     * @return the meat
     */
    public static SaltedAlready plain(double nativeSalt) {
        return new SaltedAlready(OptionalDouble.empty(), OptionalDouble.empty(), nativeSalt, false, false);
    }

    /**
     * Returns what is known of a cut. Cuts that are sold with added solution count as labelled with the sodium of the table.
     *
     * @param cut the cut, if it is one of the catalog
     * @param nativeSalt salt of the meat as the tables have it [kg/kg]
     * @param label what the label says
     * @return the meat
     */
    public static SaltedAlready of(Optional<Cut> cut, double nativeSalt, Label label) {
        boolean enhanced = cut.map(c -> c.treatmentClass().equals("enhanced")).orElse(false);
        boolean saltier = cut.map(c -> c.group() == Cut.Group.FISH || c.group() == Cut.Group.POULTRY_DARK)
                .orElse(false);
        OptionalDouble sodium =
                enhanced && label.sodium().isEmpty() ? OptionalDouble.of(Sodium.of(nativeSalt)) : label.sodium();
        return new SaltedAlready(
                label.solution(), sodium, enhanced ? PLAIN_SALT : nativeSalt, label.isKosher(), saltier);
    }

    /**
     * What a label says.
     *
     * @param solution solution per mass of meat without it [kg/kg], if named
     * @param sodium sodium per mass of the pack [kg/kg], if named
     * @param isKosher true if it was soaked and salted at the plant
     */
    public record Label(OptionalDouble solution, OptionalDouble sodium, boolean isKosher) {
        /** No label. */
        public static final Label NONE = new Label(OptionalDouble.empty(), OptionalDouble.empty(), false);
    }

    /** Returns the share of the pack that is added solution [kg/kg]; 0 if the label names none. */
    public double solutionOfPack() {
        double p = solutionPerMeat.orElse(0);
        return p / (1 + p);
    }

    /** Returns the salt the pack holds, native salt included [kg/kg]: by its label, else by habit, else native. */
    public double salt() {
        if (labelSodium.isPresent()) {
            return Sodium.saltOf(labelSodium.getAsDouble());
        }
        return isKosher ? Math.max(nativeSalt, KOSHER_SALT) : nativeSalt;
    }

    /** Returns the salt that was added, {@code salt - native / (1 + p)}, not negative [kg/kg]. */
    public double addedSalt() {
        return Math.max(0, salt() - nativeSalt / (1 + solutionPerMeat.orElse(0)));
    }

    /** Returns what to do about a strong brine. */
    public Verdict verdict() {
        if (isKosher || addedSalt() > REFUSE_ABOVE) {
            return Verdict.REFUSE;
        }
        boolean namesSolution = solutionPerMeat.orElse(0) > 0;
        if (labelSodium.isEmpty()) {
            return namesSolution ? Verdict.REFUSE : Verdict.PLAIN;
        }
        if (namesSolution || (!isSaltierByNature && labelSodium.getAsDouble() > SODIUM_LIMIT)) {
            return Verdict.COUNT_IN;
        }
        return !isSaltierByNature && labelSodium.getAsDouble() > SODIUM_GREY ? Verdict.ASK_FOR_LABEL : Verdict.PLAIN;
    }

    /** Returns the reason of the verdict in plain words; empty if the meat is plain. */
    public Optional<String> reason() {
        String added = Phrases.figures("%.2f %%", 100 * addedSalt());
        return switch (verdict()) {
            case PLAIN -> Optional.empty();
            case ASK_FOR_LABEL -> Optional.of(PHRASES.say("the-label-s-sodium-is"));
            case COUNT_IN -> Optional.of(PHRASES.say("the-maker-has-added-about", added));
            case REFUSE -> Optional.of(refusal(added));
        };
    }

    private String refusal(String added) {
        if (isKosher) {
            return PHRASES.say("the-meat-was-salted-at");
        }
        if (labelSodium.isEmpty()) {
            return PHRASES.say("the-label-names-an-added");
        }
        return PHRASES.say("the-maker-has-already-added", added);
    }

    /** What to do. */
    public enum Verdict {
        /** Plain meat: brine as you like. */
        PLAIN,
        /** Cannot tell: read the label. */
        ASK_FOR_LABEL,
        /** Salted a little: count it in. */
        COUNT_IN,
        /** No strong brine. */
        REFUSE
    }
}
