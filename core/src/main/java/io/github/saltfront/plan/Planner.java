package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.ApplianceTuning;
import io.github.saltfront.quality.JuiceLoss;
import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.HoldTable;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.safety.PredictedKill;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;

/**
 * From a request to a plan: chooses the salting, finds the soak window and the pull temperature on an ensemble, and reads
 * everything else off the same ensemble carried through the whole day. The pull temperature is the lowest that gives the wished
 * core by carry-over and, at the lower end of the ensemble, fulfills the official requirement at the worst place.
 */
public final class Planner {
    private static final Phrases PHRASES = Phrases.of(Planner.class);

    /** Members of the ensemble that plans are read off. */
    public static final int MEMBERS = Fineness.WHOLE.members();

    /** Share of the ensemble that must meet the official requirement [-]. */
    public static final double SAFE_SHARE = 0.95;

    /** Accuracy of the pull temperature [K]: what a kitchen thermometer shows. */
    private static final double PULL_STEP = 0.5;

    private static final double HOTTEST_PULL = 95;

    /** By what a time is lengthened that is too short for some piece [-], and how often. */
    private static final double LONGER = 1.1;

    private static final int MOST_LONGER = 12;

    /** Juice per raw mass below which its salt is not told [kg/kg]: a few drops. */
    private static final double LEAST_JUICE = 0.005;

    private final SolverSettings settings;
    private final Request request;
    private final SafetyRule rule;
    private final Executor executor;
    private final long seed;
    private final Fineness fineness;
    private final Optional<Plan> before;
    private final Map<Double, Optional<SolidCheck>> checks = new ConcurrentHashMap<>();

    private Planner(Request request, Executor executor, long seed) {
        this(request, executor, seed, Fineness.WHOLE, Optional.empty());
    }

    private Planner(Request request, Executor executor, long seed, Fineness fineness, Optional<Plan> before) {
        this.request = request;
        this.executor = executor;
        this.seed = seed;
        this.fineness = fineness;
        this.before = before;
        rule = rule(request);
        settings = settings(rule).withTolerances(fineness.tolerance(), 1e-4);
    }

    /**
     * Returns what a request requires.
     *
     * @param request the request
     * @return its safety rule
     */
    public static SafetyRule rule(Request request) {
        return new SafetyRule(
                request.food().meat().safety(),
                OptionalDouble.of(request.food().meat().composition().fat()),
                request.guests().vulnerable() || !request.equipment().thermometer(),
                request.guests().kitchen(),
                isSalted(request));
    }

    /**
     * Returns the tolerances and kinetics that ensembles are run with.
     *
     * @param rule the rule, whose hold is the first kind of kill
     * @return settings
     */
    public static SolverSettings settings(SafetyRule rule) {
        HoldTable table = rule.holdTable();
        return SolverSettings.DEFAULT
                .withTolerances(Fineness.WHOLE.tolerance(), 1e-4)
                .withKinetics(table::rate, new KajitaniJuice());
    }

    /**
     * Plans.
     *
     * @param request the request
     * @param executor where to run parts of the ensemble; has no effect on the numbers
     * @param seed seed of the ensemble; the same seed gives the same plan
     * @return the plan
     * @throws PlanningException if the request cannot be met
     */
    public static Plan plan(Request request, Executor executor, long seed) {
        Optional<Thawing> thawing = Thawing.of(request, executor, seed);
        Request thawed = thawing.map(first -> first.thawed(request)).orElse(request);
        Plan plan = new Planner(thawed, executor, seed).plan();
        return thawing.map(first -> first.before(plan)).orElse(plan);
    }

