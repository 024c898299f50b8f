package io.github.saltfront.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SolidGridTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void boxHasExactVolumeAndArea(int faces) {
        SolidGrid grid = SolidGrid.box(0.2, 0.12, 0.05, 3000, faces);
        double area = 2 * (0.2 * 0.12 + 0.2 * 0.05 + 0.12 * 0.05);
        assertThat(grid.totalVolume()).isCloseTo(0.2 * 0.12 * 0.05, within(1e-15));
        assertThat(grid.faceArea(0)).isCloseTo(area / faces, within(1e-13));
    }

    // volume 4/3 pi a b c; area of spheroids in closed form (Abramowitz, Stegun 1972; any table of mensuration)
    @ParameterizedTest
    @CsvSource({"0.2,0.2,0.2", "0.3,0.1,0.1", "0.2,0.2,0.08"})
    void ellipsoidHasVolumeAndAreaOfTheClosedForm(double length, double width, double thickness) {
        double exact = spheroidArea(length, width, thickness);
        SolidGrid coarse = SolidGrid.ellipsoid(length, width, thickness, 3000, 1);
        SolidGrid fine = SolidGrid.ellipsoid(length, width, thickness, 24000, 1);
        double volume = Math.PI / 6 * length * width * thickness;
        assertThat(coarse.totalVolume() / volume - 1).isCloseTo(0, within(1e-7));
        assertThat(fine.totalVolume() / volume - 1).isCloseTo(0, within(1e-7));
        double coarseError = 1 - coarse.faceArea(0) / exact;
        double fineError = 1 - fine.faceArea(0) / exact;
        // patches are flat: the area is low, by the stated (cell / radius)^2 / 12 of some 14 and 28 cells a radius
        assertThat(fineError).isBetween(0.0, 1.0 / (12 * 20 * 20));
        assertThat(coarseError / fineError).as("order two").isGreaterThan(3);
    }

    private static double spheroidArea(double length, double width, double thickness) {
        if (width == thickness && length > width) {
            double e = Math.sqrt(1 - width * width / (length * length));
            return 0.5 * Math.PI * width * (width + length * Math.asin(e) / e);
        }
        if (length == width && thickness < width) {
            double e = Math.sqrt(1 - thickness * thickness / (width * width));
            double flat = 0.5 * Math.PI * width * width;
            return flat + 0.25 * Math.PI * thickness * thickness / e * Math.log((1 + e) / (1 - e));
        }
        return Math.PI * length * length;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void cylinderHasExactVolumeAndNearlyExactArea(int faces) {
        SolidGrid grid = SolidGrid.cylinder(0.1, 0.16, 10000, faces);
        double area = Math.PI * 0.1 * 0.16 + 2 * Math.PI * 0.05 * 0.05;
        assertThat(grid.totalVolume()).isCloseTo(Math.PI * 0.05 * 0.05 * 0.16, within(1e-12));
        assertThat(faces * grid.faceArea(0) / area).isCloseTo(1, within(2e-4));
    }

    @Test
    void patchesReachInsideByAtMostThreeCellsAndReproduceConstants() {
        SolidGrid grid = SolidGrid.ellipsoid(0.24, 0.16, 0.1, 20000, 2);
        double area = 0;
        for (int p = 0; p < grid.patches(); p++) {
            double sum = 0;
            for (int m = 0; m < SolidGrid.PATCH_POINTS; m++) {
                sum += grid.patchWeight(p, m);
            }
            assertThat(sum).isCloseTo(1, within(1e-12));
            assertThat(grid.patchDistance(p)).isBetween(1e-5, 0.012);
            area += grid.patchArea(p);
        }
        assertThat(4 * area).isCloseTo(grid.faceArea(0) + grid.faceArea(1), within(1e-12));
        assertThat(grid.faceArea(0)).isCloseTo(grid.faceArea(1), within(1e-12));
    }

    @Test
    void numberOfCellsIsMetWithinAFewPercent() {
        assertThat(SolidGrid.box(0.3, 0.2, 0.1, 30000, 1).cells()).isBetween(26000, 34000);
        assertThat(SolidGrid.ellipsoid(0.3, 0.2, 0.1, 30000, 1).cells()).isBetween(26000, 34000);
        assertThat(SolidGrid.cylinder(0.1, 0.2, 30000, 2).cells()).isBetween(26000, 34000);
    }

    @Test
    void middleValueOfAParabolaIsExact() {
        for (int faces = 1; faces <= 2; faces++) {
            SolidGrid grid = SolidGrid.ellipsoid(0.24, 0.16, 0.1, 3000, faces);
            double[] x = grid.nodes(0);
            double[] y = grid.nodes(1);
            double[] z = grid.nodes(2);
            double[] values = new double[grid.cells()];
            for (int c = 0; c < values.length; c++) {
                values[c] = 7 + 50 * x[c] * x[c] - 30 * y[c] * y[c] + 400 * z[c] * z[c];
            }
            assertThat(grid.middle(values)).isCloseTo(7, within(1e-12));
        }
    }

    @Test
    void impossibleSizesAreNamed() {
        assertThatThrownBy(() -> SolidGrid.box(Double.NaN, 0.1, 0.1, 1000, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("length")
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> SolidGrid.cylinder(0.1, 0.1, 1000, 3)).hasMessageContaining("got 3");
    }
}
