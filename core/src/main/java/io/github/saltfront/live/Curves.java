package io.github.saltfront.live;

import io.github.saltfront.plan.CookStages;
import io.github.saltfront.plan.DayEnsemble;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.stream.IntStream;

/**
 * What the members of an ensemble do in a course: temperatures at places between the middle and a face, kill at the worst place
 * and loss of mass at regular times, and for each member the reading at which to take it out. Simulated once; a reading is then
 * compared by interpolation. Immutable.
 */
final class Curves {
    /** Places along the way from the middle (0) to a face (1) [-]. */
    static final double[] PLACES = {0, 0.15, 0.3, 0.45, 0.6, 0.8, 1};

    /** Points of each curve. */
    private static final int POINTS = 240;

    /** Readings below and above the planned one at which the rest is simulated [K]. */
    private static final double[] LEVELS = {-12, -5, 0, 6};

    /** Members whose rest is simulated; that of the others follows from their luck by a linear fit. */
    private static final int RESTED = 80;

    /** Layers of the grid: half of those of a plan, since a reading corrects what they lack. */
    private static final int LAYERS = 20;

    /** Error of a step [K]; far below what the model errs by. */
    private static final double TOLERANCE = 0.05;

    private static final double TOLERANCE_OF_SALT = 1e-5;

    /** How far beyond the planned reading curves are simulated [K]. */
    private static final double BEYOND = 9;

    /** Hottest core that is simulated [K]: near boiling a core goes on for hours. */
    private static final double HOTTEST = Temperature.fromCelsius(96);

    private final double every;
    private final SolidLag lag;
    private final List<MemberCurve> members;
    private final List<PullLevels> levels;

    private Curves(double every, SolidLag lag, List<MemberCurve> members, List<PullLevels> levels) {
        this.every = every;
        this.lag = lag;
        this.members = members;
        this.levels = levels;
    }

    /**
     * Simulates.
     *
     * @param setup what it starts from
     * @param course what has happened
     * @param lag what three dimensions do otherwise
     * @param draws luck of the members
     * @param paces time per simulated time of each member [-]
     * @param until horizon [s]
     * @param executor where to run parts of the ensemble
     */
    static Curves simulate(
            LiveSetup setup,
            Course course,
            SolidLag lag,
            List<Draw> draws,
            double[] paces,
            double until,
            Executor executor) {
        SafetyRule rule = setup.rule();
        DayEnsemble ensemble = ensemble(setup, draws);
        double every = until / (POINTS - 1);
        List<MemberCurve> curves = new ArrayList<>();
        for (double pace : paces) {
            curves.add(new MemberCurve(POINTS, every, pace));
        }
        StopRule stop = new StopRule(StopRule.Kind.CORE_ABOVE, top(setup, BEYOND));
        ensemble.run(i -> course.stages(draws.get(i), paces[i], until, stop), curves, executor);
        curves.forEach(curve -> curve.finish(lag, setup.pull()));
        List<PullLevels> levels =
                course.restStart().isPresent() ? List.of() : levels(setup, rule, course, draws, paces, until, executor);
        return new Curves(every, lag, List.copyOf(curves), levels);
    }

    private static List<PullLevels> levels(
            LiveSetup setup,
            SafetyRule rule,
            Course course,
            List<Draw> draws,
            double[] paces,
            double until,
            Executor executor) {
        CookStages stages = new CookStages(setup.request(), rule);
        int few = Math.min(draws.size(), Math.min(RESTED, Math.max(24, draws.size() / 4)));
        int[] chosen = IntStream.range(0, few).map(i -> i * draws.size() / few).toArray();
        List<Draw> some = Arrays.stream(chosen).mapToObj(draws::get).toList();
        DayEnsemble ensemble = ensemble(setup, some);
        List<PullLevels.Level> levels = new ArrayList<>();
        for (double step : LEVELS) {
            double level = Math.min(HOTTEST, setup.pull() + step);
            StopRule stop = new StopRule(StopRule.Kind.CORE_ABOVE, level);
            List<RestRecord> records =
                    some.stream().map(draw -> new RestRecord()).toList();
            ensemble.run(
                    i -> {
                        List<Stage> day = new ArrayList<>(course.stages(some.get(i), paces[chosen[i]], until, stop));
                        day.addAll(course.afterMain(some.get(i), paces[chosen[i]]));
                        return day;
                    },
                    records,
                    executor);
            PullLevels.Level.of(level, records, some, setup, rule.consumerMinimum())
                    .ifPresent(levels::add);
        }
        return draws.stream()
                .map(draw -> PullLevels.of(draw, levels, setup, rule, stages.isBath()))
                .toList();
    }

    /** Core temperature up to which is simulated, so far beyond the planned reading as is of use [K]. */
    static double top(LiveSetup setup, double beyond) {
        return Math.max(Math.min(HOTTEST, setup.pull() + beyond), setup.pull() + 1);
    }

    static DayEnsemble ensemble(LiveSetup setup, List<Draw> draws) {
        SolverSettings settings = Planner.settings(setup.rule()).withTolerances(TOLERANCE, 10 * TOLERANCE_OF_SALT);
        return new DayEnsemble(
                setup.meat(), setup.request().food().shape(), setup.startTemperature(), draws, settings, LAYERS);
    }

    int size() {
        return members.size();
    }

    /** Standard deviation of the drifting error of the model at a probe [K]. */
    double discrepancy() {
        return lag.discrepancy();
    }

    /** Time between points [s]. */
    double every() {
        return every;
    }

    /** Number of points of a curve. */
    int points() {
        return POINTS;
    }

    /** Temperature of a member at a time and a place [K]; the last slope goes on beyond the end. */
    double temperature(int member, double time, double place) {
        MemberCurve curve = members.get(member);
        double position = Math.max(0, time / every);
        int k = Math.min(POINTS - 2, (int) position);
        double share = position - k;
        int j = 1;
        while (j < PLACES.length - 1 && PLACES[j] < place) {
            j++;
        }
        double out = Math.min(1, (place - PLACES[j - 1]) / (PLACES[j] - PLACES[j - 1]));
        double inner = curve.at(j - 1, k, share);
        return inner + out * (curve.at(j, k, share) - inner);
    }

    /** Temperature of the middle of a member [K]. */
    double core(int member, double time) {
        double position = Math.max(0, time / every);
        int k = Math.min(POINTS - 2, (int) position);
        return members.get(member).at(0, k, position - k);
    }

    /** Share of the hold at the worst place of a member while it stays in this course [-]. */
    double kill(int member, double time) {
        return members.get(member).killAt(time);
    }

    /** Loss of mass of a member [kg/kg]. */
    double loss(int member, double time) {
        return members.get(member).lossAt(time);
    }

    /** Rest of a member by the core at which it is taken out; not once it is out. */
    PullLevels levels(int member) {
        return levels.get(member);
    }
}
