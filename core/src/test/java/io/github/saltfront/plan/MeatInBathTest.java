package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Salt is conserved, and an equilibrium dose ends at its target and never beyond. */
class MeatInBathTest {
    @Property
    void saltIsConserved(
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 10) double mass,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 0.8) double water,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.01) double present,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 20) double bathWater,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.3) double strength,
            @ForAll @Scale(6) @DoubleRange(min = 0.85, max = 1.05) double partition) {
        MeatInBath meat = MeatInBath.ofBought(mass, water, present, partition);
        MeatInBath.Equilibrium end = meat.equilibrium(bathWater, strength * bathWater);
        double before = strength * bathWater + mass * present;
        assertThat(end.saltInMeat() + end.saltPerWater() * bathWater).isCloseTo(before, within(1e-12 * (1 + before)));
    }

    @Property
    void doseEndsAtItsTarget(
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 10) double mass,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 0.8) double water,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.002) double present,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 20) double bathWater,
            @ForAll @Scale(6) @DoubleRange(min = 0.003, max = 0.02) double target,
            @ForAll @Scale(6) @DoubleRange(min = 0.85, max = 1.05) double partition) {
        MeatInBath meat = MeatInBath.ofBought(mass, water, present, partition);
        double dose = meat.doseFor(bathWater, target);
        Assume.that(dose > 0 && dose < 0.35 * bathWater);
        assertThat(meat.equilibrium(bathWater, dose).meatSaltFraction()).isCloseTo(target, within(1e-12));
    }

    @Property
    void dryDoseEndsAtItsTarget(
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 10) double mass,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.3) double bone,
            @ForAll @Scale(6) @DoubleRange(min = 0.003, max = 0.02) double target) {
        DrySalting salting = DrySalting.toTarget(mass, bone, 0.0015, target);
        double edible = mass * (1 - bone);
        assertThat((salting.salt() + 0.0015 * edible) / (edible + salting.salt()))
                .isCloseTo(target, within(1e-12));
    }

    @Test
    void meatThatIsSaltierThanTheTargetGetsANegativeDose() {
        assertThat(MeatInBath.ofBought(1, 0.75, 0.02, 1).doseFor(0.5, 0.005)).isNegative();
        assertThat(DrySalting.toTarget(1, 0, 0.02, 0.005).salt()).isZero();
    }

    // 10 g salt draw 28 g water, 6 g draw 17 g (26.3 % saturated)
    @Test
    void saltDrawsNearlyThreeTimesItsWater() {
        double cold = io.github.saltfront.units.Temperature.fromCelsius(4);
        assertThat(DrySalting.ofShare(1, 0, 0.010).waterDrawn(cold) * 1000).isCloseTo(28, within(0.5));
        assertThat(DrySalting.ofShare(1, 0, 0.006).waterDrawn(cold) * 1000).isCloseTo(17, within(0.5));
    }

    @Test
    void impossibleValuesAreRefusedWithTheNumber() {
        assertThatThrownBy(() -> new MeatInBath(Double.NaN, 0.75, 0, 1)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new MeatInBath(1, 1.2, 0, 1))
                .hasMessage("water fraction of the meat must be between 0.05 and 1 kg/kg, got 1.2 kg/kg.");
    }
}
