package io.github.saltfront.plan;

import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;

/** Finds the reading at which to take the meat out. */
final class PullSearch {
    private static final Phrases PHRASES = Phrases.of(PullSearch.class);

    private static final double STEP = 0.5;
    private static final double HOTTEST = Temperature.fromCelsius(95);

    /** Miss of the peak [K] that one more step puts right without another run. */
    private static final double CLOSE = 0.3;

    /** Temperature that makes a hold ten times shorter, about [K]; tells where to look and decides nothing. */
    private static final double TYPICAL_Z = 6;

    /** How far below the reading tried first all tries part [K]; lower ones are tried now and then. */
    private static final double MARGIN_BELOW = 4;

    private final Request request;
    private final SafetyRule rule;
    private final CookStages stages;
    private final DayEnsemble ensemble;
    private final Executor executor;
    private final Checker checker;
    private final boolean rough;
    private Optional<Below> below = Optional.empty();

    /** Runs the check in three dimensions at a reading [K]. */
    @FunctionalInterface
    interface Checker {
        SolidCheck.Correction at(double pull);
    }

    /**
     * Prepares a search.
     *
     * @param request the request
     * @param rule what is required
     * @param stages its stages of heat
     * @param ensemble the few members that are tried
     * @param executor where to run them
     * @param checker the check in three dimensions
     * @param rough whether a safe reading will do, though one a step or two lower may be safe too
     */
    PullSearch(
            Request request,
            SafetyRule rule,
            CookStages stages,
            DayEnsemble ensemble,
            Executor executor,
            Checker checker,
            boolean rough) {
        this.rough = rough;
        this.request = request;
        this.rule = rule;
        this.stages = stages;
        this.ensemble = ensemble;
        this.executor = executor;
        this.checker = checker;
    }

    /**
     * What was found.
     *
     * @param pullTemperature reading at which to take it out [K]
     * @param byWish reading that the wished core alone would ask for [K]
     * @param wished wished core temperature [K]
     * @param cookTimeHigh time that 95 % of the ensemble do not exceed [s]
     * @param required what the official rules ask for, in words
     */
    record Found(double pullTemperature, double byWish, double wished, double cookTimeHigh, String required) {
        /** What a plan found, as a place to start. */
        static Found from(Plan.CookPlan cooking) {
            double pull = cooking.pullTemperature();
            return new Found(pull, pull, cooking.wished(), cooking.timeToPull().high(), "");
        }

        List<String> reasons(double pull, boolean more) {
            List<String> reasons = new ArrayList<>();
            reasons.add(
                    (more
                            ? PHRASES.say("the-wished-core-is-c", Temperature.toCelsius(wished))
                            : PHRASES.say("the-wished-core-is-c-2", Temperature.toCelsius(wished))));
            if (pull > byWish + 0.25) {
                reasons.add(PHRASES.say("raised-from-c-so-that", Temperature.toCelsius(byWish), required));
            }
            return reasons;
        }
    }

    Found find() {
        return find(Optional.empty());
    }

