package io.github.saltfront.plan;

import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.quality.Seasoning;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.transport.SolverSettings;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Tries ways on a few members, each with the same luck in every way, in layers and without the check in three dimensions. */
final class Screening {
    private static final Fineness FINENESS = Fineness.SCREENING;

    /** Share of members that may be too salty [-]. */
    private static final double TOO_SALTY_SHARE = SoakSearch.TOO_SALTY_SHARE;

    private final Request request;
    private final Optional<Plan> base;
    private final long seed;
    private final SafetyRule rule;
    private final SolverSettings settings;
    private final List<Draw> draws;

    /**
     * What became of a try.
     *
     * @param value what was found, if it can be done
     * @param dropped why not, if it cannot
     */
    record Tried<T>(Optional<T> value, Optional<PlanSearch.Dropped> dropped) {
        static <T> Tried<T> kept(T value) {
            return new Tried<>(Optional.of(value), Optional.empty());
        }

        static <T> Tried<T> out(PlanSearch.Dropped reason) {
            return new Tried<>(Optional.empty(), Optional.of(reason));
        }
    }

    /** A way that can be done and what it comes to. */
    record Screened(Way way, Outcome outcome) {}

    Screening(Request request, long seed) {
        this(request, seed, Optional.empty());
    }

    /** Tries ways beside a plan, whose reading is where searches at the same heat start. */
    Screening(Request request, long seed, Optional<Plan> base) {
        this.request = request;
        this.base = base;
        this.seed = seed;
        rule = Planner.rule(request);
        settings = SolverSettings.DEFAULT
                .withTolerances(FINENESS.tolerance(), 1e-3)
                .withKinetics(rule.holdTable()::rate, new KajitaniJuice());
        draws = Draw.ensemble(FINENESS.members(), seed + 3);
    }

    /** The reading at which to take it out, if the heat gets there safely. */
    Tried<PullSearch.Found> heat(Way.Heat heat) {
        Request way = Way.with(request, heat);
        CookStages stages = new CookStages(way, rule);
        try {
            return Tried.kept(new PullSearch(
                            way, rule, stages, ensemble(way), Runnable::run, pull -> SolidCheck.Correction.NONE, false)
                    .find());
        } catch (PlanningException e) {
            return Tried.out(dropped(e));
        }
    }

    /** The salting, as far as it does not depend on the heat. */
    Tried<Plan.SaltPlan> salting(Way.Salting salting) {
        Request way = Way.with(request, salting);
        try {
            Plan.SaltPlan plan = new SaltChooser(unhurried(way), Runnable::run, seed, 0, FINENESS).choose();
            boolean asked = plan.treatment() == salting.treatment();
            return asked ? Tried.kept(plan) : Tried.out(PlanSearch.Dropped.BEYOND_THE_KITCHEN);
        } catch (PlanningException e) {
            return Tried.out(dropped(e));
        }
    }

    /** Time does not bind the salting here: whether the whole fits is seen later. */
    private static Request unhurried(Request way) {
        return way.at(new Request.Timing(way.timing().now(), Optional.empty()));
    }

    private static PlanSearch.Dropped dropped(PlanningException e) {
        return e.field().equals("serve") ? PlanSearch.Dropped.TOO_LATE : PlanSearch.Dropped.BEYOND_THE_KITCHEN;
    }

