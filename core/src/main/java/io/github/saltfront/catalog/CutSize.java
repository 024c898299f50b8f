package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Checks;

/**
 * Mass, dimensions and path of heat of a cut, and how the path grows with mass.
 *
 * <p>Whole birds are hollow: their outer dimensions say nothing about the way of the heat, and a solid sphere of the
 * bird's mass takes 1.4 to 1.6 times the measured time. They carry an {@link #equivalentHalfThickness} instead, half of
 * the slab that takes the measured time. For all other cuts it equals the path of heat.
 *
 * @param mass mass as bought, typical with low and high end [kg]
 * @param length longest dimension [m]
 * @param width second dimension [m]
 * @param thickness shortest dimension [m]
 * @param heatPath from the slowest point to the surface that is heated [m]
 * @param heatPathKind what the path is measured between
 * @param equivalentHalfThickness half thickness of the slab, radius of the cylinder, heated alike [m]
 * @param thicknessExponent n in {@code path = path_typical (m / m_typical)^n} [-]; 0 where a bigger piece is longer, not
 *     thicker
 * @param scaling the rule of scaling in words
 * @param shape shape to compute with
 * @param isHollow true for whole birds
 */
public record CutSize(
        Band mass,
        double length,
        double width,
        double thickness,
        double heatPath,
        HeatPathKind heatPathKind,
        double equivalentHalfThickness,
        double thicknessExponent,
        String scaling,
        ShapeClass shape,
        boolean isHollow) {
    /** Checks that lengths are positive and fall in order. */
    public CutSize {
        Checks.requirePositive("mass", mass.low(), "kg");
        Checks.requirePositive("thickness", thickness, "m");
        Checks.require(
                length >= width && width >= thickness,
                "Expected length >= width >= thickness, got " + length + ", " + width + ", " + thickness + " m.");
        Checks.requireInRange("heat path", heatPath, Math.ulp(0.0), thickness, "m");
        Checks.requireInRange("equivalent half thickness", equivalentHalfThickness, Math.ulp(0.0), thickness, "m");
        Checks.requireInRange("thickness exponent", thicknessExponent, 0, 1, "-");
        Checks.require(
                !isHollow || shape == ShapeClass.SLAB,
                "A hollow bird must be computed as its equivalent slab, got shape " + shape + ".");
    }

    static CutSize read(CsvTable.Row row) {
        return new CutSize(
                Cells.band(row, "mass", "_g", 1e-3),
                Cells.millimeters(row, "length_mm"),
                Cells.millimeters(row, "width_mm"),
                Cells.millimeters(row, "thickness_mm"),
                Cells.millimeters(row, "heat_path_mm"),
                Cells.constant(HeatPathKind.class, row, "heat_path_kind"),
                Cells.millimeters(row, "equivalent_half_thickness_mm"),
                row.number("thickness_exponent"),
                row.text("scaling"),
                Cells.constant(ShapeClass.class, row, "shape"),
                Cells.yes(row, "hollow"));
    }

    /**
     * Thickness of a piece of another mass [m].
     *
     * @param pieceMass mass of the piece [kg], positive
     * @return thickness [m]
     */
    public double thicknessAt(double pieceMass) {
        return thickness * growth(pieceMass);
    }

    /**
     * Equivalent half thickness, or radius of a cylinder, of a piece of another mass [m].
     *
     * @param pieceMass mass of the piece [kg], positive
     * @return half thickness [m]
     */
    public double equivalentHalfThicknessAt(double pieceMass) {
        return equivalentHalfThickness * growth(pieceMass);
    }

    /**
     * Share of the box around the typical piece that its mass fills [-].
     *
     * @param density density of the meat [kg/m3]
     * @return mass / (density length width thickness)
     */
    public double fillFactor(double density) {
        return mass.typical() / (density * length * width * thickness);
    }

    private double growth(double pieceMass) {
        Checks.requirePositive("mass of the piece", pieceMass, "kg");
        return Math.pow(pieceMass / mass.typical(), thicknessExponent);
    }

    /** What the path of heat is measured between. */
    public enum HeatPathKind {
        /** From the mid plane to either face. */
        HALF_THICKNESS,
        /** From the axis to the surface. */
        RADIUS,
        /** From the bone to the skin; the bone side heats more slowly, so one face counts. */
        SKIN_TO_BONE,
        /** From the bone to the surface of the eye. */
        EYE_TO_BONE,
        /** Through the piece from the skin side. */
        SKIN_TO_FLESH,
        /** From the keel or the wall of the cavity to the skin of the breast. */
        BREAST_TO_KEEL
    }

    /** Shapes the program computes with. */
    public enum ShapeClass {
        /** Two large faces; the rim does not matter. */
        SLAB,
        /** Round section. */
        CYLINDER,
        /** Rectangular in all directions. */
        BOX,
        /** Round in all directions with three axes. */
        ELLIPSOID,
        /** Round; no cut of the catalog is one. */
        SPHERE
    }
}