    /**
     * Finds the reading.
     *
     * @param start what a coarser search found, as a place to start; few runs are then left to do
     * @return the reading
     */
    Found find(Optional<Found> start) {
        double wished = stages.isBath() ? Math.min(wished(), request.cook().setting()) : wished();
        String required = !rule.allowsHold()
                ? PHRASES.say("the-consumer-minimum-of", rule.consumerMinimum().describe())
                : rule.salted() ? PHRASES.say("the-hold-at-the-worst") : PHRASES.say("the-official-hold-at-the");
        if (stages.isBath()) {
            List<MemberDay> days = run(wished);
            requireReached(days, wished);
            double high = checker.at(wished).timeFactor() * cookTimeHigh(days);
            return new Found(wished, wished, wished, high, required);
        }
        double pull =
                start.map(found -> found.byWish() + wished - found.wished()).orElse(wished - 3);
        double first = start.map(Found::pullTemperature).orElse(pull);
        CompletableFuture<SolidCheck.Correction> check =
                CompletableFuture.supplyAsync(() -> checker.at(first), executor);
        List<MemberDay> days = run(pull);
        requireReached(days, pull);
        SolidCheck.Correction correction = PullSearch.join(check);
        double miss = wished - medianPeak(days) - correction.peakDifference();
        for (int i = 0; i < 3 && Math.abs(miss) >= CLOSE; i++) {
            pull += miss;
            days = run(pull);
            requireReached(days, pull);
            miss = wished - medianPeak(days) - correction.peakDifference();
        }
        double byWish = rounded(Math.min(pull + miss, wished));
        if (Math.abs(byWish - pull) > 0.5 * STEP) {
            days = run(byWish);
        }
        pull = byWish;
        if (!meets(days, rule, correction)) {
            OptionalDouble hint =
                    start.map(Found::pullTemperature).map(OptionalDouble::of).orElse(OptionalDouble.empty());
            Tried safe = safePull(new Tried(pull, days), correction, hint);
            pull = safe.pull();
            days = safe.days();
            requireReached(days, pull);
        }
        return new Found(pull, byWish, wished, correction.timeFactor() * cookTimeHigh(days), required);
    }

    /** A reading from which the search goes on. */
    private record Below(double reading, HeatedDays days) {}

    /** A reading and what came of it. */
    private record Tried(double pull, List<MemberDay> days) {}

    /** Waits for a check and passes on what it says if it cannot be done. */
    static <T> T join(CompletableFuture<T> check) {
        try {
            return check.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw e;
        }
    }

    /**
     * Lowest reading, in steps a thermometer shows, at which the ensemble meets the rule. Each try goes where the logarithm of
     * the hold, nearly a straight line in temperature, crosses zero. A hint is tried first, and if it is enough the step below it.
     */
    private Tried safePull(Tried unsafe, SolidCheck.Correction correction, OptionalDouble hint) {
        Tried low = unsafe;
        Optional<Tried> high = Optional.empty();
        boolean hinted = !rough && hint.isPresent() && hint.getAsDouble() > unsafe.pull() + 0.5 * STEP;
        for (int tries = 1; high.isEmpty() || high.get().pull() - low.pull() > 1.5 * STEP; tries++) {
            double guess = STEP * Math.ceil(missing(low.days(), correction) / STEP - 1e-9);
            double most = high.isPresent() ? high.get().pull() - STEP : HOTTEST;
            boolean halve = high.isPresent() && tries > 3;
            double step = halve ? STEP * Math.floor((most + STEP - low.pull()) / (2 * STEP)) : Math.max(STEP, guess);
            if (hinted && tries == 1) {
                step = STEP * Math.round((hint.getAsDouble() - low.pull()) / STEP);
            } else if (hinted && tries == 2 && high.isPresent()) {
                step = most - low.pull();
            }
            double next = Math.min(most, low.pull() + step);
            if (next - low.pull() < 0.5 * STEP) {
                throw unmet();
            }
            Tried tried = new Tried(next, run(next));
            if (meets(tried.days(), rule, correction)) {
                high = Optional.of(tried);
                if (rough && tries > 1) {
                    break;
                }
            } else {
                low = tried;
            }
        }
        return high.orElseThrow();
    }

    /** How much hotter the middle must get to meet the rule, about [K]; a guess where to look next. */
    private double missing(List<MemberDay> days, SolidCheck.Correction correction) {
        double[] hold = holds(days, correction);
        double low = Interval.quantile(hold, 1 - Planner.SAFE_SHARE);
        double[] peaks = days.stream()
                .mapToDouble(day -> day.peakCore(day.end(CookStages.HEAT).end()))
                .toArray();
        Arrays.sort(peaks);
        double byMinimum = rule.consumerMinimum().temperature()
                - correction.safeDifference()
                - Interval.quantile(peaks, 1 - Planner.SAFE_SHARE);
        boolean byHold = rule.allowsHold() && low > 0;
        return byHold ? Math.min(byMinimum, TYPICAL_Z * -Math.log10(low)) : byMinimum;
    }

