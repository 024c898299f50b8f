package io.github.saltfront.plan;

import io.github.saltfront.transport.LayerSolver;
import java.util.Arrays;

/** Mean salt of one member of an ensemble against time: all that a search for a soaking time asks for. */
public final class SaltCurve implements DayEnsemble.DayRecorder {
    private double[] times = new double[64];
    private double[] salts = new double[64];
    private int count;
    private double begin;

    @Override
    public void beginStage(String kind) {
        // all stages are one curve
    }

    @Override
    public void step(LayerSolver solver, int member, double start, double end) {
        if (count == 0) {
            add(begin + start, solver.meanSalt(member, 0));
        }
        add(begin + 0.5 * (start + end), solver.meanSalt(member, 0.5));
        add(begin + end, solver.meanSalt(member, 1));
    }

    private void add(double time, double salt) {
        if (count == times.length) {
            times = Arrays.copyOf(times, 2 * count);
            salts = Arrays.copyOf(salts, 2 * count);
        }
        times[count] = time;
        salts[count] = salt;
        count++;
    }

    @Override
    public void endStage(LayerSolver solver, int member, StageQuality quality) {
        if (count == 0) {
            // a stage of no time takes no step
            add(begin, solver.meanSalt(member));
        }
        begin += solver.stageTime(member);
    }

    /**
     * Returns the mean salt at a time, by straight lines between steps.
     *
     * @param time time since the start of the day [s]; before and after the day its ends hold
     * @return salt per wet mass [kg/kg]
     */
    public double at(double time) {
        int low = 0;
        int high = count - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (times[middle] <= time) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double span = times[high] - times[low];
        double share = span > 0 ? Math.min(1, Math.max(0, (time - times[low]) / span)) : 0;
        return salts[low] + share * (salts[high] - salts[low]);
    }
}
