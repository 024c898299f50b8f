package io.github.saltfront.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class SaltStrengthTest {
    /** Round trips go through a few divisions and one search to 1e-15. */
    private static final Offset<Double> EXACT = within(1e-13);

    private static final double T20 = Temperature.fromCelsius(20);

    @Property
    void everyBasisConvertsBackToTheSameStrength(
            @ForAll @DoubleRange(min = 0, max = 0.263) @Scale(6) double w,
            @ForAll @DoubleRange(min = 0.1, max = 60) @Scale(6) double t) {
        double temperature = Temperature.fromCelsius(t);
        SaltStrength s = new SaltStrength(w);
        assertThat(SaltStrength.ofSaltPerWater(s.saltPerWater()).saltFraction()).isCloseTo(w, EXACT);
        assertThat(SaltStrength.ofSaltPerWaterVolume(s.saltPerWaterVolume(temperature), temperature)
                        .saltFraction())
                .isCloseTo(w, EXACT);
        assertThat(SaltStrength.ofSaltPerSolutionVolume(s.saltPerSolutionVolume(temperature), temperature)
                        .saltFraction())
                .isCloseTo(w, EXACT);
        assertThat(SaltStrength.ofSaturation(Math.min(1, s.saturationShare(temperature)), temperature)
                        .saltFraction())
                .isCloseTo(w, EXACT);
        assertThat(SaltStrength.ofSalometer(s.salometer()).saltFraction()).isCloseTo(w, EXACT);
        // density has 1e-13 kg/m3 of rounding over a slope of 700 kg/m3
        assertThat(SaltStrength.ofDensity(s.density(temperature), temperature).saltFraction())
                .isCloseTo(w, EXACT);
        assertThat(SaltStrength.ofMolality(s.molality()).saltFraction()).isCloseTo(w, EXACT);
    }

    @Property
    void strongerBrineIsDenserAndDrier(
            @ForAll @DoubleRange(min = 0, max = 0.26) @Scale(6) double w,
            @ForAll @DoubleRange(min = 0, max = 50) @Scale(6) double t) {
        double temperature = Temperature.fromCelsius(t);
        SaltStrength weak = new SaltStrength(w);
        SaltStrength strong = new SaltStrength(w + 0.001);
        assertThat(strong.density(temperature)).isGreaterThan(weak.density(temperature));
        assertThat(strong.waterActivity()).isLessThan(weak.waterActivity());
    }

    @Test
    void beyondSaturationIsRefusedWithTheNumber() {
        // 26.45 % at 21.11 C and 26.395 % at 15.56 C are printed in the table of solubility of saltinstitute2009
        assertThatThrownBy(() -> new SaltStrength(0.28).requireDissolved(Temperature.fromCelsius(21.11)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.2645")
                .hasMessageContaining("0.28");
        assertThat(new SaltStrength(0.264).requireDissolved(Temperature.fromCelsius(21.11)))
                .isEqualTo(new SaltStrength(0.264));
        assertThatThrownBy(() -> new SaltStrength(0.29)).hasMessageContaining("0.2846");
        assertThatThrownBy(() -> SaltStrength.ofSaltPerWater(0.5)).hasMessageContaining("0.2846");
        assertThatThrownBy(() -> SaltStrength.ofSaltPerSolutionVolume(400, T20)).hasMessageContaining("kg/m3");
        assertThatThrownBy(() -> SaltStrength.ofSalometer(101)).hasMessageContaining("salometer");
    }

    @Test
    void nanAndNegativeValuesAreRefused() {
        assertThatThrownBy(() -> new SaltStrength(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new SaltStrength(-0.01)).hasMessageContaining("-0.01");
        assertThatThrownBy(() -> SaltStrength.ofSaltPerWater(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> SaltStrength.ofSaltPerWaterVolume(Double.NaN, T20))
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> SaltStrength.ofSaltPerWaterVolume(60, Double.NaN))
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> SaltStrength.ofSaltPerSolutionVolume(Double.NaN, T20))
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> SaltStrength.ofSaturation(Double.NaN, T20)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> SaltStrength.ofDensity(Double.NaN, T20)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> SaltStrength.ofMolality(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new SaltSugarSolution(0.05, Double.NaN)).hasMessageContaining("sugar");
    }

    @Test
    void noSaltLeavesWater() {
        SaltStrength water = new SaltStrength(0);
        assertThat(water.saltPerWater()).isZero();
        assertThat(water.waterActivity()).isEqualTo(1);
        assertThat(water.specificGravity()).isEqualTo(1);
        assertThat(Melinder2010.freezingPointDepression(0)).isZero();
        // the polynomial of Melinder reads 273.15 K for water to the digits of its coefficients
        assertThat(Melinder2010.freezingPoint(0)).isCloseTo(Temperature.ZERO_CELSIUS, within(0.005));
    }

    @Property
    void mixtureReducesToEachSoluteAlone(
            @ForAll @DoubleRange(min = 0, max = 0.35) @Scale(6) double salt,
            @ForAll @DoubleRange(min = 0, max = 0.66) @Scale(6) double sugar) {
        assertThat(new SaltSugarSolution(salt, 0).density())
                .isCloseTo(SaltStrength.ofSaltPerWater(salt).density(T20), within(1e-9));
        SaltSugarSolution sweet = new SaltSugarSolution(0, sugar);
        // the two water densities at 20 C differ by 0.02 kg/m3
        assertThat(sweet.density()).isCloseTo(Bates1942.density(sweet.sugarFraction()), within(0.03));
        assertThat(new SaltSugarSolution(salt, sugar).waterActivity())
                .isCloseTo(new SaltSugarSolution(salt, 0).waterActivity() * sweet.waterActivity(), within(1e-12));
    }

    @Test
    void freezingPointAboveTheEutecticIsRefusedButTheDepressionStays() {
        assertThatThrownBy(() -> Melinder2010.freezingPoint(0.24)).hasMessageContaining("0.2331");
        assertThat(Melinder2010.freezingPointDepression(1)).isEqualTo(Melinder2010.freezingPointDepression(0.2331));
        assertThatThrownBy(() -> Melinder2010.freezingPointDepression(Double.NaN))
                .hasMessageContaining("NaN");
        assertThat(Melinder2010.isPublishedAt(T20, 0.23)).isTrue();
        assertThat(Melinder2010.isPublishedAt(T20, 0.24)).isFalse();
        assertThat(Melinder2010.isPublishedAt(Temperature.fromCelsius(-5), 0.06))
                .isFalse();
        assertThat(RogersPitzer1982.isPublishedAt(T20, 0.226)).isTrue();
        assertThat(RogersPitzer1982.isPublishedAt(Temperature.fromCelsius(51), 0.1))
                .isFalse();
    }
}
