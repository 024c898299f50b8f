package io.github.saltfront.safety;

import io.github.saltfront.words.Phrases;
import java.util.List;

/**
 * The requirement is not met.
 *
 * @param rule the rule
 * @param evidence what was earned
 * @param reasons why not, at least one
 * @param cookingOnHelps whether more heat can still mend it; false after too long a warm spell, whose toxins may survive
 */
public record NotMet(SafetyRule rule, Evidence evidence, List<String> reasons, boolean cookingOnHelps)
        implements MeasuredVerdict, PredictedVerdict {
    private static final Phrases PHRASES = Phrases.of(NotMet.class);

    /** Copies the reasons. */
    public NotMet {
        reasons = List.copyOf(reasons);
    }

    @Override
    public boolean isMet() {
        return false;
    }

    @Override
    public String headline() {
        if (!cookingOnHelps) {
            return PHRASES.say("not-met-and-more-cooking");
        }
        return PHRASES.say("not-met-cook-on-to", consumerMinimum().describe());
    }
}
