package io.github.saltfront.safety;

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
            return "Not met, and more cooking does not mend it: discard.";
        }
        return "Not met. Cook on to the official minimum of "
                + consumerMinimum().describe() + ".";
    }
}
