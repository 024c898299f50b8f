package io.github.saltfront.trial;

import java.util.function.DoubleUnaryOperator;

/** Integrals of smooth functions over a bounded range, with the normal density they hold. */
final class Simpson {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    private Simpson() {}

    /** Integrates by Simpson's rule; the number of steps is even. */
    static double integral(DoubleUnaryOperator function, double from, double to, int steps) {
        double h = (to - from) / steps;
        double sum = function.applyAsDouble(from) + function.applyAsDouble(to);
        for (int i = 1; i < steps; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * function.applyAsDouble(from + i * h);
        }
        return sum * h / 3;
    }

    static double normalDensity(double z) {
        return Math.exp(-0.5 * z * z) / ROOT_TWO_PI;
    }
}
