package io.github.saltfront.live;

import io.github.saltfront.plan.DayEnsemble;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.SolidCheck;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.SolidPiece;
import io.github.saltfront.transport.SolidSimulation;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import java.util.ArrayList;
import java.util.List;

/**
 * What the median piece does otherwise in three dimensions than in layers: how much longer it takes to the planned reading, and how its
 * temperatures differ on the way there, as a function of place and of the share of that way. Layers have the right slowest mode and
 * the wrong lag; without this a filter would take the lag for a weak oven. Added to the curve of every member. Immutable.
 */
final class SolidLag {
    /** Changes nothing: for slabs, and where faces differ, so that a check in three dimensions is not possible. */
    static final SolidLag NONE = new SolidLag(1, new double[Curves.PLACES.length][2]);

    /** Standard deviation of the drifting error of the model at the probe [K]; found on simulated cooks (decision 0009). */
    private static final double DISCREPANCY = 0.8;

    /** The same where the lag is known [K]. */
    private static final double LEFT = 0.5;

    /** Cells of the computed eighth, as in the check of a plan: the core errs by some 0.3 K. */
    private static final int CELLS = 2000;

    /** Points over the way to the reading and half as far again. */
    private static final int POINTS = 61;

    private static final double FARTHEST = 1.5;

    /** How far beyond the planned reading the pieces are carried [K]. */
    private static final double BEYOND = 3;

    private final double timeFactor;
    private final double[][] difference;

    private SolidLag(double timeFactor, double[][] difference) {
        this.timeFactor = timeFactor;
        this.difference = difference;
    }

    /** Temperatures at the places of a curve while the median piece is heated. */
    private static final class Track {
        private final List<Double> times = new ArrayList<>();
        private final List<double[]> rows = new ArrayList<>();

        void add(double time, double[] row) {
            times.add(time);
            rows.add(row);
        }

        double timeAt(double core) {
            for (int i = 1; i < times.size(); i++) {
                double before = rows.get(i - 1)[0];
                double value = rows.get(i)[0];
                if (value >= core) {
                    double share = value > before ? (core - before) / (value - before) : 1;
                    return times.get(i - 1) + Math.max(0, share) * (times.get(i) - times.get(i - 1));
                }
            }
            return Double.NaN;
        }

        double at(int place, double time) {
            int last = times.size() - 1;
            if (time >= times.get(last)) {
                return Double.NaN;
            }
            int i = 1;
            while (times.get(i) < time) {
                i++;
            }
            double share = (time - times.get(i - 1)) / (times.get(i) - times.get(i - 1));
            return rows.get(i - 1)[place] + share * (rows.get(i)[place] - rows.get(i - 1)[place]);
        }
    }

    /**
     * Carries the median piece through the first heat, in three dimensions and in layers.
     *
     * @param setup the cook
     * @param course its course before anything happened
     */
    static SolidLag of(LiveSetup setup, Course course) {
        if (!course.isPlain()
                || !SolidGrid.covers(setup.request().food().shape())
                || SolidCheck.whyNot(setup.request()).isPresent()) {
            return NONE;
        }
        StopRule stop = new StopRule(StopRule.Kind.CORE_ABOVE, Curves.top(setup, BEYOND));
        Stage heat =
                course.stages(Draw.MEDIAN, 1, 3 * setup.longest() + 3600, stop).get(0);
        Track solid = solid(setup, heat);
        Track layers = layers(setup, heat);
        double inSolid = solid.timeAt(setup.pull());
        double inLayers = layers.timeAt(setup.pull());
        if (!(inSolid > 0) || !(inLayers > 0)) {
            return NONE;
        }
        double[][] difference = new double[Curves.PLACES.length][POINTS];
        for (int j = 0; j < Curves.PLACES.length; j++) {
            for (int k = 0; k < POINTS; k++) {
                double share = FARTHEST * k / (POINTS - 1);
                double off = solid.at(j, share * inSolid) - layers.at(j, share * inLayers);
                difference[j][k] = Double.isNaN(off) ? difference[j][k - 1] : off;
            }
        }
        return new SolidLag(inSolid / inLayers, difference);
    }

    private static Track solid(LiveSetup setup, Stage heat) {
        SolverSettings settings = Planner.settings(setup.rule());
        SolidGrid grid = SolidGrid.of(setup.request().food().shape(), CELLS, 1);
        SolidPiece piece =
                SolidPiece.of(Curves.ensemble(setup, List.of(Draw.MEDIAN)).member(Draw.MEDIAN, false));
        SolidSolver solver = new SolidSolver(grid, piece, settings);
        double[] depths = grid.axisDepths();
        double half = setup.request().food().shape().halfThickness();
        Track track = new Track();
        solver.run(SolidSimulation.input(heat, solver), (s, start, end) -> {
            if (track.times.isEmpty()) {
                track.add(start, row(s, depths, half, 0));
            }
            track.add(end, row(s, depths, half, 1));
        });
        return track;
    }

    private static double[] row(SolidSolver solver, double[] depths, double half, double theta) {
        double[] cells = new double[solver.grid().cells()];
        for (int c = 0; c < cells.length; c++) {
            cells[c] = solver.cellTemperature(c, theta);
        }
        double[] axis = solver.grid().alongAxis(cells);
        double[] row = new double[Curves.PLACES.length];
        row[0] = solver.coreTemperature(theta);
        for (int j = 1; j < row.length - 1; j++) {
            double depth = half * (1 - Curves.PLACES[j]);
            int k = 1;
            while (k < depths.length - 1 && depths[k] < depth) {
                k++;
            }
            double share = Math.min(1, (depth - depths[k - 1]) / (depths[k] - depths[k - 1]));
            row[j] = axis[k - 1] + share * (axis[k] - axis[k - 1]);
        }
        row[row.length - 1] = solver.faceTemperature(0, theta);
        return row;
    }

    private static Track layers(LiveSetup setup, Stage heat) {
        Track track = new Track();
        DayEnsemble ensemble = Curves.ensemble(setup, List.of(Draw.MEDIAN));
        MemberCurve.Sampler sampler = (time, row) -> track.add(time, row);
        ensemble.run(member -> List.of(heat), List.of(MemberCurve.sampler(sampler)), Runnable::run);
        return track;
    }

    /** Standard deviation of what the model still errs by at the probe [K]. */
    double discrepancy() {
        return this == NONE ? DISCREPANCY : LEFT;
    }

    /** Factor on all times in the heat [-]. */
    double timeFactor() {
        return timeFactor;
    }

    /**
     * Returns what is added to the temperature of a member.
     *
     * @param place which of the places of a curve
     * @param progress time as a share of the member's time to the planned reading [-]
     * @return difference [K]
     */
    double at(int place, double progress) {
        double[] row = difference[place];
        double position = Math.max(0, Math.min(row.length - 1.0, progress / FARTHEST * (row.length - 1)));
        int k = Math.min(row.length - 2, (int) position);
        return row[k] + (position - k) * (row[k + 1] - row[k]);
    }
}
