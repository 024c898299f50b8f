package io.github.saltfront.shape;

/**
 * Equivalent heat transfer dimensionality E of Cleland and Earle: how much faster a finite body heats than a slab.
 *
 * <pre>
 * E = (Bi^(4/3) + 1.85) / (Bi^(4/3)/Einf + 1.85/E0)
 * Einf = 0.75 + p1 f(b1) + p2 f(b2),  f(b) = 1/b^2 + 0.01 p3 exp(b - b^2/6)
 * </pre>
 *
 * with p1 = 1.01, p2 = 1.24, p3 = 1 for ellipsoids, whose E0 is that of an irregular body, and p3 = 0 for spheres. E is used
 * here only as a ratio to that of a sphere, whose slowest mode is known exactly; it belongs with its lag factor, which the
 * layered body has of its own. The formula itself is good to some percent in time (compared in the tests with exact series
 * of bricks and cylinders).
 *
 * @see "ashrae2006: ASHRAE Handbook Refrigeration 2006, chapter 10, equations 17-26 and table 4, after Lin et al. 1996"
 */
public final class EquivalentDimensionality {
    private static final double P1 = 1.01;
    private static final double P2 = 1.24;

    private EquivalentDimensionality() {}

    /**
     * Returns E of an ellipsoid.
     *
     * @param beta1 middle over shortest axis, at least 1 [-]
     * @param beta2 longest over shortest axis, at least beta1 [-]
     * @param biot Biot number on the shortest half axis [-]
     * @return E [-]
     */
    public static double ofEllipsoid(double beta1, double beta2, double biot) {
        boolean sphere = beta1 == 1 && beta2 == 1;
        double p3 = sphere ? 0 : 1;
        double zero = irregularAtSmallBiot(beta1, beta2);
        double infinite = 0.75 + P1 * f(beta1, p3) + P2 * f(beta2, p3);
        double power = Math.pow(Math.min(biot, 1e9), 4.0 / 3);
        return (power + 1.85) / (power / infinite + 1.85 / zero);
    }

    private static double irregularAtSmallBiot(double b1, double b2) {
        double sum = b1 + b2 + b1 * b1 * (1 + b2) + b2 * b2 * (1 + b1);
        return 1.5 * sum / (b1 * b2 * (1 + b1 + b2)) - Math.pow((b1 - b2) * (b1 - b2), 0.4) / 15;
    }

    private static double f(double b, double p3) {
        return 1 / (b * b) + 0.01 * p3 * Math.exp(b - b * b / 6);
    }
}
