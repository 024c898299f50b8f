package io.github.saltfront.plan;

import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.CutSize;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Checks;
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
}
