package io.github.saltfront.numerics;

/** Small dense linear systems by Gaussian elimination with partial pivoting; for set-up work, not for inner loops. */
public final class DenseSolve {
    private DenseSolve() {}

    /**
     * Solves A x = b.
     *
     * @param matrix square matrix, row by row; not modified
     * @param right right-hand side; not modified
     * @return x, a new array
     * @throws ArithmeticException if the matrix is singular to working precision
     */
    public static double[] solve(double[][] matrix, double[] right) {
        int n = right.length;
        double[][] a = new double[n][];
        double[] x = right.clone();
        for (int i = 0; i < n; i++) {
            a[i] = matrix[i].clone();
        }
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                if (Math.abs(a[row][column]) > Math.abs(a[pivot][column])) {
                    pivot = row;
                }
            }
            if (!(Math.abs(a[pivot][column]) > 0)) {
                throw new ArithmeticException("matrix of " + n + " rows is singular in column " + column + ".");
            }
            double[] swappedRow = a[pivot];
            a[pivot] = a[column];
            a[column] = swappedRow;
            double swapped = x[pivot];
            x[pivot] = x[column];
            x[column] = swapped;
            for (int row = column + 1; row < n; row++) {
                double factor = a[row][column] / a[column][column];
                for (int k = column; k < n; k++) {
                    a[row][k] -= factor * a[column][k];
                }
                x[row] -= factor * x[column];
            }
        }
        for (int row = n - 1; row >= 0; row--) {
            for (int k = row + 1; k < n; k++) {
                x[row] -= a[row][k] * x[k];
            }
            x[row] /= a[row][row];
        }
        return x;
    }
}
