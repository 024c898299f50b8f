package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.plan.SoakWindow.Speed;
import io.github.saltfront.quality.Band;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Temperature;
import org.junit.jupiter.api.Test;

/** Meat that was salted too much or too little. */
class MendingTest {
    private static final Cut CHOP = Catalog.load().cuts().get("pork-loin-chop");
    private static final Band LEVELS = new Band(0.005, 0.0075, 0.010);
    private static final double HOUR = 3600;

    // (0.0075 - 0.003) / 0.9925 of 0.8 kg
    @Test
    void mildMeatIsFinishedOnTheSurface() {
        Mending mending = mending(0.003, 2);
        assertThat(mending.verdict()).isEqualTo(Mending.Verdict.FINISH);
        assertThat(mending.finish().typical()).isCloseTo(0.8 * 0.0045 / 0.9925, within(1e-12));
        assertThat(mending.soakOut()).isEmpty();
    }

    @Test
    void meatWithinTheBandIsLeft() {
        assertThat(mending(0.008, 2).verdict()).isEqualTo(Mending.Verdict.LEAVE);
    }

    @Test
    void saltyMeatLosesSaltAndNeverMoreThanTheWaterCanHold() {
        Mending mending = mending(0.018, 2);
        assertThat(mending.verdict()).isEqualTo(Mending.Verdict.SOAK_OUT);
        SoakWindow window = mending.soakOut().orElseThrow();
        double before = 0.018;
        for (double time = HOUR; time <= 48 * HOUR; time += HOUR) {
            double salt = window.meanSalt(Speed.MEDIAN, time);
            assertThat(salt).isLessThan(before + 1e-6);
            before = salt;
        }
        // swelling dilutes the meat by a twentieth at most
        assertThat(window.meanSalt(Speed.FAST, 48 * HOUR)).isGreaterThan(0.93 * mending.end());
        assertThat(window.latest().earliest().orElseThrow())
                .isLessThan(window.latest().median().orElseThrow());
    }

    // balance by hand: 14.4 g of salt between 2 kg of water and 0.95 x water of 0.8 kg
    @Test
    void endIsTheMassBalance() {
        double water = 0.95 * 0.8 * CHOP.composition().normalized().water();
        double inMeat = 0.0144 * water / (2 + water);
        assertThat(mending(0.018, 2).end()).isCloseTo(inMeat / (0.8 * (1 - 0.018) + inMeat), within(1e-12));
    }

    private static Mending mending(double salt, double water) {
        BrineOrder.Food food = new BrineOrder.Food(
                CHOP.name(),
                CHOP.composition(),
                0.8,
                new Shape.Slab(0.025),
                CHOP.saltDiffusivity(),
                false,
                SaltedAlready.plain(0.0012));
        return new Mending(food, Band.exactly(salt), LEVELS, water, Temperature.fromCelsius(4));
    }
}
