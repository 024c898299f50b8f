package io.github.saltfront.safety;

import io.github.saltfront.words.Phrases;
import java.util.List;

/** The lower bound of a measured record meets the requirement. Only a {@link MeasuredRecord} leads here. */
public final class ShownByMeasurement implements MeasuredVerdict {
    private static final Phrases PHRASES = Phrases.of(ShownByMeasurement.class);

    private final SafetyRule rule;
    private final Evidence evidence;
    private final MeasuredRecord measured;

    /** Takes the record that shows it; not public, so that nothing else can claim a measurement. */
    ShownByMeasurement(SafetyRule rule, Evidence evidence, MeasuredRecord measured) {
        this.rule = rule;
        this.evidence = evidence;
        this.measured = measured;
    }

    @Override
    public SafetyRule rule() {
        return rule;
    }

    @Override
    public Evidence evidence() {
        return evidence;
    }

    /** Returns the record that shows it. */
    public MeasuredRecord measured() {
        return measured;
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
        String route = evidence.consumerMinimumMet()
                ? PHRASES.say("the-official-minimum-of-was", consumerMinimum().describe())
                : PHRASES.say("the-required-hold-was-reached");
        return PHRASES.say("shown-by-measurement", route);
    }
}
