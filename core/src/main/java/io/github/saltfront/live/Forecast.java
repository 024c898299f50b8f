package io.github.saltfront.live;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.quality.JuiceLoss;
import io.github.saltfront.safety.HoldTable;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.SafetyRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * Reads answers off a weighted swarm at one moment, on a sample of it with equal weights.
 *
 * @see "kitagawa1996 for the sample"
 */
final class Forecast {
    private static final int SAMPLE = 600;

    /** Members for integrals along the future of the probe. */
    private static final int FEW = 150;

    /** Time before which the cook is told to get ready [s]. */
    private static final double SOON = 300;

    /** Height of a peak above the consumer minimum that stands for the stay it asks for [K]; as in {@link PullLevels}. */
    private static final double SURE = 0.3;

    /**
     * Standard deviation of the core at which a piece may come out, against the same piece in three dimensions [K]; it stands for the error
     * of carry-over and kill, and was found on simulated cooks (decision 0009).
     */
    private static final double LEVEL_ERROR = 0.7;

    /** Share of the ensemble that must meet the rule before a cook is told to take it out [-]; a plan, which is no order, asks for less. */
    static final double SAFE_SHARE = 0.99;

    /** Temperature difference for a tenfold kill [K]; the official tables lie between 5 and 6. */
    private static final double TENFOLD = 5.5;

    /** Share of the 90 % half width that the 50 % one of a normal distribution has [-]. */
    private static final double HALF_SHARE = 0.6745 / Draw.NINETY_FIVE;

    private final Swarm swarm;
    private final LiveSetup setup;
    private final Course course;
    private final Optional<ProbeFilter> filter;
    private final double now;
    private final int[] sample;
    private final double[] luck;
    private final double[] levelError;
    private final double horizon;

    Forecast(
            Swarm swarm,
            double[] weights,
            LiveSetup setup,
            Course course,
            Optional<ProbeFilter> filter,
            double now,
            long seed) {
        this.swarm = swarm;
        this.setup = setup;
        this.course = course;
        this.filter = filter;
        this.now = now;
        horizon = swarm.curves().every() * (swarm.curves().points() - 1);
        SplittableRandom random = new SplittableRandom(seed);
        sample = resampled(weights, random.nextDouble());
        luck = new double[SAMPLE];
        for (int i = 0; i < SAMPLE; i++) {
            luck[i] = random.nextGaussian();
        }
        levelError = new double[SAMPLE];
        Arrays.setAll(levelError, i -> LEVEL_ERROR * random.nextGaussian());
    }

    /** Systematic resampling: one throw for all. */
    private static int[] resampled(double[] weights, double throwOf) {
        int[] chosen = new int[SAMPLE];
        double sum = 0;
        int p = -1;
        for (int i = 0; i < SAMPLE; i++) {
            double level = (i + throwOf) / SAMPLE;
            while (p < weights.length - 1 && (p < 0 || sum < level)) {
                p++;
                sum += weights[p];
            }
            chosen[i] = p;
        }
        return chosen;
    }

    /** Temperature of the coldest spot with the error of the model that is left by then [K]. */
    private double core(int i, double time) {
        int p = sample[i];
        double drift;
        if (filter.isPresent()) {
            drift = filter.get().driftAhead(p, time)
                    + luck[i] * Math.sqrt(filter.get().varianceAhead(time));
        } else {
            drift = luck[i] * swarm.curves().discrepancy();
        }
        return swarm.core(p, time) + drift;
    }

    Spread coreNow() {
        return spread(i -> core(i, now));
    }

    /** First time from now on at which the coldest spot is at a level [s], infinite if not within the horizon. */
    private double timeAt(int i, double level) {
        return level == Double.POSITIVE_INFINITY ? level : timeAt(t -> core(i, t), level);
    }

    /** First time from now on at which a quantity is at a level [s], infinite if not within the horizon. */
    private double timeAt(DoubleUnaryOperator quantity, double level) {
        double step = Math.max(1, swarm.curves().every());
        double before = quantity.applyAsDouble(now);
        if (before >= level) {
            return now;
        }
        for (double t = now + step; t <= horizon + step; t += step) {
            double value = quantity.applyAsDouble(t);
            if (value >= level) {
                return t - step * (value - level) / (value - before);
            }
            before = value;
        }
        return Double.POSITIVE_INFINITY;
    }

    private double reading(int i, double time) {
        ProbeFilter probe = filter.orElseThrow();
        return probe.forecast(sample[i], time) + luck[i] * Math.sqrt(probe.varianceAhead(time));
    }

    /** Time until the core probe shows a temperature [s]. */
    Spread timeToReading(double level) {
        return spread(i -> timeAt(t -> reading(i, t), level) - now);
    }

    /** Time until the coldest spot is at a level [s]. */
    Spread timeToCore(double level) {
        return spread(i -> timeAt(i, level) - now);
    }

