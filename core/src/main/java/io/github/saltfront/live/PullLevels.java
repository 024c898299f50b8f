package io.github.saltfront.live;

import io.github.saltfront.numerics.DenseSolve;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.safety.SafetyRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of one member as a function of the core temperature at which it is taken out, by straight lines between simulated
 * levels; kill by straight lines of its logarithm. Immutable.
 */
final class PullLevels {
    /** Carry-over, time to the peak, logarithm of kill, loss of mass, stay above the consumer minimum. */
    private static final int QUANTITIES = 5;

    private static final double LEAST_KILL = 1e-12;

    /** Where no level is reached at all, nothing is known of kill and carry-over. */
    private static final List<double[]> NOTHING =
            List.of(new double[] {200, 0, 0, -30, 0, 0}, new double[] {600, 0, 0, -30, 0, 0});

    private final double[] core;
    private final double[] carry;
    private final double[] timeToPeak;
    private final double[] logKill;
    private final double[] loss;
    private final double[] stay;
    private final double safe;
    private final double pull;

    /** One level of core temperature: what a rest makes of it as a linear function of the luck. */
    static final class Level {
        /** Runs that a fit needs. */
        private static final int FEWEST = 16;

        /** Weight that draws the slopes to zero: one member in a standard deviation. */
        private static final double RIDGE = 1;

        private final double core;
        private final double[][] coefficients;

        private Level(double core, double[][] coefficients) {
            this.core = core;
            this.coefficients = coefficients;
        }

        /** Fits the runs that reached the level; empty if too few did. */
        static Optional<Level> of(
                double core, List<RestRecord> records, List<Draw> draws, LiveSetup setup, ConsumerMinimum minimum) {
            List<double[]> luck = new ArrayList<>();
            List<double[]> results = new ArrayList<>();
            double lowered = minimum.temperature() - setup.correction().safeDifference();
            for (int i = 0; i < records.size(); i++) {
                RestRecord record = records.get(i);
                if (record.isReached()) {
                    luck.add(luck(draws.get(i)));
                    results.add(new double[] {
                        record.peak() - record.pull(),
                        record.timeToPeak(),
                        Math.log(Math.max(LEAST_KILL, record.kill())),
                        record.loss(),
                        record.stay(lowered)
                    });
                }
            }
            if (luck.size() < Math.min(FEWEST, records.size())) {
                return Optional.empty();
            }
            double[][] coefficients = new double[QUANTITIES][];
            for (int q = 0; q < QUANTITIES; q++) {
                coefficients[q] = fit(luck, results, q);
            }
            return Optional.of(new Level(core, coefficients));
        }

        private static double[] fit(List<double[]> luck, List<double[]> results, int quantity) {
            int n = luck.get(0).length;
            double[][] matrix = new double[n][n];
            double[] right = new double[n];
            for (int i = 0; i < luck.size(); i++) {
                double[] x = luck.get(i);
                for (int a = 0; a < n; a++) {
                    right[a] += x[a] * results.get(i)[quantity];
                    for (int b = 0; b < n; b++) {
                        matrix[a][b] += x[a] * x[b];
                    }
                }
            }
            for (int a = 1; a < n; a++) {
                matrix[a][a] += RIDGE;
            }
            return DenseSolve.solve(matrix, right);
        }

        private static double[] luck(Draw draw) {
            double[] x = new double[LuckSpace.SIMULATED.size() + 1];
            x[0] = 1;
            for (int d = 0; d < LuckSpace.SIMULATED.size(); d++) {
                x[d + 1] = draw.normal(LuckSpace.SIMULATED.get(d));
            }
            return x;
        }

        double[] at(Draw draw) {
            double[] x = luck(draw);
            double[] values = new double[QUANTITIES + 1];
            values[0] = core;
            for (int q = 0; q < QUANTITIES; q++) {
                for (int a = 0; a < x.length; a++) {
                    values[q + 1] += coefficients[q][a] * x[a];
                }
            }
            return values;
        }
    }

