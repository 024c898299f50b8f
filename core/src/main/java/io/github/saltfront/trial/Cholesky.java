package io.github.saltfront.trial;

/** The triangular factor of a small symmetric positive definite matrix, for solutions and for the determinant. */
final class Cholesky {
    private final double[][] factor;

    /**
     * Factors a matrix.
     *
     * @param matrix symmetric matrix, row by row; not modified
     * @throws ArithmeticException if it is not positive definite to working precision
     */
    Cholesky(double[][] matrix) {
        int n = matrix.length;
        factor = new double[n][n];
        for (int row = 0; row < n; row++) {
            for (int column = 0; column <= row; column++) {
                double sum = matrix[row][column];
                for (int k = 0; k < column; k++) {
                    sum -= factor[row][k] * factor[column][k];
                }
                if (row == column) {
                    if (!(sum > 1e-12 * Math.abs(matrix[row][row]))) {
                        throw new ArithmeticException(
                                "matrix of " + n + " rows is not positive definite in row " + row);
                    }
                    factor[row][row] = Math.sqrt(sum);
                } else {
                    factor[row][column] = sum / factor[column][column];
                }
            }
        }
    }

    double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < factor.length; i++) {
            sum += 2 * Math.log(factor[i][i]);
        }
        return sum;
    }

    /** Solves for one right-hand side, which is not modified. */
    double[] solve(double[] right) {
        int n = factor.length;
        double[] x = right.clone();
        for (int row = 0; row < n; row++) {
            for (int k = 0; k < row; k++) {
                x[row] -= factor[row][k] * x[k];
            }
            x[row] /= factor[row][row];
        }
        for (int row = n - 1; row >= 0; row--) {
            for (int k = row + 1; k < n; k++) {
                x[row] -= factor[k][row] * x[k];
            }
            x[row] /= factor[row][row];
        }
        return x;
    }
}
