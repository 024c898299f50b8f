package io.github.saltfront.plan;

import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.CutSize;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Checks;
<<<<<<< HEAD
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Shape of a piece from its cut, mass and thickness. Length and width follow from those of the typical piece so that the
 * volume goes with the mass. Whole birds become the slab that takes the measured time, never a solid body of their mass.
 */
public final class PieceShape {
    private static final double SPHERE = Math.PI / 6;

    private PieceShape() {}

    /**
     * Returns the usual thickness of a piece.
     *
     * @param cut its cut
     * @param mass its mass [kg]
     * @return thickness [m]
     */
    public static double thickness(Cut cut, double mass) {
        return cut.size().thicknessAt(mass);
    }

    /**
     * Returns the shape of a piece.
     *
     * @param cut its cut
     * @param mass its mass [kg]
     * @param thickness its thickness [m]; the usual one if empty
     * @return the shape
     * @throws IllegalArgumentException if no piece of that mass can be so thick
     */
    public static Shape of(Cut cut, double mass, OptionalDouble thickness) {
        CutSize size = cut.size();
        double usual = size.thicknessAt(mass);
        double given = thickness.orElse(usual);
        double ball = Math.cbrt(mass / cut.composition().density() / SPHERE);
        Checks.require(
                size.isHollow() || given <= ball,
                "a piece of " + Math.round(mass * 1000) + " g cannot be " + Math.round(given * 1000)
                        + " mm at its thinnest: a ball of that mass is " + Math.round(ball * 1000)
                        + " mm. Is the mass that of one piece?");
        double half = size.equivalentHalfThicknessAt(mass) * given / usual;
        double area = mass / size.mass().typical() * size.thickness() / given;
        double stretch = Math.sqrt(area);
        double length = Math.max(size.length() * stretch, 2 * half);
        double width = Math.max(size.width() * stretch, 2 * half);
        double[] sides = {2 * half, width, length};
        Arrays.sort(sides);
        return switch (size.shape()) {
            case SLAB -> new Shape.Slab(2 * half);
            case CYLINDER -> new Shape.Cylinder(2 * half, Math.max(size.length() * area, 2 * half));
            case SPHERE -> new Shape.Sphere(2 * half);
            case BOX -> new Shape.Box(sides[2], sides[1], sides[0]);
            case ELLIPSOID -> new Shape.Ellipsoid(sides[2], sides[1], sides[0]);
        };
    }
=======
import java.util.OptionalDouble;

/** Shape through which salt enters a piece. Edges count: a chop takes salt more than twice as fast as a wide slab. */
public final class PieceShape {
    private PieceShape() {}

    /**
     * Returns the shape of a piece of a cut. Outlines grow so that the piece fills the same share of the box around it; whole
     * birds are the slab that stands for their wall.
     *
     * @param cut the cut
     * @param mass mass of the piece as bought [kg]
     * @param thickness measured thickness [m]; empty to take the one of the cut at this mass
     * @return the shape
     */
    public static Shape of(Cut cut, double mass, OptionalDouble thickness) {
        CutSize size = cut.size();
        if (size.isHollow()) {
            return new Shape.Slab(2 * size.equivalentHalfThicknessAt(mass));
        }
        double thick = thickness.orElse(size.thicknessAt(mass));
        double area = (mass / size.mass().typical()) * (size.thickness() / thick);
        double growth = Math.sqrt(area);
        double length = size.length() * growth;
        double width = size.width() * growth;
        return switch (size.shape()) {
            case SPHERE -> new Shape.Sphere(thick);
            case CYLINDER -> new Shape.Cylinder(thick, Math.max(thick, size.length() * area));
            case ELLIPSOID -> width >= thick ? new Shape.Ellipsoid(length, width, thick) : new Shape.Slab(thick);
            case SLAB, BOX -> width >= thick ? new Shape.Box(length, width, thick) : new Shape.Slab(thick);
        };
    }

    /**
     * Returns a square box of a mass and thickness, or a slab if it would be higher than wide.
     *
     * @param mass mass of the piece [kg]
     * @param thickness its thickness [m]
     * @param density its density [kg/m3]
     * @return the shape
     */
    public static Shape ofThickness(double mass, double thickness, double density) {
        Checks.requirePositive("mass of the piece", mass, "kg");
        Checks.requirePositive("density", density, "kg/m3");
        double side = Math.sqrt(mass / (density * thickness));
        return side >= thickness ? new Shape.Box(side, side, thickness) : new Shape.Slab(thickness);
    }
>>>>>>> salting
}
