package io.github.saltfront.shape;

/**
 * The part of a convex body with non-negative coordinates, cut by boxes whose sides are parallel to the axes. All lengths in
 * m. Coordinates of boxes are not negative; the body is symmetric in every coordinate.
 */
interface SolidBody {
    /** Volume of the body inside a box [m3]. */
    double volume(double x0, double x1, double y0, double y1, double z0, double z1);

    /** Area of the section at x inside a rectangle of y and z [m2]. */
    double sectionX(double x, double y0, double y1, double z0, double z1);

    /** Area of the section at y inside a rectangle of x and z [m2]. */
    double sectionY(double y, double x0, double x1, double z0, double z1);

    /** Area of the section at z inside a rectangle of x and y [m2]. */
    double sectionZ(double z, double x0, double x1, double y0, double y1);

    /** Squared distance from the axis or middle relative to the curved surface: below 1 inside, above 1 outside [-]. */
    double level(double x, double y, double z);

    /** Moves a point onto the curved surface. */
    void project(double[] point);

    /** A body without curved surface: everything is inside. */
    final class Box implements SolidBody {
        @Override
        public double volume(double x0, double x1, double y0, double y1, double z0, double z1) {
            return (x1 - x0) * (y1 - y0) * (z1 - z0);
        }

        @Override
        public double sectionX(double x, double y0, double y1, double z0, double z1) {
            return (y1 - y0) * (z1 - z0);
        }

        @Override
        public double sectionY(double y, double x0, double x1, double z0, double z1) {
            return (x1 - x0) * (z1 - z0);
        }

        @Override
        public double sectionZ(double z, double x0, double x1, double y0, double y1) {
            return (x1 - x0) * (y1 - y0);
        }

        @Override
        public double level(double x, double y, double z) {
            return 0;
        }

        @Override
        public void project(double[] point) {
            throw new IllegalStateException("a box has no curved surface.");
        }
    }

    /** A cylinder along x. */
    final class Cylinder implements SolidBody {
        private final double radius;

        Cylinder(double radius) {
            this.radius = radius;
        }

        @Override
        public double volume(double x0, double x1, double y0, double y1, double z0, double z1) {
            return (x1 - x0) * sectionX(0, y0, y1, z0, z1);
        }

        @Override
        public double sectionX(double x, double y0, double y1, double z0, double z1) {
            return DiscSection.area(y0, y1, z0, z1, radius * radius);
        }

        @Override
        public double sectionY(double y, double x0, double x1, double z0, double z1) {
            return (x1 - x0) * chord(y, z0, z1);
        }

        @Override
        public double sectionZ(double z, double x0, double x1, double y0, double y1) {
            return (x1 - x0) * chord(z, y0, y1);
        }

        private double chord(double at, double low, double high) {
            double end = Math.sqrt(Math.max(radius * radius - at * at, 0));
            return Math.min(Math.max(end - low, 0), high - low);
        }

        @Override
        public double level(double x, double y, double z) {
            return (y * y + z * z) / (radius * radius);
        }

        @Override
        public void project(double[] point) {
            double scale = radius / Math.hypot(point[1], point[2]);
            point[1] *= scale;
            point[2] *= scale;
        }
    }

    /** An ellipsoid with its axes along the coordinates. */
    final class Ellipsoid implements SolidBody {
        private final double a;
        private final double b;
        private final double c;

        Ellipsoid(double a, double b, double c) {
            this.a = a;
            this.b = b;
            this.c = c;
        }

        @Override
        public double volume(double x0, double x1, double y0, double y1, double z0, double z1) {
            return a * b * c * DiscSection.ballVolume(x0 / a, x1 / a, y0 / b, y1 / b, z0 / c, z1 / c);
        }

        @Override
        public double sectionX(double x, double y0, double y1, double z0, double z1) {
            return b * c * DiscSection.area(y0 / b, y1 / b, z0 / c, z1 / c, 1 - (x / a) * (x / a));
        }

        @Override
        public double sectionY(double y, double x0, double x1, double z0, double z1) {
            return a * c * DiscSection.area(x0 / a, x1 / a, z0 / c, z1 / c, 1 - (y / b) * (y / b));
        }

        @Override
        public double sectionZ(double z, double x0, double x1, double y0, double y1) {
            return a * b * DiscSection.area(x0 / a, x1 / a, y0 / b, y1 / b, 1 - (z / c) * (z / c));
        }

        @Override
        public double level(double x, double y, double z) {
            return (x / a) * (x / a) + (y / b) * (y / b) + (z / c) * (z / c);
        }

        @Override
        public void project(double[] point) {
            double scale = 1 / Math.sqrt(level(point[0], point[1], point[2]));
            for (int i = 0; i < 3; i++) {
                point[i] *= scale;
            }
        }
    }
}
