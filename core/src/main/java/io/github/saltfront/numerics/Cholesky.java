package io.github.saltfront.numerics;

import io.github.saltfront.units.Checks;

/** The triangular factor L of a symmetric positive definite matrix, A = L L^T. Immutable. */
public final class Cholesky {
    private final double[][] factor;

    private Cholesky(double[][] factor) {
        this.factor = factor;
    }

    /**
     * Factors a matrix.
     *
     * @param matrix symmetric positive definite, row by row; only the lower triangle is read; not modified
     * @return the factor
     * @throws ArithmeticException if the matrix is not positive definite to working precision
     */
    public static Cholesky of(double[][] matrix) {
        int n = matrix.length;
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                if (i == j) {
                    if (!(sum > 0)) {
                        throw new ArithmeticException(
                                "matrix of " + n + " rows is not positive definite in row " + i + ".");
                    }
                    l[i][i] = Math.sqrt(sum);
                } else {
                    l[i][j] = sum / l[j][j];
                }
            }
        }
        return new Cholesky(l);
    }

    /**
     * Returns L x, which has the covariance A if x is standard normal.
     *
     * @param x vector; not modified
     * @return L x, a new array
     */
    public double[] times(double[] x) {
        double[] y = new double[requireLength(x)];
        for (int i = 0; i < y.length; i++) {
            for (int k = 0; k <= i; k++) {
                y[i] += factor[i][k] * x[k];
            }
        }
        return y;
    }

    /**
     * Solves L y = x.
     *
     * @param x right-hand side; not modified
     * @return y, a new array; the square of its length is {@code x^T A^-1 x}
     */
    public double[] solveLower(double[] x) {
        double[] y = new double[requireLength(x)];
        for (int i = 0; i < y.length; i++) {
            double sum = x[i];
            for (int k = 0; k < i; k++) {
                sum -= factor[i][k] * y[k];
            }
            y[i] = sum / factor[i][i];
        }
        return y;
    }

    /** Returns the logarithm of the determinant of A. */
    public double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < factor.length; i++) {
            sum += 2 * Math.log(factor[i][i]);
        }
        return sum;
    }

    private int requireLength(double[] x) {
        Checks.require(
                x.length == factor.length,
                "a factor of " + factor.length + " rows needs as many values, got " + x.length + ".");
        return x.length;
    }
}
