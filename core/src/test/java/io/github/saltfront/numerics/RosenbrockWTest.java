package io.github.saltfront.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Order conditions of W-methods: Hairer and Wanner, Solving Ordinary Differential Equations II, section IV.7, table 7.1. */
class RosenbrockWTest {
    private static final double[][] A = RosenbrockW.alphaMatrix();
    private static final double[][] G = RosenbrockW.gammaMatrix();
    private static final double[] B = RosenbrockW.weights();
    private static final double[] ONE = {1, 1, 1, 1};

    @Test
    void satisfiesAllConditionsOfOrderThreeForAnyJacobian() {
        double[] alpha = times(A, ONE);
        double[] gamma = times(G, ONE);
        assertThat(dot(B, ONE)).isCloseTo(1, within(1e-14));
        assertThat(dot(B, alpha)).isCloseTo(1.0 / 2, within(1e-14));
        assertThat(dot(B, gamma)).isCloseTo(0, within(1e-14));
        assertThat(dot(B, squares(alpha))).isCloseTo(1.0 / 3, within(1e-14));
        assertThat(dot(B, times(A, alpha))).isCloseTo(1.0 / 6, within(1e-14));
        assertThat(dot(B, times(A, gamma))).isCloseTo(0, within(1e-14));
        assertThat(dot(B, times(G, alpha))).isCloseTo(0, within(1e-14));
        assertThat(dot(B, times(G, gamma))).isCloseTo(0, within(1e-14));
    }

    @Test
    void embeddedMethodAndDenseOutputAreOfOrderTwoForAnyJacobian() {
        for (double[] weights : new double[][] {RosenbrockW.embeddedWeights()}) {
            assertThat(dot(weights, ONE)).isCloseTo(1, within(1e-14));
            assertThat(dot(weights, times(A, ONE))).isCloseTo(0.5, within(1e-14));
            assertThat(dot(weights, times(G, ONE))).isCloseTo(0, within(1e-14));
        }
        double[] dense = RosenbrockW.denseWeights();
        assertThat(dot(dense, ONE)).isCloseTo(1, within(1e-13));
        assertThat(dot(dense, times(A, ONE))).isCloseTo(0, within(1e-13));
        assertThat(dot(dense, times(G, ONE))).isCloseTo(0, within(1e-13));
    }

    @Test
    void stateOfAnInfinitelyStiffComponentIsForgottenInOneStep() {
        double[][] beta = new double[4][4];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                beta[i][j] = A[i][j] + G[i][j];
            }
        }
        assertThat(1 - dot(B, DenseSolve.solve(beta, ONE))).isCloseTo(0, within(1e-12));
    }

    @Test
    void linearProblemConvergesWithOrderThreeAndDenseOutputWithOrderTwo() {
        double errorBefore = endError(20);
        double errorAfter = endError(40);
        assertThat(Math.log(errorBefore / errorAfter) / Math.log(2)).isBetween(2.8, 3.3);
        // one step of the dense output has a local error of order three
        double localBefore = Math.abs(denseMiddle(0.2) - Math.exp(-0.1));
        double localAfter = Math.abs(denseMiddle(0.1) - Math.exp(-0.05));
        assertThat(Math.log(localBefore / localAfter) / Math.log(2)).isBetween(2.7, 3.4);
    }

    private static double endError(int steps) {
        double y = 1;
        double h = 1.0 / steps;
        for (int n = 0; n < steps; n++) {
            double[] u = stages(y, h);
            for (int i = 0; i < 4; i++) {
                y += RosenbrockW.solution(i) * u[i];
            }
        }
        return Math.abs(y - Math.exp(-1));
    }

    private static double denseMiddle(double h) {
        double[] u = stages(1, h);
        double y = 1;
        for (int i = 0; i < 4; i++) {
            y += RosenbrockW.dense(i, 0.5) * u[i];
        }
        return y;
    }

    /** Stages for y' = -y with the wrong Jacobian -0.3, to use the W property. */
    private static double[] stages(double y, double h) {
        double[] u = new double[4];
        for (int i = 0; i < 4; i++) {
            double state = y;
            double coupled = 0;
            for (int j = 0; j < i; j++) {
                state += RosenbrockW.stageState(i, j) * u[j];
                coupled += RosenbrockW.stageCoupling(i, j) * u[j];
            }
            u[i] = (-state + coupled / h) / (1 / (h * RosenbrockW.GAMMA) + 0.3);
        }
        return u;
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] result = new double[4];
        for (int i = 0; i < 4; i++) {
            result[i] = dot(matrix[i], vector);
        }
        return result;
    }

    private static double[] squares(double[] v) {
        return new double[] {v[0] * v[0], v[1] * v[1], v[2] * v[2], v[3] * v[3]};
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
