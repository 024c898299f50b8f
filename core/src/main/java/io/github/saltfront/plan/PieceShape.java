package io.github.saltfront.plan;

import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.CutSize;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Checks;
import java.util.OptionalDouble;

/**
 * Shape of a piece from its cut, mass and thickness. The thickness stays, the ratio of length to width is that of the typical piece,
 * and both are such that the volume is that of the mass: real pieces are rounder than the box around them, and what is computed must
 * not weigh more than what is cooked (decision 0010). Edges count: salt and heat enter a chop through them too. A bone is taken as
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
        if (size.isHollow()) {
            return new Shape.Slab(2 * size.equivalentHalfThicknessAt(mass) * given / usual);
        }
        boolean tapered = size.fillFactor(density) < TAPERED;
        double ratio = size.length() / size.width();
        double volume = mass / density;
        return switch (size.shape()) {
            case SLAB -> tapered ? new Shape.Slab(given) : box(volume, given, ratio);
            case CYLINDER -> cylinder(volume, given);
            case SPHERE -> new Shape.Sphere(given);
            case BOX -> box(volume, given, ratio);
            case ELLIPSOID -> ellipsoid(volume, given, ratio);
        };
    }

    /** A box of a volume, thickness and ratio of its other sides; rounder if it would be lower than it is thick. */
    private static Shape box(double volume, double thickness, double ratio) {
        double area = volume / thickness;
        double width = Math.max(thickness, Math.sqrt(area / ratio));
        // rounding must not make the length of a square piece less than its width
        return area / width >= thickness
                ? new Shape.Box(Math.max(width, area / width), width, thickness)
                : ellipsoid(volume, thickness, ratio);
    }

    private static Shape cylinder(double volume, double diameter) {
        double length = volume / (Math.PI / 4 * diameter * diameter);
        return length >= diameter ? new Shape.Cylinder(diameter, length) : ellipsoid(volume, diameter, 1);
    }

    private static Shape ellipsoid(double volume, double thickness, double ratio) {
        double area = volume / (BALL * thickness);
        double width = Math.max(thickness, Math.sqrt(area / ratio));
        return new Shape.Ellipsoid(Math.max(thickness, area / width), width, thickness);
    }

    /** How pieces lie. */
    public enum Arrangement {
        /** With room around each. */
        APART,
        /** Side by side, touching: heat comes through their faces alone. */
        TOUCHING,
        /** In two layers: as thick as both. */
        STACKED
    }

    /**
     * Returns the shape that heat sees in a piece among others.
     *
     * @param shape shape of one piece
     * @param arrangement how the pieces lie
     * @return the shape: the piece itself, a slab of its thickness, or a slab of twice its thickness
     */
    public static Shape among(Shape shape, Arrangement arrangement) {
        double thickness = 2 * shape.halfThickness();
        return switch (arrangement) {
            case APART -> shape;
            case TOUCHING -> new Shape.Slab(thickness);
            case STACKED -> new Shape.Slab(2 * thickness);
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
