package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import java.util.OptionalDouble;

/**
 * What a simulation expects at the worst place of a piece, at the lower end of its uncertainty.
 *
 * @param holdShare share of the required hold at the worst cell [-], not negative
 * @param consumerMinimumMet whether the worst cell meets the consumer minimum
 * @param surfaceIncluded whether the surface was among the cells, which it must be
 * @param comeUpKept whether the core warms through 50-130 F within the official time
 * @param coldBefore whether it is kept cold, or warm for no longer than allowed, before the heat
 */
public record PredictedKill(
        double holdShare, boolean consumerMinimumMet, boolean surfaceIncluded, boolean comeUpKept, boolean coldBefore) {
    /** Checks the share. */
    public PredictedKill {
        Checks.requireInRange("share of the hold", holdShare, 0, Double.MAX_VALUE, "-");
    }

    /**
     * Evaluates the history of the worst place from the start of the heat on.
     *
     * @param rule the rule, for its table and minimum
     * @param worst temperature of the worst place at the lower end of the uncertainty
     * @param surfaceIncluded whether the surface was among the places compared
     * @return the prediction
     */
    public static PredictedKill along(SafetyRule rule, TemperatureHistory worst, boolean surfaceIncluded) {
        return new PredictedKill(
                Lethality.of(rule.holdTable(), worst).share(),
                rule.consumerMinimum().isMetBy(worst),
                surfaceIncluded,
                OfficialLimits.comeUp(worst).outcome() != LimitCheck.Outcome.FAIL,
                true);
    }

    Evidence evidence(SafetyRule rule) {
        return new Evidence(
                new Lethality(holdShare, rule.holdTable().logReduction(), OptionalDouble.empty()), consumerMinimumMet);
    }
}
