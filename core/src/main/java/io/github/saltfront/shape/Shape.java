package io.github.saltfront.shape;

import io.github.saltfront.units.Checks;
import java.util.OptionalDouble;

/**
 * Shape of a piece. All shapes reduce to a layered body (see {@link LayerGrid}) with the same half thickness L, the same
 * ratio of surface to volume, hence the area exponent m = S L / V - 1, and a factor on the conductances that gives it the
 * slowest mode of the real body. For slabs, long cylinders and spheres this is exact.
 */
public sealed interface Shape {
    /** Smallest factor on the conductances [-]. */
    double LEAST_FACTOR = 0.3;

    /** Largest factor on the conductances [-]. */
    double LARGEST_FACTOR = 3;

    /** Returns the shortest distance from the middle to the surface, L [m]. */
    double halfThickness();

    /** Returns the ratio of surface to volume [1/m]. */
    double surfaceToVolume();

    /** Returns the volume, if the shape is finite [m3]. */
    OptionalDouble volume();

    /**
     * Returns the square of the first eigenvalue, lambda^2 of exp(-lambda^2 Fo) on L.
     *
     * @param biot Biot number h L / k [-], above zero
     * @return lambda^2 [-]
     */
    double slowestModeSquared(double biot);

    /** Returns the area exponent of the layered body, S L / V - 1, from 0 to 2 [-]. */
    default double exponent() {
        return Math.min(2, Math.max(0, surfaceToVolume() * halfThickness() - 1));
    }

    /**
     * Returns the factor on the conductances of the layered body that gives it the slowest mode of this shape. Where heating is
     * governed by the surface alone (small Biot number) the factor has no effect and an approximate mode may not be reached;
     * the nearer limit of 0.3 to 3 is then returned.
     *
     * @param biot Biot number h L / k [-], above zero
     * @return factor [-]; 1 for slabs, long cylinders and spheres
     */
    default double conductanceFactor(double biot) {
        double target = slowestModeSquared(biot);
        double layered = SlowestMode.eigenvalueSquared(exponent(), biot);
        if (Math.abs(target / layered - 1) < 1e-9) {
            return 1;
        }
        // factor * lambda^2(biot / factor) = target, with factor = target / lambda^2 put in
        double ratio = biot / target;
        if (!(ratio * (exponent() + 1) > 1)) {
            return LARGEST_FACTOR;
        }
        double factor = target / SlowestMode.eigenvalueSquaredAtRatio(exponent(), ratio);
        return Math.max(LEAST_FACTOR, Math.min(LARGEST_FACTOR, factor));
    }

    /**
     * A slab, wide against its thickness.
     *
     * @param thickness whole thickness [m]
     */
    record Slab(double thickness) implements Shape {
        /** Checks the thickness. */
        public Slab {
            requireLength("thickness", thickness);
        }

        @Override
        public double halfThickness() {
            return thickness / 2;
        }

        @Override
        public double surfaceToVolume() {
            return 2 / thickness;
        }

        @Override
        public OptionalDouble volume() {
            return OptionalDouble.empty();
        }

        @Override
        public double slowestModeSquared(double biot) {
            return SlowestMode.eigenvalueSquared(0, biot);
        }
    }

    /**
     * A cylinder, long against its diameter.
     *
     * @param diameter diameter [m]
     */
    record LongCylinder(double diameter) implements Shape {
        /** Checks the diameter. */
        public LongCylinder {
            requireLength("diameter", diameter);
        }

        @Override
        public double halfThickness() {
            return diameter / 2;
        }

        @Override
        public double surfaceToVolume() {
            return 4 / diameter;
        }

        @Override
        public OptionalDouble volume() {
            return OptionalDouble.empty();
        }

        @Override
        public double slowestModeSquared(double biot) {
            return SlowestMode.eigenvalueSquared(1, biot);
        }
    }

    /**
     * A cylinder of finite length.
     *
     * @param diameter diameter [m]
     * @param length length along the axis [m]
     */
    record Cylinder(double diameter, double length) implements Shape {
        /** Checks the lengths. */
        public Cylinder {
            requireLength("diameter", diameter);
            requireLength("length", length);
        }

        @Override
        public double halfThickness() {
            return Math.min(diameter, length) / 2;
        }

        @Override
        public double surfaceToVolume() {
            return 4 / diameter + 2 / length;
        }

