package io.github.saltfront.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class SlowestModeTest {
    /** Carslaw and Jaeger 1959, recomputed to ten digits: group EIG, quantity lambda1. */
    @TestFactory
    List<DynamicTest> firstEigenvalueMatchesTheTable() {
        return CsvTable.load(SlowestModeTest.class, "/io/github/saltfront/verification/analytic_checks.csv")
                .rows()
                .stream()
                .filter(row ->
                        row.text("group").equals("EIG") && row.text("quantity").equals("lambda1"))
                .map(row -> DynamicTest.dynamicTest(row.text("id"), () -> {
                    String biot = row.text("inputs").substring(3);
                    double value = SlowestMode.eigenvalueSquared(
                            exponentOf(row.text("geometry")),
                            biot.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(biot));
                    // ten printed digits
                    assertThat(Math.sqrt(value)).isCloseTo(row.number("value"), within(6e-10 * row.number("value")));
                }))
                .toList();
    }

    private static double exponentOf(String geometry) {
        return geometry.startsWith("slab") ? 0 : geometry.startsWith("infinite cylinder") ? 1 : 2;
    }

    @Test
    void fractionalExponentLiesBetweenItsNeighbors() {
        for (double biot : new double[] {0.1, 1, 10, Double.POSITIVE_INFINITY}) {
            double previous = 0;
            for (double exponent = 0; exponent <= 2; exponent += 0.25) {
                double value = SlowestMode.eigenvalueSquared(exponent, biot);
                assertThat(value).isGreaterThan(previous);
                previous = value;
            }
        }
    }

    @Test
    void refusesWhatIsNoBiotNumber() {
        assertThatThrownBy(() -> SlowestMode.eigenvalueSquared(0, 0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> SlowestMode.eigenvalueSquared(0, Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> SlowestMode.eigenvalueSquared(3, 1)).hasMessageContaining("between 0 and 2");
    }
}
