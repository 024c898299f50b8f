package io.github.saltfront.app.follow;

/** Time of a cook by the clock of the computer; a replayed cook's runs faster, until its log is at its end. */
final class CookClock {
    private final long started;
    private final double speed;
    private volatile double end = Double.POSITIVE_INFINITY;

    CookClock(long started, double speed) {
        this.started = started;
        this.speed = speed;
    }

    /** Time since the meat went into the heat [s], at a time [ms since 1970]. */
    double at(long time) {
        return Math.min(end, (time - started) / 1000.0 * speed);
    }

    /** Time at which the cook was, or will be, at a time since the meat went in [ms since 1970]. */
    long whenAt(double seconds) {
        return started + Math.round(seconds * 1000 / speed);
    }

    /** Lets the clock run no further than to a time since the meat went in [s]. */
    void endAt(double seconds) {
        end = seconds;
    }

    /** Time at which the clock stands still [s], infinite if it goes on. */
    double end() {
        return end;
    }

    double speed() {
        return speed;
    }
}
