package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Readings of one probe as they were recorded, put in order without ever adding heat. Immutable.
 *
 * <ul>
 *   <li>A reading that repeats an earlier time and value is dropped.
 *   <li>Of two readings at one time with different values the lower counts.
 *   <li>When the clock jumps back, the readings until it has caught up are set aside, and the stretch across the jump is
 *       not known: it is credited nothing, because its true length cannot be told.
 * </ul>
 *
 * The counts of what was set aside stay with the log for the record.
 */
public final class TemperatureLog {
    private final double[] times;
    private final double[] temperatures;
    private final boolean[] clockLostBefore;
    private final int repeated;
    private final int contradicting;
    private final int setAside;
    private final int clockJumps;

    private TemperatureLog(Cleaner cleaner) {
        this.times = Arrays.copyOf(cleaner.times, cleaner.size);
        this.temperatures = Arrays.copyOf(cleaner.temperatures, cleaner.size);
        this.clockLostBefore = Arrays.copyOf(cleaner.clockLostBefore, cleaner.size);
        this.repeated = cleaner.repeated;
        this.contradicting = cleaner.contradicting;
        this.setAside = cleaner.setAside;
        this.clockJumps = cleaner.clockJumps;
    }

    /**
     * Takes the readings in the order in which they were recorded.
     *
     * @param times times in any order [s]; not modified
     * @param temperatures what the probe showed, 150-700 K [K]; as many as times; not modified
     * @return the log
     * @throws IllegalArgumentException if there is no reading, lengths differ or a value is out of range
     */
    public static TemperatureLog of(double[] times, double[] temperatures) {
        Checks.require(
                times.length == temperatures.length && times.length > 0,
                "times and readings must be equally many and at least one, got " + times.length + " and "
                        + temperatures.length + ".");
        Cleaner cleaner = new Cleaner(times.length);
        for (int i = 0; i < times.length; i++) {
            Checks.requireFinite("time of reading " + (i + 1), times[i]);
            Checks.requireInRange("reading " + (i + 1), temperatures[i], 150, 700, "K");
            cleaner.add(times[i], temperatures[i]);
        }
        return new TemperatureLog(cleaner);
    }

    /** Tells whether the same readings were kept and as many set aside. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TemperatureLog log
                && Arrays.equals(times, log.times)
                && Arrays.equals(temperatures, log.temperatures)
                && Arrays.equals(clockLostBefore, log.clockLostBefore)
                && repeated == log.repeated
                && contradicting == log.contradicting
                && setAside == log.setAside
                && clockJumps == log.clockJumps;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(times) + Arrays.hashCode(temperatures);
    }

    /** Returns the number of readings kept. */
    public int size() {
        return times.length;
    }

    /**
     * Returns the time of a reading.
     *
     * @param index number of the reading, from 0
     * @return time [s]
     */
    public double time(int index) {
        return times[index];
    }

    /**
     * Returns what the probe showed.
     *
     * @param index number of the reading, from 0
     * @return temperature as shown [K]
     */
    public double reading(int index) {
        return temperatures[index];
    }

    /**
     * Returns whether the clock jumped back just before a reading.
     *
     * @param index number of the reading, from 0
     */
    boolean isClockLostBefore(int index) {
        return clockLostBefore[index];
    }

    /** Returns how many readings repeated an earlier one and were dropped. */
    public int repeated() {
        return repeated;
    }

    /** Returns how many readings contradicted another one at the same time; the lower one was kept. */
    public int contradicting() {
        return contradicting;
    }

    /** Returns how many readings were set aside because the clock had jumped back. */
    public int setAside() {
        return setAside;
    }

    /** Returns how often the clock jumped back. */
    public int clockJumps() {
        return clockJumps;
    }

    /** Returns the highest reading [K]. */
    public double highest() {
        return Arrays.stream(temperatures).max().orElseThrow();
    }

    /** Puts readings in order. */
    private static final class Cleaner {
        private final double[] times;
        private final double[] temperatures;
        private final boolean[] clockLostBefore;
        private int size;
        private int repeated;
        private int contradicting;
        private int setAside;
        private int clockJumps;
        private boolean catchingUp;

        Cleaner(int capacity) {
            times = new double[capacity];
            temperatures = new double[capacity];
            clockLostBefore = new boolean[capacity];
        }

        void add(double time, double temperature) {
            if (size == 0 || time > times[size - 1]) {
                times[size] = time;
                temperatures[size] = temperature;
                clockLostBefore[size] = catchingUp;
                catchingUp = false;
                size++;
                return;
            }
            int known = Arrays.binarySearch(times, 0, size, time);
            if (known >= 0 && temperatures[known] == temperature) {
                repeated++;
            } else if (known == size - 1) {
                contradicting++;
                temperatures[known] = Math.min(temperatures[known], temperature);
            } else {
                setAside++;
                if (!catchingUp) {
                    clockJumps++;
                }
                catchingUp = true;
            }
        }
    }
}