    private double pullTime(int i, boolean timed) {
        return timed ? holdTime(i) : timeAt(i, swarm.levels(sample[i]).pull());
    }

    /** Inferred share of the hold at the worst place; colder than simulated takes off, warmer adds nothing. */
    private double hold(int i, double time) {
        int p = sample[i];
        double off = Math.min(0, core(i, time) - swarm.core(p, time));
        return setup.correction().holdFactor() * swarm.kill(p, time) * Math.pow(10, off / TENFOLD);
    }

    /** Core from which on a member may come out, with the error of that [K]. */
    private double safeCore(int i) {
        return swarm.levels(sample[i]).safe() + levelError[i];
    }

    /** Share of the hold that must be seen for a member to be safe, with the error of that [-]. */
    private double safeHold(int i) {
        return Math.pow(10, levelError[i] / TENFOLD);
    }

    private double safeTime(int i, boolean timed) {
        return timed ? timeAt(t -> hold(i, t), safeHold(i)) : timeAt(i, safeCore(i));
    }

    private boolean isSafe(int i, boolean timed) {
        return timed ? hold(i, now) >= safeHold(i) : core(i, now) >= safeCore(i);
    }

    private double holdTime(int i) {
        return timeAt(t -> hold(i, t), 1);
    }

    Outlook.Inferred inferred() {
        double[] holds = new double[SAMPLE];
        Arrays.setAll(holds, i -> holdTime(i) - now);
        return new Outlook.Inferred(
                coreNow(),
                filter.map(f -> spread(i -> f.aboveCore(sample[i], now))),
                spread(i -> hold(i, now)),
                Spread.of(holds));
    }

    Outlook.Pull pull(boolean timed) {
        if (course.restStart().isPresent()) {
            return pullByClock(course.restStart().getAsDouble());
        }
        double[] left = new double[SAMPLE];
        int safe = 0;
        for (int i = 0; i < SAMPLE; i++) {
            left[i] = pullTime(i, timed) - now;
            safe += isSafe(i, timed) ? 1 : 0;
        }
        Spread timeLeft = Spread.of(left);
        double[] safeLeft = new double[SAMPLE];
        Arrays.setAll(safeLeft, i -> safeTime(i, timed) - now);
        Arrays.sort(safeLeft);
        double share = (double) safe / SAMPLE;
        double then = now + Math.min(timeLeft.p50(), horizon - now);
        Spread coreThen = spread(i -> core(i, then));
        OptionalDouble probeThen = filter.isPresent()
                ? OptionalDouble.of(
                        spread(i -> filter.get().forecast(sample[i], then)).p50())
                : OptionalDouble.empty();
        Spread peakIfNow = spread(i -> swarm.levels(sample[i]).peak(core(i, now)));
        return new Outlook.Pull(
                advice(timeLeft, share),
                timeLeft,
                coreThen,
                probeThen,
                share,
                safeLeft[(int) Math.ceil(SAFE_SHARE * SAMPLE) - 1],
                peakIfNow);
    }

    /** The main heat is over: a clock ends the last one, or it is out. */
    private Outlook.Pull pullByClock(double restStart) {
        double left = course.takenOut().isPresent() ? 0 : Math.max(0, restStart - now);
        Spread timeLeft = new Spread(left, left, left, left, left);
        double share = safeShareOut();
        Outlook.Advice advice = course.takenOut().isPresent() ? Outlook.Advice.OUT : advice(timeLeft, share);
        double then = Math.max(now, restStart);
        return new Outlook.Pull(
                advice, timeLeft, spread(i -> core(i, then)), OptionalDouble.empty(), share, left, peakOut());
    }

    private static Outlook.Advice advice(Spread left, double safeShare) {
        if (left.p50() <= 0) {
            return safeShare >= SAFE_SHARE ? Outlook.Advice.NOW : Outlook.Advice.NOT_SAFE_YET;
        }
        return left.p50() <= SOON ? Outlook.Advice.SOON : Outlook.Advice.WAIT;
    }

    private double safeShareOut() {
        double until = course.restStart().orElse(now) + setup.rest();
        SafetyRule rule = setup.rule();
        double sure = rule.consumerMinimum().temperature() - setup.correction().safeDifference() + SURE;
        int safe = 0;
        for (int i = 0; i < SAMPLE; i++) {
            boolean held = rule.allowsHold() && hold(i, Math.max(now, until)) >= safeHold(i);
            safe += held || peakOut(i) >= sure + levelError[i] ? 1 : 0;
        }
        return (double) safe / SAMPLE;
    }

    private Spread peakOut() {
        return spread(this::peakOut);
    }

    private double peakOut(int i) {
        double step = swarm.curves().every();
        double peak = core(i, now);
        for (double t = course.restStart().orElse(now); t < horizon; t += step) {
            peak = Math.max(peak, t < now ? swarm.core(sample[i], t) : core(i, t));
        }
        return peak;
    }

