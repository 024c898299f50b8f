package io.github.saltfront.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.quality.Band;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Salt by the spoon. */
class SaltFormTest {
    private static final Catalog CATALOG = Catalog.load();

    // g per teaspoon = 4 x (mg of sodium in a quarter teaspoon) / 393.37: three worked examples, two decimals printed.
    // Rounding of the label (21 CFR 101.9(c)(4)): 1.8 % at 280 mg, 0.8 % at 590 mg
    @ParameterizedTest
    @CsvSource({"590, 6.00, 0.008", "480, 4.88, 0.0104", "280, 2.85, 0.018"})
    void labelSodiumGivesTheWorkedExamples(double milligrams, double grams, double relativeBand) {
        SaltForm form = SaltForm.fromLabelSodium(0.25, milligrams * 1e-6);
        Band spoon = form.massOf(CATALOG.measures().get("label-teaspoon").volume());
        assertThat(spoon.typical() * 1000).isCloseTo(grams, within(0.005));
        assertThat((spoon.high() - spoon.low()) / 2 / spoon.typical()).isCloseTo(relativeBand, within(0.0005));
    }

    // grams are printed to a tenth: 1.5 g in a quarter teaspoon is 5.8 to 6.2 g a teaspoon
    @Test
    void labelGramsAreLessPreciseThanSodium() {
        Band spoon = SaltForm.fromLabelMass(0.25, 1.5e-3)
                .massOf(CATALOG.measures().get("label-teaspoon").volume());
        assertThat(spoon.low() * 1000).isCloseTo(5.8, within(1e-9));
        assertThat(spoon.typical() * 1000).isCloseTo(6.0, within(1e-9));
        assertThat(spoon.high() * 1000).isCloseTo(6.2, within(1e-9));
    }

    // USDA NDB 02047: 6.0 g a teaspoon, 18 g a tablespoon, 292 g a cup; the cup entry is 1.4 % above 48 teaspoons
    @ParameterizedTest
    @CsvSource({"us-teaspoon, 6.0, 0.001", "us-tablespoon, 18, 0.001", "us-cup, 292, 0.015"})
    void tableSaltWeighsItsHouseholdWeights(String measure, double grams, double relative) {
        double mass = CATALOG.salts()
                .get("table-salt")
                .massOf(CATALOG.measures().get(measure).volume())
                .typical();
        assertThat(mass * 1000).isCloseTo(grams, within(relative * grams));
    }

    @Test
    void flakesWeighLessThanHalfOfFineSalt() {
        double fine = CATALOG.salts().get("table-salt").bulkDensity().typical();
        assertThat(CATALOG.salts().get("flake-salt-light").bulkDensity().typical() / fine)
                .isCloseTo(2.8 / 6.0, within(1e-9));
    }

    @Test
    void volumeAndMassAreInverse() {
        SaltForm form = CATALOG.salts().get("coarse-salt-dense");
        assertThat(form.massOf(form.volumeOf(0.03)).typical()).isCloseTo(0.03, within(1e-15));
    }

    @Test
    void impossibleLabelsAreRefused() {
        assertThatThrownBy(() -> SaltForm.fromLabelSodium(0.25, Double.NaN)).hasMessageContaining("sodium");
        assertThatThrownBy(() -> SaltForm.fromLabelSodium(0, 590e-6)).hasMessageContaining("serving");
        // 590 g instead of 590 mg would be denser than a crystal of salt
        assertThatThrownBy(() -> SaltForm.fromLabelSodium(0.25, 0.59)).hasMessageContaining("bulk density");
    }
}
