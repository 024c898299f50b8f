package io.github.saltfront.shape;

import io.github.saltfront.numerics.Roots;
import io.github.saltfront.units.Checks;

/**
 * A one-dimensional grid of layers with unit extent, in which the area of a shell grows with a power of its distance from
 * the middle: A(r) = r^m with m = 0 for a slab, 1 for a long cylinder, 2 for a sphere, and a fraction for finite pieces.
 *
 * <p>A symmetric grid runs from the middle (edge 0, no flux) to the outer face (last edge). A two-faced grid, always a
 * slab, runs from the second face (edge 0) to the first face (last edge). Cells become thinner toward each face in a
 * geometric series. All lengths are relative to the extent: the half thickness or radius of a symmetric grid, the whole
 * thickness of a two-faced one. Volumes are per unit area of the outer face and per unit extent.
 *
 * <p>Immutable.
 */
public final class LayerGrid {
    private final double exponent;
    private final boolean twoFaced;
    private final double[] edge;
    private final double[] node;
    private final double[] area;
    private final double[] volume;
    private final int[] middleCell;
    private final double[] middleWeight;

    private LayerGrid(double exponent, boolean twoFaced, double[] edge) {
        this.exponent = exponent;
        this.twoFaced = twoFaced;
        this.edge = edge;
        int cells = edge.length - 1;
        node = new double[cells];
        volume = new double[cells];
        area = new double[edge.length];
        for (int i = 0; i <= cells; i++) {
            area[i] = exponent == 0 ? 1 : Math.pow(edge[i], exponent);
        }
        for (int i = 0; i < cells; i++) {
            node[i] = 0.5 * (edge[i] + edge[i + 1]);
            volume[i] = (power(edge[i + 1]) - power(edge[i])) / (exponent + 1);
        }
        if (twoFaced) {
            int left = cells / 2 - 2;
            middleCell = new int[] {left, left + 1, left + 2, left + 3};
            middleWeight = lagrangeWeights(node, middleCell, 0.5);
        } else {
            middleCell = new int[] {0, 1};
            double a = node[0] * node[0];
            double b = node[1] * node[1];
            middleWeight = new double[] {b / (b - a), -a / (b - a)};
        }
    }

    /**
     * Creates a symmetric grid from the middle to one outer face.
     *
     * @param exponent area exponent m, from 0 to 2 [-]
     * @param cells number of cells, at least 4
     * @param outerCell thickness of the outermost cell relative to the extent, at most 1 / cells [-]
     * @return the grid
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static LayerGrid symmetric(double exponent, int cells, double outerCell) {
        Checks.requireInRange("area exponent", exponent, 0, 2, "-");
        return new LayerGrid(exponent, false, edges(cells, outerCell, 1));
    }

    /**
     * Creates a slab with two faces.
     *
     * @param cells number of cells, even, at least 8
     * @param outerCell thickness of each outermost cell relative to the whole thickness, at most 1 / cells [-]
     * @return the grid
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static LayerGrid twoFaced(int cells, double outerCell) {
        Checks.require(cells % 2 == 0 && cells >= 8, "number of cells must be even and at least 8, got " + cells + ".");
        double[] half = edges(cells / 2, outerCell, 0.5);
        double[] edge = new double[cells + 1];
        for (int i = 0; i <= cells / 2; i++) {
            edge[cells / 2 + i] = 0.5 + half[i];
            edge[cells / 2 - i] = 0.5 - half[i];
        }
        return new LayerGrid(0, true, edge);
    }

    /**
     * Returns the slab with two faces whose layers hold the same shares of the mass as those of this symmetric grid, on either
     * side of the middle: its edges are at 1/2 (1 + r^(m+1)) and 1/2 (1 - r^(m+1)). For a slab, m = 0, they are at the same depths.
     *
     * @return the grid, of twice as many cells
     * @throws IllegalArgumentException if this grid has two faces itself
     */
    public LayerGrid unfolded() {
        Checks.require(!twoFaced, "only a symmetric grid can be unfolded, this one has two faces.");
        int cells = cells();
        double[] unfolded = new double[2 * cells + 1];
        for (int i = 0; i <= cells; i++) {
            double half = 0.5 * power(edge[i]);
            unfolded[cells + i] = 0.5 + half;
            unfolded[cells - i] = 0.5 - half;
        }
        return new LayerGrid(0, true, unfolded);
    }

