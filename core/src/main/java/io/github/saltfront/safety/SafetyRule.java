package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What is required for one meat, these guests and this kitchen, and how a record or a prediction stands against it.
 *
 * <p>A kill is complete by either of two official routes: the hold of {@link #holdTable}, or the {@link #consumerMinimum}. Vulnerable
 * guests leave only the second, and so do fish and shellfish. Meat that is not intact earns nothing below 145 F (62.8 deg C), the lowest row of the
 * food code for its class, though its times are those of the stricter guideline. Salted meat needs longer holds below 64 deg C
 * ({@link HoldTable#lengthenedForSalt}); that is our allowance on top of the official table.
 *
 * @param meat what is cooked
 * @param fatFraction fat in the raw meat [kg/kg], 0-1, matters for poultry; empty if not known
 * @param vulnerableGuests whether a pregnant woman, a small child, an old person or anyone with weak immunity eats
 * @param kitchen whose kitchen it is
 * @param salted whether salt, brine or marinade went in
 * @see "fsis2021 pp. 19, 35-39; fsis2025; wac2022, 246-215-03400"
 */
public record SafetyRule(
        Meat meat, OptionalDouble fatFraction, boolean vulnerableGuests, Kitchen kitchen, boolean salted) {
    private static final Phrases PHRASES = Phrases.of(SafetyRule.class);

    private static final double LOWEST_FOR_NON_INTACT = Temperature.fromFahrenheit(145);

    /** Checks the fat. */
    public SafetyRule {
        OfficialHolds.fatColumn(fatFraction);
    }

    /**
     * Creates the rule for meat without added salt.
     *
     * @param meat what is cooked
     * @param fatFraction fat in the raw meat [kg/kg], 0-1; empty if not known
     * @param vulnerableGuests whether anyone at risk eats
     * @param kitchen whose kitchen it is
     */
    public SafetyRule(Meat meat, OptionalDouble fatFraction, boolean vulnerableGuests, Kitchen kitchen) {
        this(meat, fatFraction, vulnerableGuests, kitchen, false);
    }

    /**
     * Returns the same rule for salted meat.
     *
     * @param salt whether salt, brine or marinade went in
     * @return the rule
     */
    public SafetyRule withSalt(boolean salt) {
        return new SafetyRule(meat, fatFraction, vulnerableGuests, kitchen, salt);
    }

    /**
     * Returns the hold table that applies: the official one, with our allowance for salt if the meat is salted.
     *
     * @return the table
     */
    public HoldTable holdTable() {
        return salted && meat != Meat.FISH ? officialTable().lengthenedForSalt() : officialTable();
    }

    /**
     * Returns the official hold table, which knows no salt.
     *
     * @return the table
     */
    public HoldTable officialTable() {
        if (meat == Meat.FISH) {
            return HoldTable.fish();
        }
        if (meat.bird().isPresent()) {
            return HoldTable.poultry(meat.bird().get(), fatFraction);
        }
        return meat.isIntact() ? HoldTable.meat() : HoldTable.meat().creditedFrom(LOWEST_FOR_NON_INTACT - 1e-6);
    }

    /** Returns the official consumer minimum, which is part of every verdict. */
    public ConsumerMinimum consumerMinimum() {
        return ConsumerMinimum.get(meat.consumerId());
    }

    /** Returns the alternatives that the retail food code gives for this class, for people. */
    public List<String> foodCodeMinimums() {
        List<String> lines = new ArrayList<>();
        for (CsvTable.Row row :
                CsvTable.load(SafetyRule.class, "food_code_minimums.csv").rows()) {
            if (row.text("class").equals(meat.foodCodeClass())) {
                lines.add(row.text("temperature_f") + " °F: " + row.text("printed"));
            }
        }
        return List.copyOf(lines);
    }

    /** Returns whether a hold at a lower temperature may be used at all. */
    public boolean allowsHold() {
        return !vulnerableGuests && meat != Meat.FISH;
    }

    /**
     * Judges a measured record on its lower bound.
     *
     * @param measured the record
     * @return shown by measurement, not met, or cannot tell
     */
    public MeasuredVerdict judge(MeasuredRecord measured) {
        return new MeasurementJudge(this, measured).judge();
    }

    /**
     * Judges a prediction. Whatever the numbers, a prediction is never shown by measurement.
     *
     * @param predicted the lower end of what is expected at the worst place
     * @return predicted to be met, not met, or cannot tell
     */
    public PredictedVerdict judge(PredictedKill predicted) {
        Evidence evidence = predicted.evidence(this);
        if (!predicted.surfaceIncluded()) {
            return new CannotTell(this, evidence, List.of(PHRASES.say("the-surface-in-dry-air")));
        }
        if (!predicted.comeUpKept()) {
            return new NotMet(this, evidence, List.of(PHRASES.say("warming-up-takes-longer-than")), false);
        }
        if (!predicted.coldBefore()) {
            return new NotMet(this, evidence, List.of(PHRASES.say("before-the-heat-it-is")), false);
        }
        if (evidence.meets(this)) {
            return new PredictedMet(this, evidence);
        }
        return new NotMet(this, evidence, List.of(shortfall(evidence)), true);
    }

    /** Says what a history lacks. */
    String shortfall(Evidence evidence) {
        String minimum =
                PHRASES.say("the-official-minimum-of-was", consumerMinimum().describe());
        if (vulnerableGuests) {
            return PHRASES.say("with-vulnerable-guests-a-hold", minimum);
        }
        if (meat == Meat.FISH) {
            return PHRASES.say("for-fish-and-shellfish-there", minimum);
        }
        return PHRASES.say("only-of-the-required-hold", evidence.lethality().shareText(), minimum);
    }
}
