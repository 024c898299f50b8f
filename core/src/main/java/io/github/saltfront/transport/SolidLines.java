package io.github.saltfront.transport;

import io.github.saltfront.shape.SolidGrid;
import java.util.Arrays;

/**
 * The geometry of a {@link SolidGrid} as plain arrays for the loops of the solver: for each line along x its first cell and
 * length, and the first cell and common length of the neighboring lines in y and z (length zero where there is none).
 */
final class SolidLines {
    final SolidGrid grid;
    final int cells;
    final int lines;
    final int[] start;
    final int[] startY;
    final int[] lengthY;
    final int[] startZ;
    final int[] lengthZ;
    final double[] volume;

    /** Open area over the distance of the nodes for each direction and cell [m]; zero where there is no neighbor. */
    final double[][] shape = new double[3][];

    /** Share of the distance between two nodes that lies in the cell itself, not in its neighbor [-]. */
    final double[][] share = new double[3][];

    final int patches;
    final int[] patchCell;
    final int[] patchFace;
    final double[] patchArea;
    final double[] patchDistance;
    final int[] point;
    final double[] weight;
    final boolean[] single;

    SolidLines(SolidGrid grid) {
        this.grid = grid;
        cells = grid.cells();
        start = grid.lineStarts();
        lines = start.length - 1;
        int ny = grid.widthLines();
        startY = new int[lines];
        lengthY = new int[lines];
        startZ = new int[lines];
        lengthZ = new int[lines];
        for (int m = 0; m < lines; m++) {
            int length = start[m + 1] - start[m];
            if ((m + 1) % ny != 0) {
                startY[m] = start[m + 1];
                lengthY[m] = Math.min(length, start[m + 2] - start[m + 1]);
            }
            if (m + ny < lines) {
                startZ[m] = start[m + ny];
                lengthZ[m] = Math.min(length, start[m + ny + 1] - start[m + ny]);
            }
        }
        volume = grid.volumes();
        computeShapes();
        patches = grid.patches();
        patchCell = new int[patches];
        patchFace = new int[patches];
        patchArea = new double[patches];
        patchDistance = new double[patches];
        single = new boolean[patches];
        point = new int[patches * SolidGrid.PATCH_POINTS];
        weight = new double[patches * SolidGrid.PATCH_POINTS];
        for (int p = 0; p < patches; p++) {
            patchCell[p] = grid.patchCell(p);
            patchFace[p] = grid.patchFace(p);
            patchArea[p] = grid.patchArea(p);
            patchDistance[p] = grid.patchDistance(p);
            single[p] = grid.patchPoint(p, 0) == patchCell[p] && grid.patchWeight(p, 0) == 1;
            for (int m = 0; m < SolidGrid.PATCH_POINTS; m++) {
                point[p * SolidGrid.PATCH_POINTS + m] = grid.patchPoint(p, m);
                weight[p * SolidGrid.PATCH_POINTS + m] = grid.patchWeight(p, m);
            }
        }
    }

    private void computeShapes() {
        int ny = grid.widthLines();
        double[] x = grid.edges(0);
        double[] y = grid.edges(1);
        double[] z = grid.edges(2);
        for (int axis = 0; axis < 3; axis++) {
            shape[axis] = grid.openAreas(axis);
            share[axis] = new double[cells];
        }
        for (int m = 0; m < lines; m++) {
            for (int c = start[m]; c < start[m + 1]; c++) {
                scale(0, c, x, c - start[m]);
                scale(1, c, y, m % ny);
                scale(2, c, z, m / ny);
            }
        }
    }

    private void scale(int axis, int c, double[] edge, int i) {
        if (shape[axis][c] > 0) {
            double own = 0.5 * (edge[i + 1] - edge[i]);
            double other = 0.5 * (edge[i + 2] - edge[i + 1]);
            shape[axis][c] /= own + other;
            share[axis][c] = own / (own + other);
        }
    }

    /** Value at the point inside of a patch. */
    double atPatch(double[] values, int patch) {
        if (single[patch]) {
            return values[patchCell[patch]];
        }
        int b = patch * SolidGrid.PATCH_POINTS;
        double sum = 0;
        for (int m = b; m < b + SolidGrid.PATCH_POINTS; m++) {
            sum += weight[m] * values[point[m]];
        }
        return sum;
    }

    /** Sets the conductance to the next cell in each direction from a conductivity: resistances in series. */
    void computeConductances(double[] conductivity, double[][] conductance) {
        for (int m = 0; m < lines; m++) {
            int s = start[m];
            series(conductivity, conductance[0], shape[0], share[0], s, s + 1, Math.max(0, start[m + 1] - s - 1));
            series(conductivity, conductance[1], shape[1], share[1], s, startY[m], lengthY[m]);
            series(conductivity, conductance[2], shape[2], share[2], s, startZ[m], lengthZ[m]);
        }
    }

    private static void series(
            double[] conductivity, double[] result, double[] shape, double[] share, int first, int other, int count) {
        for (int i = 0; i < count; i++) {
            double a = conductivity[first + i];
            double b = conductivity[other + i];
            double s = share[first + i];
            result[first + i] = shape[first + i] * a * b / (s * b + (1 - s) * a);
        }
    }

    /** Sets the net flow into each cell from its neighbors. */
    void computeNet(double[] potential, double[][] conductance, double[] net) {
        Arrays.fill(net, 0);
        for (int m = 0; m < lines; m++) {
            int s = start[m];
            flow(potential, conductance[0], net, s, s + 1, Math.max(0, start[m + 1] - s - 1));
            flow(potential, conductance[1], net, s, startY[m], lengthY[m]);
            flow(potential, conductance[2], net, s, startZ[m], lengthZ[m]);
        }
    }

    private static void flow(double[] potential, double[] conductance, double[] net, int first, int other, int count) {
        for (int i = 0; i < count; i++) {
            double flow = conductance[first + i] * (potential[other + i] - potential[first + i]);
            net[first + i] += flow;
            net[other + i] -= flow;
        }
    }
}
