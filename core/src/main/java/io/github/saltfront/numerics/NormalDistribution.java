package io.github.saltfront.numerics;

import io.github.saltfront.units.Checks;

/** The standard normal distribution. */
public final class NormalDistribution {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final int MOST_TERMS = 400;

    private NormalDistribution() {}

    /**
     * Returns the probability of a value up to x, by the Taylor series of the integral around zero below 6 and zero or one
     * beyond, with an error below 1e-9.
     *
     * @param x value [-]
     * @return probability [-]
     */
    public static double cumulative(double x) {
        if (x > 6) {
            return 1;
        }
        if (x < -6) {
            return 0;
        }
        double term = x;
        double sum = x;
        for (int k = 1; k < MOST_TERMS && Math.abs(term) > 1e-17; k++) {
            term *= x * x / (2 * k + 1);
            sum += term;
        }
        return 0.5 + sum * Math.exp(-0.5 * x * x) / ROOT_TWO_PI;
    }

    /**
     * Returns the value below which a probability lies.
     *
     * @param probability probability [-], between 0 and 1 without the ends
     * @return quantile [-]
     * @throws IllegalArgumentException if the probability is out of range
     */
    public static double quantile(double probability) {
        Checks.requireInRange("probability", probability, 1e-9, 1 - 1e-9, "-");
        double x = probability < 0.5 ? -upperQuantile(probability) : upperQuantile(1 - probability);
        for (int i = 0; i < 2; i++) {
            double density = Math.exp(-0.5 * x * x) / ROOT_TWO_PI;
            double step = (cumulative(x) - probability) / density;
            x -= step / (1 + 0.5 * x * step);
        }
        return x;
    }

    /**
     * The value that is exceeded with a probability up to one half, to 4.5e-4: where the two steps of third order begin.
     *
     * @see "Abramowitz, Stegun 1964, Handbook of Mathematical Functions, formula 26.2.23; from memory, and what comes out after the
     *     steps does not hang on its digits"
     */
    private static double upperQuantile(double tail) {
        double t = Math.sqrt(-2 * Math.log(tail));
        double above = 2.515517 + t * (0.802853 + t * 0.010328);
        double below = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
        return t - above / below;
    }
}
