package io.github.saltfront.safety;

/** Receives a temperature curve in order of time, so that kill, clocks and growth read the same pieces. */
interface SegmentVisitor {
    /**
     * A reading that starts a stretch: the first one, or the first after a gap.
     *
     * @param time time [s]
     * @param temperature temperature [K]
     */
    void point(double time, double temperature);

    /**
     * A stretch over which the temperature is known to run linearly.
     *
     * @param start its first time [s]
     * @param end its last time, not before the first [s]
     * @param from temperature at the start [K]
     * @param to temperature at the end [K]
     */
    void segment(double start, double end, double from, double to);

    /**
     * A time without knowledge; followed by {@link #point}.
     *
     * @param start last known time [s]
     * @param end next known time [s]; not a duration if the clock was set
     * @param clockLost whether the clock jumped, so that the duration is not known
     */
    void gap(double start, double end, boolean clockLost);
}
