package io.github.saltfront.transport;

import io.github.saltfront.numerics.ConvergenceException;

/**
 * The symmetric positive definite systems of the implicit stages on a three-dimensional grid:
 *
 * <pre>(s_c + sum_n g_cn) x_c - sum_n g_cn x_n = b_c</pre>
 *
 * with a positive sink s and a conductance g to each neighbor. Solved by conjugate gradients with a modified incomplete
 * Cholesky factorization without fill as preconditioner, in the order of the cells. After the last iteration a constant is
 * added that makes the sum of the residuals zero, so that what is conserved is conserved to rounding whatever the tolerance.
 *
 * @see "Gustafsson 1978, BIT 18, 142-156 (modified incomplete factorization)"
 */
final class SolidSystem {
    /** Part of the dropped fill that is moved to the diagonal [-]; just below 1, as is usual, to keep pivots positive. */
    private static final double MODIFICATION = 0.97;

    private static final int MOST_ITERATIONS = 2000;

    private final SolidLines lines;
    private final double[][] coupling;
    private final double[] diagonal;
    private final double[] pivot;
    private final double[] residual;
    private final double[] direction;
    private final double[] preconditioned;
    private final double[] product;
    private double[][] border = new double[0][];
    private double[] borderPivot = new double[0];

    /** Sum of the sinks that measure the accuracy, and of the whole matrix. */
    private double weight;

    private double matrixSum;

    /** Iterations since the start. */
    long iterations;

    /** Systems solved since the start. */
    long solved;

    SolidSystem(SolidLines lines) {
        this.lines = lines;
        int n = lines.cells;
        coupling = new double[3][n];
        diagonal = new double[n];
        pivot = new double[n];
        residual = new double[n];
        direction = new double[n];
        preconditioned = new double[n];
        product = new double[n];
    }

    /** Takes a matrix without border and factors its preconditioner; the arguments are as below. */
    void factor(double[][] conductance, double[] sinks, double sinkWeight) {
        factor(conductance, sinks, sinkWeight, new double[0][], new double[0]);
    }

    /**
     * Takes a matrix and factors its preconditioner.
     *
     * @param conductance g to the next cell in each direction
     * @param sinks s of each cell
     * @param sinkWeight sum of the part of the sinks that is due to the time step; it scales the accuracy
     * @param borders what each reservoir takes from the cell of each patch; the preconditioner leaves them out
     * @param pivots what the border products are divided by, zero for no reservoir
     */
    void factor(double[][] conductance, double[] sinks, double sinkWeight, double[][] borders, double[] pivots) {
        for (int axis = 0; axis < 3; axis++) {
            System.arraycopy(conductance[axis], 0, coupling[axis], 0, lines.cells);
        }
        System.arraycopy(sinks, 0, diagonal, 0, lines.cells);
        weight = sinkWeight;
        border = borders;
        borderPivot = pivots;
        matrixSum = 0;
        for (double s : sinks) {
            matrixSum += s;
        }
        for (int f = 0; f < borders.length; f++) {
            double sum = 0;
            for (double g : borders[f]) {
                sum += g;
            }
            matrixSum -= pivots[f] > 0 ? sum * sum / pivots[f] : 0;
        }
        for (int m = 0; m < lines.lines; m++) {
            int s = lines.start[m];
            addDiagonal(coupling[0], s, s + 1, Math.max(0, lines.start[m + 1] - s - 1));
            addDiagonal(coupling[1], s, lines.startY[m], lines.lengthY[m]);
            addDiagonal(coupling[2], s, lines.startZ[m], lines.lengthZ[m]);
        }
        System.arraycopy(diagonal, 0, pivot, 0, lines.cells);
        for (int m = 0; m < lines.lines; m++) {
            factorLine(m);
        }
    }

    private void addDiagonal(double[] g, int first, int other, int count) {
        for (int i = 0; i < count; i++) {
            diagonal[first + i] += g[first + i];
            diagonal[other + i] += g[first + i];
        }
    }

    private void factorLine(int m) {
        int s = lines.start[m];
        int end = lines.start[m + 1];
        double[] gx = coupling[0];
        double[] gy = coupling[1];
        double[] gz = coupling[2];
        int toY = lines.startY[m] - s;
        int endY = s + lines.lengthY[m];
        int toZ = lines.startZ[m] - s;
        int endZ = s + lines.lengthZ[m];
        for (int c = s; c < end; c++) {
            double p = 1 / pivot[c];
            pivot[c] = p;
            double x = c + 1 < end ? gx[c] : 0;
            double y = c < endY ? gy[c] : 0;
            double z = c < endZ ? gz[c] : 0;
            if (c + 1 < end) {
                pivot[c + 1] -= x * p * (x + MODIFICATION * (y + z));
            }
            if (c < endY) {
                pivot[c + toY] -= y * p * (y + MODIFICATION * (x + z));
            }
            if (c < endZ) {
                pivot[c + toZ] -= z * p * (z + MODIFICATION * (x + y));
            }
        }
    }

