package io.github.saltfront.live;

import io.github.saltfront.plan.CookStages;
import io.github.saltfront.plan.DayEnsemble;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.SolidCheck;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.quality.Band;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.SolidPiece;
import io.github.saltfront.transport.SolidSimulation;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/**
 * A cook whose truth is a piece in three dimensions, which no member of the ensemble in layers can be, with luck away from the
 * center of the bands, a probe of unknown error at an unknown distance from the middle, noise and a display of a tenth of a degree.
 */
final class SolidCook {
    /** Cells of the computed eighth; as coarse as the check of a plan, which errs by some 0.3 K. */
    static final int CELLS = 2000;

    private static final Band THICKNESS = new Band(0.90, 1, 1.10);
    private static final double NOISE = 0.25;
    private static final double CAPACITY_SPREAD = 0.03;
    private static final double FARTHEST = 2.5;

    /** Luck that moves the time most; it is never near the center. */
    private static final List<Uncertainty> OFF_CENTER =
            List.of(Uncertainty.SETTING, Uncertainty.CONVECTION, Uncertainty.THICKNESS);

    private static final double OFF = 0.5;

    /** Times the longest planned time after which nobody waits any more [-]. */
    private static final double STALLED = 3;

    /** Readings about the planned one at which the rest is computed [K]; the last run is the curve. */
    private static final double[] LEVELS = {-8, -3, 0, 6};

    private final LiveSetup setup;
    private final CookStages stages;
    private final SolverSettings settings;
    private final Draw draw;
    private final Shape shape;
    private final double slow;
    private final double error;
    private final double place;
    private final double every;
    private final SplittableRandom random;
    private final List<double[]> curve = new ArrayList<>();
    private final PullLevels levels;

    private SolidCook(LiveSetup setup, SplittableRandom random) {
        this.setup = setup;
        this.random = random;
        SafetyRule rule = setup.rule();
        stages = new CookStages(setup.request(), rule);
        settings = Planner.settings(rule);
        double[] variates = new double[LuckSpace.OWN];
        for (int d = 0; d < LuckSpace.PACE; d++) {
            variates[d] = variate(OFF_CENTER.contains(LuckSpace.SIMULATED.get(d)) ? OFF : 0);
        }
        draw = LuckSpace.draw(variates);
        shape = scaled(setup.request().food().shape(), draw.logarithmic(Uncertainty.THICKNESS, THICKNESS));
        slow = Math.exp(CAPACITY_SPREAD * variate(0));
        error = LuckSpace.probeError(variate(0));
        place = LuckSpace.place(Math.min(2, variate(0)));
        every = Math.max(15, setup.longest() / 150);
        List<double[]> rows = new ArrayList<>();
        for (double level : LEVELS) {
            Run run = run(StopRule.Kind.CORE_ABOVE, setup.pull() + level, level == LEVELS[LEVELS.length - 1]);
            rows.add(new double[] {
                run.core, run.peak - run.core, run.timeToPeak, Math.log(Math.max(1e-12, run.kill)), run.loss, run.stay
            });
        }
        levels = PullLevels.of(rows, uncorrected(), rule, stages.isBath());
    }

    /** A cook of a seed; a piece that stalls by evaporation below its reading, and has no time to come out, is drawn anew. */
    static SolidCook of(LiveSetup setup, long seed) {
        SplittableRandom random = new SplittableRandom(9_000_011L * seed + 5);
        SolidCook cook = new SolidCook(setup, random);
        while (cook.pullTime() > STALLED * setup.longest()) {
            cook = new SolidCook(setup, random);
        }
        return cook;
    }

    private double variate(double least) {
        double z = random.nextGaussian();
        while (Math.abs(z) < least || Math.abs(z) > FARTHEST) {
            z = random.nextGaussian();
        }
        return z;
    }

    private static Shape scaled(Shape shape, double factor) {
        if (shape instanceof Shape.Box box) {
            double thickness = box.thickness() * factor;
            return new Shape.Box(box.length(), Math.max(box.width(), thickness), thickness);
        }
        if (shape instanceof Shape.Ellipsoid body) {
            double thickness = body.thickness() * factor;
            return new Shape.Ellipsoid(body.length(), Math.max(body.width(), thickness), thickness);
        }
        if (shape instanceof Shape.Cylinder body) {
            return new Shape.Cylinder(body.diameter() * factor, body.length());
        }
        throw new AssertionError(shape);
    }

    private LiveSetup uncorrected() {
        return new LiveSetup(
                setup.request(),
                setup.meat(),
                setup.startTemperature(),
                setup.wished(),
                setup.pull(),
                setup.rest(),
                setup.longest(),
                SolidCheck.Correction.NONE,
                setup.probeError(),
                setup.placement(),
                setup.serveAt(),
                setup.salted());
    }

