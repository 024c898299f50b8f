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
    /** First zero of the mode at infinite Biot number is below this for m up to 2: pi for a sphere. */
    private static final double LARGEST = Math.PI + 1e-6;

    private static final int TERMS = 40;

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
        Checks.require(biot > 0, "Biot number must be above 0, got " + biot + ".");
        double alpha = 0.5 * (exponent + 1);
        double top = LARGEST * LARGEST;
        double bound = Roots.find(x -> series(alpha, x), 1e-12, top, 1e-13);
        if (biot > 1e12) {
            return bound;
        }
        return Roots.find(x -> x / (2 * alpha) * series(alpha + 1, x) - biot * series(alpha, x), 1e-14, bound, 1e-13);
    }

    /** 0F1(; alpha; -x / 4). */
    private static double series(double alpha, double x) {
        double term = 1;
        double sum = 1;
        for (int k = 1; k < TERMS; k++) {
            term *= -0.25 * x / (k * (alpha + k - 1));
            sum += term;
        }
        return sum;
    }
}
