package io.github.saltfront.shape;

import io.github.saltfront.units.Checks;

/**
 * A structured three-dimensional grid of a box, an ellipsoid or a finite cylinder, refined toward its faces. Length x is the
 * first, width y the second, thickness z the third axis and stands upright; a cylinder lies along x.
 *
 * <p>With one face the piece is symmetric in all three planes and the grid holds one eighth of it; with two faces it holds a
 * quarter, the first face being the upper and the second the lower half of the surface. {@link #copies} says how many such
 * parts make the piece.
 *
 * <p>Cells at a curved surface are cut: they have the exact volume and open areas of the body inside the cell (ellipsoids:
 * volume by quadrature, error below 1e-6 of a cell), while their node stays in the middle of the uncut cell, so that two
 * neighboring nodes lie on a line across the common face. The node of a cell that is cut by more than about half lies outside
 * the body (see {@link #nodesInside}); its value is a continuation, and where media jump along the surface it may leave the range
 * of the media. The surface is made of patches. A curved patch has the vector area that closes its cell, which is that of the
 * flat patch through its rim: the surface comes out low by a share of about (cell / radius)^2 / 12. Each patch has a point
 * inside the body, at a known distance along the normal, from which the surface is reached; the value there is interpolated from
 * up to eight nodes.
 *
 * <p>Layout: cells with the same y and z form a line along x, whose cells are numbered consecutively from x = 0 outward; line
 * {@code j + widthLines * k}. A neighbor in y or z has the same place in its line. Immutable; arrays are copied out.
 */
public final class SolidGrid {
    /** Points from which the value under a patch is interpolated, at most. */
    public static final int PATCH_POINTS = 8;

    /** Thickness of the outermost cell of a box over that of equal cells [-]; a compromise between surface and middle. */
    private static final double BOX_REFINEMENT = 0.35;

    /** The same for curved bodies, whose surface crosses all cells: little refinement. */
    private static final double CURVED_REFINEMENT = 0.6;

    private static final int SIZING_ROUNDS = 4;

    private final SolidGridBuilder parts;
    private final int faces;

    private SolidGrid(SolidGridBuilder parts, int faces) {
        this.parts = parts;
        this.faces = faces;
    }

    /**
     * Creates the grid of a box.
     *
     * @param length whole length, x [m]
     * @param width whole width, y [m]
     * @param thickness whole thickness, z [m]
     * @param cells number of cells wanted, met within some percent; at least 500
     * @param faces 1 if the medium is the same all around, 2 if upper and lower half differ
     * @return the grid
     */
    public static SolidGrid box(double length, double width, double thickness, int cells, int faces) {
        return create(new SolidBody.Box(), length, width, thickness, cells, faces, BOX_REFINEMENT, BOX_REFINEMENT);
    }

    /**
     * Creates the grid of an ellipsoid.
     *
     * @param length whole length, x [m]
     * @param width whole width, y [m]
     * @param thickness whole thickness, z [m]
     * @param cells number of cells wanted, met within some percent; at least 500
     * @param faces 1 if the medium is the same all around, 2 if upper and lower half differ
     * @return the grid
     */
    public static SolidGrid ellipsoid(double length, double width, double thickness, int cells, int faces) {
        SolidBody body = new SolidBody.Ellipsoid(0.5 * length, 0.5 * width, 0.5 * thickness);
        return create(body, length, width, thickness, cells, faces, CURVED_REFINEMENT, CURVED_REFINEMENT);
    }

    /**
     * Creates the grid of a cylinder that lies along x.
     *
     * @param diameter diameter [m]
     * @param length length [m]
     * @param cells number of cells wanted, met within some percent; at least 500
     * @param faces 1 if the medium is the same all around, 2 if upper and lower half differ
     * @return the grid
     */
    public static SolidGrid cylinder(double diameter, double length, int cells, int faces) {
        SolidBody body = new SolidBody.Cylinder(0.5 * diameter);
        return create(body, length, diameter, diameter, cells, faces, BOX_REFINEMENT, CURVED_REFINEMENT);
    }

    /**
     * Creates the grid of a finite shape.
     *
     * @param shape the shape
     * @param cells number of cells wanted, met within some percent; at least 500
     * @param faces 1 if the medium is the same all around, 2 if upper and lower half differ
     * @return the grid
     * @throws IllegalArgumentException if the shape is a slab or a long cylinder
     */
    public static SolidGrid of(Shape shape, int cells, int faces) {
        if (shape instanceof Shape.Box box) {
            return box(box.length(), box.width(), box.thickness(), cells, faces);
        }
        if (shape instanceof Shape.Cylinder cylinder) {
            return cylinder(cylinder.diameter(), cylinder.length(), cells, faces);
        }
        if (shape instanceof Shape.Sphere sphere) {
            double diameter = sphere.diameter();
            return ellipsoid(diameter, diameter, diameter, cells, faces);
        }
        if (shape instanceof Shape.Ellipsoid ellipsoid) {
            return ellipsoid(ellipsoid.length(), ellipsoid.width(), ellipsoid.thickness(), cells, faces);
        }
        throw new IllegalArgumentException(
                shape instanceof Shape.Slab
                        ? "a slab has no sides, so that three dimensions add nothing; use solver 1d, or give a box with its"
                                + " length and width."
                        : "a long cylinder has no ends, so that three dimensions add nothing; use solver 1d, or give a"
                                + " cylinder with its length.");
    }