    /** What became of a piece that was taken out at a core temperature or a time. */
    private static final class Run {
        private double core;
        private double peak;
        private double timeToPeak;
        private double kill;
        private double loss;
        private double stay;
    }

    private Run run(StopRule.Kind kind, double value, boolean recorded) {
        DayEnsemble ensemble = new DayEnsemble(
                setup.meat(), setup.request().food().shape(), setup.startTemperature(), List.of(draw), settings);
        SolidGrid grid = SolidGrid.of(shape, CELLS, 1);
        SolidSolver solver = new SolidSolver(grid, SolidPiece.of(ensemble.member(draw, false)), settings);
        boolean timed = kind == StopRule.Kind.NEVER;
        Course course = Course.of(setup, List.of());
        StopRule stop = timed ? StopRule.NEVER : new StopRule(kind, value);
        Stage heat = course.stages(draw, 1, timed ? value : 86400, stop).get(0);
        double minimum = setup.rule().consumerMinimum().temperature();
        Run run = new Run();
        solver.run(SolidSimulation.input(heat, solver), (s, start, end) -> {
            run.stay += slow * above(minimum, s.coreTemperature(0), s.coreTemperature(1), end - start);
            if (recorded) {
                record(s, start, end);
            }
        });
        run.core = solver.coreTemperature();
        run.peak = run.core;
        solver.run(SolidSimulation.input(stages.restStage().stage(draw), solver), (s, start, end) -> {
            run.stay += slow * above(minimum, s.coreTemperature(0), s.coreTemperature(1), end - start);
            if (s.coreTemperature(1) > run.peak) {
                run.peak = s.coreTemperature(1);
                run.timeToPeak = slow * end;
            }
        });
        run.kill = slow * solver.leastKill();
        run.loss = solver.massLoss();
        return run;
    }

    private static double above(double level, double before, double after, double span) {
        double high = Math.max(before, after);
        double low = Math.min(before, after);
        return high <= level ? 0 : low >= level ? span : span * (high - level) / (high - low);
    }

    private void record(SolidSolver solver, double start, double end) {
        double step = every / 4 / slow;
        while (curve.size() * step <= end * (1 + 1e-12)) {
            double theta = Math.max(0, Math.min(1, (curve.size() * step - start) / (end - start)));
            double[] cells = new double[solver.grid().cells()];
            for (int c = 0; c < cells.length; c++) {
                cells[c] = solver.cellTemperature(c, theta);
            }
            curve.add(new double[] {solver.coreTemperature(theta), along(solver.grid(), cells)});
        }
    }

    /** Temperature at the tip, on the thickness axis. */
    private double along(SolidGrid grid, double[] cells) {
        double[] depths = grid.axisDepths();
        double[] values = grid.alongAxis(cells);
        double depth = shape.halfThickness() * (1 - place);
        int k = 1;
        while (k < depths.length - 1 && depths[k] < depth) {
            k++;
        }
        double share = Math.min(1, (depth - depths[k - 1]) / (depths[k] - depths[k - 1]));
        return values[k - 1] + share * (values[k] - values[k - 1]);
    }

    private double at(double time, int column) {
        double position = 4 * time / every;
        int k = Math.min(curve.size() - 2, (int) position);
        double from = curve.get(k)[column];
        return from + (position - k) * (curve.get(k + 1)[column] - from);
    }

    double core(double time) {
        return at(time, 0);
    }

    double every() {
        return every;
    }

    /** Time at which it should come out, so that carry-over ends on the wish and the rule is met [s]. */
    double pullTime() {
        return time(this::core, levels.pull());
    }

    /** Time from which on the rule would be met after the rest [s]. */
    double safeTime() {
        return time(this::core, levels.safe());
    }

    private static double time(DoubleUnaryOperator quantity, double level) {
        double t = 0;
        while (quantity.applyAsDouble(t) < level && t < 1e6) {
            t += 1;
        }
        return t;
    }

    /** Whether the rule is met if it is taken out at a time: a run of its own. */
    boolean isSafeAt(double time) {
        Run run = run(StopRule.Kind.NEVER, time / slow, false);
        SafetyRule rule = setup.rule();
        return run.stay >= rule.consumerMinimum().requiredStay() || rule.allowsHold() && run.kill >= 1;
    }

    Reading reading(double time) {
        double shown = at(time, 1) + error + NOISE * random.nextGaussian();
        double celsius = Math.rint(10 * Temperature.toCelsius(shown)) / 10;
        return new Reading("core", Reading.Role.CORE, time, Temperature.fromCelsius(celsius));
    }
}
