package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;
import java.util.Arrays;
import java.util.List;

/**
 * What a simulation recorded: series over time, the stages, and diagnostics. Series are copied out. Temperatures in K,
 * salt per wet mass and losses per starting mass in kg/kg. Immutable.
 */
public final class History {
    /** A recorded series. */
    public enum Series {
        /** Time since the start [s]. */
        TIME,
        /** Temperature in the middle [K]. */
        CORE_TEMPERATURE,
        /** Temperature of the first face [K]. */
        SURFACE_TEMPERATURE,
        /** Temperature of the second face, that of the first where there is only one [K]. */
        SECOND_SURFACE_TEMPERATURE,
        /** Mean temperature by volume [K]. */
        MEAN_TEMPERATURE,
        /** Salt of the piece per wet mass [kg/kg]. */
        MEAN_SALT,
        /** Salt in the middle per wet mass [kg/kg]. */
        CORE_SALT,
        /** Loss of mass per starting mass [kg/kg]. */
        MASS_LOSS,
        /** Kill of the first kind in the middle. */
        CORE_KILL,
        /** Least kill of the first kind. */
        LEAST_KILL,
        /** Kill of the second kind in the middle. */
        CORE_SECOND_KILL,
        /** Least kill of the second kind. */
        LEAST_SECOND_KILL
    }

    private final double[][] series;
    private final double[] depths;
    private final double[][] temperatureField;
    private final double[][] saltField;
    private final List<StageRecord> stages;
    private final Diagnostics diagnostics;

    History(
            double[][] series,
            double[] depths,
            double[][] temperatureField,
            double[][] saltField,
            List<StageRecord> stages,
            Diagnostics diagnostics) {
        this.series = series;
        this.depths = depths;
        this.temperatureField = temperatureField;
        this.saltField = saltField;
        this.stages = List.copyOf(stages);
        this.diagnostics = diagnostics;
    }

    History with(Diagnostics other) {
        return new History(series, depths, temperatureField, saltField, stages, other);
    }

    /** Largest difference of the core temperature to another run at the times both have sampled [K]. */
    double largestDifference(History other) {
        double largest = 0;
        for (int i = 0; i < Math.min(size(), other.size()); i++) {
            if (value(Series.TIME, i) == other.value(Series.TIME, i)) {
                double difference = value(Series.CORE_TEMPERATURE, i) - other.value(Series.CORE_TEMPERATURE, i);
                largest = Math.max(largest, Math.abs(difference));
            }
        }
        return largest;
    }

    /** Returns the number of samples. */
    public int size() {
        return series[0].length;
    }

    /**
     * Returns a series.
     *
     * @param which which series
     * @return a copy, one value a sample
     */
    public double[] series(Series which) {
        return series[which.ordinal()].clone();
    }

    /**
     * Returns one value of a series.
     *
     * @param which which series
     * @param sample which sample
     * @return the value
     */
    public double value(Series which, int sample) {
        return series[which.ordinal()][sample];
    }

    /**
     * Returns a series at any time, by a straight line between samples.
     *
     * @param which which series
     * @param time time since the start [s], within the run
     * @return the value
     */
    public double at(Series which, double time) {
        double[] times = series[0];
        Checks.requireInRange("time", time, times[0], times[times.length - 1], "s");
        int found = Arrays.binarySearch(times, time);
        if (found >= 0) {
            return series[which.ordinal()][found];
        }
        int next = -found - 1;
        double share = (time - times[next - 1]) / (times[next] - times[next - 1]);
        return (1 - share) * series[which.ordinal()][next - 1] + share * series[which.ordinal()][next];
    }

    /**
     * Returns the depths of the recorded fields below the first face [m]; empty if no field was asked for.
     *
     * @return a copy
     */
    public double[] depths() {
        return depths.clone();
    }

    /**
     * Returns the temperatures of all depths at a sample [K].
     *
     * @param sample which sample
     * @return a copy, as long as {@link #depths}
     */
    public double[] temperatures(int sample) {
        return temperatureField[sample].clone();
    }

    /**
     * Returns the salt of all depths at a sample, per wet mass [kg/kg].
     *
     * @param sample which sample
     * @return a copy, as long as {@link #depths}
     */
    public double[] salts(int sample) {
        return saltField[sample].clone();
    }

    /** Returns the stages in order. */
    public List<StageRecord> stages() {
        return stages;
    }

    /** Returns how the run went. */
    public Diagnostics diagnostics() {
        return diagnostics;
    }
}