    /**
     * Looks roughly what a changed request would come to, fast enough for a slider: few members in few layers, the search starts
     * from the plan before, and its check in three dimensions is kept. For looking only: {@link #plan} decides.
     *
     * @param request the changed request
     * @param before the plan of the request before the change
     * @param executor where to run parts of the ensemble; has no effect on the numbers
     * @param seed seed of the ensemble
     * @return a rough plan, which tells how few members it has
     * @throws PlanningException if the request cannot be met
     */
    public static Plan glance(Request request, Plan before, Executor executor, long seed) {
        // how long it thaws does not hang on anything that a slider moves but the thickness, and is told in whole hours
        Optional<Thawing> thawing = before.thawing().filter(same -> Thawing.isFrozen(request));
        Request thawed = thawing.map(first -> first.thawed(request)).orElse(request);
        Plan plan = new Planner(thawed, executor, seed, Fineness.GLANCE, Optional.of(before)).plan();
        return thawing.map(first -> first.before(plan)).orElse(plan);
    }

    /**
     * Plans the salting alone, without cooking it through.
     *
     * @param request the request
     * @param executor where to run parts of the ensemble; has no effect on the numbers
     * @param seed seed of the ensemble
     * @return what to do with salt; the same as in the whole plan
     * @throws PlanningException if the request cannot be met
     */
    public static Plan.SaltPlan planSalting(Request request, Executor executor, long seed) {
        Planner planner = new Planner(request, executor, seed);
        double cookAndRest = 0;
        if (request.timing().serve().isPresent()) {
            CookStages stages = new CookStages(request, planner.rule);
            cookAndRest = planner.heatAndRest(stages, planner.searchPull(stages));
        }
        return new SaltChooser(request, executor, seed, cookAndRest).choose();
    }

    private PullSearch.Found searchPull(CookStages stages) {
        Optional<PullSearch.Found> start = before.map(plan -> PullSearch.Found.from(plan.cooking()));
        return search(stages, fineness, pull -> correction(check(stages, pull)))
                .find(start.or(() -> roughPull(stages)));
    }

    /** A reading found with little effort, as a place to start; the search itself says if there is none. */
    private Optional<PullSearch.Found> roughPull(CookStages stages) {
        try {
            return Optional.of(search(stages, Fineness.GLANCE, pull -> SolidCheck.Correction.NONE)
                    .find());
        } catch (PlanningException e) {
            return Optional.empty();
        }
    }

    private PullSearch search(CookStages stages, Fineness fine, PullSearch.Checker checker) {
        DayEnsemble few = new DayEnsemble(
                request.food().meat(),
                request.food().shape(),
                request.food().startTemperature(),
                Draw.ensemble(fine.searchMembers(), seed + 1),
                settings.withTolerances(fine.searchTolerance(), 1e-3),
                fine.searchLayers());
        return new PullSearch(request, rule, stages, few, executor, checker, fine == Fineness.GLANCE);
    }

    private Optional<SolidCheck> check(CookStages stages, double pull) {
        return before.isPresent()
                ? before.get().cooking().check()
                : checks.computeIfAbsent(pull, at -> SolidCheck.run(request, settings, stages, at));
    }

    /** Salt may be in it by the plan, by the program's choice, or from the plant; only a plain "none" is taken for none. */
    private static boolean isSalted(Request request) {
        boolean atThePlant = request.food()
                .cut()
                .filter(cut -> cut.treatmentClass().equals("enhanced"))
                .isPresent();
        return atThePlant || request.salting().treatment() != Request.Treatment.NONE;
    }