    private PullLevels(List<double[]> levels, LiveSetup setup, SafetyRule rule, boolean bath) {
        core = column(levels, 0);
        carry = column(levels, 1);
        timeToPeak = column(levels, 2);
        logKill = column(levels, 3);
        loss = column(levels, 4);
        stay = column(levels, 5);
        double hold = Math.log(setup.correction().holdFactor());
        for (int i = 0; i < core.length; i++) {
            carry[i] = Math.max(0, carry[i] + setup.correction().peakDifference());
            logKill[i] += hold;
        }
        double byMinimum = byMinimum(rule.consumerMinimum(), setup.correction().safeDifference());
        double byHold = rule.allowsHold() ? crossing(logKill, 0) : Double.POSITIVE_INFINITY;
        safe = Math.min(byMinimum, byHold);
        pull = bath ? safe : Math.max(safe, byWish(setup.wished()));
    }

    private static double[] column(List<double[]> levels, int which) {
        return levels.stream().mapToDouble(level -> level[which]).toArray();
    }

    static PullLevels of(Draw draw, List<Level> levels, LiveSetup setup, SafetyRule rule, boolean bath) {
        List<double[]> own = levels.size() < 2
                ? NOTHING
                : levels.stream().map(level -> level.at(draw)).toList();
        return of(own, setup, rule, bath);
    }

    /**
     * Takes levels as they are.
     *
     * @param rows for each level, from cold to hot: core temperature, then the quantities, uncorrected
     */
    static PullLevels of(List<double[]> rows, LiveSetup setup, SafetyRule rule, boolean bath) {
        return new PullLevels(rows, setup, rule, bath);
    }

    /** A peak is nearly a parabola in time, so that its height above a temperature goes with the square of the stay there. */
    private double byMinimum(ConsumerMinimum minimum, double safeDifference) {
        double lowered = minimum.temperature() - safeDifference;
        for (int i = 0; i < core.length; i++) {
            double height = core[i] + carry[i] - lowered;
            if (height > 0.3 && stay[i] > 0) {
                double needed = height * Math.pow(minimum.requiredStay() / stay[i], 2);
                return crossing(peaks(), lowered + needed);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private double[] peaks() {
        double[] peaks = new double[core.length];
        for (int i = 0; i < core.length; i++) {
            peaks[i] = core[i] + carry[i];
        }
        return peaks;
    }

    private double byWish(double wished) {
        return Math.min(wished, crossing(peaks(), wished));
    }

    /** Lowest core from which on a rising quantity is at a value; extended by the last line at both ends. */
    private double crossing(double[] values, double value) {
        int last = core.length - 1;
        int i = 1;
        while (i < last && values[i] < value) {
            i++;
        }
        double slope = values[i] - values[i - 1];
        double span = core[i] - core[i - 1];
        if (!(span > 0.01)) {
            return values[i] >= value ? core[i] : Double.POSITIVE_INFINITY;
        }
        if (!(slope > 0)) {
            return values[i] >= value ? core[i - 1] : Double.POSITIVE_INFINITY;
        }
        return core[i - 1] + (value - values[i - 1]) / slope * span;
    }

    /** Core at which to take it out, so that carry-over ends on the wish and the rule is met [K]. */
    double pull() {
        return pull;
    }

    /** Core from which on the rule is met after carry-over and rest [K]. */
    double safe() {
        return safe;
    }

    /** Peak if it is taken out at a core temperature [K]. */
    double peak(double at) {
        return at + Math.max(0, between(carry, at, false));
    }

    /** Time to the peak [s]. */
    double timeToPeak(double at) {
        return Math.max(0, between(timeToPeak, at, false));
    }

    /** Share of the hold at the worst place after the rest [-]. */
    double kill(double at) {
        return Math.exp(between(logKill, at, true));
    }

    /** Loss of mass after the rest [kg/kg]. */
    double loss(double at) {
        return between(loss, at, true);
    }

    private double between(double[] values, double at, boolean extended) {
        int last = core.length - 1;
        int i = 1;
        while (i < last && core[i] < at) {
            i++;
        }
        double span = core[i] - core[i - 1];
        if (!(span > 0.01)) {
            return values[i];
        }
        double share = (at - core[i - 1]) / span;
        double used = extended ? Math.min(3, Math.max(-3, share)) : Math.min(1, Math.max(0, share));
        return values[i - 1] + used * (values[i] - values[i - 1]);
    }
}
