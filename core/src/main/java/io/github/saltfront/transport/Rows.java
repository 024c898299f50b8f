package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;

/**
 * Arrays of rows, one row a cell, edge, slot or face and one value a lane in each. The compiler turns a loop over the lanes
 * into vector instructions only if all arrays in it have the same index; therefore rows are arrays of their own, and a loop
 * that joins a layer with its neighbor takes two rows.
 */
final class Rows {
    private Rows() {}

    static double[][] of(int rows, int lanes) {
        return new double[rows][lanes];
    }

    static double[][][] ofStages(int rows, int lanes) {
        return new double[RosenbrockW.STAGES][rows][lanes];
    }

    static void copy(double[][] from, double[][] to) {
        for (int i = 0; i < to.length; i++) {
            System.arraycopy(from[i], 0, to[i], 0, to[i].length);
        }
    }

    static void copyLane(double[][] from, double[][] to, int lane) {
        for (int i = 0; i < to.length; i++) {
            to[i][lane] = from[i][lane];
        }
    }

    /** State of a stage: base + sum over earlier stages of a_ij U_j. */
    static void combine(int stage, double[][] base, double[][][] stages, double[][] result) {
        for (int i = 0; i < result.length; i++) {
            combineRow(stage, base[i], stages, i, result[i]);
        }
    }

    /** One row of {@link #combine}; written out for each stage so that the loops vectorize. */
    static void combineRow(int stage, double[] base, double[][][] stages, int row, double[] result) {
        double[] u0 = stages[0][row];
        double[] u1 = stages[1][row];
        double[] u2 = stages[2][row];
        int n = result.length;
        double a0 = RosenbrockW.stageState(stage, 0);
        double a1 = RosenbrockW.stageState(stage, 1);
        double a2 = RosenbrockW.stageState(stage, 2);
        if (stage == 0) {
            System.arraycopy(base, 0, result, 0, n);
        } else if (stage == 1) {
            for (int l = 0; l < n; l++) {
                result[l] = base[l] + a0 * u0[l];
            }
        } else if (stage == 2) {
            for (int l = 0; l < n; l++) {
                result[l] = base[l] + a0 * u0[l] + a1 * u1[l];
            }
        } else {
            for (int l = 0; l < n; l++) {
                result[l] = base[l] + a0 * u0[l] + a1 * u1[l] + a2 * u2[l];
            }
        }
    }

    /**
     * Adds to the right-hand side of a stage what earlier stages give, weight sum over j of c_ij U_j / h, by way of rate = 1 /
     * (h gamma).
     *
     * @param stage stage i from 0
     * @param stages stage vectors of all stages
     * @param row which row of them
     * @param weight factor of the row [-]
     * @param rate lane by lane, the rate times what all rows have in common
     * @param right the row of the right-hand side that is added to
     */
    static void addCoupling(int stage, double[][][] stages, int row, double weight, double[] rate, double[] right) {
        double c0 = weight * RosenbrockW.GAMMA * RosenbrockW.stageCoupling(stage, 0);
        double c1 = weight * RosenbrockW.GAMMA * RosenbrockW.stageCoupling(stage, 1);
        double c2 = weight * RosenbrockW.GAMMA * RosenbrockW.stageCoupling(stage, 2);
        double[] u0 = stages[0][row];
        double[] u1 = stages[1][row];
        double[] u2 = stages[2][row];
        int n = right.length;
        if (stage == 1) {
            for (int l = 0; l < n; l++) {
                right[l] += rate[l] * (c0 * u0[l]);
            }
        } else if (stage == 2) {
            for (int l = 0; l < n; l++) {
                right[l] += rate[l] * (c0 * u0[l] + c1 * u1[l]);
            }
        } else if (stage == 3) {
            for (int l = 0; l < n; l++) {
                right[l] += rate[l] * (c0 * u0[l] + c1 * u1[l] + c2 * u2[l]);
            }
        }
    }

    /** State at the end of the step: base + sum over all stages of m_i U_i. */
    static void addSolution(double[][] base, double[][][] stages, double[][] result) {
        for (int i = 0; i < result.length; i++) {
            addSolutionRow(base[i], stages, i, result[i]);
        }
    }

    /** One row of {@link #addSolution}. */
    static void addSolutionRow(double[] base, double[][][] stages, int row, double[] result) {
        weigh(
                base,
                RosenbrockW.solution(0),
                stages[0][row],
                RosenbrockW.solution(1),
                stages[1][row],
                RosenbrockW.solution(2),
                stages[2][row],
                RosenbrockW.solution(3),
                stages[3][row],
                result);
    }

    private static void weigh(
            double[] base,
            double m0,
            double[] u0,
            double m1,
            double[] u1,
            double m2,
            double[] u2,
            double m3,
            double[] u3,
            double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = base[l] + m0 * u0[l] + m1 * u1[l] + m2 * u2[l] + m3 * u3[l];
        }
    }

    /** Adds to the sum of each lane the square of sum over all stages of e_i U_i over a scale. */
    static void addError(double[][][] stages, int row, double[] scale, double[] sum) {
        double e0 = RosenbrockW.error(0);
        double e1 = RosenbrockW.error(1);
        double e2 = RosenbrockW.error(2);
        double e3 = RosenbrockW.error(3);
        double[] u0 = stages[0][row];
        double[] u1 = stages[1][row];
        double[] u2 = stages[2][row];
        double[] u3 = stages[3][row];
        for (int l = 0; l < sum.length; l++) {
            double scaled = (e0 * u0[l] + e1 * u1[l] + e2 * u2[l] + e3 * u3[l]) / scale[l];
            sum[l] += scaled * scaled;
        }
    }

    /** Adds to each lane a share of the initial slope of the dense output over a scale. */
    static void addSlope(double share, double[][][] stages, int row, double[] scale, double[] sum) {
        double d0 = share * RosenbrockW.denseSlope(0);
        double d1 = share * RosenbrockW.denseSlope(1);
        double d2 = share * RosenbrockW.denseSlope(2);
        double d3 = share * RosenbrockW.denseSlope(3);
        double[] u0 = stages[0][row];
        double[] u1 = stages[1][row];
        double[] u2 = stages[2][row];
        double[] u3 = stages[3][row];
        for (int l = 0; l < sum.length; l++) {
            sum[l] += (d0 * u0[l] + d1 * u1[l] + d2 * u2[l] + d3 * u3[l]) / scale[l];
        }
    }

    /** Value within the step by the dense output of the method. */
    static double dense(double base, double[][][] stages, int row, int lane, double theta) {
        double value = base;
        for (int j = 0; j < RosenbrockW.STAGES; j++) {
            value += RosenbrockW.dense(j, theta) * stages[j][row][lane];
        }
        return value;
    }
}
