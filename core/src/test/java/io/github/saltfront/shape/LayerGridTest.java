package io.github.saltfront.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells grow by one ratio from the face and fill the extent, however many they are. */
class LayerGridTest {
    @ParameterizedTest
    @CsvSource({"4, 0.02", "40, 0.003", "308, 0.0004", "320, 0.0004", "1000, 0.0001", "2000, 0.0001"})
    void cellsFillTheExtentInAGeometricRow(int cells, double outer) {
        LayerGrid grid = LayerGrid.symmetric(0, cells, outer);
        assertThat(grid.edge(0)).isZero();
        assertThat(grid.edge(cells)).isEqualTo(1);
        assertThat(1 - grid.edge(cells - 1)).isCloseTo(outer, within(1e-12));
        double ratio = (grid.edge(cells - 1) - grid.edge(cells - 2)) / outer;
        assertThat(ratio).isGreaterThan(1);
        // the innermost cell is what is left, so it shows the error of the ratio
        double innermost = outer * Math.pow(ratio, cells - 1);
        assertThat(grid.edge(1)).isCloseTo(innermost, within(1e-6 * innermost));
    }
}