    private Plan plan() {
        CookStages stages = new CookStages(request, rule);
        PullSearch.Found found = searchPull(stages);
        Plan.SaltPlan salting = salting(heatAndRest(stages, found));

        List<Draw> draws = Draw.ensemble(fineness.members(), seed);
        DayEnsemble ensemble = ensemble(draws);
        double pull = Math.max(found.pullTemperature(), pullWithoutLearning());
        double first = pull;
        CompletableFuture<Optional<SolidCheck>> running =
                CompletableFuture.supplyAsync(() -> check(stages, first), executor);
        HeatedDays heated = HeatedDays.of(ensemble, day(salting, stages, pull), executor);
        List<MemberDay> days = heated.after(day(salting, stages, pull), executor);
        Optional<SolidCheck> check = PullSearch.join(running);
        for (int i = 0;
                i < 6
                        && !PullSearch.meets(days, rule, correction(check))
                        && pull < Temperature.fromCelsius(HOTTEST_PULL);
                i++) {
            pull += PULL_STEP;
            days = heated.after(day(salting, stages, pull), executor);
        }
        if (pull > first) {
            check = check(stages, pull);
        }
        if (!request.equipment().thermometer()) {
            days = timed(ensemble, salting, stages, pull, days, correction(check));
        }
        Plan.CookPlan cooking = cookPlan(days, pull, found, stages, check);
        Plan.Result result = result(days);
        List<Plan.Step> clock = Clock.steps(request, salting, cooking, stages);
        List<Sensitivity> sensitivities =
                Sensitivity.of(draws, days, correction(check).timeFactor());
        return new Plan(
                request,
                Optional.empty(),
                salting,
                cooking,
                result,
                clock,
                cautions(salting, cooking),
                sensitivities,
                draws.size(),
                seed);
    }

    /** A look keeps the salting of the plan before where it still fits: to search it anew costs as much as the cook. */
    private Plan.SaltPlan salting(double heatAndRest) {
        return before.filter(plan -> isSaltedAsBefore(plan, heatAndRest))
                .map(Plan::salting)
                .orElseGet(() -> new SaltChooser(request, executor, seed, heatAndRest, fineness).choose());
    }

    /** Whether all that salting hangs on is as in the plan before, and there is still time for it. */
    private boolean isSaltedAsBefore(Plan plan, double heatAndRest) {
        Request old = plan.request();
        double needed = heatAndRest + plan.salting().time() + SaltChooser.PREPARATION;
        boolean fits = request.timing()
                .serve()
                .map(serve -> !serve.minusSeconds((long) Math.ceil(needed))
                        .isBefore(request.timing().now()))
                .orElse(true);
        return fits
                && old.timing().serve().equals(request.timing().serve())
                && old.food().equals(request.food())
                && old.salting().equals(request.salting())
                && old.taste().rawSalt() == request.taste().rawSalt()
                && old.taste().sodiumLimit().equals(request.taste().sodiumLimit())
                && old.equipment().equals(request.equipment())
                && old.guests().equals(request.guests())
                && old.cook().sequence().equals(request.cook().sequence())
                && old.cook().altitude() == request.cook().altitude()
                && old.cook().appliance().equals(request.cook().appliance());
    }

    /** Time from the first heat of the first load to serving [s]. */
    private double heatAndRest(CookStages stages, PullSearch.Found found) {
        double cook = found.cookTimeHigh();
        return cook + stages.fixedTime() + Loads.of(request, cook).delay();
    }

    /**
     * Days that a time ends instead of a thermometer: so long that 19 of 20 pieces come to the consumer minimum, and that every
     * piece gets the whole hold.
     */
    private List<MemberDay> timed(
            DayEnsemble ensemble,
            Plan.SaltPlan salting,
            CookStages stages,
            double pull,
            List<MemberDay> measured,
            SolidCheck.Correction correction) {
        double time = Interval.of(measured.stream()
                        .map(day -> day.end(CookStages.HEAT))
                        .mapToDouble(heat -> heat.end() - heat.start())
                        .toArray())
                .high();
        for (int tries = 1; ; tries++) {
            List<MemberDay> days = ensemble.run(day(salting, stages.timed(time), pull), executor);
            boolean all = days.stream()
                    .allMatch(day ->
                            correction.holdFactor() * day.end(CookStages.REST).leastKill() >= 1);
            if (all && PullSearch.meets(days, rule, correction)) {
                return days;
            }
            if (tries > MOST_LONGER) {
                throw new PlanningException("equipment.thermometer", PHRASES.say("without-a-thermometer-no-time"));
            }
            time *= LONGER;
        }
    }

