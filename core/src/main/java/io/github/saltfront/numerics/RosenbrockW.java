package io.github.saltfront.numerics;

/**
 * Coefficients of ROS34PW2, a Rosenbrock-W method of four stages and order three with an embedded method of order two. It
 * is L-stable and stiffly accurate, and keeps its order with any approximation A of the Jacobian, so that couplings may be
 * left out of A and ramps of the medium need no time derivative.
 *
 * <p>With U = Gamma K the stages read
 *
 * <pre>
 * (1/(h gamma) I - A) U_i = f(t + alpha_i h, y + sum_j a_ij U_j) + (1/h) sum_j c_ij U_j
 * y_new = y + sum_i m_i U_i,   error = sum_i e_i U_i
 * </pre>
 *
 * <p>Dense output of order two is {@code y(theta) = y + sum_i (m_i theta^2 + d_i theta (1 - theta)) U_i}. The weights d are
 * ours: the shortest vector that satisfies sum d = 1, sum d alpha = 0 and sum d gamma = 0 (in terms of K), which are the
 * conditions of order two for any A. The order conditions of method and dense output are checked by a test.
 *
 * @see "rang2005: Rang, Angermann 2005, BIT Numerical Mathematics 45, 761-787, ROS34PW2; form with U: Hairer, Wanner,
 *     Solving Ordinary Differential Equations II, section IV.7"
 */
public final class RosenbrockW {
    /** Number of stages. */
    public static final int STAGES = 4;

    /** Order of the method that is carried on. */
    public static final int ORDER = 3;

    /** Diagonal coefficient gamma [-]. */
    public static final double GAMMA = 4.3586652150845900e-01;

    private static final double[][] ALPHA_IJ = {
        {0, 0, 0, 0},
        {8.7173304301691801e-01, 0, 0, 0},
        {8.4457060015369423e-01, -1.1299064236484185e-01, 0, 0},
        {0, 0, 1, 0},
    };
    private static final double[][] GAMMA_IJ = {
        {GAMMA, 0, 0, 0},
        {-8.7173304301691801e-01, GAMMA, 0, 0},
        {-9.0338057013044082e-01, 5.4180672388095326e-02, GAMMA, 0},
        {2.4212380706095346e-01, -1.2232505839045147e+00, 5.4526025533510214e-01, GAMMA},
    };
    private static final double[] B = {
        2.4212380706095346e-01, -1.2232505839045147e+00, 1.5452602553351020e+00, 4.3586652150845900e-01
    };
    private static final double[] B_EMBEDDED = {
        3.7810903145819369e-01, -9.6042292212423178e-02, 5.0000000000000000e-01, 2.1793326075422950e-01
    };

    private static final double[][] GAMMA_INVERSE = invertLower(GAMMA_IJ);
    private static final double[][] STAGE_STATE = product(ALPHA_IJ, GAMMA_INVERSE);
    private static final double[][] STAGE_COUPLING = coupling();
    private static final double[] SOLUTION = rowProduct(B, GAMMA_INVERSE);
    private static final double[] ERROR = rowProduct(difference(B, B_EMBEDDED), GAMMA_INVERSE);
    private static final double[] DENSE = rowProduct(denseWeights(), GAMMA_INVERSE);

    private RosenbrockW() {}

    /**
     * Returns the time of a stage within the step.
     *
     * @param stage stage from 0
     * @return alpha_i [-]
     */
    public static double stageTime(int stage) {
        return rowSum(ALPHA_IJ[stage]);
    }

    /**
     * Returns a_ij, the weight of U_j in the state of stage i.
     *
     * @param stage stage i from 0
     * @param earlier stage j below i
     * @return a_ij [-]
     */
    public static double stageState(int stage, int earlier) {
        return STAGE_STATE[stage][earlier];
    }

    /**
     * Returns c_ij, the weight of U_j / h on the right-hand side of stage i.
     *
     * @param stage stage i from 0
     * @param earlier stage j below i
     * @return c_ij [-]
     */
    public static double stageCoupling(int stage, int earlier) {
        return STAGE_COUPLING[stage][earlier];
    }

