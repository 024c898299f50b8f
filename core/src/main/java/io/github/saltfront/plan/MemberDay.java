package io.github.saltfront.plan;

import io.github.saltfront.safety.TemperatureHistory;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What became of one member of an ensemble: the ends of its stages and the histories of core and surface temperature. */
public final class MemberDay implements DayEnsemble.DayRecorder {
    private static final Phrases PHRASES = Phrases.of(MemberDay.class);

    /** Depth of the outer layer whose salt is reported [m]. */
    public static final double OUTER_DEPTH = 0.005;

    /**
     * State at the end of a stage.
     *
     * @param kind kind of the stage
     * @param start start of the stage since the start of the day [s]
     * @param end its end [s]
     * @param stopped whether its stop rule ended it
     * @param coreTemperature temperature in the middle [K]
     * @param surfaceTemperature temperature of the first face [K]
     * @param meanSalt mean salt per wet mass [kg/kg]
     * @param coreSalt salt in the middle per wet mass [kg/kg]
     * @param outerSalt salt of the outer 5 mm per wet mass [kg/kg]
     * @param massLoss loss of mass since the start of the day [kg/kg], negative for a gain
     * @param evaporated evaporated water since the start of the day [kg/kg]
     * @param drippedSalt share of the salt that left with the juice [-]
     * @param leastKill least kill of the first kind
     * @param quality protein changes and dryness
     */
    public record StageEnd(
            String kind,
            double start,
            double end,
            boolean stopped,
            double coreTemperature,
            double surfaceTemperature,
            double meanSalt,
            double coreSalt,
            double outerSalt,
            double massLoss,
            double evaporated,
            double drippedSalt,
            double leastKill,
            StageQuality quality) {}

    private final List<StageEnd> ends = new ArrayList<>();
    private final List<double[]> steps = new ArrayList<>();
    private String kind = "";
    private double begin;

    /** Returns a copy that goes on by itself. */
    MemberDay copy() {
        MemberDay copy = new MemberDay();
        copy.ends.addAll(ends);
        copy.steps.addAll(steps);
        copy.kind = kind;
        copy.begin = begin;
        return copy;
    }

    @Override
    public void beginStage(String stageKind) {
        kind = stageKind;
    }

    @Override
    public void step(LayerSolver solver, int member, double start, double end) {
        if (steps.isEmpty()) {
            steps.add(state(solver, member, begin + start, 0));
        }
        steps.add(state(solver, member, begin + 0.5 * (start + end), 0.5));
        steps.add(state(solver, member, begin + end, 1));
    }

    private static double[] state(LayerSolver solver, int member, double time, double theta) {
        double face = solver.faceTemperature(0, member, theta);
        double outside = Math.max(face, solver.outsideOfLastFace());
        return new double[] {time, solver.coreTemperature(member, theta), face, outside};
    }

    @Override
    public void endStage(LayerSolver solver, int member, StageQuality quality) {
        double end = begin + solver.stageTime(member);
        ends.add(new StageEnd(
                kind,
                begin,
                end,
                solver.wasStopped(member),
                solver.coreTemperature(member),
                solver.faceTemperature(0, member),
                solver.meanSalt(member),
                solver.coreSalt(member),
                solver.outerSalt(member, OUTER_DEPTH),
                solver.massLoss(member),
                solver.evaporatedShare(member),
                solver.drippedSaltShare(member),
                solver.leastKill(member),
                quality));
        begin = end;
    }

    /** Returns the ends of the stages in order. */
    public List<StageEnd> ends() {
        return List.copyOf(ends);
    }

    /**
     * Returns the end of the last stage of a kind.
     *
     * @param stageKind the kind
     * @return its end
     * @throws IllegalArgumentException if there was none
     */
    public StageEnd end(String stageKind) {
        for (int i = ends.size() - 1; i >= 0; i--) {
            if (ends.get(i).kind().equals(stageKind)) {
                return ends.get(i);
            }
        }
        throw new IllegalArgumentException(PHRASES.say("there-was-no-stage-in", stageKind));
    }

    /**
     * Returns the core temperature from a time on.
     *
     * @param from time since the start of the day [s]
     * @return the history
     */
    public TemperatureHistory coreHistory(double from) {
        return history(from, 1);
    }

    /**
     * Returns the temperature of the first face from a time on.
     *
     * @param from time since the start of the day [s]
     * @return the history
     */
    public TemperatureHistory surfaceHistory(double from) {
        return history(from, 2);
    }

    /**
     * Returns the temperature of the outside of the first face from a time on: that of the crust where there is one.
     *
     * @param from time since the start of the day [s]
     * @return the history
     */
    TemperatureHistory outsideHistory(double from) {
        return history(from, 3);
    }

    /** Returns when the first stage of heat begins [s]. */
    double heatStart() {
        return ends.stream()
                .filter(e -> e.kind().equals(CookStages.BEFORE) || e.kind().equals(CookStages.HEAT))
                .mapToDouble(StageEnd::start)
                .min()
                .orElseThrow(() -> new IllegalArgumentException(PHRASES.say("there-was-no-heat-in")));
    }

    /** Returns the end of the last stage before any heat, if there was one: what salting left. */
    Optional<StageEnd> beforeHeat() {
        double heat = heatStart();
        return ends.stream().filter(end -> end.end() <= heat).reduce((a, b) -> b);
    }

    private TemperatureHistory history(double from, int column) {
        double[] times = new double[steps.size()];
        double[] temperatures = new double[steps.size()];
        int count = 0;
        for (double[] step : steps) {
            if (step[0] >= from && (count == 0 || step[0] > times[count - 1])) {
                times[count] = step[0];
                temperatures[count] = step[column];
                count++;
            }
        }
        return TemperatureHistory.of(Arrays.copyOf(times, count), Arrays.copyOf(temperatures, count));
    }

    /**
     * Returns the highest core temperature from a time on.
     *
     * @param from time since the start of the day [s]
     * @return temperature [K]
     */
    public double peakCore(double from) {
        double peak = Double.NEGATIVE_INFINITY;
        for (double[] step : steps) {
            peak = step[0] >= from ? Math.max(peak, step[1]) : peak;
        }
        return peak;
    }

    /**
     * Returns when the core temperature is highest, from a time on.
     *
     * @param from time since the start of the day [s]
     * @return time since the start of the day [s]
     */
    public double peakTime(double from) {
        double peak = Double.NEGATIVE_INFINITY;
        double time = from;
        for (double[] step : steps) {
            if (step[0] >= from && step[1] > peak) {
                peak = step[1];
                time = step[0];
            }
        }
        return time;
    }

    /**
     * Returns how long the core stays at or above a temperature from a time on.
     *
     * @param temperature temperature [K]
     * @param from time since the start of the day [s]
     * @return time [s]
     */
    public double timeAbove(double temperature, double from) {
        double sum = 0;
        for (int i = 1; i < steps.size(); i++) {
            double[] a = steps.get(i - 1);
            double[] b = steps.get(i);
            if (a[0] < from) {
                continue;
            }
            double over = Math.max(a[1], b[1]) - temperature;
            double span = Math.abs(b[1] - a[1]);
            if (over > 0) {
                double share = span > 0 ? Math.min(1, over / span) : 1;
                sum += share * (b[0] - a[0]);
            }
        }
        return sum;
    }
}
