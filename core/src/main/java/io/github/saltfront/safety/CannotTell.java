package io.github.saltfront.safety;

import io.github.saltfront.words.Phrases;
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
    private static final Phrases PHRASES = Phrases.of(CannotTell.class);

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
        return PHRASES.say("cannot-tell-without-what-is", consumerMinimum().describe());
    }
}
