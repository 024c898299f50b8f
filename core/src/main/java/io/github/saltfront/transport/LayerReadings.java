package io.github.saltfront.transport;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.History.Series;
import java.util.function.IntToDoubleFunction;

/** Reads the only member of a layer solver. */
final class LayerReadings implements HistoryReadings {
    private final LayerSolver solver;
    private final LayerGrid grid;
    private final double extent;
    private final int kinds;

    LayerReadings(LayerSolver solver, LayerGrid grid, double halfThickness, int kinds) {
        this.solver = solver;
        this.grid = grid;
        extent = halfThickness * (grid.isTwoFaced() ? 2 : 1);
        this.kinds = Math.min(2, kinds);
    }

    @Override
    public void readWithin(double theta, double[] values) {
        values[Series.CORE_TEMPERATURE.ordinal()] = solver.coreTemperature(0, theta);
        values[Series.SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(0, 0, theta);
        values[Series.SECOND_SURFACE_TEMPERATURE.ordinal()] =
                grid.isTwoFaced() ? solver.faceTemperature(1, 0, theta) : values[Series.SURFACE_TEMPERATURE.ordinal()];
        values[Series.MEAN_TEMPERATURE.ordinal()] = solver.meanTemperature(0, theta);
        values[Series.MEAN_SALT.ordinal()] = solver.meanSalt(0, theta);
        values[Series.CORE_SALT.ordinal()] = solver.coreSalt(0, theta);
        for (int kind = 0; kind < kinds; kind++) {
            int core = kind == 0 ? Series.CORE_KILL.ordinal() : Series.CORE_SECOND_KILL.ordinal();
            values[core] = solver.cellKill(0, grid.isTwoFaced() ? grid.cells() / 2 : 0, kind, theta);
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < grid.cells(); i++) {
                least = Math.min(least, solver.cellKill(0, i, kind, theta));
            }
            values[core + 1] = least;
        }
    }

    @Override
    public void readNow(double[] values) {
        values[Series.CORE_TEMPERATURE.ordinal()] = solver.coreTemperature(0);
        values[Series.SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(0, 0);
        values[Series.SECOND_SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(grid.isTwoFaced() ? 1 : 0, 0);
        values[Series.MEAN_TEMPERATURE.ordinal()] = solver.meanTemperature(0);
        values[Series.MEAN_SALT.ordinal()] = solver.meanSalt(0);
        values[Series.CORE_SALT.ordinal()] = solver.coreSalt(0);
        for (int kind = 0; kind < kinds; kind++) {
            int core = kind == 0 ? Series.CORE_KILL.ordinal() : Series.CORE_SECOND_KILL.ordinal();
            values[core] = solver.coreKill(0, kind);
            values[core + 1] = solver.leastKill(0, kind);
        }
    }

    @Override
    public double massLoss() {
        return solver.massLoss(0);
    }

    @Override
    public double[] depths() {
        return fromOutside(i -> extent * (1 - grid.node(i)));
    }

    @Override
    public double[] temperaturesWithin(double theta) {
        return fromOutside(i -> solver.cellTemperature(0, i, theta));
    }

    @Override
    public double[] temperaturesNow() {
        return fromOutside(i -> solver.cellTemperature(0, i));
    }

    @Override
    public double[] saltsWithin(double theta) {
        return fromOutside(i -> solver.cellSalt(0, i, theta));
    }

    @Override
    public double[] saltsNow() {
        return fromOutside(i -> solver.cellSalt(0, i));
    }

    private double[] fromOutside(IntToDoubleFunction ofCell) {
        double[] values = new double[grid.cells()];
        for (int i = 0; i < values.length; i++) {
            values[i] = ofCell.applyAsDouble(grid.cells() - 1 - i);
        }
        return values;
    }
}
