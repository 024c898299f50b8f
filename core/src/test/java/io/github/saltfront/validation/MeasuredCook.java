package io.github.saltfront.validation;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.plan.CookingMedium;
import io.github.saltfront.plan.DayEnsemble;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.MemberDay;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SolidPiece;
import io.github.saltfront.transport.SolidSimulation;
import io.github.saltfront.transport.SolidSink;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A published cook, computed as a plan would: the cut's own shape, the appliance's own coefficients with their spread, an ensemble
 * in layers, and one run in three dimensions by which its times are corrected. Nothing is set to agree.
 */
final class MeasuredCook {
    private static final Catalog CATALOG = Catalog.load();
    private static final int MEMBERS = 60;
    private static final long SEED = 20;
    private static final double SEA_LEVEL = 101325;
    private static final double MINUTE = 60;
    private static final String HEAT = "heat";
    private static final SolverSettings SETTINGS =
            SolverSettings.DEFAULT.withTolerances(0.02, 5e-5).withKinetics(kelvin -> 0, new KajitaniJuice());

    private final Cut cut;
    private final Shape shape;
    private final CookingMedium medium;
    private final double start;

    MeasuredCook(
            String cutId,
            OptionalDouble mass,
            OptionalDouble thickness,
            String appliance,
            double celsius,
            double start) {
        cut = CATALOG.cuts().get(cutId);
        shape = PieceShape.of(cut, mass.orElse(cut.size().mass().typical()), thickness);
        medium = new CookingMedium(
                find(appliance),
                Temperature.fromCelsius(celsius),
                SEA_LEVEL,
                cut.traits().hasSkin(),
                new CookingMedium.Use(
                        CookingMedium.TURN_INTERVAL,
                        0,
                        CookingMedium.Use.USUAL_AREA,
                        !(shape instanceof Shape.Slab || shape instanceof Shape.Box)));
        this.start = Temperature.fromCelsius(start);
    }

    /** An appliance of the catalog, or the humid oven of pang2020: a fan oven at 90 % humidity, whose surfaces stay wet. */
    private static Appliance find(String id) {
        Appliance fan = CATALOG.appliances().get("oven-fan");
        if (!id.equals("humid-84")) {
            return CATALOG.appliances().get(id);
        }
        Appliance.Evaporation humid = new Appliance.Evaporation(
                Appliance.Evaporation.Kind.TO_AIR, 1, 1, Optional.empty(), Optional.of(new Band(0.8, 0.9, 0.98)));
        return new Appliance(
                id,
                id,
                List.of(),
                fan.medium(),
                true,
                fan.temperature(),
                1,
                fan.convection(),
                fan.radiation(),
                humid,
                fan.provenance());
    }

    private DayEnsemble ensemble(List<Draw> draws) {
        return new DayEnsemble(MeatModel.of(cut), shape, start, draws, SETTINGS);
    }

    private DayEnsemble.StageFor heat(double duration, StopRule stop) {
        return draw -> new Stage(HEAT, medium.faces(draw, false), SaltExchange.NONE, duration, stop);
    }

    private static DayEnsemble.StageFor rest(double time, boolean skin) {
        CookingMedium bench =
                new CookingMedium(CATALOG.appliances().get("rest-bare"), Temperature.fromCelsius(21), SEA_LEVEL, skin);
        return draw -> new Stage("rest", bench.faces(draw, true), SaltExchange.NONE, time, StopRule.NEVER);
    }

