package io.github.saltfront.live;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.safety.DeclaredProbeError;
import io.github.saltfront.safety.Placement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The interval closes on the truth, and what is measured stays apart from what is inferred. */
class LiveCookTest {
    private static final int MEMBERS = 120;
    private static final int COOKS = 40;

    /**
     * 40 cooks of one plan, each with a truth of its own. If 90 % intervals hold 90 % of truths, the number held is binomial with n = 40
     * and p = 0.9: below 32 (80 %) or above 39 (98 %) it comes with a probability of 3 %.
     */
    @Test
    @Tag("slow")
    void ninetyPercentIntervalsHoldTheTruePullTimeHalfWay() {
        LiveCook start = LiveCook.start(Cooks.breast(), MEMBERS, 1, Runnable::run);
        int held = 0;
        double before = 0;
        double after = 0;
        for (int seed = 0; seed < COOKS; seed++) {
            TwinCook twin = TwinCook.of(Cooks.breast(), 500 + seed);
            double truth = twin.pullTime();
            double half = truth / 2;
            LiveCook cook = start.another();
            before += cook.outlook(0).pull().timeLeft().width90();
            twin.readings(half).forEach(cook::add);
            if (cook.wantsRefresh()) {
                cook.refresh(Runnable::run);
            }
            Spread left = cook.outlook(half).pull().timeLeft();
            held += left.holds90(truth - half) ? 1 : 0;
            after += Math.min(7200, left.width90());
        }
        assertThat(held).isBetween(32, 39);
        assertThat(after).isLessThan(0.8 * before);
    }

    @Test
    void lowerReadingsNeverShowMoreKill() {
        LiveSetup setup = Cooks.breast().withProbe(new DeclaredProbeError(0.3), Placement.colderBy(0));
        List<ProbeTrack.Accepted> readings = new ArrayList<>();
        for (int i = 0; i <= 60; i++) {
            readings.add(new ProbeTrack.Accepted(30.0 * i, 320 + 0.3 * i, 0, 0));
        }
        double before = Double.POSITIVE_INFINITY;
        for (double shift = 0; shift < 5; shift += 0.5) {
            double lower = shift;
            List<ProbeTrack.Accepted> shifted = readings.stream()
                    .map(r -> new ProbeTrack.Accepted(r.time(), r.temperature() - lower, 0, 0))
                    .toList();
            double share =
                    MeasuredHold.of(shifted, setup).orElseThrow().lethality().share();
            assertThat(share).isLessThanOrEqualTo(before);
            before = share;
        }
    }

    @Test
    void withoutAKnownProbeNothingIsEverShownHoweverSureTheInference() {
        LiveCook cook = LiveCook.start(Cooks.breast(), 60, 1, Runnable::run);
        TwinCook twin = TwinCook.of(Cooks.breast(), 4);
        double late = twin.pullTime() + 600;
        twin.readings(late).forEach(cook::add);
        Outlook outlook = cook.outlook(late);
        assertThat(outlook.inferred().holdShare().p50()).isGreaterThan(1);
        assertThat(outlook.measured().orElseThrow().isShown()).isFalse();
        assertThat(outlook.measuredTimeLeft()).isEmpty();
        assertThat(outlook.pull().advice()).isIn(Outlook.Advice.NOW, Outlook.Advice.NOT_SAFE_YET);
    }

    @Test
    void aCookTakenOutRestsAndItsPeakComesNearTheTruth() {
        LiveCook cook = LiveCook.start(Cooks.breast(), 60, 1, Runnable::run);
        TwinCook plain = TwinCook.of(Cooks.breast(), 5);
        double out = Math.rint(plain.pullTime());
        TwinCook twin = TwinCook.of(Cooks.breast(), 5, List.of(new CookEvent.TakenOut(out)));
        twin.readings(out).forEach(cook::add);
        Outlook outlook = cook.tell(new CookEvent.TakenOut(out), Runnable::run);
        double peak = 0;
        for (double t = out; t < out + 900; t += 5) {
            peak = Math.max(peak, twin.core(t));
        }
        assertThat(outlook.phase()).isEqualTo(Outlook.Phase.REST);
        assertThat(outlook.pull().advice()).isEqualTo(Outlook.Advice.OUT);
        // within the 90 % interval and the noise of the probe
        assertThat(peak)
                .isBetween(
                        outlook.plate().peak().p05() - 1, outlook.plate().peak().p95() + 1);
    }

    @Test
    void aSettingThatWasToldMovesThePullTime() {
        LiveCook cook = LiveCook.start(Cooks.breast(), 60, 1, Runnable::run);
        TwinCook twin = TwinCook.of(Cooks.breast(), 6);
        twin.readings(600).forEach(cook::add);
        double before = cook.outlook(600).pull().timeLeft().p50();
        double setting = Cooks.breast().request().cook().setting();
        Outlook cooler = cook.tell(new CookEvent.SettingChanged(600, setting - 60), Runnable::run);
        assertThat(cooler.pull().timeLeft().p50()).isGreaterThan(1.1 * before);
    }
}