    private PlanningException unmet() {
        return new PlanningException(
                "appliance",
                PHRASES.say(
                        "the-official-requirement-is-not",
                        rule.consumerMinimum().describe(),
                        Math.round(Temperature.toCelsius(HOTTEST))));
    }

    private static double rounded(double kelvin) {
        double celsius = Temperature.toCelsius(kelvin);
        return Temperature.fromCelsius(Math.round(celsius / STEP) * STEP);
    }

    private double wished() {
        double minimum = rule.consumerMinimum().temperature();
        double usual =
                request.food().cut().map(cut -> cut.qualityCore().typical()).orElse(minimum);
        double wished = request.taste().core().orElse(usual);
        return !rule.allowsHold() ? Math.max(wished, minimum) : wished;
    }

    /** A day to a reading; days to all readings above one have the way to it in common, which is gone once. */
    private List<MemberDay> run(double pull) {
        if (stages.isBath()) {
            return ensemble.run(stages.through(pull, SaltExchange.NONE), executor);
        }
        if (below.isEmpty() || pull < below.get().reading()) {
            double reading = pull - MARGIN_BELOW;
            HeatedDays days = HeatedDays.of(ensemble, stages.through(reading, SaltExchange.NONE), executor);
            below = Optional.of(new Below(reading, days));
        }
        return below.get().days().after(stages.through(pull, SaltExchange.NONE), executor);
    }

    private void requireReached(List<MemberDay> days, double pull) {
        long unreached =
                days.stream().filter(day -> !day.end(CookStages.HEAT).stopped()).count();
        for (MemberDay day : days) {
            if (unreached > (1 - Planner.SAFE_SHARE) * days.size()
                    && !day.end(CookStages.HEAT).stopped()) {
                throw new PlanningException(
                        "appliance",
                        PHRASES.say(
                                "at-this-setting-the-middle",
                                Temperature.toCelsius(pull),
                                CookStages.LONGEST_HEAT / 3600,
                                Temperature.toCelsius(day.end(CookStages.HEAT).coreTemperature())));
            }
        }
    }

    private static double medianPeak(List<MemberDay> days) {
        return Interval.of(days.stream()
                        .mapToDouble(
                                day -> day.peakCore(day.end(CookStages.HEAT).end()))
                        .toArray())
                .median();
    }

    private static double cookTimeHigh(List<MemberDay> days) {
        return Interval.of(days.stream()
                        .mapToDouble(day -> day.end(CookStages.HEAT).end()
                                - day.end(CookStages.HEAT).start())
                        .toArray())
                .high();
    }

    /** Whether all but a twentieth of the ensemble, corrected, meet the rule by the hold or the consumer minimum. */
    static boolean meets(List<MemberDay> days, SafetyRule rule, SolidCheck.Correction correction) {
        double[] hold = holds(days, correction);
        boolean byHold = rule.allowsHold() && Interval.quantile(hold, 1 - Planner.SAFE_SHARE) >= 1;
        if (byHold) {
            return true;
        }
        long meeting = days.stream()
                .filter(day -> rule.consumerMinimum().isMetBy(history(day, correction)))
                .count();
        return meeting >= Planner.SAFE_SHARE * days.size();
    }

    /** Shares of the required hold, corrected, from the lowest up. */
    private static double[] holds(List<MemberDay> days, SolidCheck.Correction correction) {
        double[] hold = days.stream()
                .mapToDouble(day ->
                        correction.holdFactor() * day.end(CookStages.REST).leastKill())
                .toArray();
        Arrays.sort(hold);
        return hold;
    }

    /** Core temperature from the start of the heat on, lowered if the check finds it lower. */
    static TemperatureHistory history(MemberDay day, SolidCheck.Correction correction) {
        TemperatureHistory core = day.coreHistory(day.heatStart());
        return correction.safeDifference() < 0 ? core.shifted(correction.safeDifference()) : core;
    }
}
