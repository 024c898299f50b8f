package io.github.saltfront.plan;

import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.CutSize;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Checks;
import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Shape of a piece from its cut, mass and thickness. Length and width follow from those of the typical piece so that the
 * piece fills the same share of the box around it. Edges count: salt and heat enter a chop through them too. A bone is taken as
 * meat: it slows its side, but hot air reaches that side as well. Two kinds of piece
 * are slabs all the same: whole birds, which become the slab that takes the measured time and never a solid body of their mass;
 * and tapered pieces such as fillets, whose thick part is what heats last and has no edge near it.
 */
public final class PieceShape {
    /** Share of the surrounding box below which a piece counts as tapered [-]; a fillet fills 0.46, a chop 0.7 and more. */
    private static final double TAPERED = 0.6;

    private static final double BALL = Math.PI / 6;

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
     * Returns the shape of a piece of a cut.
     *
     * @param cut the cut
     * @param mass mass of the piece as bought [kg]
     * @param thickness measured thickness [m]; empty to take the one of the cut at this mass
     * @return the shape
     * @throws IllegalArgumentException if no piece of that mass can be so thick
     */
    public static Shape of(Cut cut, double mass, OptionalDouble thickness) {
        CutSize size = cut.size();
        double usual = size.thicknessAt(mass);
        double given = thickness.orElse(usual);
        double density = cut.composition().density();
        double ball = Math.cbrt(mass / (density * BALL));
        Checks.require(
                size.isHollow() || given <= ball,
                "a piece of " + Math.round(mass * 1000) + " g cannot be " + Math.round(given * 1000)
                        + " mm at its thinnest: a ball of that mass is " + Math.round(ball * 1000)
                        + " mm. Is the mass that of one piece?");
        double thick = size.isHollow() ? 2 * size.equivalentHalfThicknessAt(mass) * given / usual : given;
        double area = mass / size.mass().typical() * size.thickness() / given;
        double[] sides = {
            thick, Math.max(thick, size.width() * Math.sqrt(area)), Math.max(thick, size.length() * Math.sqrt(area))
        };
        Arrays.sort(sides);
        boolean tapered = size.isHollow() || size.fillFactor(density) < TAPERED;
        return switch (size.shape()) {
            case SLAB -> tapered ? new Shape.Slab(thick) : new Shape.Box(sides[2], sides[1], sides[0]);
            case CYLINDER -> new Shape.Cylinder(thick, Math.max(size.length() * area, thick));
            case SPHERE -> new Shape.Sphere(thick);
            case BOX -> new Shape.Box(sides[2], sides[1], sides[0]);
            case ELLIPSOID -> new Shape.Ellipsoid(sides[2], sides[1], sides[0]);
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
