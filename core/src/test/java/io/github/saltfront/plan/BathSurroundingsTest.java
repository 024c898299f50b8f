package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.quality.Band;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Vessels, ice that freezes meat, acid, enzymes and cautions. */
class BathSurroundingsTest {
    private static final Catalog CATALOG = Catalog.load();

    // hand computed: pot 240 mm wide, 1.05 kg of 1050 kg/m3 30 mm high, 20 mm above: 0.04524 x 0.05 - 0.001 m3
    @Test
    void potIsFilledToAboveTheMeatLessWhatItDisplaces() {
        Band liquid = new Vessel.Pot(0.24).liquidToCover(new Vessel.Load(1.05, 1050, 0.03));
        assertThat(liquid.typical() * 1000).isCloseTo(2.262 - 1.0, within(0.001));
    }

    @Test
    void vesselThatIsTooNarrowIsRefused() {
        assertThatThrownBy(() -> new Vessel.Tub(0.1, 0.1).liquidToCover(new Vessel.Load(2, 1050, 0.05)))
                .hasMessageContaining("take a wider one");
    }

    @Test
    void bagsNeedLessThanPots() {
        Vessel.Load load = new Vessel.Load(2, 1050, 0.03);
        assertThat(new Vessel.Unmeasured("bag").liquidToCover(load).high())
                .isLessThan(new Vessel.Unmeasured("tub").liquidToCover(load).low());
    }

    // melinder2010: 6 % freezes at -3.7 C, 1 % at -0.6 C
    @Test
    void iceInBrineCanFreezeMeat() {
        assertThat(IceBalance.canFreezeMeat(0.06)).isTrue();
        assertThat(IceBalance.canFreezeMeat(0.01)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"6.5, NONE", "4.6, VALLEY", "4.2, EDGE", "2.3, STRONG"})
    void acidAdviceFollowsTheValley(double acidity, AcidAdvice advice) {
        assertThat(AcidAdvice.of(acidity)).isEqualTo(advice);
    }

    @Test
    void massIsLeastInTheValleyAndSaltHalvesTheChange() {
        assertThat(AcidAdvice.massFactor(4.8, false).typical()).isCloseTo(0.95, within(1e-12));
        assertThat(AcidAdvice.massFactor(5.7, false).typical()).isEqualTo(1);
        assertThat(AcidAdvice.massFactor(4.0, true).typical()).isCloseTo(1.1, within(1e-12));
    }

    @Test
    void everyAcidOfTheCatalogHasAFront() {
        for (Liquid liquid : CATALOG.liquids().all()) {
            boolean sour =
                    !liquid.acid().name().isEmpty() && liquid.acid().fraction().typical() > 0;
            assertThat(AcidFront.of(liquid, 1, 3.2e-10).isPresent())
                    .as(liquid.id())
                    .isEqualTo(sour);
        }
        // hand computed: about 3.5 mm in 12 h for buttermilk
        double depth = AcidFront.of(CATALOG.liquids().get("buttermilk"), 1, 3.2e-10)
                .orElseThrow()
                .depth(12 * 3600);
        assertThat(depth * 1000).isCloseTo(3.5, within(0.3));
    }

    @Test
    void freshJuiceOfDigestingPlantsIsFound() {
        assertThat(EnzymeSource.findIn("fresh pineapple juice")).isPresent();
        assertThat(EnzymeSource.findIn("Grated GINGER")).isPresent();
        assertThat(EnzymeSource.findIn("canned pineapple juice")).isEmpty();
        assertThat(EnzymeSource.findIn("orange juice")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"pink curing salt", "curing salt no. 1", "Pink salt", "sodium nitrite"})
    void curingSaltIsRecognized(String name) {
        assertThat(HandlingCaution.isCuringSalt(name)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"pink Himalayan rock salt", "table salt", "coarse salt"})
    void plainSaltIsNotTakenForACure(String name) {
        assertThat(HandlingCaution.isCuringSalt(name)).isFalse();
    }

    @Test
    void cautionsComeGravestFirstAndCutsByOccasion() {
        List<HandlingCaution> soak = HandlingCaution.forOccasions(List.of("soak"));
        assertThat(soak).extracting(HandlingCaution::id).contains("cold-holding", "never-reuse", "vessel");
        assertThat(soak).extracting(HandlingCaution::id).doesNotContain("pink-salt", "surface-salt");
        assertThat(soak.get(0).level()).isEqualTo(HandlingCaution.Level.DANGER);
    }
}