    private static double[] edges(int cells, double outerCell, double extent) {
        Checks.require(cells >= 4, "number of cells must be at least 4, got " + cells + ".");
        double smallest = outerCell / extent;
        Checks.requireInRange(
                "thickness of the outer cell times the number of cells", smallest * cells, 1e-6, 1.000001, "-");
        double ratio = ratio(cells, smallest);
        double[] edge = new double[cells + 1];
        double width = smallest;
        double position = 0;
        for (int i = cells; i > 0; i--) {
            edge[i] = extent * (1 - position);
            position += width;
            width *= ratio;
        }
        edge[0] = 0;
        return edge;
    }

    /** Ratio q of neighboring cells with smallest (q^cells - 1) / (q - 1) = 1. */
    private static double ratio(int cells, double smallest) {
        if (smallest * cells > 1 - 1e-9) {
            return 1;
        }
        // there the largest cell alone fills the extent; a fixed bound would overflow with many cells
        double high = Math.pow(smallest, -1.0 / (cells - 1));
        return Roots.find(q -> smallest * geometricSum(q, cells) - 1, 1, high, 1e-14);
    }

    private static double geometricSum(double q, int terms) {
        return Math.abs(q - 1) < 1e-9 ? terms : (Math.pow(q, terms) - 1) / (q - 1);
    }

    private static double[] lagrangeWeights(double[] x, int[] cells, double at) {
        double[] weights = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            weights[i] = 1;
            for (int j = 0; j < cells.length; j++) {
                if (j != i) {
                    weights[i] *= (at - x[cells[j]]) / (x[cells[i]] - x[cells[j]]);
                }
            }
        }
        return weights;
    }

    private double power(double r) {
        return exponent == 0 ? r : Math.pow(r, exponent + 1);
    }

    /** Returns the number of cells. */
    public int cells() {
        return node.length;
    }

    /** Returns the area exponent m [-]. */
    public double exponent() {
        return exponent;
    }

    /** Returns whether both ends are faces. */
    public boolean isTwoFaced() {
        return twoFaced;
    }

    /**
     * Returns the place of an edge.
     *
     * @param i edge from 0 to cells
     * @return distance from edge 0, relative to the extent [-]
     */
    public double edge(int i) {
        return edge[i];
    }

    /**
     * Returns the place of a cell's node.
     *
     * @param i cell
     * @return distance from edge 0, relative to the extent [-]
     */
    public double node(int i) {
        return node[i];
    }

    /**
     * Returns the area of an edge relative to the outer face.
     *
     * @param i edge from 0 to cells
     * @return area ratio [-]
     */
    public double area(int i) {
        return area[i];
    }

    /**
     * Returns the volume of a cell per unit area of the outer face and unit extent.
     *
     * @param i cell
     * @return relative volume [-]
     */
    public double volume(int i) {
        return volume[i];
    }

    /** Returns the whole volume per unit area of the outer face and unit extent, 1 / (m + 1) [-]. */
    public double totalVolume() {
        return 1 / (exponent + 1);
    }

    /**
     * Returns the value in the middle of the piece, interpolated from cell values: by a parabola in a symmetric grid, by a
     * cubic through the four middle cells of a two-faced one.
     *
     * @param rows one row a cell; not modified
     * @param column which value of each row
     * @return the value in the middle, in the unit of the values
     */
    public double middle(double[][] rows, int column) {
        double sum = 0;
        for (int i = 0; i < middleCell.length; i++) {
            sum += middleWeight[i] * rows[middleCell[i]][column];
        }
        return sum;
    }

    /** Returns the number of cells from which the value in the middle is interpolated. */
    public int middleCells() {
        return middleCell.length;
    }

    /**
     * Returns a cell from which the value in the middle is interpolated.
     *
     * @param i from 0 to below {@link #middleCells}
     * @return the cell
     */
    public int middleCell(int i) {
        return middleCell[i];
    }

    /**
     * Returns the weight of such a cell; the weights sum to one.
     *
     * @param i from 0 to below {@link #middleCells}
     * @return weight [-]
     */
    public double middleWeight(int i) {
        return middleWeight[i];
    }
}
