package io.github.saltfront.plan;

import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;

/** Finds the reading at which to take the meat out. */
final class PullSearch {
    private static final double STEP = 0.5;
    private static final double HOTTEST = Temperature.fromCelsius(95);

    private final Request request;
    private final SafetyRule rule;
    private final CookStages stages;
    private final DayEnsemble ensemble;
    private final Executor executor;
    private final Checker checker;

    /** Runs the check in three dimensions at a reading [K]. */
    @FunctionalInterface
    interface Checker {
        SolidCheck.Correction at(double pull);
    }

    PullSearch(
            Request request,
            SafetyRule rule,
            CookStages stages,
            DayEnsemble ensemble,
            Executor executor,
            Checker checker) {
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
        List<String> reasons(double pull) {
            List<String> reasons = new ArrayList<>();
            reasons.add(String.format(
                    Locale.ROOT,
                    "The wished core is %.1f °C; carry-over does the rest after it is out.",
                    Temperature.toCelsius(wished)));
            if (pull > byWish + 0.25) {
                reasons.add(String.format(
                        Locale.ROOT,
                        "Raised from %.1f °C so that %s is met for 19 of 20 cooks of the ensemble.",
                        Temperature.toCelsius(byWish),
                        required));
            }
            return reasons;
        }
    }

    Found find() {
        double wished = wished();
        String required = rule.vulnerableGuests()
                ? "the consumer minimum of " + rule.consumerMinimum().describe()
                : rule.salted()
                        ? "the hold at the worst place, with our allowance for salt below 64 °C,"
                        : "the official hold at the worst place";
        if (stages.isBath()) {
            List<MemberDay> days = run(wished);
            requireReached(days, wished);
            double high = checker.at(wished).timeFactor() * cookTimeHigh(days);
            return new Found(wished, wished, wished, high, required);
        }
        double pull = wished - 3;
        double first = pull;
        CompletableFuture<SolidCheck.Correction> check =
                CompletableFuture.supplyAsync(() -> checker.at(first), executor);
        List<MemberDay> days = run(pull);
        requireReached(days, pull);
        SolidCheck.Correction correction = PullSearch.join(check);
        for (int i = 0; i < 3; i++) {
            double miss = wished - medianPeak(days) - correction.peakDifference();
            if (Math.abs(miss) < 0.3) {
                break;
            }
            pull += miss;
            days = run(pull);
            requireReached(days, pull);
        }
        double byWish = rounded(Math.min(pull, wished));
        pull = byWish;
        days = run(pull);
        if (!meets(days, rule, correction)) {
            pull = safePull(pull, correction);
            days = run(pull);
            requireReached(days, pull);
        }
        return new Found(pull, byWish, wished, correction.timeFactor() * cookTimeHigh(days), required);
    }

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

    /** Lowest reading, in steps a thermometer shows, at which the ensemble meets the rule. */
    private double safePull(double unsafe, SolidCheck.Correction correction) {
        double low = unsafe;
        double high = unsafe;
        boolean met = false;
        while (!met && high < HOTTEST) {
            low = high;
            high = Math.min(HOTTEST, high + 4);
            met = meets(run(high), rule, correction);
        }
        if (!met) {
            throw new PlanningException(
                    "appliance",
                    "the official requirement (" + rule.consumerMinimum().describe() + ") is not met even at "
                            + Math.round(Temperature.toCelsius(HOTTEST))
                            + " °C in the middle with this appliance; choose another appliance or a hotter setting.");
        }
        while (high - low > STEP) {
            double middle = 0.5 * (low + high);
            if (meets(run(middle), rule, correction)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.ceil(high / STEP - 1e-9) * STEP;
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
        return rule.vulnerableGuests() ? Math.max(wished, minimum) : wished;
    }

    private List<MemberDay> run(double pull) {
        return ensemble.run(stages.through(pull, SaltExchange.NONE), executor);
    }

    private void requireReached(List<MemberDay> days, double pull) {
        long unreached =
                days.stream().filter(day -> !day.end(CookStages.HEAT).stopped()).count();
        for (MemberDay day : days) {
            if (unreached > (1 - Planner.SAFE_SHARE) * days.size()
                    && !day.end(CookStages.HEAT).stopped()) {
                throw new PlanningException(
                        "appliance",
                        String.format(
                                Locale.ROOT,
                                "at this setting the middle does not come to %.0f °C within %.0f h for 19 of 20 pieces of the"
                                        + " ensemble (one stays at %.0f °C); choose a hotter setting or a lower core"
                                        + " temperature.",
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
        double[] hold = days.stream()
                .mapToDouble(day ->
                        correction.holdFactor() * day.end(CookStages.REST).leastKill())
                .toArray();
        Arrays.sort(hold);
        boolean byHold = rule.allowsHold() && Interval.quantile(hold, 1 - Planner.SAFE_SHARE) >= 1;
        if (byHold) {
            return true;
        }
        long meeting = days.stream()
                .filter(day -> rule.consumerMinimum().isMetBy(history(day, correction)))
                .count();
        return meeting >= Planner.SAFE_SHARE * days.size();
    }

    /** Core temperature from the start of the heat on, lowered if the check finds it lower. */
    static TemperatureHistory history(MemberDay day, SolidCheck.Correction correction) {
        TemperatureHistory core = day.coreHistory(day.heatStart());
        return correction.safeDifference() < 0 ? core.shifted(correction.safeDifference()) : core;
    }
}