    /**
     * Returns whether a shape is finite, so that {@link #of} has a grid for it.
     *
     * @param shape the shape
     * @return false for slabs and long cylinders
     */
    public static boolean covers(Shape shape) {
        return shape.volume().isPresent();
    }

    private static SolidGrid create(
            SolidBody body,
            double length,
            double width,
            double thickness,
            int cells,
            int faces,
            double refinementX,
            double refinementYz) {
        Checks.requireInRange("length", length, 1e-3, 2, "m");
        Checks.requireInRange("width", width, 1e-3, 2, "m");
        Checks.requireInRange("thickness", thickness, 1e-3, 2, "m");
        Checks.requireInRange("number of cells", cells, 500, 20_000_000, "-");
        Checks.require(faces == 1 || faces == 2, "a solid grid has one or two faces, got " + faces + ".");
        double[] half = {0.5 * length, 0.5 * width, 0.5 * thickness};
        double[] refinement = {refinementX, refinementYz, refinementYz};
        // cells along an axis grow with the square root of its length: long axes are smooth in their middle
        double scale = Math.cbrt(cells / (faces * Math.sqrt(half[0] * half[1] * half[2])));
        double[][] edges = edges(half, refinement, scale);
        for (int i = 0; i < SIZING_ROUNDS; i++) {
            scale *= Math.cbrt(cells / (double) (faces * countInside(body, edges)));
            edges = edges(half, refinement, scale);
        }
        double[] z = faces == 1 ? edges[2] : bothSides(edges[2]);
        return new SolidGrid(new SolidGridBuilder(body, edges[0], edges[1], z), faces);
    }

    private static double[][] edges(double[] half, double[] refinement, double scale) {
        double[][] edges = new double[3][];
        for (int axis = 0; axis < 3; axis++) {
            int count = Math.max(5, (int) Math.round(scale * Math.sqrt(half[axis])));
            edges[axis] = symmetric(count, half[axis], refinement[axis]);
        }
        return edges;
    }

    private static int countInside(SolidBody body, double[][] edges) {
        int count = 0;
        for (int k = 0; k < edges[2].length - 1; k++) {
            for (int j = 0; j < edges[1].length - 1; j++) {
                for (int i = 0; i < edges[0].length - 1; i++) {
                    count += body.level(edges[0][i], edges[1][j], edges[2][k]) < 1 ? 1 : 0;
                }
            }
        }
        return count;
    }

