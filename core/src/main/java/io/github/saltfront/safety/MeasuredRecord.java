package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import java.util.Arrays;

/**
 * A measured log with what is known about its probe: the only thing that can show that a hold was reached.
 *
 * <p>Lower bound of the coldest spot along a stretch between readings r1 and r2 at t1 and t2:
 *
 * <pre>T_low = lower(r) - deduction + min(0, tau (lower(r2) - lower(r1))/(t2 - t1))</pre>
 *
 * A probe with response time tau shows too much while it cools, which is taken off; what it shows too little while it warms
 * is not added. A stretch longer than the longest accepted gap, or one across a jump of the clock, is credited nothing.
 *
 * @param log readings
 * @param probe error of the thermometer
 * @param placement place of the tip
 * @param responseTime time constant tau of the probe [s], 0-600
 * @param longestGap longest time between readings over which the curve is taken as linear [s], 1-3600
 */
public record MeasuredRecord(
        TemperatureLog log, ProbeError probe, Placement placement, double responseTime, double longestGap) {
    /** Default of the longest gap [s]; our estimate: the core of a piece worth probing changes little faster. */
    public static final double DEFAULT_LONGEST_GAP = 300;

    /** Default response time [s]; our estimate for a thin penetration probe in meat. */
    public static final double DEFAULT_RESPONSE_TIME = 5;

    /** Highest reading that meat can give [K]: water boils off well below; 105 deg C leaves room for salt and error. */
    static final double HIGHEST_IN_MEAT = Temperature.fromCelsius(105);

    /** Checks the values. */
    public MeasuredRecord {
        Checks.requireInRange("response time", responseTime, 0, 600, "s");
        Checks.requireInRange("longest gap", longestGap, 1, 3600, "s");
    }

    /**
     * Takes a log with the default response time and longest gap.
     *
     * @param log readings
     * @param probe error of the thermometer
     * @param placement place of the tip
     * @return the record
     */
    public static MeasuredRecord of(TemperatureLog log, ProbeError probe, Placement placement) {
        return new MeasuredRecord(log, probe, placement, DEFAULT_RESPONSE_TIME, DEFAULT_LONGEST_GAP);
    }

    /**
     * Evaluates the lower bound of this record.
     *
     * @param table required holds
     * @return what the record shows
     */
    public Lethality lethality(HoldTable table) {
        Lethality.Accumulator accumulator = new Lethality.Accumulator(table);
        walkLower(accumulator);
        return accumulator.result();
    }

    /**
     * Returns how the share of the hold grows, reading by reading.
     *
     * @param table required holds
     * @return best share so far at each reading, never falling [-]; as long as the log
     */
    public double[] runningShare(HoldTable table) {
        Lethality.Accumulator accumulator = new Lethality.Accumulator(table);
        double[] shares = new double[log.size()];
        walkLower(new SegmentVisitor() {
            private int next;

            @Override
            public void point(double time, double temperature) {
                accumulator.point(time, temperature);
                shares[next++] = accumulator.best();
            }

            @Override
            public void segment(double start, double end, double from, double to) {
                accumulator.segment(start, end, from, to);
                shares[next++] = accumulator.best();
            }

            @Override
            public void gap(double start, double end, boolean clockLost) {
                accumulator.gap(start, end, clockLost);
            }
        });
        return shares;
    }

    /** Returns the number of stretches without knowledge: gaps and jumps of the clock. */
    public int gaps() {
        int count = 0;
        for (int i = 1; i < log.size(); i++) {
            if (isGap(i)) {
                count++;
            }
        }
        return count;
    }

    /** Returns the longest time between two readings, jumps of the clock aside [s]. */
    public double longestInterval() {
        double longest = 0;
        for (int i = 1; i < log.size(); i++) {
            if (!log.isClockLostBefore(i)) {
                longest = Math.max(longest, log.time(i) - log.time(i - 1));
            }
        }
        return longest;
    }

    /** Returns whether a reading is hotter than meat can be, so that the probe was outside it for a time. */
    public boolean hasImpossibleReading() {
        return log.highest() > HIGHEST_IN_MEAT;
    }

    /**
     * Returns the unfavorable curve for the clocks that run while food is warm: the upper bound at the tip, and in a gap the
     * warmer of both ends until the very end. Unlike for kill, a probe that reads late is no help here.
     *
     * @return upper bound
     */
    public TemperatureHistory upperHistory() {
        return bound(true);
    }

    /**
     * Returns the unfavorable curve for clocks that stop when the piece is hot: the lower bound of the coldest spot, and in a
     * gap the colder of both ends.
     *
     * @return lower bound
     */
    public TemperatureHistory lowerHistory() {
        return bound(false);
    }

    private TemperatureHistory bound(boolean upper) {
        int n = log.size();
        double[] times = new double[3 * n];
        double[] temperatures = new double[3 * n];
        int size = 0;
        for (int i = 0; i < n; i++) {
            double value = upper ? probe.upper(log.reading(i)) : lower(i);
            if (i > 0 && isGap(i)) {
                double before = temperatures[size - 1];
                double worse = upper ? Math.max(before, value) : Math.min(before, value);
                double step = Math.min(1e-3, (log.time(i) - log.time(i - 1)) / 4);
                times[size] = log.time(i - 1) + step;
                temperatures[size++] = worse;
                times[size] = log.time(i) - step;
                temperatures[size++] = worse;
            }
            times[size] = log.time(i);
            temperatures[size++] = value;
        }
        return TemperatureHistory.of(Arrays.copyOf(times, size), Arrays.copyOf(temperatures, size));
    }

    /** Hands over the lower bound of the coldest spot, gaps apart. */
    void walkLower(SegmentVisitor visitor) {
        walkLower(visitor, false);
    }

    /** Hands over the lower bound as if nothing had been missing in the gaps; used only to tell what is missing. */
    void walkLowerBridged(SegmentVisitor visitor) {
        walkLower(visitor, true);
    }

    private void walkLower(SegmentVisitor visitor, boolean bridged) {
        visitor.point(log.time(0), lower(0));
        for (int i = 1; i < log.size(); i++) {
            double start = log.time(i - 1);
            double end = log.time(i);
            double from = lower(i - 1);
            double to = lower(i);
            if (isGap(i) && !bridged) {
                visitor.gap(start, end, log.isClockLostBefore(i));
                visitor.point(end, to);
            } else {
                double lag = Math.min(0, responseTime * (to - from) / (end - start));
                visitor.segment(start, end, from + lag, to + lag);
            }
        }
    }

    private double lower(int index) {
        return probe.lower(log.reading(index)) - placement.deduction().orElse(0);
    }

    private boolean isGap(int index) {
        return log.isClockLostBefore(index) || log.time(index) - log.time(index - 1) > longestGap;
    }
}