    /**
     * Returns m_i, the weight of U_i in the new state.
     *
     * @param stage stage from 0
     * @return m_i [-]
     */
    public static double solution(int stage) {
        return SOLUTION[stage];
    }

    /**
     * Returns e_i, the weight of U_i in the error estimate.
     *
     * @param stage stage from 0
     * @return e_i [-]
     */
    public static double error(int stage) {
        return ERROR[stage];
    }

    /**
     * Returns the weight of U_i in the dense output.
     *
     * @param stage stage from 0
     * @param theta place in the step, 0 at its start and 1 at its end [-]
     * @return m_i theta^2 + d_i theta (1 - theta) [-]
     */
    public static double dense(int stage, double theta) {
        return theta * (SOLUTION[stage] * theta + DENSE[stage] * (1 - theta));
    }

    /**
     * Returns the derivative of {@link #dense} by theta at the start of the step.
     *
     * @param stage stage from 0
     * @return d_i [-]
     */
    public static double denseSlope(int stage) {
        return DENSE[stage];
    }

    static double[][] alphaMatrix() {
        return copy(ALPHA_IJ);
    }

    static double[][] gammaMatrix() {
        return copy(GAMMA_IJ);
    }

    static double[] weights() {
        return B.clone();
    }

    static double[] embeddedWeights() {
        return B_EMBEDDED.clone();
    }

    /** Shortest d with sum d = 1, d.alpha = 0, d.gamma = 0, by the normal equations of the three conditions. */
    static double[] denseWeights() {
        double[][] conditions = new double[3][STAGES];
        for (int i = 0; i < STAGES; i++) {
            conditions[0][i] = 1;
            conditions[1][i] = rowSum(ALPHA_IJ[i]);
            conditions[2][i] = rowSum(GAMMA_IJ[i]);
        }
        double[][] normal = new double[3][3];
        for (int r = 0; r < 3; r++) {
            for (int s = 0; s < 3; s++) {
                normal[r][s] = dot(conditions[r], conditions[s]);
            }
        }
        double[] multiplier = DenseSolve.solve(normal, new double[] {1, 0, 0});
        double[] d = new double[STAGES];
        for (int i = 0; i < STAGES; i++) {
            for (int r = 0; r < 3; r++) {
                d[i] += multiplier[r] * conditions[r][i];
            }
        }
        return d;
    }

    private static double[][] coupling() {
        double[][] c = new double[STAGES][STAGES];
        for (int i = 0; i < STAGES; i++) {
            for (int j = 0; j < i; j++) {
                c[i][j] = -GAMMA_INVERSE[i][j];
            }
        }
        return c;
    }

    private static double[][] invertLower(double[][] lower) {
        int n = lower.length;
        double[][] inverse = new double[n][n];
        for (int j = 0; j < n; j++) {
            for (int i = j; i < n; i++) {
                double sum = i == j ? 1 : 0;
                for (int k = j; k < i; k++) {
                    sum -= lower[i][k] * inverse[k][j];
                }
                inverse[i][j] = sum / lower[i][i];
            }
        }
        return inverse;
    }

    private static double[][] product(double[][] a, double[][] b) {
        double[][] c = new double[a.length][];
        for (int i = 0; i < a.length; i++) {
            c[i] = rowProduct(a[i], b);
        }
        return c;
    }

    private static double[] rowProduct(double[] row, double[][] matrix) {
        double[] result = new double[matrix[0].length];
        for (int i = 0; i < row.length; i++) {
            for (int j = 0; j < result.length; j++) {
                result[j] += row[i] * matrix[i][j];
            }
        }
        return result;
    }

    private static double[] difference(double[] a, double[] b) {
        double[] result = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            result[i] = a[i] - b[i];
        }
        return result;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double rowSum(double[] row) {
        double sum = 0;
        for (double value : row) {
            sum += value;
        }
        return sum;
    }

    private static double[][] copy(double[][] matrix) {
        double[][] result = new double[matrix.length][];
        for (int i = 0; i < matrix.length; i++) {
            result[i] = matrix[i].clone();
        }
        return result;
    }
}
