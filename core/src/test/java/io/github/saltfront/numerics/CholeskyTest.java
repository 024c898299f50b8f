package io.github.saltfront.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CholeskyTest {
    /** Integers throughout: L = [2 0 0; 6 1 0; -8 5 3], so that A = L L^T can be checked by hand. */
    private static final double[][] MATRIX = {{4, 12, -16}, {12, 37, -43}, {-16, -43, 98}};

    @Test
    void factorOfAnIntegerExampleIsExact() {
        Cholesky factor = Cholesky.of(MATRIX);
        assertThat(factor.times(new double[] {1, 1, 1})).containsExactly(2, 7, 0);
        assertThat(factor.solveLower(new double[] {2, 7, 0})).containsExactly(1, 1, 1);
        assertThat(factor.logDeterminant()).isCloseTo(Math.log(36), within(1e-14));
    }

    @Test
    void matrixThatIsNotPositiveDefiniteIsRefused() {
        assertThatThrownBy(() -> Cholesky.of(new double[][] {{1, 2}, {2, 1}}))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("row 1");
    }

    @Test
    void vectorOfAnotherLengthIsRefused() {
        assertThatThrownBy(() -> Cholesky.of(MATRIX).times(new double[2]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 rows")
                .hasMessageContaining("got 2");
    }
}
