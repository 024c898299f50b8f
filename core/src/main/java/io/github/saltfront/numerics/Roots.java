package io.github.saltfront.numerics;

import java.util.function.DoubleUnaryOperator;

/** Roots of functions of one variable. */
public final class Roots {
    private static final int MOST_ITERATIONS = 200;

    private Roots() {}

    /**
     * Finds a root in a bracket by the Illinois form of the false position method with bisection as a guard.
     *
     * @param function continuous function
     * @param low one end of the bracket
     * @param high other end
     * @param tolerance half-width of the final bracket or distance of two iterates, in the unit of the argument
     * @return a point where the function changes sign within the tolerance
     * @throws IllegalArgumentException if the function has the same sign at both ends or is NaN there
     * @throws ConvergenceException if the tolerance is not reached in 200 evaluations
     */
    public static double find(DoubleUnaryOperator function, double low, double high, double tolerance) {
        double a = low;
        double b = high;
        double fa = function.applyAsDouble(a);
        double fb = function.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        if (!(fa * fb < 0)) {
            throw new IllegalArgumentException("a root between " + low + " and " + high
                    + " needs values of opposite sign, got " + fa + " and " + fb + ".");
        }
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            double c = i % 3 == 2 ? 0.5 * (a + b) : (a * fb - b * fa) / (fb - fa);
            double fc = function.applyAsDouble(c);
            if (fc == 0 || Math.abs(b - a) <= 2 * tolerance) {
                return c;
            }
            if (fc * fb < 0) {
                a = b;
                fa = fb;
            } else {
                fa *= 0.5;
            }
            b = c;
            fb = fc;
        }
        throw new ConvergenceException(
                "no root found between " + low + " and " + high, MOST_ITERATIONS, Math.abs(fb), tolerance);
    }
}
