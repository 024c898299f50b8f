package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Measure.UnitSystem;
import io.github.saltfront.catalog.SaltForm;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Grams to spoons and back. */
class SpoonedSaltTest {
    private static final Catalog CATALOG = Catalog.load();

    @Property
    void spoonsHoldWhatWasAskedForToHalfASpoonStep(
            @ForAll @Scale(6) @DoubleRange(min = 0.0005, max = 1) double mass, @ForAll UnitSystem system) {
        for (SaltForm form : CATALOG.salts().all()) {
            SpoonedSalt spoons = SpoonedSalt.of(mass, form, system, CATALOG);
            double step = (form.volumeOf(mass) < 5e-6 ? 5e-6 / 8 : 5e-6 / 4)
                    * form.bulkDensity().typical();
            assertThat(spoons.mass().typical()).isCloseTo(mass, within(0.501 * step));
        }
    }

    @Property
    void gramsToVolumeAndBackAreTheSame(@ForAll @Scale(6) @DoubleRange(min = 0.0001, max = 5) double mass) {
        SaltForm form = CATALOG.salts().get("coarse-salt-unknown");
        assertThat(form.massOf(form.volumeOf(mass)).typical()).isCloseTo(mass, within(1e-12));
    }

    // usda2013: table salt 6.0 g a US teaspoon, 18 g a tablespoon; 219 g are 3/4 US cup (292 g a cup)
    @Test
    void threeQuarterCupOfTableSaltIsFound() {
        SaltForm table = CATALOG.salts().get("table-salt");
        SpoonedSalt spoons = SpoonedSalt.of(0.218, table, UnitSystem.US, CATALOG);
        assertThat(spoons.quarterCups()).isEqualTo(3);
        assertThat(spoons.tablespoons()).isZero();
        SpoonedSalt tablespoon = SpoonedSalt.of(0.018, table, UnitSystem.US, CATALOG);
        assertThat(tablespoon.tablespoons()).isEqualTo(1);
        assertThat(tablespoon.eighthTeaspoons()).isZero();
    }

    @Test
    void noSaltNeedsNoSpoon() {
        SpoonedSalt none = SpoonedSalt.of(0, CATALOG.salts().get("table-salt"), UnitSystem.METRIC, CATALOG);
        assertThat(none.mass().high()).isZero();
        assertThat(none.relativeError().high()).isZero();
    }

    @Test
    void coarseSaltOfUnknownGrainHasTheWidestBand() {
        SpoonedSalt fine = SpoonedSalt.of(0.06, CATALOG.salts().get("table-salt"), UnitSystem.US, CATALOG);
        SpoonedSalt coarse = SpoonedSalt.of(0.06, CATALOG.salts().get("coarse-salt-unknown"), UnitSystem.US, CATALOG);
        assertThat(coarse.relativeError().high()).isGreaterThan(0.25);
        assertThat(coarse.relativeError().low()).isLessThan(-0.25);
        assertThat(fine.relativeError().high()).isLessThan(0.06);
    }
}
