package io.github.saltfront.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.CookSequence;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Cooks of several heats: which one is on, and that the reading which ends the main one knows what comes after. */
class SequenceTest {
    private static final int MEMBERS = 60;
    private static final double SEAR = 240;
    private static final CookSequence.Step PAN = pan();
    private static final LiveSetup SEARED_BEFORE = setup(List.of(PAN), List.of());
    private static final LiveSetup SEARED_AFTER = setup(List.of(), List.of(PAN));

    private static CookSequence.Step pan() {
        var appliance = Catalog.load().appliances().get("pan");
        return new CookSequence.Step(appliance, appliance.temperature().typical(), SEAR, 60);
    }

    private static LiveSetup setup(List<CookSequence.Step> before, List<CookSequence.Step> after) {
        Request alone = Cooks.setup("beef-strip-steak", "oven-low", 0.4, OptionalDouble.of(Temperature.fromCelsius(58)))
                .request();
        CookSequence sequence = new CookSequence(before, after, 120, 0, CookSequence.Rest.USUAL);
        Request.Cook cook = new Request.Cook(
                alone.cook().appliance(), alone.cook().setting(), alone.cook().altitude(), sequence);
        return LiveSetup.of(Planner.plan(
                new Request(
                        alone.food(),
                        alone.salting(),
                        cook,
                        alone.taste(),
                        alone.timing(),
                        alone.guests(),
                        alone.assumptions()),
                Runnable::run,
                1));
    }

    @Test
    void theFirstHeatEndsByTheClockOrWhenTheCookSaysSo() {
        LiveCook cook = LiveCook.start(SEARED_BEFORE, MEMBERS, 1, Runnable::run);
        assertThat(cook.heats()).hasSize(2);
        assertThat(cook.heats().get(1).main()).isTrue();
        assertThat(cook.heats().get(1).begin()).hasValue(SEAR);
        assertThat(cook.heats().get(1).told()).isFalse();
        double byClock = cook.outlook(SEAR).pull().timeLeft().p50();

        cook.tell(new CookEvent.HeatBegun(2 * SEAR, 2), Runnable::run);
        assertThat(cook.heats().get(1).begin()).hasValue(2 * SEAR);
        assertThat(cook.heats().get(1).told()).isTrue();
        // a pan heats more than a low oven, so that longer in it is sooner done
        assertThat(cook.outlook(SEAR).pull().timeLeft().p50()).isLessThan(byClock);
    }

    @Test
    void theIntervalHoldsATruthThatWasSearedBefore() {
        TwinCook twin = TwinCook.of(SEARED_BEFORE, 31);
        LiveCook cook = LiveCook.start(SEARED_BEFORE, MEMBERS, 1, Runnable::run);
        double half = twin.pullTime() / 2;
        twin.readings(half).forEach(cook::add);
        Spread left = cook.outlook(half).pull().timeLeft();
        assertThat(left.holds90(twin.pullTime() - half)).as(left.toString()).isTrue();
    }

    @Test
    void withASearToComeTheMainHeatEndsSooner() {
        Spread later = LiveCook.start(SEARED_AFTER, MEMBERS, 1, Runnable::run)
                .outlook(0)
                .pull()
                .coreThen();
        LiveSetup alone = setup(List.of(), List.of());
        Spread none = LiveCook.start(alone, MEMBERS, 1, Runnable::run)
                .outlook(0)
                .pull()
                .coreThen();
        assertThat(later.p50()).isLessThan(none.p50() - 1);
    }

    @Test
    void theLastHeatEndsByTheClockAndTheRestWhenItIsOut() {
        LiveCook cook = LiveCook.start(SEARED_AFTER, MEMBERS, 1, Runnable::run);
        assertThat(cook.heats().get(1).begin()).isEmpty();
        double out = 2400;
        Outlook searing = cook.tell(new CookEvent.HeatBegun(out, 2), Runnable::run);
        assertThat(searing.phase()).isEqualTo(Outlook.Phase.HEAT);
        assertThat(searing.pull().timeLeft().p50()).isCloseTo(SEAR, within(1.0));
        assertThat(searing.pull().advice()).isEqualTo(Outlook.Advice.SOON);
        assertThat(cook.outlook(out + SEAR + 1).pull().advice()).isIn(Outlook.Advice.NOW, Outlook.Advice.NOT_SAFE_YET);
        Outlook resting = cook.tell(new CookEvent.TakenOut(out + SEAR + 60), Runnable::run);
        assertThat(resting.phase()).isEqualTo(Outlook.Phase.REST);
        assertThat(resting.pull().advice()).isEqualTo(Outlook.Advice.OUT);
    }

    @Test
    void aHeatThatWasLeftOutIsOverAtOnceAndTheOrderOfTellingMakesNoDifference() {
        LiveSetup two = setup(List.of(PAN, PAN), List.of());
        Course skipped = Course.of(two, List.of(new CookEvent.HeatBegun(100, 3)));
        assertThat(skipped.begin(1)).isEqualTo(100);
        assertThat(skipped.begin(2)).isEqualTo(100);
        List<CookEvent> told = List.of(new CookEvent.HeatBegun(300, 2), new CookEvent.HeatBegun(500, 3));
        List<CookEvent> other = List.of(told.get(1), told.get(0));
        assertThat(Course.of(two, told).begin(1)).isEqualTo(300);
        assertThat(Course.of(two, other).begin(2))
                .isEqualTo(Course.of(two, told).begin(2));
    }

    @Test
    void theFrontOfHeatRunsFromTheFaceInwardAndMeetsTheExpectedCore() {
        LiveCook cook = LiveCook.start(SEARED_BEFORE, MEMBERS, 1, Runnable::run);
        List<FrontMoment> front = cook.front(0, 1200, 5);
        FrontMoment last = front.get(4);
        assertThat(last.time()).isEqualTo(1200);
        assertThat(last.temperatures()).hasSameSizeAs(FrontMoment.places()).isSorted();
        assertThat(last.temperatures().get(0))
                .isCloseTo(cook.fan(0, 1200, 2).get(1).core().p50(), within(1.0));
        assertThat(last.holdShare()).isGreaterThanOrEqualTo(front.get(0).holdShare());
    }
}
