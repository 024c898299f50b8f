package io.github.saltfront.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts the cells of a {@link SolidGrid} and finds its patches; holds the result. Layout as described there. */
final class SolidGridBuilder {
    /** Cells with less than this share of their uncut volume are left out. */
    private static final double SMALLEST_SHARE = 1e-9;

    /** Distances of the point inside that are tried, in cells along the normal; the first whose nodes exist is taken. */
    private static final double[] DISTANCES = {0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3};

    /** A part of the surface. */
    static final class Patch {
        final int cell;
        final double area;
        final boolean lower;
        final double[] place;
        final int[] point = new int[SolidGrid.PATCH_POINTS];
        final double[] weight = new double[SolidGrid.PATCH_POINTS];
        double distance;

        Patch(int cell, double area, boolean lower, double[] place) {
            this.cell = cell;
            this.area = area;
            this.lower = lower;
            this.place = place;
            Arrays.fill(point, cell);
        }
    }

    private final SolidBody body;
    final double[][] edge;
    private final double[][] center = new double[3][];
    final int nx;
    final int ny;
    final int nz;
    final int[] lineStart;
    final double[] volume;
    final double[][] open = new double[3][];
    final List<Patch> patches = new ArrayList<>();
    int[] middleCell = new int[0];
    double[] middleWeight = new double[0];

    /** Layers along z that have nodes on all four lines around the axis, from the top down. */
    int[] axisLayers = new int[0];

    /** The four cells around the axis for each of them, and their weights. */
    int[] axisCell = new int[0];

    double[] axisWeight = new double[0];

    SolidGridBuilder(SolidBody body, double[] x, double[] y, double[] z) {
        this.body = body;
        edge = new double[][] {x, y, z};
        nx = x.length - 1;
        ny = y.length - 1;
        nz = z.length - 1;
        for (int axis = 0; axis < 3; axis++) {
            center[axis] = new double[edge[axis].length - 1];
            for (int i = 0; i < center[axis].length; i++) {
                center[axis][i] = 0.5 * (edge[axis][i] + edge[axis][i + 1]);
            }
        }
        lineStart = new int[ny * nz + 1];
        volume = cutVolumes();
        for (int axis = 0; axis < 3; axis++) {
            open[axis] = new double[volume.length];
        }
        for (int k = 0; k < nz; k++) {
            for (int j = 0; j < ny; j++) {
                for (int i = 0; i < lineLength(j, k); i++) {
                    cut(i, j, k);
                }
            }
        }
        findMiddle();
        findAxis();
    }

    private double[] cutVolumes() {
        double[] all = new double[nx * ny * nz];
        int count = 0;
        for (int k = 0; k < nz; k++) {
            double z0 = lowZ(k);
            double z1 = highZ(k);
            for (int j = 0; j < ny; j++) {
                lineStart[j + ny * k] = count;
                for (int i = 0; i < nx; i++) {
                    double full = (edge[0][i + 1] - edge[0][i]) * (edge[1][j + 1] - edge[1][j]) * (z1 - z0);
                    double v = body.volume(edge[0][i], edge[0][i + 1], edge[1][j], edge[1][j + 1], z0, z1);
                    if (v < SMALLEST_SHARE * full) {
                        break;
                    }
                    all[count++] = v;
                }
            }
        }
        lineStart[ny * nz] = count;
        return Arrays.copyOf(all, count);
    }

    /** Lower coordinate of a layer, mirrored into the upper half. */
    private double lowZ(int k) {
        return Math.min(Math.abs(edge[2][k]), Math.abs(edge[2][k + 1]));
    }

    private double highZ(int k) {
        return Math.max(Math.abs(edge[2][k]), Math.abs(edge[2][k + 1]));
    }

    private int lineLength(int j, int k) {
        return lineStart[j + ny * k + 1] - lineStart[j + ny * k];
    }

    private int cell(int i, int j, int k) {
        boolean exists = i >= 0 && j >= 0 && k >= 0 && j < ny && k < nz && i < lineLength(j, k);
        return exists ? lineStart[j + ny * k] + i : -1;
    }