    private static double[] symmetric(int cells, double extent, double refinement) {
        LayerGrid layers = LayerGrid.symmetric(0, cells, refinement / cells);
        double[] edge = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            edge[i] = extent * layers.edge(i);
        }
        edge[cells] = extent;
        return edge;
    }

    private static double[] bothSides(double[] upper) {
        int half = upper.length - 1;
        double[] edge = new double[2 * half + 1];
        for (int i = 0; i <= half; i++) {
            edge[half + i] = upper[i];
            edge[half - i] = -upper[i];
        }
        return edge;
    }

    /** Returns the number of cells of the computed part. */
    public int cells() {
        return parts.volume.length;
    }

    /** Returns the number of faces that may meet different media, 1 or 2. */
    public int faces() {
        return faces;
    }

    /** Returns how many times the computed part is contained in the piece: 8 with one face, 4 with two. */
    public int copies() {
        return faces == 1 ? 8 : 4;
    }

    /** Returns the number of lines along x for each z. */
    public int widthLines() {
        return parts.ny;
    }

    /** Returns the number of layers along z. */
    public int layers() {
        return parts.nz;
    }

    /**
     * Returns the edges of the cells along an axis.
     *
     * @param axis 0 length, 1 width, 2 thickness
     * @return places from the middle of the piece [m]; a copy
     */
    public double[] edges(int axis) {
        return parts.edge[axis].clone();
    }

    /** Returns the first cell of each line, and the number of cells as a last element; a copy. */
    public int[] lineStarts() {
        return parts.lineStart.clone();
    }

    /** Returns the volume of each cell [m3]; a copy. */
    public double[] volumes() {
        return parts.volume.clone();
    }

    /**
     * Returns the open area between each cell and its neighbor in the positive direction of an axis.
     *
     * @param axis 0 length, 1 width, 2 thickness
     * @return areas, zero where there is no neighbor [m2]; a copy
     */
    public double[] openAreas(int axis) {
        return parts.open[axis].clone();
    }

    /**
     * Returns the place of each node on an axis.
     *
     * @param axis 0 length, 1 width, 2 thickness
     * @return distance from the middle of the piece [m]; a copy
     */
    public double[] nodes(int axis) {
        return parts.nodes(axis);
    }

    /**
     * Returns which nodes lie inside the body or on its surface: places of the piece, unlike the nodes of cells of which the
     * surface cuts off more than about half.
     *
     * @return one value a cell; a copy
     */
    public boolean[] nodesInside() {
        return parts.nodesInside();
    }

    /**
     * Returns the depths, below the middle of the first face, of the nodes along the thickness axis: from the first face to the
     * middle, or on to the second face if there are two.
     *
     * @return rising depths [m], as many as {@link #alongAxis} has values
     */
    public double[] axisDepths() {
        double[] edge = parts.edge[2];
        double[] depths = new double[parts.axisLayers.length];
        for (int m = 0; m < depths.length; m++) {
            int k = parts.axisLayers[m];
            depths[m] = edge[parts.nz] - 0.5 * (edge[k] + edge[k + 1]);
        }
        return depths;
    }

    /**
     * Returns the values on the thickness axis, by parabolas through the nodes nearest to it.
     *
     * @param values one value a cell; not modified
     * @return one value for each of {@link #axisDepths}
     */
    public double[] alongAxis(double[] values) {
        double[] result = new double[parts.axisLayers.length];
        for (int m = 0; m < result.length; m++) {
            for (int q = 0; q < 4; q++) {
                result[m] += parts.axisWeight[q] * values[parts.axisCell[4 * m + q]];
            }
        }
        return result;
    }

    /** Returns the number of patches of the surface. */
    public int patches() {
        return parts.patches.size();
    }

    /**
     * Returns the cell a patch belongs to.
     *
     * @param patch which patch
     * @return cell
     */
    public int patchCell(int patch) {
        return parts.patches.get(patch).cell;
    }

    /**
     * Returns the area of a patch.
     *
     * @param patch which patch
     * @return area [m2]
     */
    public double patchArea(int patch) {
        return parts.patches.get(patch).area;
    }

    /**
     * Returns the face a patch belongs to.
     *
     * @param patch which patch
     * @return 0 for the first or only face, 1 for the second
     */
    public int patchFace(int patch) {
        return parts.patches.get(patch).lower ? faces - 1 : 0;
    }

    /**
     * Returns the distance along the normal between a patch and the point inside.
     *
     * @param patch which patch
     * @return distance [m]
     */
    public double patchDistance(int patch) {
        return parts.patches.get(patch).distance;
    }

    /**
     * Returns the place of a patch on an axis.
     *
     * @param patch which patch
     * @param axis 0 length, 1 width, 2 thickness
     * @return distance from the middle of the piece [m]
     */
    public double patchPlace(int patch, int axis) {
        return parts.patches.get(patch).place[axis];
    }

    /**
     * Returns a cell from which the value at the point inside is interpolated.
     *
     * @param patch which patch
     * @param point 0 to {@link #PATCH_POINTS} less one
     * @return cell
     */
    public int patchPoint(int patch, int point) {
        return parts.patches.get(patch).point[point];
    }

    /**
     * Returns the weight of such a cell.
     *
     * @param patch which patch
     * @param point 0 to {@link #PATCH_POINTS} less one
     * @return weight, zero if the point is not used [-]
     */
    public double patchWeight(int patch, int point) {
        return parts.patches.get(patch).weight[point];
    }

    /** Returns the patch nearest to the upper end of the thickness axis: the middle of the first face. */
    public int upperPatch() {
        return parts.polePatch(1);
    }

    /** Returns the patch nearest to the lower end of the thickness axis; the same as the upper one with one face. */
    public int lowerPatch() {
        return parts.polePatch(faces == 1 ? 1 : -1);
    }

    /**
     * Returns the area of the surface of a face in the whole piece.
     *
     * @param face 0 for the first or only face, 1 for the second
     * @return area [m2]
     */
    public double faceArea(int face) {
        double sum = 0;
        for (int p = 0; p < patches(); p++) {
            sum += patchFace(p) == face ? patchArea(p) : 0;
        }
        return copies() * sum;
    }

    /** Returns the volume of the whole piece [m3]. */
    public double totalVolume() {
        double sum = 0;
        for (double v : parts.volume) {
            sum += v;
        }
        return copies() * sum;
    }

    /**
     * Returns the value in the middle of the piece, by parabolas through the nodes nearest to it (a cubic along the thickness
     * of a piece with two faces).
     *
     * @param values one value a cell; not modified
     * @return the value in the middle, in the unit of the values
     */
    public double middle(double[] values) {
        double sum = 0;
        for (int i = 0; i < parts.middleCell.length; i++) {
            sum += parts.middleWeight[i] * values[parts.middleCell[i]];
        }
        return sum;
    }

    /** Returns the cell nearest to the middle. */
    public int middleCell() {
        return parts.lineStart[parts.ny * (faces == 1 ? 0 : parts.nz / 2)];
    }
}
