package io.github.saltfront.safety;

import java.util.List;

/**
 * How a cook stands against its rule. Every verdict carries the rule, and with it the official consumer minimum.
 *
 * <p>{@link ShownByMeasurement} can only come from {@link SafetyRule#judge(MeasuredRecord)}: the judge of a prediction returns {@link
 * PredictedVerdict}, to which it does not belong, and its constructor is not public.
 */
public sealed interface Verdict permits MeasuredVerdict, PredictedVerdict {
    /** Returns the rule. */
    SafetyRule rule();

    /** Returns what was earned, on the conservative side. */
    Evidence evidence();

    /** Returns the official consumer minimum, to be shown beside every verdict. */
    default ConsumerMinimum consumerMinimum() {
        return rule().consumerMinimum();
    }

    /** Returns whether the requirement is met, by measurement or in prediction. */
    boolean isMet();

    /** Returns why not, or what is missing; empty if met. */
    List<String> reasons();

    /** Returns the verdict in one sentence. */
    String headline();

    /** Returns what this kitchen must know about the verdict. */
    default String kitchenNote() {
        return VerdictWords.note(rule().kitchen(), this instanceof ShownByMeasurement);
    }
}
