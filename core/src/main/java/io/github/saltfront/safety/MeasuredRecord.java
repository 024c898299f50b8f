package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;

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
    static final double HIGHEST_IN_MEAT = io.github.saltfront.units.Temperature.fromCelsius(105);

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

    /** Hands over the lower bound of the coldest spot. */
    void walkLower(SegmentVisitor visitor) {
        double deduction = placement.deduction().orElse(0);
        visitor.point(log.time(0), probe.lower(log.reading(0)) - deduction);
        for (int i = 1; i < log.size(); i++) {
            double start = log.time(i - 1);
            double end = log.time(i);
            double to = probe.lower(log.reading(i)) - deduction;
            if (isGap(i)) {
                visitor.gap(start, end, log.isClockLostBefore(i));
                visitor.point(end, to);
            } else {
                double from = probe.lower(log.reading(i - 1)) - deduction;
                double lag = Math.min(0, responseTime * (to - from) / (end - start));
                visitor.segment(start, end, from + lag, to + lag);
            }
        }
    }

    /** Hands over the upper bound at the tip, with gaps bridged: what could have been at best, and for clocks at worst. */
    void walkUpper(SegmentVisitor visitor) {
        visitor.point(log.time(0), probe.upper(log.reading(0)));
        for (int i = 1; i < log.size(); i++) {
            double start = log.time(i - 1);
            double end = log.time(i);
            double from = probe.upper(log.reading(i - 1));
            double to = probe.upper(log.reading(i));
            double lag = Math.max(0, responseTime * (to - from) / (end - start));
            visitor.segment(start, end, from + lag, to + lag);
        }
    }

    /** Hands over the lower bound as if nothing had been missing in the gaps; used only to tell what is missing. */
    void walkLowerBridged(SegmentVisitor visitor) {
        new MeasuredRecord(log, probe, placement, responseTime, 3600).walkLower(new SegmentVisitor() {
            private double lastTime;
            private double lastTemperature;

            @Override
            public void point(double time, double temperature) {
                if (time > lastTime && lastTemperature > 0) {
                    visitor.segment(lastTime, time, lastTemperature, temperature);
                } else {
                    visitor.point(time, temperature);
                }
                remember(time, temperature);
            }

            @Override
            public void segment(double start, double end, double from, double to) {
                visitor.segment(start, end, from, to);
                remember(end, to);
            }

            @Override
            public void gap(double start, double end, boolean clockLost) {
                // bridged by the point that follows
            }

            private void remember(double time, double temperature) {
                lastTime = time;
                lastTemperature = temperature;
            }
        });
    }

    private boolean isGap(int index) {
        return log.isClockLostBefore(index) || log.time(index) - log.time(index - 1) > longestGap;
    }
}