    /**
     * Solves one system.
     *
     * @param right right-hand side; not modified
     * @param x first guess, replaced by the solution
     * @param accuracy error that is left, root mean square weighted by the sinks, in the unit of x
     */
    void solve(double[] right, double[] x, double accuracy) {
        int n = lines.cells;
        multiply(x, product);
        for (int c = 0; c < n; c++) {
            residual[c] = right[c] - product[c];
        }
        // r M^-1 r is close to e A e, which is not less than the sum of sink e^2
        double goal = accuracy * accuracy * weight;
        double measure = precondition();
        int count = 0;
        if (measure > goal) {
            System.arraycopy(preconditioned, 0, direction, 0, n);
            while (true) {
                double curvature = multiplyAndDot(direction, product);
                double alpha = measure / curvature;
                for (int c = 0; c < n; c++) {
                    x[c] += alpha * direction[c];
                    residual[c] -= alpha * product[c];
                }
                double before = measure;
                measure = precondition();
                count++;
                if (measure <= goal) {
                    break;
                }
                if (!(count < MOST_ITERATIONS)) {
                    throw new ConvergenceException("a stage system was not solved", count, measure, goal);
                }
                double beta = measure / before;
                for (int c = 0; c < n; c++) {
                    direction[c] = preconditioned[c] + beta * direction[c];
                }
            }
        }
        double sum = 0;
        for (int c = 0; c < n; c++) {
            sum += residual[c];
        }
        double shift = sum / matrixSum;
        for (int c = 0; c < n; c++) {
            x[c] += shift;
        }
        iterations += count;
        solved++;
    }

    private void multiply(double[] x, double[] result) {
        for (int c = 0; c < result.length; c++) {
            result[c] = diagonal[c] * x[c];
        }
        for (int m = 0; m < lines.lines; m++) {
            int s = lines.start[m];
            subtract(coupling[0], x, result, s, s + 1, Math.max(0, lines.start[m + 1] - s - 1));
            subtract(coupling[1], x, result, s, lines.startY[m], lines.lengthY[m]);
            subtract(coupling[2], x, result, s, lines.startZ[m], lines.lengthZ[m]);
        }
        for (int f = 0; f < border.length; f++) {
            if (borderPivot[f] > 0) {
                subtractBorder(border[f], borderPivot[f], x, result);
            }
        }
    }

    private void subtractBorder(double[] g, double pivotOfBorder, double[] x, double[] result) {
        double sum = 0;
        for (int p = 0; p < g.length; p++) {
            sum += g[p] * x[lines.patchCell[p]];
        }
        double scale = sum / pivotOfBorder;
        for (int p = 0; p < g.length; p++) {
            result[lines.patchCell[p]] -= g[p] * scale;
        }
    }

    private double multiplyAndDot(double[] x, double[] result) {
        multiply(x, result);
        double sum = 0;
        for (int c = 0; c < result.length; c++) {
            sum += x[c] * result[c];
        }
        return sum;
    }

    private static void subtract(double[] g, double[] x, double[] result, int first, int other, int count) {
        for (int i = 0; i < count; i++) {
            result[first + i] -= g[first + i] * x[other + i];
            result[other + i] -= g[first + i] * x[first + i];
        }
    }

    /** Sets preconditioned = M^-1 residual and returns their product. */
    private double precondition() {
        double[] w = preconditioned;
        System.arraycopy(residual, 0, w, 0, w.length);
        for (int m = 0; m < lines.lines; m++) {
            forwardLine(m, w);
        }
        double sum = 0;
        for (int m = lines.lines - 1; m >= 0; m--) {
            sum += backwardLine(m, w);
        }
        return sum;
    }

    private void forwardLine(int m, double[] w) {
        int s = lines.start[m];
        int end = lines.start[m + 1];
        double[] gx = coupling[0];
        double before = 0;
        for (int c = s; c < end; c++) {
            double v = (w[c] + before) * pivot[c];
            w[c] = v;
            before = gx[c] * v;
        }
        add(coupling[1], w, s, lines.startY[m], lines.lengthY[m]);
        add(coupling[2], w, s, lines.startZ[m], lines.lengthZ[m]);
    }

    private static void add(double[] g, double[] w, int first, int other, int count) {
        for (int i = 0; i < count; i++) {
            w[other + i] += g[first + i] * w[first + i];
        }
    }

    private double backwardLine(int m, double[] w) {
        int s = lines.start[m];
        int end = lines.start[m + 1];
        gather(coupling[1], w, s, lines.startY[m], lines.lengthY[m]);
        gather(coupling[2], w, s, lines.startZ[m], lines.lengthZ[m]);
        double[] gx = coupling[0];
        double after = 0;
        double sum = 0;
        for (int c = end - 1; c >= s; c--) {
            after = w[c] + pivot[c] * gx[c] * after;
            w[c] = after;
            sum += after * residual[c];
        }
        return sum;
    }

    private void gather(double[] g, double[] w, int first, int other, int count) {
        for (int i = 0; i < count; i++) {
            w[first + i] += pivot[first + i] * g[first + i] * w[other + i];
        }
    }
}
