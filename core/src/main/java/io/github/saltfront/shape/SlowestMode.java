package io.github.saltfront.shape;

import io.github.saltfront.numerics.Roots;
import io.github.saltfront.units.Checks;

/**
 * The slowest mode of heating a body through its surface: the temperature difference to the medium falls as exp(-lambda^2
 * Fo), with Fo = alpha t / L^2 and L the half thickness or radius.
 *
 * <p>For a layered body with area exponent m (see {@link LayerGrid}) the mode is
 *
 * <pre>phi(r) = 0F1(; (m + 1)/2; -lambda^2 r^2 / 4),   -phi'(1) = Bi phi(1)</pre>
 *
 * which is cos for m = 0, J0 for m = 1 and sin(x)/x for m = 2 (Carslaw, Jaeger, Conduction of Heat in Solids, chapters 3, 7
 * and 9), and stays a solution for fractional m.
 */
public final class SlowestMode {
    /** Squares of the first zeros of the mode for m of 0, 1 and 2: pi/2, that of J0, and pi (Abramowitz, Stegun, table 9.5). */
    private static final double[] FIRST_ZEROS = {2.4674011003, 5.7831859630, 9.8696044011};

    /** The parabola through the three misses the first zero of a fractional m by less than this share; its second one is farther. */
    private static final double BEYOND = 1.02;

    private static final int TERMS = 40;
    private static final double NEGLIGIBLE = 1e-18;
    private static final double FIXED_SURFACE = 1e12;

    private SlowestMode() {}

    /**
     * Returns the square of the first eigenvalue of a layered body.
     *
     * @param exponent area exponent m, 0 to 2 [-]
     * @param biot Biot number h L / k [-], above zero; positive infinity for a fixed surface temperature
     * @return lambda^2 [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double eigenvalueSquared(double exponent, double biot) {
        Checks.requireInRange("area exponent", exponent, 0, 2, "-");
        if (!(biot > 0)) {
            // no message is put together for the many that are right
            throw new IllegalArgumentException("Biot number must be above 0, got " + biot + ".");
        }
        double alpha = 0.5 * (exponent + 1);
        double top = beyondFirstZero(exponent);
        if (biot > FIXED_SURFACE) {
            return Roots.find(x -> series(alpha, x), 1e-12, top, 1e-13);
        }
        return Roots.find(x -> x / (2 * alpha) * series(alpha + 1, x) - biot * series(alpha, x), 1e-14, top, 1e-13);
    }

    /**
     * Returns the square of the first eigenvalue of a layered body whose Biot number is given as a multiple of that square.
     *
     * @param exponent area exponent m, 0 to 2 [-]
     * @param biotOverSquare Biot number over lambda^2 [-], above 1 / (m + 1); positive infinity for a fixed surface temperature
     * @return lambda^2 [-]
     * @throws IllegalArgumentException if an argument is out of range
     */
    static double eigenvalueSquaredAtRatio(double exponent, double biotOverSquare) {
        double alpha = 0.5 * (exponent + 1);
        if (!(biotOverSquare * 2 * alpha > 1)) {
            throw new IllegalArgumentException("Biot number over the square of the eigenvalue must be above "
                    + 0.5 / alpha + ", got " + biotOverSquare + ".");
        }
        double top = beyondFirstZero(exponent);
        if (biotOverSquare > FIXED_SURFACE) {
            return Roots.find(x -> series(alpha, x), 1e-12, top, 1e-13);
        }
        return Roots.find(
                x -> series(alpha + 1, x) / (2 * alpha) - biotOverSquare * series(alpha, x), 1e-14, top, 1e-13);
    }

    /** A little more than the square of the first zero of the mode. */
    private static double beyondFirstZero(double m) {
        double first = FIRST_ZEROS[0];
        double slope = FIRST_ZEROS[1] - first;
        double bend = FIRST_ZEROS[2] - 2 * FIRST_ZEROS[1] + first;
        return BEYOND * (first + m * slope + 0.5 * m * (m - 1) * bend);
    }

    /** 0F1(; alpha; -x / 4). */
    private static double series(double alpha, double x) {
        double term = 1;
        double sum = 1;
        for (int k = 1; k < TERMS && Math.abs(term) > NEGLIGIBLE; k++) {
            term *= -0.25 * x / (k * (alpha + k - 1));
            sum += term;
        }
        return sum;
    }
}
