package io.github.saltfront.safety;

import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The share of a required hold that a history earns, and when it is complete.
 *
 * <pre>share = integral of dt / hold(T(t))</pre>
 *
 * A cook that falls back to 130 F (54.4 C), the upper end of the official come-up range, or below starts again at zero: half a
 * cook today and half tomorrow are no cook, because bacteria may have grown in between. The share reported is that of
 * the best single run. A gap without readings ends a run too: nothing shows that the piece stayed hot in it.
 *
 * @param share share of the hold by the best single run, not capped [-]; 1 is fulfilled
 * @param logReduction decimal reduction that a fulfilled hold stands for [-]
 * @param fulfilledAt time at which the share first came to 1 [s], if it did
 * @see "fsis2021, pp. 23-25 (130 F) and 68-71 (interrupted cooks)"
 */
public record Lethality(double share, double logReduction, OptionalDouble fulfilledAt) {
    private static final Phrases PHRASES = Phrases.of(Lethality.class);

    /** Upper end of the official come-up range, 130 F [K]. */
    static final double GROWTH_CEILING = Temperature.fromFahrenheit(130);

    /** Rounding allowed before a hold counts as not fulfilled: below any clock, above the rounding of a long sum. */
    static final double ROUNDING = 1e-9;

    /**
     * Evaluates a history.
     *
     * @param table required holds
     * @param history temperature of the coldest place
     * @return what the history earns
     */
    public static Lethality of(HoldTable table, TemperatureHistory history) {
        Accumulator accumulator = new Accumulator(table);
        history.walk(accumulator);
        return accumulator.result();
    }

    /** Returns whether the hold was complete. */
    public boolean isFulfilled() {
        return share >= 1 - ROUNDING;
    }

    /**
     * Returns the share in percent for people, never rounded up to 100 and never shown beyond "100 % or more".
     *
     * @return such as {@code "43 %"} or {@code "100 % or more"}
     */
    public String shareText() {
        if (isFulfilled()) {
            return PHRASES.say("100-or-more");
        }
        return (int) Math.floor(100 * share) + " %";
    }

    /**
     * Returns the log10 figure for people. There is one only when the hold is complete; the tables come from curves with a
     * shoulder, so a part of the hold has no log figure.
     *
     * @return such as {@code "7 or more"}, or {@code "not shown"} before the hold is complete
     */
    public String logReductionText() {
        if (!isFulfilled() || logReduction == 0) {
            return PHRASES.say("not-shown");
        }
        String figure = logReduction == Math.rint(logReduction)
                ? Integer.toString((int) logReduction)
                : String.format(Locale.ROOT, "%.1f", logReduction);
        return PHRASES.say("or-more", figure);
    }

    /** Adds up the share piece by piece. */
    static final class Accumulator implements SegmentVisitor {
        private final HoldTable table;
        private double current;
        private double best;
        private OptionalDouble fulfilledAt = OptionalDouble.empty();

        Accumulator(HoldTable table) {
            this.table = table;
        }

        @Override
        public void point(double time, double temperature) {
            resetIfCold(temperature);
        }

        @Override
        public void segment(double start, double end, double from, double to) {
            resetIfCold(from);
            double mean = table.meanRate(from, to);
            double added = (end - start) * mean;
            if (fulfilledAt.isEmpty() && current + added >= 1 - ROUNDING) {
                fulfilledAt = OptionalDouble.of(start + timeToComplete(end - start, from, to));
            }
            current += added;
            best = Math.max(best, current);
            resetIfCold(to);
        }

        @Override
        public void gap(double start, double end, boolean clockLost) {
            current = 0;
        }

        double best() {
            return best;
        }

        Lethality result() {
            return new Lethality(best, table.logReduction(), fulfilledAt);
        }

        private void resetIfCold(double temperature) {
            if (temperature < GROWTH_CEILING) {
                current = 0;
            }
        }

        /** Halves the stretch until the moment is known; the share grows steadily in it. */
        private double timeToComplete(double duration, double from, double to) {
            double low = 0;
            double high = duration;
            for (int i = 0; i < 60; i++) {
                double middle = 0.5 * (low + high);
                double reached = from + (to - from) * middle / duration;
                if (current + middle * table.meanRate(from, reached) >= 1 - ROUNDING) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return high;
        }
    }
}