    Tried<Screened> both(
            Way.Salting salting, Tried<Plan.SaltPlan> salted, Way.Heat heat, Tried<PullSearch.Found> heated) {
        if (salted.value().isEmpty() || heated.value().isEmpty()) {
            return Tried.out(salted.dropped().or(heated::dropped).orElseThrow());
        }
        Plan.SaltPlan plan = salted.value().get();
        PullSearch.Found found = heated.value().get();
        Way way = new Way(
                salting.treatment(), salting.strength(), salting.time(), heat.appliance(), heat.setting(), heat.core());
        Request asked = way.applyTo(request);
        double whole = Clock.wholeTime(asked, plan, found.cookTimeHigh(), new CookStages(asked, rule));
        Optional<PlanSearch.Dropped> late = late(plan, whole);
        if (late.isPresent()) {
            return Tried.out(late.get());
        }
        List<MemberDay> days = run(asked, plan, found.pullTemperature());
        if (!PullSearch.meets(days, rule, SolidCheck.Correction.NONE)) {
            return Tried.out(PlanSearch.Dropped.UNSAFE);
        }
        double high = taste(plan.target()).high();
        long salty = days.stream().filter(day -> rawSalt(day) > high).count();
        if (salty > TOO_SALTY_SHARE * days.size()) {
            return Tried.out(PlanSearch.Dropped.TOO_SALTY);
        }
        return Tried.kept(new Screened(way, outcome(asked, plan, days, whole, found.pullTemperature())));
    }

    /** Whether it starts before now, or asks to get up in the night. */
    private Optional<PlanSearch.Dropped> late(Plan.SaltPlan plan, double whole) {
        if (request.timing().serve().isEmpty()) {
            return Optional.empty();
        }
        ZonedDateTime start = request.timing().serve().get().minusSeconds((long) Math.ceil(whole));
        if (start.isBefore(request.timing().now())) {
            return Optional.of(PlanSearch.Dropped.TOO_LATE);
        }
        boolean night = Nights.isNight(start);
        return night && plan.time() > 0 ? Optional.of(PlanSearch.Dropped.AT_NIGHT) : Optional.empty();
    }

    private static Band taste(double target) {
        Band usual = Seasoning.load().targetRaw();
        return usual.times(target / usual.typical());
    }

    Outcome outcome(Request asked, Plan.SaltPlan plan, double pull) {
        List<MemberDay> days = run(asked, plan, pull);
        double high = Interval.of(values(days, Screening::heatTime)).high();
        return outcome(asked, plan, days, Clock.wholeTime(asked, plan, high, new CookStages(asked, rule)), pull);
    }

    private Outcome outcome(Request asked, Plan.SaltPlan plan, List<MemberDay> days, double whole, double pull) {
        double mean = median(days, day -> day.end(CookStages.REST).meanSalt());
        return new Outcome(
                median(days, day -> 1 - day.end(CookStages.REST).massLoss()),
                PlateQuality.tenderness(asked, days),
                median(
                        days,
                        day -> Math.min(
                                1,
                                day.end(CookStages.REST).coreSalt()
                                        / Math.max(
                                                1e-9, day.end(CookStages.REST).meanSalt()))),
                median(days, day -> day.end(CookStages.HEAT).surfaceTemperature()),
                Effort.of(plan, request.cook().sequence(), request.food().pieces()),
                whole,
                Sodium.of(mean) * BrineSheet.SERVING,
                mean,
                pull);
    }

    private List<MemberDay> run(Request asked, Plan.SaltPlan plan, double pull) {
        CookStages stages = new CookStages(asked, rule);
        return ensemble(asked).run(SaltStages.wholeDay(asked, plan, stages, pull), Runnable::run);
    }

    private DayEnsemble ensemble(Request way) {
        return new DayEnsemble(
                way.food().meat(),
                way.food().shape(),
                way.food().startTemperature(),
                draws,
                settings,
                FINENESS.layers());
    }

    private static double heatTime(MemberDay day) {
        MemberDay.StageEnd heat = day.end(CookStages.HEAT);
        return heat.end() - heat.start();
    }

    private static double rawSalt(MemberDay day) {
        return day.beforeHeat().map(MemberDay.StageEnd::meanSalt).orElse(0.0);
    }

    private static double[] values(List<MemberDay> days, ToDoubleFunction<MemberDay> of) {
        return days.stream().mapToDouble(of).toArray();
    }

    private static double median(List<MemberDay> days, ToDoubleFunction<MemberDay> of) {
        return Interval.of(values(days, of)).median();
    }
}
