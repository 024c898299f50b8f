package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.transport.SaltSource;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Net gain splits into water and salt without remainder. */
class NetMassGainTest {
    private static final NetMassGain GAIN = NetMassGain.load();

    @Property
    void waterAndSaltGainedAddUpToTheNetGain(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.26) double strength,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double position,
            @ForAll @Scale(6) @DoubleRange(min = 0.85, max = 1.05) double partition) {
        double r = strength / (1 - strength);
        double water = GAIN.waterGain(r, 0.74, 0.0015, partition, position);
        double salt = partition * r * (0.74 + water) - 0.0015;
        assertThat(water + salt).isCloseTo(GAIN.gain(strength, position), within(1e-12));
    }

    @Test
    void swellingIsWaterPerDrySolids() {
        SaltSource.Swelling swelling = GAIN.swelling(0.75, 0, 1, 0);
        // 6 %: r = 0.06383, v = (0.11 - 0.04787) / 1.06383 = 0.05840; over 0.25 solids
        assertThat(swelling.excessWater(0.06 / 0.94)).isCloseTo(0.2336, within(1e-4));
        // water is lost in strong brine although salt goes in
        assertThat(swelling.excessWater(0.20 / 0.80)).isNegative();
    }

    // lopezalt2015: 3.2 % in plain water, 11.6 % in 6 % brine; osmochicken: 10.5-11 % WATER at 9.1 %
    @Test
    void publishedPointsLieInTheBand() {
        assertThat(GAIN.at(0).contains(0.032)).isTrue();
        assertThat(GAIN.at(0.06).contains(0.116)).isTrue();
        assertThat(GAIN.at(0.091).contains(0.1075)).isTrue();
        assertThat(GAIN.isTabulatedAt(0.27)).isFalse();
    }

    @Test
    void bandRisesEverywhere() {
        for (double w = 0; w <= 0.28; w += 0.001) {
            assertThat(GAIN.at(w).low()).isLessThanOrEqualTo(GAIN.at(w).high());
        }
    }
}
