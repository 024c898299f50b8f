package io.github.saltfront.plan;

import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.safety.PredictedKill;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.ToDoubleFunction;

/**
 * The day of a plan with stages of other lengths: what becomes of the piece if a stage ends earlier or later. Nothing is searched, so
 * that it can follow a hand that drags. The amount of salt, the bath and the settings stay those of the plan.
 *
 * <p>The median piece is carried through the lengths as given. What its thermometer shows at the end of the heat is the reading at
 * which the pieces of a small ensemble come out, as cooks do; in a bath held at the wished core the clock takes them out. Fewer
 * members and layers than a plan has, and its check in three dimensions is taken over; readings, times, peaks and holds are then
 * moved by what the sketch of the unchanged day misses of the plan. Only a plan decides. Immutable.
 */
public final class TimedDays {
    /** Members of the ensemble: each end of a 90 % interval then lies between two of them. */
    static final int MEMBERS = 30;

    private static final int LAYERS = 16;
    private static final double TOLERANCE = 0.2;

    /** Pieces that do not come to the reading are taken out after so many times the length asked for. */
    private static final double PATIENCE = 3;

    private static final double MINUTE = 60;
    private static final double LONGEST_SALTING = 7 * 86400;
    private static final double LONGEST_REST = 2 * 3600;

    private final Fronts planned;
    private final CookStages cook;
    private final SafetyRule rule;
    private final SolidCheck.Correction check;
    private final TimedDay unchanged;

    private final Miss miss;

    /**
     * What the sketch of the unchanged day misses of the plan.
     *
     * @param reading added to readings [K]
     * @param time factor on times in the heat [-]
     * @param peak added to peaks [K]
     * @param lowPeak added to core temperatures before they are judged [K]
     * @param hold factor on holds [-]
     */
    private record Miss(double reading, double time, double peak, double lowPeak, double hold) {
        private static final Miss NONE = new Miss(0, 1, 0, 0, 1);
    }

    private TimedDays(Plan plan, Executor executor) {
        planned = Fronts.of(plan);
        rule = plan.cooking().verdict().rule();
        cook = new CookStages(plan.request(), rule);
        check = plan.cooking().check().map(SolidCheck::correction).orElse(SolidCheck.Correction.NONE);
        List<Double> own = plannedLengths();
        Plan.CookPlan cooking = plan.cooking();
        Fronts median = median(own);
        double core = median.coreAtEndOf(CookStages.HEAT);
        // a plan for a bath tells the wished core there, which the bath need not come to
        double pull = cook.isBath() ? core : cooking.pullTemperature();
        List<MemberDay> days = days(own, pull, executor);
        Interval peaks = peak(days, Miss.NONE);
        double hold = holds(days, Miss.NONE).low();
        miss = new Miss(
                pull - core,
                cooking.timeToPull().median() / times(days, Miss.NONE).median(),
                cooking.peak().median() - peaks.median(),
                cooking.peak().low() - peaks.low(),
                hold > 0 ? cooking.holdShare().low() / hold : 1);
        unchanged = day(median, days, pull);
    }

    /**
     * Prepares the days of a plan.
     *
     * @param plan the plan
     * @param executor where to run parts; has no effect on the numbers
     * @return its days
     */
    public static TimedDays of(Plan plan, Executor executor) {
        return new TimedDays(plan, executor);
    }

    /** Returns the median piece as the plan has it. */
    public Fronts planned() {
        return planned;
    }

    /** Returns the day with all stages as long as planned. */
    public TimedDay unchanged() {
        return unchanged;
    }

    /** Returns the length of each stage as planned, in order [s]. */
    public List<Double> plannedLengths() {
        return planned.spans().stream().map(span -> span.end() - span.start()).toList();
    }

    /** Returns how long each stage may be, in order; the rest is never shorter than belongs to the official minimum. */
    public List<TimedDay.Bounds> bounds() {
        double rest = Math.max(MINUTE, rule.consumerMinimum().rest());
        return planned.spans().stream()
                .map(span -> switch (span.kind()) {
                    case SaltStages.SOAK, SaltStages.DRY_SALT -> new TimedDay.Bounds(MINUTE, LONGEST_SALTING);
                    case CookStages.REST -> new TimedDay.Bounds(rest, LONGEST_REST);
                    default -> new TimedDay.Bounds(MINUTE / 2, CookStages.LONGEST_HEAT);
                })
                .toList();
    }

    /**
     * Carries the pieces through stages of given lengths.
     *
     * @param lengths length of each stage of {@link Fronts#spans}, in order [s]
     * @param executor where to run parts; has no effect on the numbers
     * @return the day
     * @throws IllegalArgumentException if there are more or fewer lengths than stages, or one is beyond its {@link #bounds}
     */
    public TimedDay with(List<Double> lengths, Executor executor) {
        List<TimedDay.Bounds> bounds = bounds();
        Checks.require(
                lengths.size() == bounds.size(),
                "a day needs a length for each of its " + bounds.size() + " stages, got " + lengths.size() + ".");
        for (int i = 0; i < bounds.size(); i++) {
            Checks.requireInRange(
                    "length of stage " + (i + 1) + " (" + planned.spans().get(i).kind() + ")",
                    lengths.get(i),
                    bounds.get(i).shortest(),
                    bounds.get(i).longest(),
                    "s");
        }
        if (lengths.equals(plannedLengths())) {
            return unchanged;
        }
        Fronts median = median(lengths);
        double pull = median.coreAtEndOf(CookStages.HEAT) + miss.reading();
        return day(median, days(lengths, pull, executor), pull);
    }

