package io.github.saltfront.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeatThermalPropertiesTest {
    private static final MeatThermalProperties LEAN =
            MeatThermalProperties.of(new Composition(0.74, 0.22, 0.03, 0, 0.01).dryMatter());
    private static final double LEAN_WATER = 0.74 / 0.26;

    /** Found by the property below: the first guess was an ulp past the end of the model. */
    @Test
    void hottestEnthalpyIsInvertedWithinTheModel() {
        MeatThermalProperties meat = LEAN.withIceModel(new Tchigeov1979());
        double hottest = MeatThermalProperties.HIGHEST_TEMPERATURE;
        double enthalpy = meat.enthalpy(hottest, 0.891989, 3e-6);
        assertThat(meat.temperature(enthalpy, 0.891989, 3e-6)).isCloseTo(hottest, within(1e-10));
    }

    @Property
    void temperatureIsTheInverseOfEnthalpy(
            @ForAll @DoubleRange(min = -40, max = 300) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(6) double water,
            @ForAll @DoubleRange(min = 0, max = 0.4) @Scale(6) double salt,
            @ForAll boolean tchigeov) {
        MeatThermalProperties meat = tchigeov ? LEAN.withIceModel(new Tchigeov1979()) : LEAN;
        double temperature = Temperature.fromCelsius(t);
        double enthalpy = meat.enthalpy(temperature, water, salt);
        assertThat(meat.temperature(enthalpy, water, salt)).isCloseTo(temperature, within(1e-10));
    }

    @Property
    void heatCapacityIsTheDerivativeOfEnthalpy(
            @ForAll @DoubleRange(min = -39.9, max = 299.9) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(6) double water,
            @ForAll @DoubleRange(min = 0, max = 0.4) @Scale(6) double salt,
            @ForAll boolean tchigeov) {
        MeatThermalProperties meat = tchigeov ? LEAN.withIceModel(new Tchigeov1979()) : LEAN;
        double temperature = Temperature.fromCelsius(t);
        double step = 1e-4;
        double freezing = meat.initialFreezingPoint(water, salt);
        // at the kinks no two-sided difference exists
        Assume.that(Math.abs(temperature - freezing) > 2 * step && Math.abs(t) > 2 * step);
        double difference =
                (meat.enthalpy(temperature + step, water, salt) - meat.enthalpy(temperature - step, water, salt))
                        / (2 * step);
        // central difference: rounding 1e-16 of 1e6 J/kg over 2e-4 K is 1e-6 J/(kg.K); truncation c''' step^2/6 is
        // below 1e-6 relative more than 2e-4 K below the freezing point
        double c = meat.heatCapacityPerSolids(temperature, water, salt);
        assertThat(difference).isCloseTo(c, within(1e-6 * c));
    }

    @Property
    void enthalpyIsContinuousAtTheFreezingPointAndAtZeroCelsius(
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(6) double water,
            @ForAll @DoubleRange(min = 0, max = 0.4) @Scale(6) double salt) {
        double tiny = 1e-9;
        for (double at : new double[] {LEAN.initialFreezingPoint(water, salt), Temperature.ZERO_CELSIUS}) {
            double below = LEAN.enthalpy(at - tiny, water, salt);
            double above = LEAN.enthalpy(at + tiny, water, salt);
            double steepest = LEAN.heatCapacityPerSolids(at - tiny, water, salt)
                    + LEAN.heatCapacityPerSolids(at + tiny, water, salt);
            assertThat(above - below).isBetween(0.0, steepest * 2 * tiny + 1e-6);
        }
    }

    @Property
    void enthalpyRisesWithTemperature(
            @ForAll @DoubleRange(min = -40, max = 299) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(6) double water,
            @ForAll @DoubleRange(min = 0, max = 0.4) @Scale(6) double salt) {
        assertThat(LEAN.heatCapacityPerSolids(Temperature.fromCelsius(t), water, salt))
                .isPositive();
    }

    @Property
    void iceNeverExceedsTheFreeWater(
            @ForAll @DoubleRange(min = -40, max = 20) @Scale(6) double t,
            @ForAll @DoubleRange(min = 0, max = 6) @Scale(6) double water) {
        double ice = LEAN.icePerSolids(Temperature.fromCelsius(t), water, 0);
        assertThat(ice).isBetween(0.0, Math.max(0, water - LEAN.boundWaterPerSolids()));
    }

    @Property
    void conductivityModelsLieBetweenTheirBounds(
            @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double first,
            @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double second,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double volume) {
        double low = new Series().mix(first, second, volume) * (1 - 1e-12);
        double high = new Parallel().mix(first, second, volume) * (1 + 1e-12);
        assertThat(new Levy1981().mix(first, second, volume)).isBetween(low, high);
        assertThat(new MaxwellEucken().mix(first, second, volume)).isBetween(low, high);
    }

    @Property
    void levyDoesNotCareWhichPhaseIsContinuous(
            @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double first,
            @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double second,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double volume) {
        double k = new Levy1981().mix(first, second, volume);
        assertThat(new Levy1981().mix(second, first, 1 - volume)).isCloseTo(k, within(1e-9 * k));
    }

    @Test
    void liquidAtZeroCelsiusHasNoEnthalpy() {
        assertThat(LEAN.enthalpy(Temperature.ZERO_CELSIUS, LEAN_WATER, 0.02)).isZero();
    }

    @Test
    void meltingAllFreeWaterTakesTheHeatOfFusion() {
        // between -40 and 0 C the enthalpy differs from that of supercooled liquid by ice times the heat of fusion at
        // -40 C,
        // 333.6 kJ/kg less the integral of c(water) - c(ice): 188.74304 - 77.63048 kJ/kg, by hand from the coefficients
        double t = Temperature.fromCelsius(-40);
        MeatThermalProperties neverFreezes =
                LEAN.withFreezingPointModel(new FreezingPointModel.Fixed(Temperature.fromCelsius(-30)));
        double ice = LEAN.icePerSolids(t, LEAN_WATER, 0) - neverFreezes.icePerSolids(t, LEAN_WATER, 0);
        double heat = neverFreezes.enthalpy(t, LEAN_WATER, 0) - LEAN.enthalpy(t, LEAN_WATER, 0);
        assertThat(heat / ice).isCloseTo(222.48744e3, within(0.01));
    }

    @Test
    void defaultFreezingPointOfLeanMeatIsThatOfChangAndTao() {
        // chang1981 by hand: 271.18 + 1.47 x 0.717 = 272.23399 K
        double water = 0.717 / 0.283;
        assertThat(LEAN.initialFreezingPoint(water, 0)).isCloseTo(272.23399, within(1e-9));
    }

    @Test
    void onePercentSaltLowersTheFreezingPointByAboutEightTenthsOfAKelvin() {
        // -1.86 K kg/mol x 2 x 0.93 x 0.231 mol/kg = 0.80 K: 1 % salt in meat of 74 % water (van 't Hoff with the
        // osmotic
        // coefficient 0.93 of Pitzer); the brine polynomial may differ by its own 0.01 K
        double salt = 0.01 / 0.25;
        double water = 0.74 / 0.25;
        assertThat(LEAN.initialFreezingPoint(water, 0) - LEAN.initialFreezingPoint(water, salt))
                .isCloseTo(0.80, within(0.01));
    }

    @Test
    void saltCountsAsAsh() {
        // salt on ash-free solids equals the same mass of ash
        MeatThermalProperties ashFree = MeatThermalProperties.of(new DryMatter(1, 0, 0, 0));
        MeatThermalProperties ashy = MeatThermalProperties.of(new DryMatter(0.8, 0, 0, 0.2));
        double t = Temperature.fromCelsius(40);
        assertThat(ashFree.heatCapacity(t, 3, 0.25)).isCloseTo(ashy.heatCapacity(t, 3 * 0.8, 0), within(1e-9));
        assertThat(ashFree.density(t, 3, 0.25)).isCloseTo(ashy.density(t, 3 * 0.8, 0), within(1e-9));
        assertThat(ashFree.conductivity(t, 3, 0.25)).isCloseTo(ashy.conductivity(t, 3 * 0.8, 0), within(1e-12));
    }

    @Test
    void dryMatterWithoutWaterConductsAsItsSolids() {
        double t = Temperature.fromCelsius(20);
        double fat = ChoiOkos1986.of(ChoiOkos1986.Component.FAT, ChoiOkos1986.Property.THERMAL_CONDUCTIVITY)
                .value(t);
        assertThat(MeatThermalProperties.of(new DryMatter(0, 1, 0, 0)).conductivity(t, 0, 0))
                .isEqualTo(fat);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 232.9, 574})
    void temperatureOutsideTheRangeIsRefusedWithTheValue(double temperature) {
        assertThatThrownBy(() -> LEAN.density(temperature, LEAN_WATER, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("meat temperature")
                .hasMessageContaining("K");
    }

    @Test
    void nanAndNegativeContentsAreRefused() {
        assertThatThrownBy(() -> LEAN.enthalpy(300, Double.NaN, 0)).hasMessageContaining("water per dry solids");
        assertThatThrownBy(() -> LEAN.enthalpy(300, 1, Double.NaN)).hasMessageContaining("salt per dry solids");
        assertThatThrownBy(() -> LEAN.enthalpy(300, 1, -0.1)).hasMessageContaining("-0.1");
        assertThatThrownBy(() -> LEAN.temperature(Double.NaN, 1, 0)).hasMessageContaining("enthalpy");
        assertThatThrownBy(() -> LEAN.temperature(-1e9, 1, 0)).hasMessageContaining("enthalpy");
    }

    @Test
    void publishedRangeEndsAtOneHundredAndFiftyDegrees() {
        assertThat(MeatThermalProperties.isPublishedAt(Temperature.fromCelsius(150)))
                .isTrue();
        assertThat(MeatThermalProperties.isPublishedAt(Temperature.fromCelsius(151)))
                .isFalse();
        assertThat(MeatThermalProperties.isPublishedAt(Double.NaN)).isFalse();
        assertThat(LEAN.heatCapacity(Temperature.fromCelsius(200), 0.1, 0)).isPositive();
    }
}
