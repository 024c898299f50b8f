package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Liquid;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.units.Temperature;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Baths of water, cultured milk and sauces: what is in them and how strong they are. */
class BathTest {
    private static final Catalog CATALOG = Catalog.load();
    private static final double ROOM = Temperature.fromCelsius(20);

    // table of the ways to say "6 %": salt of the solution (hand computed, 20 C, two decimals)
    @ParameterizedTest
    @CsvSource({
        "PER_LITER_OF_WATER, 60, 5.67",
        "PER_LITER_OF_BRINE, 60, 5.77",
        "OF_SOLUTION, 0.06, 6.00",
        "OF_WATER, 0.06, 5.66"
    })
    void theFourWaysToSaySixPercentDiffer(StrengthBasis basis, double value, double percent) {
        assertThat(100 * basis.read(value, ROOM).saltFraction()).isCloseTo(percent, within(0.005));
    }

    @ParameterizedTest
    @EnumSource(StrengthBasis.class)
    void everyBasisReadsWhatItWrites(StrengthBasis basis) {
        SaltStrength strength = new SaltStrength(0.06);
        assertThat(basis.read(basis.write(strength, ROOM), ROOM).saltFraction()).isCloseTo(0.06, within(1e-9));
    }

    // hand computed: 1 kg buttermilk holds 0.90 kg water; 40 g salt in it make 4.2 % of the water phase without its own
    // 4.8 g
    @Test
    void saltOfButtermilkCounts() {
        Liquid buttermilk = CATALOG.liquids().get("buttermilk");
        Bath bath = Bath.of(buttermilk, 1, 0.040, 0);
        assertThat(bath.water()).isCloseTo(0.9013, within(1e-9));
        assertThat(100 * 0.040 / (bath.water() + 0.040)).isCloseTo(4.2, within(0.06));
        assertThat(100 * bath.strength().saltFraction()).isCloseTo(4.73, within(0.01));
        assertThat(bath.allergens()).containsExactly(Liquid.Allergen.MILK);
    }

    @Property
    void strengthAskedForIsStrengthMixed(
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.25) double fraction,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 20) double mass) {
        Bath bath = Bath.of(CATALOG.liquids().get("yogurt"), mass, 0, 0).withStrength(new SaltStrength(fraction));
        assertThat(bath.strength().saltFraction()).isCloseTo(fraction, within(1e-12));
    }

    @Test
    void blendOfSoySauceAndWaterCountsTheSauce() {
        Bath bath = new Bath(
                List.of(
                        new Bath.Portion(CATALOG.liquids().get("soy-sauce"), 0.2),
                        new Bath.Portion(CATALOG.liquids().get("water"), 0.8)),
                0,
                0);
        assertThat(bath.salt()).isCloseTo(0.2 * 0.1396, within(1e-9));
        assertThat(bath.allergens()).containsExactly(Liquid.Allergen.SOY, Liquid.Allergen.GLUTEN);
        assertThatThrownBy(() -> bath.withStrength(new SaltStrength(0.01))).hasMessageContaining("thin the liquid");
    }

    @Test
    void saltBeyondSaturationIsRefusedWithTheNumber() {
        Bath bath = Bath.of(CATALOG.liquids().get("water"), 1, 0.40, 0);
        // 26.45 % at 20 C (saltinstitute2009) is 359.6 g in 1 kg of water
        assertThat(bath.solubleSalt(ROOM)).isCloseTo(0.3596, within(0.0005));
        assertThat(bath.undissolvedSalt(ROOM)).isCloseTo(0.0404, within(0.0005));
        assertThatThrownBy(() -> bath.requireDissolved(ROOM)).hasMessageContaining("saturation");
    }

    @Test
    void moreSugarThanSaltIsRefused() {
        Liquid water = CATALOG.liquids().get("water");
        Bath.of(water, 1, 0.06, 0.06);
        assertThatThrownBy(() -> Bath.of(water, 1, 0.06, 0.07)).hasMessageContaining("sugar added must be at most");
    }

    // hand computed with additive volumes: 1 kg water + 60 g salt + 40 g sugar are 1052.4 kg/m3 at 20 C; error below 2
    // kg/m3
    @Test
    void sugarMakesAHydrometerReadTooMuch() {
        Bath bath = Bath.of(CATALOG.liquids().get("water"), 1, 0.060, 0.040);
        Hydrometer reading = Hydrometer.in(bath, ROOM);
        assertThat(reading.density()).isCloseTo(1052.4, within(0.7));
        // 3.6 % sugar reads as about 2.0 % salt: 0.55 a percent
        assertThat(reading.sugarAsSalt()).isBetween(0.015, 0.023);
        Bath plain = Bath.of(CATALOG.liquids().get("water"), 1, 0.060, 0);
        assertThat(Hydrometer.in(plain, ROOM).sugarAsSalt()).isCloseTo(0, within(2e-4));
    }

    @Test
    void coldBrineReadsHighOnAScaleForSixtyFahrenheit() {
        Bath bath = Bath.of(CATALOG.liquids().get("water"), 1, 0.0638, 0);
        double cold = Hydrometer.in(bath, Temperature.fromCelsius(4)).apparentSalometer();
        double warm = Hydrometer.in(bath, Temperature.fromCelsius(30)).apparentSalometer();
        assertThat(cold).isGreaterThan(bath.strength().salometer());
        assertThat(warm).isLessThan(bath.strength().salometer());
    }

    // hand computed: meat of 1055-1060 kg/m3 floats above about 8-9 % (8 % is 1057.8 kg/m3 at 15 C)
    @Test
    void meatFloatsAboveEightOrNinePercent() {
        double cool = Temperature.fromCelsius(15);
        assertThat(new SaltStrength(0.08).density(cool)).isCloseTo(1057.8, within(0.15));
        assertThat(Floating.floatsAbove(1057.8, cool).saltFraction()).isCloseTo(0.08, within(2e-4));
        assertThat(Floating.floats(1060, new SaltStrength(0.06), cool)).isFalse();
        assertThat(Floating.floats(1060, new SaltStrength(0.10), cool)).isTrue();
    }
}
