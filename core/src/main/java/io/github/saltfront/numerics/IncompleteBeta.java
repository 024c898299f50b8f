package io.github.saltfront.numerics;

import io.github.saltfront.units.Checks;

/** The regularized incomplete beta function and the logarithm of the gamma function. */
public final class IncompleteBeta {
    /** Coefficients of the approximation for g = 7 and nine terms. */
    private static final double[] LANCZOS = {
        0.99999999999980993,
        676.5203681218851,
        -1259.1392167224028,
        771.32342877765313,
        -176.61502916214059,
        12.507343278686905,
        -0.13857109526572012,
        9.9843695780195716e-6,
        1.5056327351493116e-7
    };

    private static final double G = 7;
    private static final int MOST_TERMS = 100_000;
    private static final double SMALLEST = 1e-300;

    private IncompleteBeta() {}

    /**
     * Returns the logarithm of the gamma function, to about 14 digits, by Lanczos' series.
     *
     * @param x argument [-], above zero
     * @return ln of gamma [-]
     * @throws IllegalArgumentException if the argument is not above zero
     * @see "lanczos1964, SIAM J. Numer. Anal. B 1, 86-96 (coefficients for g = 7 from memory, checked against factorials)"
     */
    public static double logGamma(double x) {
        Checks.requirePositive("argument of the gamma function", x, "-");
        double shifted = x - 1;
        double sum = LANCZOS[0];
        for (int i = 1; i < LANCZOS.length; i++) {
            sum += LANCZOS[i] / (shifted + i);
        }
        double t = shifted + G + 0.5;
        return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(t) - t + Math.log(sum);
    }

    /**
     * Returns the regularized incomplete beta function I_x(a, b), to about 12 digits, by its continued fraction.
     *
     * @param x upper limit [-], 0 to 1
     * @param a first parameter [-], above zero
     * @param b second parameter [-], above zero
     * @return the share of the whole integral [-], 0 to 1
     * @throws IllegalArgumentException if an argument is out of range
     * @throws ConvergenceException if the fraction does not settle
     */
    public static double regularized(double x, double a, double b) {
        Checks.requireInRange("upper limit", x, 0, 1, "-");
        Checks.requirePositive("first parameter", a, "-");
        Checks.requirePositive("second parameter", b, "-");
        if (x == 0 || x == 1) {
            return x;
        }
        double front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
        // the fraction settles fast on this side of the mean only
        return x < (a + 1) / (a + b + 2) ? front * fraction(x, a, b) / a : 1 - front * fraction(1 - x, b, a) / b;
    }

    private static double fraction(double x, double a, double b) {
        double c = 1;
        double d = 1 / away(1 - (a + b) * x / (a + 1));
        double value = d;
        for (int m = 1; m < MOST_TERMS; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / away(1 + even * d);
            c = away(1 + even / c);
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / away(1 + odd * d);
            c = away(1 + odd / c);
            value *= d * c;
            if (Math.abs(d * c - 1) < 1e-15) {
                return value;
            }
        }
        throw new ConvergenceException(
                "incomplete beta function did not settle", MOST_TERMS, Math.abs(d * c - 1), 1e-15);
    }

    private static double away(double value) {
        return Math.abs(value) < SMALLEST ? SMALLEST : value;
    }
}