    private void cut(int i, int j, int k) {
        int c = cell(i, j, k);
        double x0 = edge[0][i];
        double x1 = edge[0][i + 1];
        double y0 = edge[1][j];
        double y1 = edge[1][j + 1];
        double z0 = lowZ(k);
        double z1 = highZ(k);
        double up = center[2][k] > 0 ? 1 : -1;
        double outX = body.sectionX(x1, y0, y1, z0, z1);
        double outY = body.sectionY(y1, x0, x1, z0, z1);
        double outZ = body.sectionZ(z1, x0, x1, y0, y1);
        boolean hasX = cell(i + 1, j, k) >= 0;
        boolean hasY = cell(i, j + 1, k) >= 0;
        int outward = center[2][k] > 0 ? k + 1 : k - 1;
        boolean hasZ = cell(i, j, outward) >= 0;
        open[0][c] = hasX ? outX : 0;
        open[1][c] = hasY ? outY : 0;
        int above = cell(i, j, k + 1);
        open[2][c] = above < 0 ? 0 : up > 0 ? outZ : body.sectionZ(z0, x0, x1, y0, y1);
        double[] curved = {
            body.sectionX(x0, y0, y1, z0, z1) - outX,
            body.sectionY(y0, x0, x1, z0, z1) - outY,
            body.sectionZ(z0, x0, x1, y0, y1) - outZ
        };
        double area = Math.sqrt(curved[0] * curved[0] + curved[1] * curved[1] + curved[2] * curved[2]);
        double largest = Math.max((y1 - y0) * (z1 - z0), Math.max((x1 - x0) * (z1 - z0), (x1 - x0) * (y1 - y0)));
        if (area > 1e-9 * largest) {
            addCurved(i, j, k, curved, area, up);
        }
        addFlat(c, hasX ? 0 : outX, 0, new double[] {x1, center[1][j], center[2][k]}, up, x1 - x0);
        addFlat(c, hasY ? 0 : outY, 1, new double[] {center[0][i], y1, center[2][k]}, up, y1 - y0);
        addFlat(c, hasZ ? 0 : outZ, 2, new double[] {center[0][i], center[1][j], up * z1}, up, z1 - z0);
    }

    private void addFlat(int c, double area, int axis, double[] place, double up, double width) {
        if (area > 0) {
            Patch patch = new Patch(c, area, up < 0, place);
            patch.distance = 0.5 * width;
            patch.weight[0] = 1;
            patches.add(patch);
        }
    }

    private void addCurved(int i, int j, int k, double[] vector, double area, double up) {
        double[] place = rimMiddle(i, j, k);
        body.project(place);
        double[] normal = {vector[0] / area, vector[1] / area, up * vector[2] / area};
        place[2] *= up;
        Patch patch = new Patch(cell(i, j, k), area, up < 0, place);
        int[] index = {i, j, k};
        double across = 0;
        for (int axis = 0; axis < 3; axis++) {
            across += Math.abs(normal[axis]) * (edge[axis][index[axis] + 1] - edge[axis][index[axis]]);
        }
        for (double d : DISTANCES) {
            patch.distance = d * across;
            if (interpolate(patch, normal)) {
                patches.add(patch);
                return;
            }
        }
        throw new IllegalArgumentException("the grid is too coarse at a curved surface: no inner nodes near cell " + i
                + ", " + j + ", " + k + ".");
    }

    /** Mean of the points where the surface crosses the edges of a cell, in the upper half. */
    private double[] rimMiddle(int i, int j, int k) {
        double[][] range = {
            {edge[0][i], edge[0][i + 1]}, {edge[1][j], edge[1][j + 1]}, {lowZ(k), highZ(k)},
        };
        double[] sum = new double[3];
        int crossings = 0;
        for (int axis = 0; axis < 3; axis++) {
            int second = (axis + 1) % 3;
            int third = (axis + 2) % 3;
            for (int corner = 0; corner < 4; corner++) {
                double[] a = new double[3];
                a[second] = range[second][corner & 1];
                a[third] = range[third][corner >> 1];
                a[axis] = range[axis][0];
                double low = Math.sqrt(body.level(a[0], a[1], a[2])) - 1;
                a[axis] = range[axis][1];
                double high = Math.sqrt(body.level(a[0], a[1], a[2])) - 1;
                if (low < 0 != high < 0) {
                    a[axis] = range[axis][0] + (range[axis][1] - range[axis][0]) * low / (low - high);
                    crossings++;
                    for (int m = 0; m < 3; m++) {
                        sum[m] += a[m];
                    }
                }
            }
        }
        for (int m = 0; m < 3; m++) {
            sum[m] = crossings > 0 ? sum[m] / crossings : 0.5 * (range[m][0] + range[m][1]);
        }
        return sum;
    }

