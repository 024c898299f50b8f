package io.github.saltfront.safety;

/** Measures the longest unbroken stay at or above a temperature, and the total time there. */
final class StayTracker implements SegmentVisitor {
    private final double threshold;
    private double current;
    private double longest;
    private double total;

    StayTracker(double threshold) {
        this.threshold = threshold;
    }

    @Override
    public void point(double time, double temperature) {
        current = 0;
    }

    @Override
    public void segment(double start, double end, double from, double to) {
        boolean warmAtStart = from >= threshold;
        boolean warmAtEnd = to >= threshold;
        double duration = end - start;
        if (warmAtStart && warmAtEnd) {
            add(duration);
        } else if (warmAtStart) {
            add(duration * (from - threshold) / (from - to));
            current = 0;
        } else if (warmAtEnd) {
            current = 0;
            add(duration * (to - threshold) / (to - from));
        } else {
            current = 0;
        }
    }

    @Override
    public void gap(double start, double end, boolean clockLost) {
        current = 0;
    }

    /** Returns the longest unbroken stay [s]. */
    double longest() {
        return longest;
    }

    /** Returns the time spent there in all [s]. */
    double total() {
        return total;
    }

    private void add(double seconds) {
        current += seconds;
        total += seconds;
        longest = Math.max(longest, current);
    }
}
