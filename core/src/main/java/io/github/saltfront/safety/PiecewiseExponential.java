package io.github.saltfront.safety;

/**
 * A rate whose logarithm is linear in temperature between knots, zero below the first knot and constant above the last.
 *
 * <pre>ln r(T) = ln r_i + b_i (T - T_i),  T_i &lt;= T &lt; T_i+1</pre>
 *
 * Integrals over a linear change of temperature are exact: the change is split at the knots, and on each piece
 * {@code integral = r_from (exp(x) - 1)/x (to - from)} with {@code x = b (to - from)}.
 */
final class PiecewiseExponential implements LethalRate {
    private final double[] knots;
    private final double[] rates;
    private final double[] slopes;
    private final double[] integrals;

    /**
     * Takes the knots.
     *
     * @param knots temperatures, strictly rising [K]; copied
     * @param rates rates at the knots, above zero [1/s]; copied
     */
    PiecewiseExponential(double[] knots, double[] rates) {
        this.knots = knots.clone();
        this.rates = rates.clone();
        this.slopes = new double[knots.length];
        this.integrals = new double[knots.length];
        for (int i = 0; i + 1 < knots.length; i++) {
            double width = knots[i + 1] - knots[i];
            slopes[i] = Math.log(rates[i + 1] / rates[i]) / width;
            integrals[i + 1] = integrals[i] + rates[i] * width * expm1Ratio(slopes[i] * width);
        }
    }

    @Override
    public double rate(double kelvin) {
        if (kelvin < knots[0]) {
            return 0;
        }
        int i = piece(kelvin);
        return rates[i] * Math.exp(slopes[i] * (kelvin - knots[i]));
    }

    @Override
    public double meanRate(double from, double to) {
        if (from > to) {
            return meanRate(to, from);
        }
        if (to < knots[0]) {
            return 0;
        }
        if (from == to) {
            return rate(from);
        }
        double start = Math.max(from, knots[0]);
        int first = piece(start);
        int last = piece(to);
        double sum = partial(first, start, first == last ? to : knots[first + 1]);
        if (first != last) {
            // the running integral grows like the rate itself, so this difference does not cancel
            sum += integrals[last] - integrals[first + 1] + partial(last, knots[last], to);
        }
        return sum / (to - from);
    }

    private double partial(int piece, double from, double to) {
        double start = rates[piece] * Math.exp(slopes[piece] * (from - knots[piece]));
        return start * (to - from) * expm1Ratio(slopes[piece] * (to - from));
    }

    private int piece(double kelvin) {
        int low = 0;
        int high = knots.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (knots[middle] <= kelvin) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Returns (exp(x) - 1)/x, which is 1 at x = 0. */
    static double expm1Ratio(double x) {
        return Math.abs(x) < 1e-12 ? 1 : Math.expm1(x) / x;
    }
}