    private Request request() {
        return planned.plan().request();
    }

    private boolean isHeat(int stage) {
        return planned.spans().get(stage).kind().equals(CookStages.HEAT);
    }

    private boolean isSaltedAhead() {
        String first = planned.spans().get(0).kind();
        return first.equals(SaltStages.SOAK) || first.equals(SaltStages.DRY_SALT);
    }

    private List<DayEnsemble.StageFor> stages(double pull) {
        return SaltStages.wholeDay(request(), planned.plan().salting(), cook, pull);
    }

    private Fronts median(List<Double> lengths) {
        double pull = planned.plan().cooking().pullTemperature();
        double whole = lengths.stream().mapToDouble(Double::doubleValue).sum();
        double later =
                isSaltedAhead() ? lengths.get(0) - planned.plan().salting().time() : 0;
        return planned.in(timed(stages(pull), lengths, planned.timeFactor()), whole, later, Fronts.ROUGH);
    }

    /** Stages that end by the clock; the time of the heat in layers is shorter by a factor. */
    private List<DayEnsemble.StageFor> timed(
            List<DayEnsemble.StageFor> stages, List<Double> lengths, double timeFactor) {
        List<DayEnsemble.StageFor> result = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            result.add(lasting(stages.get(i), isHeat(i) ? lengths.get(i) / timeFactor : lengths.get(i)));
        }
        return result;
    }

    private static DayEnsemble.StageFor lasting(DayEnsemble.StageFor stage, double time) {
        return draw -> {
            Stage old = stage.stage(draw);
            return new Stage(old.kind(), old.faces(), old.salt(), time, StopRule.NEVER);
        };
    }

    /** The same, but the heat ends when the thermometer shows the reading. */
    private List<DayEnsemble.StageFor> pulled(List<Double> lengths, double pull) {
        List<DayEnsemble.StageFor> planned = stages(pull);
        List<DayEnsemble.StageFor> result = timed(planned, lengths, 1);
        for (int i = 0; i < planned.size(); i++) {
            if (isHeat(i)) {
                result.set(i, atMost(planned.get(i), PATIENCE * lengths.get(i)));
            }
        }
        return result;
    }

    private static DayEnsemble.StageFor atMost(DayEnsemble.StageFor stage, double time) {
        return draw -> {
            Stage old = stage.stage(draw);
            return new Stage(old.kind(), old.faces(), old.salt(), Math.min(time, old.duration()), old.stop());
        };
    }

    private List<MemberDay> days(List<Double> lengths, double pull, Executor executor) {
        SolverSettings settings = SolverSettings.DEFAULT
                .withTolerances(TOLERANCE, 1e-3)
                .withKinetics(rule.holdTable()::rate, new KajitaniJuice());
        Request.Food food = request().food();
        List<Draw> draws = Draw.ensemble(MEMBERS, planned.plan().seed());
        List<DayEnsemble.StageFor> stages =
                cook.isBath() ? timed(stages(pull), lengths, check.timeFactor()) : pulled(lengths, pull);
        return new DayEnsemble(food.meat(), food.shape(), food.startTemperature(), draws, settings, LAYERS)
                .run(stages, executor);
    }

    private TimedDay day(Fronts median, List<MemberDay> days, double pull) {
        List<TimedDay.End> ends = new ArrayList<>();
        for (int i = 0; i < median.spans().size(); i++) {
            int stage = i;
            ends.add(new TimedDay.End(
                    interval(days, day -> day.ends().get(stage).coreTemperature()),
                    interval(days, day -> day.ends().get(stage).coreSalt()),
                    interval(days, day -> day.ends().get(stage).meanSalt()),
                    interval(days, day -> 1 - day.ends().get(stage).massLoss()),
                    interval(
                            days,
                            day -> miss.hold()
                                    * check.holdFactor()
                                    * day.ends().get(stage).leastKill())));
        }
        return new TimedDay(
                median, pull, times(days, miss), peak(days, miss), ends, rule.judge(predicted(days)), MEMBERS);
    }

    private Interval times(List<MemberDay> days, Miss missed) {
        double all = check.timeFactor() * missed.time();
        return interval(days, day -> {
            MemberDay.StageEnd heat = day.end(CookStages.HEAT);
            return all * (heat.end() - heat.start());
        });
    }

    private Interval peak(List<MemberDay> days, Miss missed) {
        double all = check.peakDifference() + missed.peak();
        return interval(days, day -> all + day.peakCore(day.end(CookStages.HEAT).end()));
    }

    private Interval holds(List<MemberDay> days, Miss missed) {
        double all = check.holdFactor() * missed.hold();
        return interval(days, day -> all * day.end(CookStages.REST).leastKill());
    }

    private PredictedKill predicted(List<MemberDay> days) {
        List<TemperatureHistory> cores = days.stream()
                .map(day -> PullSearch.history(day, check).shifted(miss.lowPeak()))
                .toList();
        long meeting = cores.stream()
                .filter(core -> rule.consumerMinimum().isMetBy(core))
                .count();
        return new PredictedKill(
                holds(days, miss).low(),
                meeting >= Planner.SAFE_SHARE * days.size(),
                true,
                cores.stream().allMatch(core -> OfficialLimits.comeUp(core).outcome() != LimitCheck.Outcome.FAIL),
                WarmTimes.of(days).limits().coldBefore());
    }

    private static Interval interval(List<MemberDay> days, ToDoubleFunction<MemberDay> of) {
        return Interval.of(days.stream().mapToDouble(of).toArray());
    }
}
