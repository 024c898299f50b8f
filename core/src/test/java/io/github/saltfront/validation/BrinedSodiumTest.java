package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.catalog.CutComposition;
import io.github.saltfront.data.CsvTable;
import io.github.saltfront.plan.Soak;
import io.github.saltfront.plan.SoakWindow;
import io.github.saltfront.plan.SoakWindow.Speed;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.quality.Band;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Sodium of cooked chicken and pork after half an hour and an hour in brine, against the 5 to 95 % band of the diffusion
 * coefficient. A check of plausibility, no validation: thickness, outline, temperature and the salt lost in the pan are
 * assumptions, the band is wide, and its median was chosen with these rows in view.
 *
 * <p>Assumed as in the hand computation: 5 degrees Celsius, large bath, yield 0.75, 0.90 of the salt kept, 30 mm thick, either a
 * box of 100 x 75 mm or a slab without edges; no swelling.
 */
class BrinedSodiumTest {
    private static final Catalog CATALOG = Catalog.load();
    private static final double YIELD = 0.75;
    private static final double KEPT = 0.90;

    @TestFactory
    List<DynamicTest> piecesWithEdgesLieInTheBand() {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.text("id"),
                        () -> assertThat(band(row, new Shape.Box(0.100, 0.075, 0.030))
                                        .contains(row.number("measured_mg_per_100g")))
                                .isTrue()))
                .toList();
    }

    @TestFactory
    List<DynamicTest> slabsWithoutEdgesLieInTheBandButForTheKnownMiss() {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(row.text("id"), () -> {
                    Band band = band(row, new Shape.Slab(0.030));
                    double measured = row.number("measured_mg_per_100g");
                    if (row.text("slab_30_miss").isEmpty()) {
                        assertThat(band.contains(measured)).isTrue();
                    } else {
                        assertThat(measured).as("known miss").isGreaterThan(band.high());
                    }
                }))
                .toList();
    }

    private static List<CsvTable.Row> rows() {
        return CsvTable.load(BrinedSodiumTest.class, "brined_sodium.csv").rows();
    }

    private static Band band(CsvTable.Row row, Shape shape) {
        Cut cut = CATALOG.cuts().get(row.text("cut"));
        double strength = row.number("brine_pct") / 100;
        Soak.Exchange large = new Soak.Exchange(1000 * strength, 1000 * (1 - strength), SaltSource.Swelling.NONE);
        // added sodium only: native sodium of the cooked meat stands in the table
        CutComposition plain = new CutComposition(0.75, 0.225, 0.015, 0, 0.01, 0, 1060);
        Soak soak = new Soak(shape, plain, large, Temperature.fromCelsius(5), 1, 0);
        double time = row.number("time_h") * 3600;
        SoakWindow window = SoakWindow.of(soak, cut.saltDiffusivity(), new Band(0, 0, 0), time);
        double factor = Sodium.of(KEPT / YIELD) * 1e5;
        double base = row.number("native_mg");
        return new Band(
                base + factor * window.meanSalt(Speed.SLOW, time),
                base + factor * window.meanSalt(Speed.MEDIAN, time),
                base + factor * window.meanSalt(Speed.FAST, time));
    }
}