    /** An oven learned to be hot promises more carry-over; the reading is never lower than without that knowledge. */
    private double pullWithoutLearning() {
        Request.Cook cook = request.cook();
        if (!cook.appliance().tuning().isHotter()) {
            return Double.NEGATIVE_INFINITY;
        }
        Request usual = request.cookedBy(cook.in(cook.appliance().tuned(ApplianceTuning.NONE)));
        return new Planner(usual, executor, seed, fineness, before)
                .searchPull(new CookStages(usual, rule))
                .pullTemperature();
    }

    private DayEnsemble ensemble(List<Draw> draws) {
        return new DayEnsemble(
                request.food().meat(),
                request.food().shape(),
                request.food().startTemperature(),
                draws,
                settings,
                fineness.layers());
    }

    private List<DayEnsemble.StageFor> day(Plan.SaltPlan salting, CookStages stages, double pull) {
        return SaltStages.wholeDay(request, salting, stages, pull);
    }

    private static SolidCheck.Correction correction(Optional<SolidCheck> check) {
        return check.map(SolidCheck::correction).orElse(SolidCheck.Correction.NONE);
    }

    private Plan.CookPlan cookPlan(
            List<MemberDay> days, double pull, PullSearch.Found found, CookStages stages, Optional<SolidCheck> check) {
        SolidCheck.Correction correction = correction(check);
        int n = days.size();
        double[] time = new double[n];
        double[] peak = new double[n];
        double[] timeToPeak = new double[n];
        double[] near = new double[n];
        double[] hold = new double[n];
        double[] served = new double[n];
        for (int i = 0; i < n; i++) {
            MemberDay day = days.get(i);
            served[i] = day.end(CookStages.REST).coreTemperature() + correction.peakDifference();
            MemberDay.StageEnd heat = day.end(CookStages.HEAT);
            time[i] = correction.timeFactor() * (heat.end() - heat.start());
            peak[i] = day.peakCore(heat.end()) + correction.peakDifference();
            timeToPeak[i] = day.peakTime(heat.end()) - heat.end();
            near[i] = day.timeAbove(heat.coreTemperature() - 1, heat.end());
            hold[i] = correction.holdFactor() * day.end(CookStages.REST).leastKill();
        }
        Interval peaks = Interval.of(peak);
        WarmTimes warmth = WarmTimes.of(days);
        OptionalDouble required = rule.holdTable().requiredHold(peaks.median());
        return new Plan.CookPlan(
                pull,
                found.wished(),
                found.byWish(),
                Loads.of(request, Interval.of(time).high()),
                reasons(found, pull, time[0]),
                Interval.of(time),
                peaks,
                Interval.of(timeToPeak),
                Interval.of(near),
                stages.rest(),
                Interval.of(served),
                Interval.of(hold),
                required.isPresent() ? Optional.of(required.getAsDouble()) : Optional.empty(),
                warmth,
                rule.judge(predicted(days, hold, warmth, correction)),
                check);
    }

    private List<String> reasons(PullSearch.Found found, double pull, double time) {
        List<String> reasons =
                found.reasons(pull, !request.cook().sequence().after().isEmpty());
        if (!request.equipment().thermometer()) {
            reasons.add(
                    PHRASES.say("without-a-thermometer-nobody-knows", QuantityFormat.time(60 * Math.ceil(time / 60))));
        }
        return reasons;
    }

    /** The lower end: the share of the hold that all but a twentieth exceed, and a member near that end for the rest. */
    private PredictedKill predicted(
            List<MemberDay> days, double[] hold, WarmTimes warmth, SolidCheck.Correction correction) {
        double[] sorted = hold.clone();
        Arrays.sort(sorted);
        double low = Interval.quantile(sorted, 1 - SAFE_SHARE);
        int meeting = 0;
        boolean comeUp = true;
        for (MemberDay day : days) {
            TemperatureHistory history = PullSearch.history(day, correction);
            meeting += rule.consumerMinimum().isMetBy(history) ? 1 : 0;
            comeUp &= OfficialLimits.comeUp(history).outcome() != LimitCheck.Outcome.FAIL;
        }
        return new PredictedKill(
                low,
                meeting >= SAFE_SHARE * days.size(),
                true,
                comeUp,
                warmth.limits().coldBefore());
    }

