package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What a check may change in a plan: corrections on kill go to the safe side only. */
class SolidCheckTest {
    private static SolidCheck check(double time, double peak, double hold, boolean timed) {
        return new SolidCheck(2000, time, 1000, peak, 330, hold, 2, timed);
    }

    @Test
    void colderAndLaterThanInLayersLowersEverything() {
        SolidCheck.Correction correction = check(1100, 328, 1, false).correction();
        assertThat(correction.timeFactor()).isCloseTo(1.1, within(1e-12));
        assertThat(correction.peakDifference()).isEqualTo(-2);
        assertThat(correction.holdFactor()).isEqualTo(0.5);
        assertThat(correction.safeDifference()).isEqualTo(-2);
    }

    @Test
    void hotterThanInLayersNeverEarnsKill() {
        SolidCheck.Correction correction = check(900, 332, 6, false).correction();
        assertThat(correction.timeFactor()).isCloseTo(0.9, within(1e-12));
        assertThat(correction.peakDifference()).isEqualTo(2);
        assertThat(correction.holdFactor()).isEqualTo(1);
        assertThat(correction.safeDifference()).isZero();
    }

    @Test
    void whereTheHoldEndsTheHeatTimesAreNeverShortened() {
        assertThat(check(900, 332, 2, true).correction().timeFactor()).isEqualTo(1);
        assertThat(check(1200, 332, 2, true).correction().timeFactor()).isCloseTo(1.2, within(1e-12));
        assertThat(check(1200, 332, 1, true).correction().holdFactor()).isEqualTo(1);
    }
}
