package io.github.saltfront.safety;

import java.util.List;

/**
 * Too little is known for a verdict. Nobody may take this for a yes.
 *
 * @param rule the rule
 * @param evidence what was earned as far as it is known
 * @param reasons what is missing, at least one
 */
public record CannotTell(SafetyRule rule, Evidence evidence, List<String> reasons)
        implements MeasuredVerdict, PredictedVerdict {
    /** Copies the reasons. */
    public CannotTell {
        reasons = List.copyOf(reasons);
    }

    @Override
    public boolean isMet() {
        return false;
    }

    @Override
    public String headline() {
        return "Cannot tell. Without what is missing, cook to the official minimum of "
                + consumerMinimum().describe() + ".";
    }
}