    private Plan.Result result(List<MemberDay> days) {
        int n = days.size();
        double[] raw = new double[n];
        double[] mean = new double[n];
        double[] outer = new double[n];
        double[] core = new double[n];
        double[] gain = new double[n];
        double[] loss = new double[n];
        double[] evaporated = new double[n];
        double[] juice = new double[n];
        for (int i = 0; i < n; i++) {
            MemberDay day = days.get(i);
            MemberDay.StageEnd served = day.end(CookStages.REST);
            Optional<MemberDay.StageEnd> salted = day.beforeHeat();
            double gained = salted.map(MemberDay.StageEnd::massLoss).orElse(0.0);
            raw[i] = salted.map(MemberDay.StageEnd::meanSalt)
                    .orElse(request.food().meat().nativeSalt());
            mean[i] = served.meanSalt();
            outer[i] = served.outerSalt();
            core[i] = served.coreSalt();
            gain[i] = 0 - gained;
            loss[i] = served.massLoss();
            evaporated[i] = served.evaporated();
            double dried = salted.map(MemberDay.StageEnd::evaporated).orElse(0.0);
            juice[i] = juiceSalt(gained, dried, raw[i], served);
        }
        return new Plan.Result(
                Interval.of(raw),
                Interval.of(mean),
                Interval.of(outer),
                Interval.of(core),
                Interval.of(gain),
                widened(Interval.of(loss)),
                Interval.of(evaporated),
                Interval.of(Arrays.stream(mean)
                        .map(salt -> Sodium.of(salt) * BrineSheet.SERVING)
                        .toArray()),
                Arrays.stream(juice).allMatch(Double::isFinite) ? Optional.of(Interval.of(juice)) : Optional.empty(),
                PlateQuality.of(request, days));
    }

    /** Salt of what drips between salting and serving; not a number where next to nothing drips. */
    private static double juiceSalt(double loss, double evaporated, double rawSalt, MemberDay.StageEnd served) {
        double juice = served.massLoss() - loss - (served.evaporated() - evaporated);
        double salt = rawSalt * (1 - loss) - served.meanSalt() * (1 - served.massLoss());
        return juice > LEAST_JUICE && salt > 0 ? salt / juice : Double.NaN;
    }

    /** Half band of the juice model against data, which the spread of the ensemble does not hold. */
    private static Interval widened(Interval loss) {
        double half = JuiceLoss.HALF_BAND;
        return new Interval(
                Math.min(loss.low(), loss.median() - half), loss.median(), Math.max(loss.high(), loss.median() + half));
    }

    private static void addDangers(Appliance appliance, Set<Caution.Situation> situations) {
        switch (appliance.medium()) {
            case AIR, RADIANT -> situations.add(Caution.Situation.DRY_HEAT);
            case OIL -> situations.add(Caution.Situation.HOT_FAT);
            default -> {}
        }
        if (appliance.id().equals("pressure-cooker")) {
            situations.add(Caution.Situation.PRESSURE);
        }
    }

    private List<Caution> cautions(Plan.SaltPlan salting, Plan.CookPlan cooking) {
        Set<Caution.Situation> situations = EnumSet.noneOf(Caution.Situation.class);
        if (salting.treatment().isSoak()) {
            situations.add(Caution.Situation.BRINED);
        }
        if (salting.treatment() != Request.Treatment.NONE) {
            situations.add(Caution.Situation.SALTED);
        }
        request.cook().appliances().forEach(appliance -> addDangers(appliance, situations));
        if (cooking.warmth().limits().comeUp().stream().anyMatch(LimitCheck::isNear)) {
            situations.add(Caution.Situation.SLOW_COME_UP);
        }
        situations.add(Caution.Situation.COOLING);
        return Caution.select(rule, situations);
    }
}
