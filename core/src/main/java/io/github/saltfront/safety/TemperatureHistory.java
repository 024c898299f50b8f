package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import java.util.Arrays;

/**
 * Temperature of one place over time, linear between its points. Immutable.
 *
 * <p>This is a curve, not a proof: it may come from a simulation. A measured curve with its probe and its gaps is a
 * {@link MeasuredRecord}.
 */
public final class TemperatureHistory {
    private static final double LOWEST = 150;
    private static final double HIGHEST = 700;

    private final double[] times;
    private final double[] temperatures;

    private TemperatureHistory(double[] times, double[] temperatures) {
        this.times = times;
        this.temperatures = temperatures;
    }

    /**
     * Takes the points of the curve.
     *
     * @param times times, strictly rising [s]; copied
     * @param temperatures temperatures, 150-700 K [K]; as many as times; copied
     * @return the history
     * @throws IllegalArgumentException if there is no point, lengths differ, times do not rise or a value is out of range
     */
    public static TemperatureHistory of(double[] times, double[] temperatures) {
        Checks.require(
                times.length == temperatures.length && times.length > 0,
                "times and temperatures must be equally many and at least one, got " + times.length + " and "
                        + temperatures.length + ".");
        for (int i = 0; i < times.length; i++) {
            boolean sound = Double.isFinite(times[i])
                    && temperatures[i] >= LOWEST
                    && temperatures[i] <= HIGHEST
                    && (i == 0 || times[i] > times[i - 1]);
            if (!sound) {
                explain(times, temperatures, i);
            }
        }
        return new TemperatureHistory(times.clone(), temperatures.clone());
    }

    /** Throws what is wrong with a point; its texts are too slow to be made for every point of every history. */
    private static void explain(double[] times, double[] temperatures, int i) {
        Checks.requireFinite("time " + i, times[i]);
        Checks.requireInRange("temperature " + i, temperatures[i], LOWEST, HIGHEST, "K");
        throw new IllegalArgumentException(
                "times must rise strictly, got " + times[i - 1] + " s and then " + times[i] + " s.");
    }

    /**
     * Returns the integral of a rate along the curve: a share of the hold, or log10 reductions.
     *
     * @param rate the rate
     * @return its integral, not negative [-]
     */
    public double integrate(LethalRate rate) {
        double sum = 0;
        for (int i = 1; i < times.length; i++) {
            sum += (times[i] - times[i - 1]) * rate.meanRate(temperatures[i - 1], temperatures[i]);
        }
        return sum;
    }

    /** Returns the number of points. */
    public int size() {
        return times.length;
    }

    /**
     * Returns a time.
     *
     * @param index number of the point, from 0
     * @return time [s]
     */
    public double time(int index) {
        return times[index];
    }

    /**
     * Returns a temperature.
     *
     * @param index number of the point, from 0
     * @return temperature [K]
     */
    public double temperature(int index) {
        return temperatures[index];
    }

    /**
     * Returns the history with all temperatures higher by a difference.
     *
     * @param difference difference [K], may be negative
     * @return the history
     */
    public TemperatureHistory shifted(double difference) {
        return of(times, Arrays.stream(temperatures).map(t -> t + difference).toArray());
    }

    /**
     * Returns the part of the curve between two times, by straight lines at its ends.
     *
     * @param from start [s], not before that of the curve
     * @param to end [s], after the start and not after that of the curve
     * @return the part
     */
    public TemperatureHistory between(double from, double to) {
        Checks.require(
                times[0] <= from && from < to && to <= times[times.length - 1],
                "a part must lie within " + times[0] + " to " + times[times.length - 1] + " s, got " + from + " to "
                        + to + " s.");
        double[] inside = Arrays.stream(times).filter(t -> from < t && t < to).toArray();
        double[] t = new double[inside.length + 2];
        t[0] = from;
        t[t.length - 1] = to;
        System.arraycopy(inside, 0, t, 1, inside.length);
        return of(t, Arrays.stream(t).map(this::at).toArray());
    }

    /** Returns the temperature at a time within the curve. */
    private double at(double time) {
        int found = Arrays.binarySearch(times, time);
        if (found >= 0) {
            return temperatures[found];
        }
        int next = -found - 1;
        double share = (time - times[next - 1]) / (times[next] - times[next - 1]);
        return (1 - share) * temperatures[next - 1] + share * temperatures[next];
    }

    /** Hands the curve over piece by piece. */
    void walk(SegmentVisitor visitor) {
        visitor.point(times[0], temperatures[0]);
        for (int i = 1; i < times.length; i++) {
            visitor.segment(times[i - 1], times[i], temperatures[i - 1], temperatures[i]);
        }
    }
}
