package io.github.saltfront.live;

import io.github.saltfront.plan.DayEnsemble;
import io.github.saltfront.plan.StageQuality;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.LayerSolver;

/** The curve of one member, sampled while it is simulated. Time is that of the cook: simulated time multiplied by the pace. */
final class MemberCurve implements DayEnsemble.DayRecorder {
    private final int points;
    private final double every;
    private final double pace;
    private final double[][] temperature;
    private final double[] kill;
    private final double[] loss;
    private double begin;
    private int next;
    private int scalarNext;
    private double previousTime = Double.NaN;
    private double previousKill;
    private double previousLoss;

    MemberCurve(int points, double every, double pace) {
        this.points = points;
        this.every = every;
        this.pace = pace;
        temperature = new double[Curves.PLACES.length][points];
        kill = new double[points];
        loss = new double[points];
    }

    @Override
    public void beginStage(String kind) {
        // one curve for all stages
    }

    @Override
    public void step(LayerSolver solver, int member, double start, double end) {
        double from = begin + start * pace;
        double to = begin + end * pace;
        scalars(solver, member, from);
        while (next < points && next * every <= to * (1 + 1e-12)) {
            double theta = Math.min(1, Math.max(0, (next * every - from) / (to - from)));
            for (int j = 0; j < Curves.PLACES.length; j++) {
                temperature[j][next] = at(solver, member, Curves.PLACES[j], theta);
            }
            next++;
        }
    }

    /** Sees temperatures at the places of a curve. */
    interface Sampler {
        void sample(double time, double[] row);
    }

    /** Follows one member step by step. */
    static DayEnsemble.DayRecorder sampler(Sampler sampler) {
        return new DayEnsemble.DayRecorder() {
            private boolean begun;

            @Override
            public void beginStage(String kind) {
                // one stage
            }

            @Override
            public void step(LayerSolver solver, int member, double start, double end) {
                if (!begun) {
                    begun = true;
                    sampler.sample(start, row(solver, member, 0));
                }
                sampler.sample(end, row(solver, member, 1));
            }

            @Override
            public void endStage(LayerSolver solver, int member, StageQuality quality) {
                // one stage
            }
        };
    }

    private static double[] row(LayerSolver solver, int member, double theta) {
        double[] row = new double[Curves.PLACES.length];
        for (int j = 0; j < row.length; j++) {
            row[j] = at(solver, member, Curves.PLACES[j], theta);
        }
        return row;
    }

    private static double at(LayerSolver solver, int member, double place, double theta) {
        if (place == 0) {
            return solver.coreTemperature(member, theta);
        }
        if (place == 1) {
            return solver.faceTemperature(0, member, theta);
        }
        LayerGrid grid = solver.grid();
        double x = grid.isTwoFaced() ? 0.5 + 0.5 * place : place;
        int above = 1;
        while (above < grid.cells() - 1 && grid.node(above) < x) {
            above++;
        }
        double share = (x - grid.node(above - 1)) / (grid.node(above) - grid.node(above - 1));
        double inner = solver.cellTemperature(member, above - 1, theta);
        return inner + share * (solver.cellTemperature(member, above, theta) - inner);
    }

    @Override
    public void endStage(LayerSolver solver, int member, StageQuality quality) {
        begin += solver.stageTime(member) * pace;
        scalars(solver, member, begin);
    }

    /** Fills the points up to a time by straight lines between steps. */
    private void scalars(LayerSolver solver, int member, double time) {
        double killNow = solver.leastKill(member);
        double lossNow = solver.massLoss(member);
        if (Double.isNaN(previousTime)) {
            previousTime = time;
            previousKill = killNow;
            previousLoss = lossNow;
        }
        while (scalarNext < points && scalarNext * every <= time * (1 + 1e-12)) {
            double span = time - previousTime;
            double share = span > 0 ? (scalarNext * every - previousTime) / span : 1;
            kill[scalarNext] = previousKill + share * (killNow - previousKill);
            loss[scalarNext] = previousLoss + share * (lossNow - previousLoss);
            scalarNext++;
        }
        previousTime = time;
        previousKill = killNow;
        previousLoss = lossNow;
    }

    /** Time at which the core is at a temperature; the whole of the curve if it never is [s]. */
    private double timeAt(double core) {
        double[] row = temperature[0];
        for (int k = 1; k < points; k++) {
            if (row[k] >= core) {
                double share = row[k] > row[k - 1] ? (core - row[k - 1]) / (row[k] - row[k - 1]) : 1;
                return every * (k - 1 + Math.max(0.01, share));
            }
        }
        return every * (points - 1);
    }

    /** Carries the curve on to its end where the member was stopped before: by its last slope, and kill by its last rate. */
    void finish(SolidLag lag, double reading) {
        for (double[] row : temperature) {
            carryOn(row, next);
        }
        double whole = timeAt(reading);
        for (int j = 0; j < temperature.length; j++) {
            for (int k = 0; k < points; k++) {
                temperature[j][k] += lag.at(j, k * every / whole);
            }
        }
        carryOn(kill, scalarNext);
        carryOn(loss, scalarNext);
    }

    private static void carryOn(double[] row, int filled) {
        double slope = filled > 1 ? Math.max(0, row[filled - 1] - row[filled - 2]) : 0;
        for (int k = Math.max(1, filled); k < row.length; k++) {
            row[k] = row[k - 1] + slope;
        }
    }

    double at(int place, int k, double share) {
        double[] row = temperature[place];
        return row[k] + share * (row[k + 1] - row[k]);
    }

    double killAt(double time) {
        return scalar(kill, time);
    }

    double lossAt(double time) {
        return scalar(loss, time);
    }

    private double scalar(double[] row, double time) {
        double position = Math.min(points - 1.0, Math.max(0, time / every));
        int k = Math.min(points - 2, (int) position);
        return row[k] + (position - k) * (row[k + 1] - row[k]);
    }
}
