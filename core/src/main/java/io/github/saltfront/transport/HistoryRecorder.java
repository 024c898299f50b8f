package io.github.saltfront.transport;

import io.github.saltfront.transport.History.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Samples one piece's history at regular times from the dense output of a solver. */
final class HistoryRecorder {
    private static final int COUNT = Series.values().length;

    private final HistoryReadings readings;
    private final SimulationOutput output;
    private final double startTemperature;
    private final double[] depths;
    private final List<double[]> samples = new ArrayList<>();
    private final List<double[]> temperatureField = new ArrayList<>();
    private final List<double[]> saltField = new ArrayList<>();
    private int firstWithoutLoss;
    private double lossTime;
    private double loss;

    HistoryRecorder(HistoryReadings readings, double startTemperature, SimulationOutput output) {
        this.readings = readings;
        this.output = output;
        this.startTemperature = startTemperature;
        depths = output.field() ? readings.depths() : new double[0];
    }

    /** Takes the start, at which the piece is uniform, as the first sample. */
    void start(double salt) {
        double[] values = new double[COUNT];
        values[Series.CORE_TEMPERATURE.ordinal()] = startTemperature;
        values[Series.SURFACE_TEMPERATURE.ordinal()] = startTemperature;
        values[Series.SECOND_SURFACE_TEMPERATURE.ordinal()] = startTemperature;
        values[Series.MEAN_TEMPERATURE.ordinal()] = startTemperature;
        values[Series.MEAN_SALT.ordinal()] = salt;
        values[Series.CORE_SALT.ordinal()] = salt;
        samples.add(values);
        firstWithoutLoss = 1;
        if (output.field()) {
            double[] temperatures = new double[depths.length];
            Arrays.fill(temperatures, startTemperature);
            temperatureField.add(temperatures);
            double[] salts = new double[depths.length];
            Arrays.fill(salts, salt);
            saltField.add(salts);
        }
    }

    /** Sees an accepted step between two times since the start [s], before the solver moves on. */
    void step(double start, double end) {
        noteLoss(start, readings.massLoss());
        double next = samples.size() * output.every();
        while (next <= end) {
            sample(next, (next - start) / (end - start));
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

    private void sample(double time, double theta) {
        double[] values = new double[COUNT];
        readings.readWithin(theta, values);
        values[Series.TIME.ordinal()] = time;
        samples.add(values);
        if (output.field()) {
            temperatureField.add(readings.temperaturesWithin(theta));
            saltField.add(readings.saltsWithin(theta));
        }
    }

    /** Adds the end as a last sample if it does not lie on a regular one. */
    void finish(double end) {
        noteLoss(end, readings.massLoss());
        double last = samples.get(samples.size() - 1)[0];
        if (end - last > 1e-6 * Math.max(1, end)) {
            double[] values = new double[COUNT];
            readings.readNow(values);
            values[Series.TIME.ordinal()] = end;
            values[Series.MASS_LOSS.ordinal()] = readings.massLoss();
            samples.add(values);
            if (output.field()) {
                temperatureField.add(readings.temperaturesNow());
                saltField.add(readings.saltsNow());
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
