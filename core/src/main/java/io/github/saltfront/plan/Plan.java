package io.github.saltfront.plan;

import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.PredictedVerdict;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A plan for one request. Predictions are 90 % intervals of the ensemble; temperatures in K, times in s, masses in kg, salt per
 * wet mass in kg/kg.
 *
 * @param request the request it answers
 * @param salting what to do with salt
 * @param cooking how to cook and when to stop
 * @param result what to expect on the plate
 * @param clock steps in time
 * @param cautions cautions that apply
 * @param members size of the ensemble
 * @param seed its seed
 */
public record Plan(
        Request request,
        SaltPlan salting,
        CookPlan cooking,
        Result result,
        List<Step> clock,
        List<Caution> cautions,
        int members,
        long seed) {
    /** Copies the lists. */
    public Plan {
        clock = List.copyOf(clock);
        cautions = List.copyOf(cautions);
    }

    /**
     * What to do with salt.
     *
     * @param treatment chosen treatment, never {@code AUTO}
     * @param reasons why, one sentence each
     * @param salt mass of salt for all pieces [kg]
     * @param water mass of water for all pieces [kg]; zero for dry salting
     * @param saltPerWater strength of the brine as salt per mass of water [kg/kg]; zero for dry salting
     * @param time planned time of salting [s]
     * @param window when it is seasoned enough and when it turns too salty, for a soak
     */
    public record SaltPlan(
            Request.Treatment treatment,
            List<String> reasons,
            double salt,
            double water,
            double saltPerWater,
            double time,
            Optional<Window> window) {
        /** Copies the list. */
        public SaltPlan {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Window of a soak.
     *
     * @param earliest time at which half of the ensemble has reached the low end of the taste band [s]
     * @param best time at which half of the ensemble has reached the target [s]
     * @param latest time at which a fifth of the ensemble has passed the high end of the taste band [s]
     * @param tooSaltyAtBest share of the ensemble beyond the high end at the best time [-]
     */
    public record Window(double earliest, double best, double latest, double tooSaltyAtBest) {}

    /**
     * How to cook and when to stop.
     *
     * @param pullTemperature reading at which to take it out [K]
     * @param wished core temperature that was wished for or is usual [K]
     * @param reasons why this temperature
     * @param timeToPull time in the appliance [s]
     * @param peak highest core temperature after it is out [K]
     * @param timeToPeak time from taking it out to the peak [s]
     * @param timeNearTarget time the core stays within 1 K of the target or above after it is out [s]
     * @param rest rest [s]
     * @param holdShare share of the required hold at the worst place, with the allowance for salt if it is salted [-]
     * @param holdAtTarget required hold at the peak's median [s], if the table has one
     * @param warmth times in which bacteria grow, against the official limits
     * @param verdict verdict on the lower end
     */
    public record CookPlan(
            double pullTemperature,
            double wished,
            List<String> reasons,
            Interval timeToPull,
            Interval peak,
            Interval timeToPeak,
            Interval timeNearTarget,
            double rest,
            Interval holdShare,
            Optional<Double> holdAtTarget,
            WarmTimes warmth,
            PredictedVerdict verdict) {
        /** Copies the list. */
        public CookPlan {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * What to expect on the plate.
     *
     * @param rawMeanSalt mean salt after salting, before the heat [kg/kg]
     * @param meanSalt mean salt when served [kg/kg]
     * @param outerSalt salt of the outer 5 mm when served [kg/kg]
     * @param coreSalt salt in the middle when served [kg/kg]
     * @param massGain gain of mass by salting per raw mass [kg/kg]
     * @param massLoss loss of mass from raw to served per raw mass [kg/kg]
     * @param evaporated evaporated water per raw mass [kg/kg]
     */
    public record Result(
            Interval rawMeanSalt,
            Interval meanSalt,
            Interval outerSalt,
            Interval coreSalt,
            Interval massGain,
            Interval massLoss,
            Interval evaporated) {}

    /**
     * A step of the clock.
     *
     * @param time when
     * @param words what to do
     * @param active whether the cook is busy with it
     */
    public record Step(ZonedDateTime time, String words, boolean active) {}
}
