package io.github.saltfront.safety;

import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;

/** Judges one measured record: on its lower bound, and if that fails, whether something is missing or it is simply not met. */
final class MeasurementJudge {
    private static final Phrases PHRASES = Phrases.of(MeasurementJudge.class);

    private final SafetyRule rule;
    private final MeasuredRecord measured;
    private final HoldTable table;
    private final ConsumerMinimum minimum;

    MeasurementJudge(SafetyRule rule, MeasuredRecord measured) {
        this.rule = rule;
        this.measured = measured;
        this.table = rule.holdTable();
        this.minimum = rule.consumerMinimum();
    }

    MeasuredVerdict judge() {
        Evidence evidence = evidence(false);
        if (measured.hasImpossibleReading()) {
            return new CannotTell(rule, evidence, List.of(PHRASES.say("readings-above-105-c-the")));
        }
        if (measured.log().size() < 2) {
            return new CannotTell(rule, evidence, List.of(PHRASES.say("more-readings-a-single-one")));
        }
        LimitCheck comeUp = OfficialLimits.comeUp(measured, evidence.lethality().fulfilledAt());
        if (comeUp.outcome() == LimitCheck.Outcome.FAIL) {
            return new NotMet(rule, evidence, List.of(comeUp.text()), false);
        }
        boolean met = evidence.meets(rule);
        List<String> missing = missing(met);
        if (met && missing.isEmpty()) {
            return new ShownByMeasurement(rule, evidence, measured);
        }
        if (met || evidence(true).meets(rule)) {
            return new CannotTell(rule, evidence, missing);
        }
        return new NotMet(rule, evidence, List.of(rule.shortfall(evidence)), true);
    }

    private Evidence evidence(boolean bridged) {
        Lethality.Accumulator accumulator = new Lethality.Accumulator(table);
        StayTracker tracker = new StayTracker(minimum.temperature());
        if (bridged) {
            measured.walkLowerBridged(accumulator);
            measured.walkLowerBridged(tracker);
        } else {
            measured.walkLower(accumulator);
            measured.walkLower(tracker);
        }
        return new Evidence(accumulator.result(), tracker.longest() >= minimum.requiredStay() - 1e-9);
    }

    private List<String> missing(boolean metWithoutGaps) {
        List<String> missing = new ArrayList<>();
        if (!measured.probe().isKnown()) {
            missing.add(PHRASES.say("the-error-of-the-thermometer"));
        }
        if (!measured.placement().isKnown()) {
            missing.add(PHRASES.say("where-the-tip-sat"));
        }
        if (!metWithoutGaps && measured.gaps() > 0) {
            missing.add(PHRASES.say(
                    "readings-longer-than-s-or",
                    measured.gaps(),
                    PHRASES.say(measured.gaps() == 1 ? "gap" : "gaps"),
                    measured.longestGap()));
        }
        return missing;
    }
}
