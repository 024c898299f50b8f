package io.github.saltfront.plan;

import io.github.saltfront.safety.PredictedVerdict;
import java.util.List;

/**
 * What becomes of a piece whose stages last other times than its plan says. A sketch by {@link TimedDays}; only a plan decides.
 *
 * @param fronts the median piece
 * @param pullTemperature what its thermometer shows at the end of the heat [K]
 * @param timeToPull time until the pieces show that [s]
 * @param peak highest core temperature after it is out [K]
 * @param ends what the pieces are at the end of each stage, in order
 * @param verdict verdict on the lower end of the ensemble
 * @param members size of the ensemble
 */
public record TimedDay(
        Fronts fronts,
        double pullTemperature,
        Interval timeToPull,
        Interval peak,
        List<End> ends,
        PredictedVerdict verdict,
        int members) {

    /** Copies the list. */
    public TimedDay {
        ends = List.copyOf(ends);
    }

    /**
     * What the pieces are at the end of a stage.
     *
     * @param coreTemperature temperature in the middle [K]
     * @param coreSalt salt in the middle per wet mass [kg/kg]
     * @param meanSalt mean salt per wet mass [kg/kg]
     * @param weight weight per raw weight [kg/kg]
     * @param holdShare share of the required hold at the worst place [-]
     */
    public record End(
            Interval coreTemperature, Interval coreSalt, Interval meanSalt, Interval weight, Interval holdShare) {}

    /**
     * How long a stage may be.
     *
     * @param shortest shortest length [s]
     * @param longest longest length [s]
     */
    public record Bounds(double shortest, double longest) {}
}
