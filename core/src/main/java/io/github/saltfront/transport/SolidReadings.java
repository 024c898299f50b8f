package io.github.saltfront.transport;

import io.github.saltfront.transport.History.Series;

/** Reads a three-dimensional solver; the field is that of the thickness axis. */
final class SolidReadings implements HistoryReadings {
    private final SolidSolver solver;
    private final int kinds;
    private final int faces;

    SolidReadings(SolidSolver solver, int kinds) {
        this.solver = solver;
        this.kinds = Math.min(2, kinds);
        faces = solver.grid().faces();
    }

    @Override
    public void readWithin(double theta, double[] values) {
        values[Series.CORE_TEMPERATURE.ordinal()] = solver.coreTemperature(theta);
        values[Series.SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(0, theta);
        values[Series.SECOND_SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(faces - 1, theta);
        values[Series.MEAN_TEMPERATURE.ordinal()] = solver.meanTemperature(theta);
        values[Series.MEAN_SALT.ordinal()] = solver.meanSalt(theta);
        values[Series.CORE_SALT.ordinal()] = solver.coreSalt(theta);
        if (kinds > 0) {
            solver.computeKillWithin(theta);
        }
        for (int kind = 0; kind < kinds; kind++) {
            int core = kind == 0 ? Series.CORE_KILL.ordinal() : Series.CORE_SECOND_KILL.ordinal();
            values[core] = solver.kinetics().within(kind, solver.grid().middleCell());
            values[core + 1] = solver.kinetics().leastWithin(kind);
        }
    }

    @Override
    public void readNow(double[] values) {
        values[Series.CORE_TEMPERATURE.ordinal()] = solver.coreTemperature();
        values[Series.SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(0);
        values[Series.SECOND_SURFACE_TEMPERATURE.ordinal()] = solver.faceTemperature(faces - 1);
        values[Series.MEAN_TEMPERATURE.ordinal()] = solver.meanTemperature();
        values[Series.MEAN_SALT.ordinal()] = solver.meanSalt();
        values[Series.CORE_SALT.ordinal()] = solver.coreSalt();
        for (int kind = 0; kind < kinds; kind++) {
            int core = kind == 0 ? Series.CORE_KILL.ordinal() : Series.CORE_SECOND_KILL.ordinal();
            values[core] = solver.coreKill(kind);
            values[core + 1] = solver.leastKill(kind);
        }
    }

    @Override
    public double massLoss() {
        return solver.massLoss();
    }

    @Override
    public double[] depths() {
        return solver.grid().axisDepths();
    }

    @Override
    public double[] temperaturesWithin(double theta) {
        return inKelvin(solver.computeDense(theta));
    }

    @Override
    public double[] temperaturesNow() {
        return inKelvin(solver.temperatures(false));
    }

    private double[] inKelvin(double[] celsius) {
        double[] values = solver.grid().alongAxis(celsius);
        for (int i = 0; i < values.length; i++) {
            values[i] += SolidState.KELVIN;
        }
        return values;
    }

    @Override
    public double[] saltsWithin(double theta) {
        return solver.grid().alongAxis(solver.denseSalts(theta));
    }

    @Override
    public double[] saltsNow() {
        double[] salts = new double[solver.grid().cells()];
        for (int c = 0; c < salts.length; c++) {
            salts[c] = solver.cellSalt(c);
        }
        return solver.grid().alongAxis(salts);
    }
}