    /** Sets the trilinear weights of the point inside; false if a node that is needed does not exist. */
    private boolean interpolate(Patch patch, double[] normal) {
        int[] low = new int[3];
        double[] share = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double at = patch.place[axis] - patch.distance * normal[axis];
            double[] nodes = center[axis];
            boolean mirrored = axis < 2 || edge[2][0] == 0;
            at = mirrored ? Math.abs(at) : at;
            double end = nodes[nodes.length - 1];
            // a patch at the end of a cylinder has its point at the last node but for rounding
            at = Math.abs(at - end) < 1e-9 * end ? end : at;
            if (at > end || !mirrored && at < nodes[0]) {
                return false;
            }
            int found = Arrays.binarySearch(nodes, at);
            low[axis] = Math.min(found >= 0 ? found : -found - 2, nodes.length - 2);
            if (low[axis] >= 0) {
                share[axis] = (at - nodes[low[axis]]) / (nodes[low[axis] + 1] - nodes[low[axis]]);
            } else {
                // between the plane of symmetry and the first node: mirror image on the other side
                low[axis] = 0;
                share[axis] = 0;
            }
        }
        for (int m = 0; m < SolidGrid.PATCH_POINTS; m++) {
            double w = 1;
            int[] at = new int[3];
            for (int axis = 0; axis < 3; axis++) {
                int bit = m >> axis & 1;
                at[axis] = low[axis] + bit;
                w *= bit == 1 ? share[axis] : 1 - share[axis];
            }
            patch.weight[m] = w;
            patch.point[m] = patch.cell;
            if (w > 0) {
                int c = cell(at[0], at[1], at[2]);
                if (c < 0) {
                    return false;
                }
                patch.point[m] = c;
            }
        }
        return true;
    }

    private void findMiddle() {
        double[] wx = evenWeights(center[0]);
        double[] wy = evenWeights(center[1]);
        boolean whole = edge[2][0] < 0;
        double[] wz = whole ? cubicWeights() : evenWeights(center[2]);
        int first = whole ? nz / 2 - 2 : 0;
        middleCell = new int[4 * wz.length];
        middleWeight = new double[4 * wz.length];
        int m = 0;
        for (int k = 0; k < wz.length; k++) {
            for (int j = 0; j < 2; j++) {
                for (int i = 0; i < 2; i++) {
                    middleCell[m] = cell(i, j, first + k);
                    middleWeight[m++] = wx[i] * wy[j] * wz[k];
                }
            }
        }
    }

    private void findAxis() {
        double[] wx = evenWeights(center[0]);
        double[] wy = evenWeights(center[1]);
        axisWeight = new double[] {wx[0] * wy[0], wx[1] * wy[0], wx[0] * wy[1], wx[1] * wy[1]};
        int[] layers = new int[nz];
        int[] cells = new int[4 * nz];
        int count = 0;
        for (int k = nz - 1; k >= 0; k--) {
            if (cell(1, 0, k) >= 0 && cell(1, 1, k) >= 0) {
                for (int q = 0; q < 4; q++) {
                    cells[4 * count + q] = cell(q & 1, q >> 1, k);
                }
                layers[count++] = k;
            }
        }
        axisLayers = Arrays.copyOf(layers, count);
        axisCell = Arrays.copyOf(cells, 4 * count);
    }

    private static double[] evenWeights(double[] nodes) {
        double a = nodes[0] * nodes[0];
        double b = nodes[1] * nodes[1];
        return new double[] {b / (b - a), -a / (b - a)};
    }

    /** Weights of the four nodes around z = 0, which are symmetric: the cubic reduces to the parabola of each pair's mean. */
    private double[] cubicWeights() {
        double[] even = evenWeights(new double[] {center[2][nz / 2], center[2][nz / 2 + 1]});
        return new double[] {0.5 * even[1], 0.5 * even[0], 0.5 * even[0], 0.5 * even[1]};
    }

    boolean[] nodesInside() {
        boolean[] result = new boolean[volume.length];
        for (int k = 0; k < nz; k++) {
            for (int j = 0; j < ny; j++) {
                for (int i = 0; i < lineLength(j, k); i++) {
                    double z = Math.abs(center[2][k]);
                    result[cell(i, j, k)] = body.level(center[0][i], center[1][j], z) <= 1;
                }
            }
        }
        return result;
    }

    double[] nodes(int axis) {
        double[] result = new double[volume.length];
        for (int k = 0; k < nz; k++) {
            for (int j = 0; j < ny; j++) {
                for (int i = 0; i < lineLength(j, k); i++) {
                    result[cell(i, j, k)] = axis == 0 ? center[0][i] : axis == 1 ? center[1][j] : center[2][k];
                }
            }
        }
        return result;
    }

    int polePatch(int direction) {
        int best = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (int p = 0; p < patches.size(); p++) {
            double[] place = patches.get(p).place;
            double end = direction > 0 ? edge[2][nz] : edge[2][0];
            double distance = Math.hypot(Math.hypot(place[0], place[1]), place[2] - end);
            if (distance < nearest) {
                nearest = distance;
                best = p;
            }
        }
        return best;
    }
}
