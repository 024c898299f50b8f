package io.github.saltfront.plan;

import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.safety.PredictedKill;
import io.github.saltfront.safety.PredictedVerdict;
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
 * which the others of a small ensemble come out, as cooks do; in a bath held at the wished core the clock takes them out. A
 * sketch: fewer members and layers than a plan has, and the plan's check in three dimensions is taken over. Against the ensemble of
 * a plan its medians differ by less than 0.5 K and a tenth of the loss (test). Only a plan decides.
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
    /** Members of the ensemble: the ends of a 90 % interval then rest on two of them. */
    public static final int MEMBERS = 40;

    private static final int LAYERS = 16;
    private static final double TOLERANCE = 0.2;

    /** The median is drawn: as fine as a picture of some 400 points shows. */
    private static final Fronts.Resolution MEDIAN = new Fronts.Resolution(20, 0.1, 1500, 60);

    /** Pieces that do not come to the reading are taken out after so many times the length asked for. */
    private static final double PATIENCE = 3;

    private static final double MINUTE = 60;
    private static final double WEEK = 7 * 86400;
    private static final double LONGEST_REST = 2 * 3600;

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

    /**
     * Tells how long the stages of a day may be.
     *
     * @param fronts the fronts of the plan
     * @return bounds of each stage, in order
     */
    public static List<Bounds> bounds(Fronts fronts) {
        double rest = fronts.plan().cooking().verdict().rule().consumerMinimum().rest();
        return fronts.spans().stream()
                .map(span -> switch (span.kind()) {
                    case SaltStages.SOAK, SaltStages.DRY_SALT -> new Bounds(MINUTE, WEEK);
                    case CookStages.REST -> new Bounds(Math.max(MINUTE, rest), LONGEST_REST);
                    default -> new Bounds(MINUTE / 2, CookStages.LONGEST_HEAT);
                })
                .toList();
    }

    /**
     * Carries the pieces of a plan through stages of given lengths.
     *
     * @param before the fronts of the plan
     * @param lengths length of each stage of {@link Fronts#spans}, in order [s]
     * @param executor where to run parts; has no effect on the numbers
     * @return the day
     * @throws IllegalArgumentException if there are more or fewer lengths than stages, or one is beyond its {@link #bounds}
     */
    public static TimedDay of(Fronts before, List<Double> lengths, Executor executor) {
        List<Bounds> bounds = bounds(before);
        Checks.require(
                lengths.size() == bounds.size(),
                "a day needs a length for each of its " + bounds.size() + " stages, got " + lengths.size() + ".");
        for (int i = 0; i < bounds.size(); i++) {
            Bounds allowed = bounds.get(i);
            Checks.requireInRange(
                    "length of stage " + (i + 1) + " (" + before.spans().get(i).kind() + ")",
                    lengths.get(i),
                    allowed.shortest(),
                    allowed.longest(),
                    "s");
        }
        return new Setting(before, List.copyOf(lengths), executor).day();
    }

    /** The plan, the lengths and what follows from them. */
    private record Setting(Fronts before, List<Double> lengths, Executor executor) {

        TimedDay day() {
            CookStages cook = new CookStages(request(), rule());
            double saltingBefore = plan().salting().time();
            boolean ahead = isSalting(before.spans().get(0).kind());
            double salting = ahead ? lengths.get(0) : 0;
            List<DayEnsemble.StageFor> asPlanned = SaltStages.wholeDay(
                    request(), plan().salting(), cook, plan().cooking().pullTemperature());
            double whole = lengths.stream().mapToDouble(Double::doubleValue).sum();
            double delay = ahead ? salting - saltingBefore : 0;
            Fronts median = before.in(timed(asPlanned), whole, delay, MEDIAN);
            double pull = median.coreAtEndOf(CookStages.HEAT);
            List<MemberDay> days = ensemble().run(cook.isBath() ? timed(asPlanned) : pulled(cook, pull), executor);
            return result(median, pull, days);
        }

        private Plan plan() {
            return before.plan();
        }

        private Request request() {
            return plan().request();
        }

        private SafetyRule rule() {
            return plan().cooking().verdict().rule();
        }

        private SolidCheck.Correction correction() {
            return plan().cooking().check().map(SolidCheck::correction).orElse(SolidCheck.Correction.NONE);
        }

        private static boolean isSalting(String kind) {
            return kind.equals(SaltStages.SOAK) || kind.equals(SaltStages.DRY_SALT);
        }

        /** Length in layers [s]: the heat of a plan is stretched by what its check found. */
        private double inLayers(int stage, double factor) {
            boolean heat = before.spans().get(stage).kind().equals(CookStages.HEAT);
            return heat ? lengths.get(stage) / factor : lengths.get(stage);
        }

        private List<DayEnsemble.StageFor> timed(List<DayEnsemble.StageFor> stages) {
            List<DayEnsemble.StageFor> result = new ArrayList<>();
            for (int i = 0; i < stages.size(); i++) {
                result.add(lasting(stages.get(i), inLayers(i, before.timeFactor())));
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
        private List<DayEnsemble.StageFor> pulled(CookStages cook, double pull) {
            List<DayEnsemble.StageFor> stages = SaltStages.wholeDay(request(), plan().salting(), cook, pull);
            List<DayEnsemble.StageFor> result = new ArrayList<>();
            for (int i = 0; i < stages.size(); i++) {
                DayEnsemble.StageFor stage = stages.get(i);
                double time = inLayers(i, 1);
                boolean heat = before.spans().get(i).kind().equals(CookStages.HEAT);
                result.add(heat ? atMost(stage, PATIENCE * time) : lasting(stage, time));
            }
            return result;
        }

        private static DayEnsemble.StageFor atMost(DayEnsemble.StageFor stage, double time) {
            return draw -> {
                Stage old = stage.stage(draw);
                return new Stage(old.kind(), old.faces(), old.salt(), Math.min(time, old.duration()), old.stop());
            };
        }

        private DayEnsemble ensemble() {
            SolverSettings settings = SolverSettings.DEFAULT
                    .withTolerances(TOLERANCE, 1e-3)
                    .withKinetics(rule().holdTable()::rate, new KajitaniJuice());
            Request.Food food = request().food();
            List<Draw> draws = Draw.ensemble(MEMBERS, plan().seed());
            return new DayEnsemble(food.meat(), food.shape(), food.startTemperature(), draws, settings, LAYERS);
        }

        private TimedDay result(Fronts median, double pull, List<MemberDay> days) {
            SolidCheck.Correction correction = correction();
            List<End> ends = new ArrayList<>();
            for (int i = 0; i < lengths.size(); i++) {
                int stage = i;
                ends.add(new End(
                        interval(days, day -> day.ends().get(stage).coreTemperature()),
                        interval(days, day -> day.ends().get(stage).coreSalt()),
                        interval(days, day -> day.ends().get(stage).meanSalt()),
                        interval(days, day -> 1 - day.ends().get(stage).massLoss()),
                        interval(
                                days,
                                day -> correction.holdFactor()
                                        * day.ends().get(stage).leastKill())));
            }
            return new TimedDay(
                    median,
                    pull,
                    interval(days, day -> correction.timeFactor() * heatTime(day)),
                    interval(
                            days,
                            day -> correction.peakDifference()
                                    + day.peakCore(day.end(CookStages.HEAT).end())),
                    ends,
                    rule().judge(predicted(days, correction)),
                    MEMBERS);
        }

        private static double heatTime(MemberDay day) {
            MemberDay.StageEnd heat = day.end(CookStages.HEAT);
            return heat.end() - heat.start();
        }

        private PredictedKill predicted(List<MemberDay> days, SolidCheck.Correction correction) {
            double[] hold = days.stream()
                    .mapToDouble(day ->
                            correction.holdFactor() * day.end(CookStages.REST).leastKill())
                    .sorted()
                    .toArray();
            List<TemperatureHistory> cores =
                    days.stream().map(day -> PullSearch.history(day, correction)).toList();
            long meeting =
                    cores.stream().filter(rule().consumerMinimum()::isMetBy).count();
            return new PredictedKill(
                    Interval.quantile(hold, 1 - Planner.SAFE_SHARE),
                    meeting >= Planner.SAFE_SHARE * days.size(),
                    true,
                    cores.stream()
                            .allMatch(core -> OfficialLimits.comeUp(core).outcome() != LimitCheck.Outcome.FAIL),
                    WarmTimes.of(days).limits().coldBefore());
        }

        private static Interval interval(List<MemberDay> days, ToDoubleFunction<MemberDay> of) {
            return Interval.of(days.stream().mapToDouble(of).toArray());
        }
    }
}