        @Override
        public OptionalDouble volume() {
            return OptionalDouble.of(Math.PI / 4 * diameter * diameter * length);
        }

        @Override
        public double slowestModeSquared(double biot) {
            double radial = diameter / (2 * halfThickness());
            double axial = length / (2 * halfThickness());
            return SlowestMode.eigenvalueSquared(1, biot * radial) / (radial * radial)
                    + SlowestMode.eigenvalueSquared(0, biot * axial) / (axial * axial);
        }
    }

    /**
     * A sphere.
     *
     * @param diameter diameter [m]
     */
    record Sphere(double diameter) implements Shape {
        /** Checks the diameter. */
        public Sphere {
            requireLength("diameter", diameter);
        }

        @Override
        public double halfThickness() {
            return diameter / 2;
        }

        @Override
        public double surfaceToVolume() {
            return 6 / diameter;
        }

        @Override
        public OptionalDouble volume() {
            return OptionalDouble.of(Math.PI / 6 * diameter * diameter * diameter);
        }

        @Override
        public double slowestModeSquared(double biot) {
            return SlowestMode.eigenvalueSquared(2, biot);
        }
    }

    /**
     * A box.
     *
     * @param length length [m]
     * @param width width [m]
     * @param thickness thickness, the shortest of the three [m]
     */
    record Box(double length, double width, double thickness) implements Shape {
        /** Checks the lengths. */
        public Box {
            requireThreeLengths(length, width, thickness);
        }

        @Override
        public double halfThickness() {
            return thickness / 2;
        }

        @Override
        public double surfaceToVolume() {
            return 2 / length + 2 / width + 2 / thickness;
        }

        @Override
        public OptionalDouble volume() {
            return OptionalDouble.of(length * width * thickness);
        }

        @Override
        public double slowestModeSquared(double biot) {
            double sum = SlowestMode.eigenvalueSquared(0, biot);
            for (double side : new double[] {length, width}) {
                double beta = side / thickness;
                sum += SlowestMode.eigenvalueSquared(0, biot * beta) / (beta * beta);
            }
            return sum;
        }
    }

    /**
     * An ellipsoid. Its surface is Thomsen's approximation, good to 1.1 %; its slowest mode follows from the equivalent heat
     * transfer dimensionality E of the same reference as {@link EquivalentDimensionality}.
     *
     * @param length longest axis, whole [m]
     * @param width middle axis, whole [m]
     * @param thickness shortest axis, whole [m]
     */
    record Ellipsoid(double length, double width, double thickness) implements Shape {
        /** Exponent of Thomsen's formula for the surface of an ellipsoid; from memory, checked against sphere and disc. */
        private static final double THOMSEN = 1.6075;

        /** Checks the lengths. */
        public Ellipsoid {
            requireThreeLengths(length, width, thickness);
        }

        @Override
        public double halfThickness() {
            return thickness / 2;
        }

        @Override
        public double surfaceToVolume() {
            double a = Math.pow(length / 2, THOMSEN);
            double b = Math.pow(width / 2, THOMSEN);
            double c = Math.pow(thickness / 2, THOMSEN);
            double surface = 4 * Math.PI * Math.pow((a * b + a * c + b * c) / 3, 1 / THOMSEN);
            return surface / (Math.PI / 6 * length * width * thickness);
        }

        @Override
        public OptionalDouble volume() {
            return OptionalDouble.of(Math.PI / 6 * length * width * thickness);
        }

        @Override
        public double slowestModeSquared(double biot) {
            double e = EquivalentDimensionality.ofEllipsoid(width / thickness, length / thickness, biot);
            double sphere = EquivalentDimensionality.ofEllipsoid(1, 1, biot);
            return SlowestMode.eigenvalueSquared(2, biot) * e / sphere;
        }
    }

    private static void requireLength(String name, double value) {
        Checks.requireInRange(name, value, 0.001, 2, "m");
    }

    private static void requireThreeLengths(double length, double width, double thickness) {
        requireLength("length", length);
        requireLength("width", width);
        requireLength("thickness", thickness);
        Checks.require(
                thickness <= width && width <= length,
                "thickness, width and length must not fall in this order, got " + thickness + " m, " + width + " m and "
                        + length + " m; name the shortest side the thickness.");
    }
}
