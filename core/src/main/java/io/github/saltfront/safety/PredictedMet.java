package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;

/**
 * The lower end of a prediction meets the requirement. A prediction is not proof.
 *
 * @param rule the rule
 * @param evidence what is expected at the worst place
 */
public record PredictedMet(SafetyRule rule, Evidence evidence) implements PredictedVerdict {
    private static final Phrases PHRASES = Phrases.of(PredictedMet.class);

    /** Checks that the evidence does meet the rule. */
    public PredictedMet {
        Checks.require(evidence.meets(rule), "evidence must meet the rule, got " + rule.shortfall(evidence) + ".");
    }

    @Override
    public boolean isMet() {
        return true;
    }

    @Override
    public List<String> reasons() {
        return List.of();
    }

    @Override
    public String headline() {
        return PHRASES.say("predicted-to-be-met-a");
    }
}
