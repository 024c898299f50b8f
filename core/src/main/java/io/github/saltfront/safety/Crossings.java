package io.github.saltfront.safety;

/** Moments at which a history passes a temperature [s]. */
final class Crossings {
    private Crossings() {}

    /** Returns whether the history ever comes to a temperature. */
    static boolean reaches(TemperatureHistory history, double level) {
        return highest(history) >= level;
    }

    /** Returns the first time of the highest temperature. */
    static double timeOfHighest(TemperatureHistory history) {
        double highest = highest(history);
        int i = 0;
        while (history.temperature(i) < highest) {
            i++;
        }
        return history.time(i);
    }

    /** Returns the highest temperature [K]. */
    static double highest(TemperatureHistory history) {
        double highest = history.temperature(0);
        for (int i = 1; i < history.size(); i++) {
            highest = Math.max(highest, history.temperature(i));
        }
        return highest;
    }

    /** Returns the time spent at or above a temperature up to a moment. */
    static double timeAbove(TemperatureHistory history, double level, double until) {
        StayTracker tracker = new StayTracker(level);
        for (int i = 1; i < history.size() && history.time(i - 1) < until; i++) {
            double end = history.time(i);
            double to = history.temperature(i);
            double from = history.temperature(i - 1);
            double start = history.time(i - 1);
            if (end > until) {
                to = from + (to - from) * (until - start) / (end - start);
                end = until;
            }
            tracker.segment(start, end, from, to);
        }
        return tracker.total();
    }

    /** Returns the last time at which the history fell through a temperature, or negative infinity. */
    static double lastDown(TemperatureHistory history, double level) {
        for (int i = history.size() - 1; i >= 1; i--) {
            if (history.temperature(i - 1) > level && history.temperature(i) <= level) {
                return crossing(history, i, level);
            }
        }
        return Double.NEGATIVE_INFINITY;
    }

    private static double crossing(TemperatureHistory history, int end, double level) {
        double from = history.temperature(end - 1);
        double to = history.temperature(end);
        double share = (level - from) / (to - from);
        return history.time(end - 1) + share * (history.time(end) - history.time(end - 1));
    }
}
