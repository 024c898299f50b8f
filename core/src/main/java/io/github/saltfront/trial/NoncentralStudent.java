package io.github.saltfront.trial;

import io.github.saltfront.numerics.IncompleteBeta;
import io.github.saltfront.numerics.NormalDistribution;
import io.github.saltfront.numerics.StudentDistribution;

/** The power of a t test, by integration over the estimated standard deviation. */
final class NoncentralStudent {
    private static final int STEPS = 600;
    private static final double HALF_WIDTH = 9;

    private NoncentralStudent() {}

    /** The shift is in standard errors. The ratio of estimated to true standard deviation is integrated over. */
    static double powerBothSides(double shift, int degrees, double alpha) {
        double t = StudentDistribution.middle(1 - alpha, degrees);
        // the ratio has about this standard deviation
        double width = HALF_WIDTH / Math.sqrt(2.0 * degrees);
        double low = Math.max(0, 1 - width);
        double high = 1 + width;
        return Simpson.integral(
                s -> density(s, degrees)
                        * (NormalDistribution.cumulative(shift - t * s)
                                + NormalDistribution.cumulative(-shift - t * s)),
                low,
                high,
                STEPS);
    }

    /** Density of s where degrees * s^2 is chi-square. */
    private static double density(double s, int degrees) {
        if (s <= 0) {
            return degrees == 1 ? Math.sqrt(2 / Math.PI) : 0;
        }
        double half = degrees / 2.0;
        return Math.exp(Math.log(2)
                + half * Math.log(half)
                - IncompleteBeta.logGamma(half)
                + (degrees - 1) * Math.log(s)
                - half * s * s);
    }
}
