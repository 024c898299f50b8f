package io.github.saltfront.live;

import io.github.saltfront.safety.ConsumerMinimum;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known and expected at one moment of a cook. Temperatures in K, times in s. What is measured and what is inferred stand
 * apart: only {@link #measured} can show that a hold was reached; everything under {@link #inferred} is a prediction.
 *
 * @param time moment it is for, since the start of the heat [s]
 * @param phase whether the piece is in the heat or rests
 * @param pull when to take it out
 * @param measured what the readings of the core probe show by themselves; empty without readings that count
 * @param measuredTimeLeft time in the heat until the lower bound of the probe's own record fulfills the hold [s]; empty where the
 *     probe's error or place is not known, zero when it is shown
 * @param inferred what is inferred of the coldest spot
 * @param plate what to expect on the plate
 * @param warnings what the cook should know
 * @param quality how well the readings are explained
 * @param minimum the official consumer minimum, to be shown beside every other target
 */
public record Outlook(
        double time,
        Phase phase,
        Pull pull,
        Optional<MeasuredHold> measured,
        Optional<Spread> measuredTimeLeft,
        Inferred inferred,
        Plate plate,
        List<LiveWarning> warnings,
        Quality quality,
        ConsumerMinimum minimum) {
    /** Copies the list. */
    public Outlook {
        warnings = List.copyOf(warnings);
    }

    /** Where the piece is. */
    public enum Phase {
        /** In the heat. */
        HEAT,
        /** Out of it. */
        REST
    }

    /** What to do about taking it out. */
    public enum Advice {
        /** Wait. */
        WAIT,
        /** Get ready: within five minutes. */
        SOON,
        /** Take it out now: carry-over ends on the wish, and the rule is met. */
        NOW,
        /** The wish is reached, but the rule is not yet met for enough of the ensemble: leave it in. */
        NOT_SAFE_YET,
        /** It is out. */
        OUT
    }

    /**
     * When to take it out.
     *
     * @param advice what to do now
     * @param timeLeft time until it should come out [s]; zeros once it is out
     * @param coreThen temperature of the coldest spot then [K]
     * @param probeThen what the core probe shows then [K]; empty without readings that count
     * @param safeShareNow share of the ensemble that would meet the rule if it were taken out now [-]
     * @param safeIn time until so many of the ensemble would meet the rule that it may come out [s]
     * @param peakIfNow highest temperature of the coldest spot if it were taken out now [K]
     */
    public record Pull(
            Advice advice,
            Spread timeLeft,
            Spread coreThen,
            OptionalDouble probeThen,
            double safeShareNow,
            double safeIn,
            Spread peakIfNow) {}

    /**
     * What is inferred of the coldest spot; never a proof.
     *
     * @param core its temperature now [K]
     * @param probeAbove how much warmer the core probe's tip is than the coldest spot now [K]; empty without readings that count
     * @param holdShare share of the hold at the worst place now [-]
     * @param holdTimeLeft time in the heat until the hold is fulfilled there [s]
     */
    public record Inferred(Spread core, Optional<Spread> probeAbove, Spread holdShare, Spread holdTimeLeft) {}

    /**
     * What to expect on the plate if it is taken out when advised.
     *
     * @param peak highest temperature of the coldest spot [K]
     * @param timeToPeak time from taking it out to the peak [s]
     * @param rest rest before serving [s]
     * @param massLoss loss of mass from raw to served per raw mass [kg/kg]
     * @param servedIn time until it can be served [s]
     * @param behind how far that is behind the time to serve, early if negative [s]; empty without such a time
     */
    public record Plate(
            Spread peak, double timeToPeak, double rest, Spread massLoss, Spread servedIn, OptionalDouble behind) {}

    /**
     * How well the readings are explained.
     *
     * @param used readings that count
     * @param leftOut readings that were left out
     * @param effectiveCurves simulated members that carry the weight [-]; few of them call for {@link LiveCook#refresh}
     * @param shocks how often the ensemble could not explain what came
     * @param ovenError true temperature of the appliance less its setting [K]
     */
    public record Quality(int used, int leftOut, double effectiveCurves, int shocks, Spread ovenError) {}
}
