package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Liquid;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Mixing a bath from any liquid of the catalog. */
class BathMixerTest {
    private static final List<Liquid> LIQUIDS = Catalog.load().liquids().all();

    @Property(tries = 300)
    void meatLeftInAMatchedBathEndsAtTheTarget(
            @ForAll @IntRange(min = 0, max = 200) int which,
            @ForAll @Scale(4) @DoubleRange(min = 0.2, max = 4) double mass,
            @ForAll @Scale(4) @DoubleRange(min = 0.003, max = 0.015) double target,
            @ForAll @Scale(4) @DoubleRange(min = 0.0, max = 0.01) double present) {
        MeatInBath meat = MeatInBath.ofBought(1, 0.74, present, 0.95);
        Optional<Bath> bath = new BathMixer(liquid(which), mass, 0.5).matched(meat, target);
        bath.ifPresent(b -> {
            assertThat(meat.equilibrium(b.water(), b.salt()).meatSaltFraction()).isCloseTo(target, within(1e-12));
            assertThat(b.liquidMass()).isCloseTo(mass, within(1e-12));
            assertThat(b.addedSugar()).isCloseTo(0.5 * b.addedSalt(), within(1e-12));
        });
        if (bath.isEmpty()) {
            assertThat(meat.equilibrium(mass, 0).meatSaltFraction()).isGreaterThan(target - 1e-12);
        }
    }

    @Property(tries = 300)
    void aBathHasTheStrengthAskedFor(
            @ForAll @IntRange(min = 0, max = 200) int which,
            @ForAll @Scale(4) @DoubleRange(min = 0.005, max = 0.2) double strength) {
        Bath bath = new BathMixer(liquid(which), 1.5, 0).strong(strength);
        assertThat(bath.saltPerWater()).isCloseTo(strength, within(1e-12));
        assertThat(bath.liquidMass()).isCloseTo(1.5, within(1e-12));
    }

    private static Liquid liquid(int which) {
        return LIQUIDS.get(which % LIQUIDS.size());
    }
}
