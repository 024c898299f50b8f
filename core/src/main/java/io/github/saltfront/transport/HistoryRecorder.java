package io.github.saltfront.transport;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.History.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Samples one member's history at regular times from the dense output of the solver. */
final class HistoryRecorder {
    private static final int COUNT = Series.values().length;

    private final LayerGrid grid;
    private final SimulationOutput output;
    private final int kinds;
    private final double startTemperature;
    private final double[] depths;
    private final List<double[]> samples = new ArrayList<>();
    private final List<double[]> temperatureField = new ArrayList<>();
    private final List<double[]> saltField = new ArrayList<>();
    private double stageBegin;
    private int firstWithoutLoss;
    private double lossTime;
    private double loss;

    HistoryRecorder(LayerGrid grid, Piece piece, SimulationOutput output, int kinds) {
        this.grid = grid;
        this.output = output;
        this.kinds = kinds;
        startTemperature = piece.start().temperature();
        depths = output.field() ? depths(grid, piece.shape().halfThickness()) : new double[0];
    }

    private static double[] depths(LayerGrid grid, double halfThickness) {
        double extent = halfThickness * (grid.isTwoFaced() ? 2 : 1);
        double[] depths = new double[grid.cells()];
        for (int i = 0; i < depths.length; i++) {
            depths[i] = extent * (1 - grid.node(grid.cells() - 1 - i));
        }
        return depths;
    }

    void start(LayerSolver solver) {
        double[] values = new double[COUNT];
        values[Series.CORE_TEMPERATURE.ordinal()] = startTemperature;
        values[Series.SURFACE_TEMPERATURE.ordinal()] = startTemperature;
        values[Series.SECOND_SURFACE_TEMPERATURE.ordinal()] = startTemperature;
        values[Series.MEAN_TEMPERATURE.ordinal()] = startTemperature;
        values[Series.MEAN_SALT.ordinal()] = solver.meanSalt(0);
        values[Series.CORE_SALT.ordinal()] = solver.coreSalt(0);
        samples.add(values);
        firstWithoutLoss = 1;
        if (output.field()) {
            double[] temperatures = new double[depths.length];
            Arrays.fill(temperatures, startTemperature);
            temperatureField.add(temperatures);
            double[] salts = new double[depths.length];
            Arrays.fill(salts, solver.meanSalt(0));
            saltField.add(salts);
        }
    }

    StepSink from(double begin) {
        stageBegin = begin;
        return this::step;
    }

    private void step(LayerSolver solver, int member, double start, double end) {
        noteLoss(stageBegin + start, solver.massLoss(0));
        double next = samples.size() * output.every();
        while (next <= stageBegin + end) {
            sample(solver, next, (next - stageBegin - start) / (end - start));
            next = samples.size() * output.every();
        }
    }

    /** Fills in the losses of the samples since the last committed state, by a straight line to this one. */
    private void noteLoss(double time, double massLoss) {
        int index = Series.MASS_LOSS.ordinal();
        for (int i = firstWithoutLoss; i < samples.size(); i++) {
            double[] sample = samples.get(i);
            double share = time > lossTime ? (sample[0] - lossTime) / (time - lossTime) : 1;
            sample[index] = loss + Math.min(1, share) * (massLoss - loss);
        }
        firstWithoutLoss = samples.size();
        lossTime = time;
        loss = massLoss;
    }

    private void sample(LayerSolver solver, double time, double theta) {
        double[] values = new double[COUNT];
        values[Series.TIME.ordinal()] = time;
        values[Series.CORE_TEMPERATURE.ordinal()] = solver.coreTemperature(0, theta);
        values[Series.SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(0, 0, theta);
        values[Series.SECOND_SURFACE_TEMPERATURE.ordinal()] =
                grid.isTwoFaced() ? solver.faceTemperature(1, 0, theta) : values[Series.SURFACE_TEMPERATURE.ordinal()];
        values[Series.MEAN_TEMPERATURE.ordinal()] = solver.meanTemperature(0, theta);
        values[Series.MEAN_SALT.ordinal()] = solver.meanSalt(0, theta);
        values[Series.CORE_SALT.ordinal()] = solver.coreSalt(0, theta);
        for (int kind = 0; kind < Math.min(2, kinds); kind++) {
            int core = kind == 0 ? Series.CORE_KILL.ordinal() : Series.CORE_SECOND_KILL.ordinal();
            values[core] = solver.cellKill(0, grid.isTwoFaced() ? grid.cells() / 2 : 0, kind, theta);
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < grid.cells(); i++) {
                least = Math.min(least, solver.cellKill(0, i, kind, theta));
            }
            values[core + 1] = least;
        }
        samples.add(values);
        if (output.field()) {
            double[] temperatures = new double[depths.length];
            double[] salts = new double[depths.length];
            for (int i = 0; i < depths.length; i++) {
                temperatures[i] = solver.cellTemperature(0, grid.cells() - 1 - i, theta);
                salts[i] = solver.cellSalt(0, grid.cells() - 1 - i, theta);
            }
            temperatureField.add(temperatures);
            saltField.add(salts);
        }
    }

    /** Adds the end as a last sample if it does not lie on a regular one. */
    void finish(LayerSolver solver, double end) {
        noteLoss(end, solver.massLoss(0));
        double last = samples.get(samples.size() - 1)[0];
        if (end - last > 1e-6 * Math.max(1, end)) {
            double[] values = samples.get(samples.size() - 1).clone();
            values[Series.TIME.ordinal()] = end;
            values[Series.CORE_TEMPERATURE.ordinal()] = solver.coreTemperature(0);
            values[Series.SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(0, 0);
            values[Series.SECOND_SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(grid.isTwoFaced() ? 1 : 0, 0);
            values[Series.MEAN_TEMPERATURE.ordinal()] = solver.meanTemperature(0);
            values[Series.MEAN_SALT.ordinal()] = solver.meanSalt(0);
            values[Series.CORE_SALT.ordinal()] = solver.coreSalt(0);
            values[Series.MASS_LOSS.ordinal()] = solver.massLoss(0);
            values[Series.CORE_KILL.ordinal()] = kinds > 0 ? solver.coreKill(0, 0) : 0;
            values[Series.LEAST_KILL.ordinal()] = kinds > 0 ? solver.leastKill(0, 0) : 0;
            values[Series.CORE_SECOND_KILL.ordinal()] = kinds > 1 ? solver.coreKill(0, 1) : 0;
            values[Series.LEAST_SECOND_KILL.ordinal()] = kinds > 1 ? solver.leastKill(0, 1) : 0;
            samples.add(values);
            if (output.field()) {
                double[] temperatures = new double[depths.length];
                double[] salts = new double[depths.length];
                for (int i = 0; i < depths.length; i++) {
                    temperatures[i] = solver.cellTemperature(0, grid.cells() - 1 - i);
                    salts[i] = solver.cellSalt(0, grid.cells() - 1 - i);
                }
                temperatureField.add(temperatures);
                saltField.add(salts);
            }
        }
    }

    History history(List<StageRecord> stages, Diagnostics diagnostics) {
        double[][] series = new double[COUNT][samples.size()];
        for (int i = 0; i < samples.size(); i++) {
            for (int k = 0; k < COUNT; k++) {
                series[k][i] = samples.get(i)[k];
            }
        }
        return new History(
                series,
                depths,
                temperatureField.toArray(new double[0][]),
                saltField.toArray(new double[0][]),
                stages,
                diagnostics);
    }
}
