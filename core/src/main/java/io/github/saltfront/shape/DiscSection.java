package io.github.saltfront.shape;

import java.util.Arrays;

/** Areas of a disc inside rectangles in closed form, and volumes of the unit ball inside boxes by quadrature over them. */
final class DiscSection {
    /** Nodes and weights of Gauss-Legendre quadrature with 8 points on (-1, 1), positive half (Abramowitz, Stegun, table 25.4). */
    private static final double[] NODE = {
        0.183434642495649805, 0.525532409916328986, 0.796666477413626740, 0.960289856497536232
    };

    private static final double[] WEIGHT = {
        0.362683783378361983, 0.313706645877887287, 0.222381034453374471, 0.101228536290376259
    };

    private DiscSection() {}

    /** Area of the rectangle (u0, u1) x (v0, v1), not negative, inside the disc around the origin with squared radius r2. */
    static double area(double u0, double u1, double v0, double v1, double r2) {
        if (u0 * u0 + v0 * v0 >= r2) {
            return 0;
        }
        if (u1 * u1 + v1 * v1 <= r2) {
            return (u1 - u0) * (v1 - v0);
        }
        // the circle leaves the rectangle at its top v1 at uTop and meets its bottom v0 at uBottom
        double uTop = Math.min(Math.max(Math.sqrt(Math.max(r2 - v1 * v1, 0)), u0), u1);
        double uBottom = Math.min(Math.sqrt(r2 - v0 * v0), u1);
        double below = underCircle(uBottom, r2) - underCircle(uTop, r2) - v0 * (uBottom - uTop);
        return Math.max(0, (uTop - u0) * (v1 - v0) + below);
    }

    private static double underCircle(double u, double r2) {
        double r = Math.sqrt(r2);
        return 0.5 * (u * Math.sqrt(Math.max(r2 - u * u, 0)) + r2 * Math.asin(Math.min(u / r, 1)));
    }

    /** Volume of a box with non-negative coordinates inside the unit ball; error below 1e-6 of the volume of the box. */
    static double ballVolume(double x0, double x1, double y0, double y1, double z0, double z1) {
        if (x0 * x0 + y0 * y0 + z0 * z0 >= 1) {
            return 0;
        }
        if (x1 * x1 + y1 * y1 + z1 * z1 <= 1) {
            return (x1 - x0) * (y1 - y0) * (z1 - z0);
        }
        // the area of the section is smooth between the places where the circle passes a corner of the rectangle
        double[] split = {x0, x1, kink(y0, z0), kink(y0, z1), kink(y1, z0), kink(y1, z1)};
        for (int i = 0; i < split.length; i++) {
            split[i] = Math.min(Math.max(split[i], x0), x1);
        }
        Arrays.sort(split);
        double sum = 0;
        for (int i = 1; i < split.length; i++) {
            sum += quadrature(split[i - 1], split[i], y0, y1, z0, z1);
        }
        return sum;
    }

    private static double kink(double y, double z) {
        return Math.sqrt(Math.max(1 - y * y - z * z, 0));
    }

    private static double quadrature(double low, double high, double y0, double y1, double z0, double z1) {
        double middle = 0.5 * (low + high);
        double half = 0.5 * (high - low);
        if (half < 1e-15) {
            return 0;
        }
        double sum = 0;
        for (int i = 0; i < NODE.length; i++) {
            double a = middle - half * NODE[i];
            double b = middle + half * NODE[i];
            sum += WEIGHT[i] * (area(y0, y1, z0, z1, 1 - a * a) + area(y0, y1, z0, z1, 1 - b * b));
        }
        return half * sum;
    }
}
