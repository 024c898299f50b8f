package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.Provenance;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which treatment suits which class of cut, and in which order to ask. Strengths and times are common practice: a sanity
 * check on what the program computes, never its answer.
 */
public final class TreatmentRules {
    private static final String ANY = "any";

    private final List<Rule> rules;
    private final List<ChoiceStep> steps;

    private TreatmentRules(List<Rule> rules, List<ChoiceStep> steps) {
        this.rules = rules;
        this.steps = steps;
    }

    /** Reads {@code treatment_rules.csv} and {@code choice_steps.csv}. */
    public static TreatmentRules load() {
        return new TreatmentRules(
                CsvTable.load(TreatmentRules.class, "treatment_rules.csv").rows().stream()
                        .map(Rule::read)
                        .toList(),
                CsvTable.load(TreatmentRules.class, "choice_steps.csv").rows().stream()
                        .map(ChoiceStep::read)
                        .toList());
    }

    /** Returns all rules in the order of the table. */
    public List<Rule> all() {
        return rules;
    }

    /** Returns the questions to ask, in order; the first that applies decides. */
    public List<ChoiceStep> choiceSteps() {
        return steps;
    }

    /**
     * The rule for a class of cut and a way of cooking.
     *
     * @param treatmentClass class of the cut
     * @param cook way of cooking, such as {@code fry-or-grill}; one without a rule of its own gets the general one
     * @return the rule, if the class is known
     */
    public Optional<Rule> find(String treatmentClass, String cook) {
        List<Rule> ofClass = rules.stream()
                .filter(r -> r.treatmentClass().equals(treatmentClass))
                .toList();
        return ofClass.stream()
                .filter(r -> r.cook().equals(cook))
                .findFirst()
                .or(() -> ofClass.stream().filter(r -> r.cook().equals(ANY)).findFirst());
    }

    /** Ways to salt. */
    public enum Treatment {
        /** Nothing. */
        NONE,
        /** Soak in salt water. */
        WET_BRINE,
        /** Salt on the surface, then wait. */
        DRY_SALT,
        /** Soak, then dry uncovered. */
        WET_THEN_DRY,
        /** Salt on the surface just before the heat. */
        SURFACE_SALT,
        /** Buttermilk or yogurt with salt. */
        DAIRY,
        /** Marinade with soy sauce. */
        SOY_MARINADE,
        /** Marinade with acid. */
        ACID
    }

    /**
     * A treatment with its usual strength and time.
     *
     * @param treatment the treatment
     * @param strength percent as a fraction [kg/kg]: of the brine for wet ones, of the meat for the others
     * @param time usual time [s]
     */
    public record Choice(Treatment treatment, Optional<Band> strength, Optional<Band> time) {
        private static Choice read(CsvTable.Row row, String column) {
            return new Choice(
                    Cells.constant(Treatment.class, row, column),
                    Cells.findRange(row, column + "_strength_low_pct", column + "_strength_high_pct", 0.01),
                    Cells.findRange(row, column + "_time_low_h", column + "_time_high_h", 3600));
        }
    }

    /**
     * What to do with a class of cut.
     *
     * @param treatmentClass class of cut
     * @param name the class in plain words
     * @param cook way of cooking it holds for; {@code any} for all
     * @param first first choice
     * @param second second choice
     * @param avoid what to avoid; {@code NONE} if nothing
     * @param avoidWhy why to avoid it, or empty
     * @param why why the first choice is
     * @param provenance where it comes from
     */
    public record Rule(
            String treatmentClass,
            String name,
            String cook,
            Choice first,
            Choice second,
            Treatment avoid,
            String avoidWhy,
            String why,
            Provenance provenance) {
        private static Rule read(CsvTable.Row row) {
            return new Rule(
                    row.text("treatment_class"),
                    row.words("name"),
                    row.text("cook"),
                    Choice.read(row, "first"),
                    Choice.read(row, "second"),
                    Cells.constant(Treatment.class, row, "avoid"),
                    row.words("avoid_why"),
                    row.words("why"),
                    Provenance.of(row));
        }
    }

    /**
     * One question on the way to a treatment.
     *
     * @param step place in the order, from 1
     * @param id key
     * @param question the question
     * @param outcome what to do if the answer is yes
     * @param why the reason, as a part of a sentence
     * @param limitLow lower end of the limit in {@code unit}, where a gray zone begins
     * @param limitHigh the limit in {@code unit}
     * @param unit unit of the limits as printed, or empty
     * @param provenance where it comes from
     */
    public record ChoiceStep(
            int step,
            String id,
            String question,
            String outcome,
            String why,
            OptionalDouble limitLow,
            OptionalDouble limitHigh,
            String unit,
            Provenance provenance) {
        private static ChoiceStep read(CsvTable.Row row) {
            return new ChoiceStep(
                    (int) row.number("step"),
                    row.text("id"),
                    row.words("question"),
                    row.words("outcome"),
                    row.words("note"),
                    row.findNumber("limit_low"),
                    row.findNumber("limit_high"),
                    row.text("unit"),
                    Provenance.of(row));
        }
    }
}