    Outlook.Plate plate(Outlook.Pull pull) {
        boolean out = course.restStart().isPresent();
        double then = now + Math.min(pull.timeLeft().p50(), horizon - now);
        Spread peak =
                out ? pull.peakIfNow() : spread(i -> swarm.levels(sample[i]).peak(core(i, then)));
        double served = out ? course.restStart().getAsDouble() + setup.rest() : then;
        Spread loss = widened(
                out
                        ? spread(i -> swarm.loss(sample[i], served))
                        : spread(i -> swarm.levels(sample[i]).loss(core(i, then))));
        double timeToPeak = out
                ? 0
                : spread(i -> swarm.levels(sample[i]).timeToPeak(core(i, then))).p50();
        double resting = course.takenOut().isPresent() ? Math.max(0, served - now) : setup.rest();
        double afterMain = out ? 0 : course.timeAfterMain();
        Spread servedIn = pull.timeLeft().scaled(1, afterMain + resting);
        OptionalDouble behind = setup.serveAt().isPresent()
                ? OptionalDouble.of(now + servedIn.p50() - setup.serveAt().getAsDouble())
                : OptionalDouble.empty();
        return new Outlook.Plate(peak, timeToPeak, resting, loss, servedIn, behind);
    }

    /** The juice model errs against data by a band that the ensemble does not hold. */
    private static Spread widened(Spread loss) {
        double half = JuiceLoss.HALF_BAND;
        double middle = loss.p50();
        return new Spread(
                Math.min(loss.p05(), middle - half),
                Math.min(loss.p25(), middle - HALF_SHARE * half),
                middle,
                Math.max(loss.p75(), middle + HALF_SHARE * half),
                Math.max(loss.p95(), middle + half));
    }

    /** Time in the heat until the lower bound of the probe's own record fulfills the hold, from what it has already. */
    Optional<Spread> measuredTimeLeft(Optional<MeasuredHold> record) {
        double share = record.map(MeasuredHold::running).orElse(0.0);
        if (record.map(MeasuredHold::isShown).orElse(false)) {
            return Optional.of(new Spread(0, 0, 0, 0, 0));
        }
        if (filter.isEmpty()
                || !setup.probeError().isKnown()
                || !setup.placement().isKnown()) {
            return Optional.empty();
        }
        HoldTable table = setup.rule().holdTable();
        double[] left = new double[FEW];
        Arrays.setAll(left, i -> measuredLeft(i * SAMPLE / FEW, share, table));
        return Optional.of(Spread.of(left));
    }

    private double measuredLeft(int i, double share, HoldTable table) {
        double step = Math.max(5, swarm.curves().every() / 2);
        double earned = share;
        double before = lowerBound(i, now);
        for (double t = now + step; t <= horizon; t += step) {
            double value = lowerBound(i, t);
            double added = step * table.meanRate(before, value);
            if (earned + added >= 1) {
                return t - now - step * (earned + added - 1) / added;
            }
            earned += added;
            before = value;
        }
        return Double.POSITIVE_INFINITY;
    }

    private double lowerBound(int i, double time) {
        ProbeFilter probe = filter.orElseThrow();
        double reading = reading(i, time);
        double lag = MeasuredRecord.DEFAULT_RESPONSE_TIME;
        double cooling =
                Math.min(0, lag * (probe.forecast(sample[i], time + lag) - probe.forecast(sample[i], time)) / lag);
        return setup.probeError().lower(reading) - setup.placement().deduction().orElse(0) + cooling;
    }

    Spread ovenError() {
        Appliance appliance = setup.request().cook().appliance();
        int dimension = LuckSpace.SIMULATED.indexOf(Uncertainty.SETTING);
        return spread(i -> swarm.variate(dimension, sample[i]) / Draw.NINETY_FIVE * appliance.setPointError());
    }

    /** Median rise of the coldest spot over a time from now [K]. */
    double rise(double seconds) {
        return spread(i -> swarm.core(sample[i], now + seconds) - swarm.core(sample[i], now))
                .p50();
    }

    /** The front of heat at a time. */
    FrontMoment front(double time) {
        List<Double> temperatures = new ArrayList<>();
        for (double place : Curves.PLACES) {
            double sum = 0;
            for (int i = 0; i < SAMPLE; i++) {
                sum += swarm.temperature(sample[i], time, place) + core(i, time) - swarm.core(sample[i], time);
            }
            temperatures.add(sum / SAMPLE);
        }
        return new FrontMoment(
                time,
                temperatures,
                spread(i -> hold(i, time)).p50(),
                spread(i -> swarm.loss(sample[i], time)).p50());
    }

    /** Core and probe to be expected at a time. */
    Spread core(double time) {
        return spread(i -> core(i, time));
    }

    Spread probe(double time) {
        return spread(i -> reading(i, time));
    }

    private Spread spread(IntToDoubleFunction value) {
        double[] values = new double[SAMPLE];
        Arrays.setAll(values, value);
        return Spread.of(values);
    }
}