    private static StopRule core(double celsius) {
        return new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(celsius));
    }

    /**
     * Time until the middle is warm.
     *
     * @param celsius temperature in the middle
     * @param atTime time at which the core of the median is asked for [min]
     * @param longest longest time [min]
     */
    Warming warming(double celsius, double atTime, double longest) {
        double target = Temperature.fromCelsius(celsius);
        double factor = correction(celsius, longest * MINUTE, MINUTE).timeFactor();
        List<Draw> draws = Draw.ensemble(MEMBERS, SEED);
        List<MemberDay> days =
                ensemble(draws).run(List.of(heat(longest * MINUTE, core(celsius + 0.01))), Runnable::run);
        double[] times = days.stream()
                .mapToDouble(day -> factor * crossing(day.coreHistory(0), target) / MINUTE)
                .toArray();
        MemberDay median = ensemble(List.of(Draw.MEDIAN))
                .run(List.of(heat(atTime * MINUTE / factor + 1, StopRule.NEVER)), Runnable::run)
                .get(0);
        return new Warming(
                Interval.of(times), Temperature.toCelsius(at(median.coreHistory(0), atTime * MINUTE / factor)), factor);
    }

    /** What came of a warming: the time [min], the core of the median at the time asked for [degrees C], the correction. */
    record Warming(Interval time, double core, double factor) {}

    /** Heat to a core temperature, then rest: the rise of the core after it is out [K]. */
    Interval rise(double celsius, double restMinutes) {
        List<DayEnsemble.StageFor> day = List.of(
                heat(24 * 60 * MINUTE, core(celsius)),
                rest(restMinutes * MINUTE, cut.traits().hasSkin()));
        double difference =
                correction(celsius, 24 * 60 * MINUTE, restMinutes * MINUTE).peakDifference();
        return Interval.of(ensemble(Draw.ensemble(MEMBERS, SEED)).run(day, Runnable::run).stream()
                .mapToDouble(d -> Math.max(
                        0,
                        difference + d.peakCore(d.end(HEAT).end()) - d.end(HEAT).coreTemperature()))
                .toArray());
    }

    private List<DayEnsemble.StageFor> day(OptionalDouble celsius, double minutes, double restMinutes) {
        return List.of(
                celsius.isPresent()
                        ? heat(24 * 60 * MINUTE, core(celsius.getAsDouble()))
                        : heat(minutes * MINUTE, StopRule.NEVER),
                rest(restMinutes * MINUTE, cut.traits().hasSkin()));
    }

    /** The median member carried through heat to a core temperature or for a time, and rest. */
    MemberDay median(OptionalDouble celsius, double minutes, double restMinutes) {
        return ensemble(List.of(Draw.MEDIAN))
                .run(day(celsius, minutes, restMinutes), Runnable::run)
                .get(0);
    }

    /** Heat to a core temperature or for a time, then rest: loss of mass in percent. */
    Loss loss(OptionalDouble celsius, double minutes, double restMinutes) {
        List<MemberDay> days =
                ensemble(Draw.ensemble(MEMBERS, SEED)).run(day(celsius, minutes, restMinutes), Runnable::run);
        return new Loss(
                Interval.of(days.stream()
                        .mapToDouble(d -> 100 * d.ends().get(1).massLoss())
                        .toArray()),
                Interval.of(days.stream()
                        .mapToDouble(d -> 100 * d.ends().get(1).evaporated())
                        .toArray()));
    }

    /** Loss and its evaporated part in percent of the raw mass. */
    record Loss(Interval total, Interval evaporated) {}

    /** What a plan corrects its layers by: time in three dimensions over that in layers, and the difference of the peaks [K]. */
    private record Correction(double timeFactor, double peakDifference) {}

    private Correction correction(double celsius, double longest, double restTime) {
        Stage heat = heat(longest, core(celsius)).stage(Draw.MEDIAN);
        if (!SolidGrid.covers(shape) || !heat.isSymmetric()) {
            return new Correction(1, 0);
        }
        DayEnsemble median = ensemble(List.of(Draw.MEDIAN));
        DayEnsemble.StageFor bench = rest(restTime, cut.traits().hasSkin());
        MemberDay layers = median.run(List.of(heat(longest, core(celsius)), bench), Runnable::run)
                .get(0);
        double out = layers.end(HEAT).end();
        SolidSolver solver = new SolidSolver(
                SolidGrid.of(shape, 2000, 1), SolidPiece.of(median.member(Draw.MEDIAN, false)), SETTINGS);
        solver.run(SolidSimulation.input(heat, solver), SolidSink.NONE);
        double time = solver.stageTime();
        double[] peak = {solver.coreTemperature()};
        solver.run(
                SolidSimulation.input(bench.stage(Draw.MEDIAN), solver),
                (s, start, end) -> peak[0] = Math.max(peak[0], s.coreTemperature(1.0)));
        return new Correction(time / out, peak[0] - layers.peakCore(out));
    }

    private static double crossing(TemperatureHistory history, double target) {
        for (int i = 1; i < history.size(); i++) {
            double before = history.temperature(i - 1);
            double after = history.temperature(i);
            if (after >= target) {
                double share = (target - before) / (after - before);
                return history.time(i - 1) + share * (history.time(i) - history.time(i - 1));
            }
        }
        return history.time(history.size() - 1);
    }

    private static double at(TemperatureHistory history, double time) {
        for (int i = 1; i < history.size(); i++) {
            if (history.time(i) >= time) {
                double share = (time - history.time(i - 1)) / (history.time(i) - history.time(i - 1));
                return history.temperature(i - 1) + share * (history.temperature(i) - history.temperature(i - 1));
            }
        }
        return history.temperature(history.size() - 1);
    }
}
