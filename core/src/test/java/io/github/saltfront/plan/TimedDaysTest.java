package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** Days with stages of other lengths, against the plan and against whole plans of those lengths. */
class TimedDaysTest {
    private static final int SOAK = 0;
    private static final int HEAT = 1;
    private static final int REST = 2;

    private static final Plan BRINED = plan("chicken-breast-skinless", "oven-fan", Request.Treatment.WET_BRINE, 7);
    private static final TimedDays DAYS = TimedDays.of(BRINED, Runnable::run);

    private static Plan plan(String cut, String appliance, Request.Treatment treatment, int hours) {
        return Planner.plan(
                Requests.of(
                        cut,
                        appliance,
                        treatment,
                        OptionalDouble.empty(),
                        Optional.of(Requests.NOON.plusHours(hours)),
                        List.of()),
                Runnable::run,
                1);
    }

    private static TimedDay with(int stage, double factor) {
        List<Double> lengths = new ArrayList<>(DAYS.plannedLengths());
        lengths.set(stage, factor * lengths.get(stage));
        return DAYS.with(lengths, Runnable::run);
    }

    private static TimedDay.End end(TimedDay day, int stage) {
        return day.ends().get(stage);
    }

    @Test
    void theUnchangedDayIsThatOfThePlan() {
        TimedDay day = DAYS.unchanged();
        Plan.CookPlan cooking = BRINED.cooking();
        assertThat(day.pullTemperature()).isEqualTo(cooking.pullTemperature());
        assertThat(day.timeToPull().median()).isCloseTo(cooking.timeToPull().median(), within(1e-6));
        assertThat(day.peak().median()).isCloseTo(cooking.peak().median(), within(1e-6));
        assertThat(day.verdict().isMet()).isEqualTo(cooking.verdict().isMet());
        // salt and weight are not moved: they must agree by themselves, within the error of 30 members, a fifth of
        // their spread
        Interval salt = BRINED.result().meanSalt();
        assertThat(end(day, REST).meanSalt().median())
                .isCloseTo(salt.median(), within(0.2 * (salt.high() - salt.low())));
        Interval loss = BRINED.result().massLoss();
        assertThat(1 - end(day, REST).weight().median())
                .isCloseTo(loss.median(), within(0.2 * (loss.high() - loss.low())));
    }

    /** The solver is asked for 0.1 K here and for 0.02 K there, in 20 and in 40 layers. */
    @Test
    void theMedianFollowsThePicture() {
        Fronts sketch = DAYS.unchanged().fronts();
        Fronts picture = DAYS.planned();
        assertThat(sketch.spans()).isEqualTo(picture.spans());
        assertThat(sketch.coreAtEndOf(CookStages.HEAT)).isCloseTo(picture.coreAtEndOf(CookStages.HEAT), within(0.3));
        assertThat(sketch.weight(sketch.size() - 1)).isCloseTo(picture.weight(picture.size() - 1), within(0.005));
        assertThat(sketch.size()).isLessThan(picture.size());
    }

    @Test
    void aLongerHeatIsHotterDrierAndKillsMore() {
        TimedDay shorter = with(HEAT, 0.9);
        TimedDay longer = with(HEAT, 1.1);
        TimedDay same = DAYS.unchanged();
        assertThat(List.of(shorter.pullTemperature(), same.pullTemperature(), longer.pullTemperature()))
                .isSorted();
        assertThat(longer.pullTemperature()).isGreaterThan(same.pullTemperature() + 2);
        assertThat(end(longer, REST).weight().median())
                .isLessThan(end(shorter, REST).weight().median());
        assertThat(end(longer, REST).holdShare().low())
                .isGreaterThan(2 * end(same, REST).holdShare().low());
        assertThat(same.verdict().isMet()).isTrue();
        assertThat(shorter.verdict().isMet()).isFalse();
        assertThat(end(longer, SOAK)).isEqualTo(end(same, SOAK));
    }

    @Test
    void aLongerSoakIsSaltierAndMovesTheClock() {
        TimedDay longer = with(SOAK, 1.5);
        TimedDay same = DAYS.unchanged();
        assertThat(end(longer, SOAK).meanSalt().median())
                .isGreaterThan(1.1 * end(same, SOAK).meanSalt().median());
        // short times go with the square root of time (Crank 1975, The mathematics of diffusion, eq. 4.20); a weaker
        // bath takes off, the salt that was there before adds nothing
        assertThat(end(longer, SOAK).meanSalt().median())
                .isLessThan(Math.sqrt(1.5) * end(same, SOAK).meanSalt().median() * 1.02);
        double more = 0.5 * DAYS.plannedLengths().get(SOAK);
        assertThat(longer.fronts().spans().get(HEAT).clock())
                .isEqualTo(DAYS.planned().spans().get(HEAT).clock().plusSeconds(Math.round(more)));
        assertThat(longer.fronts().spans().get(SOAK).clock())
                .isEqualTo(DAYS.planned().spans().get(SOAK).clock());
    }

    /** What the sketch of a longer heat shows, a plan with that core temperature for a wish must confirm. */
    @Test
    void aWholePlanConfirmsTheSketch() {
        TimedDay sketch = with(HEAT, 1.12);
        Request old = BRINED.request();
        Request wished = new Request(
                old.food(),
                old.salting(),
                old.cook(),
                new Request.Taste(
                        old.taste().rawSalt(), OptionalDouble.of(sketch.peak().median()), OptionalDouble.empty()),
                new Request.Timing(old.timing().now(), Optional.empty()),
                old.guests(),
                old.assumptions());
        Plan plan = Planner.plan(wished, Runnable::run, 1);
        // a plan tells readings in halves, the search stops within 0.3 K
        assertThat(plan.cooking().pullTemperature()).isCloseTo(sketch.pullTemperature(), within(0.6));
        assertThat(plan.cooking().timeToPull().median())
                .isCloseTo(sketch.timeToPull().median(), within(60.0));
        assertThat(1 - plan.result().massLoss().median())
                .isCloseTo(end(sketch, REST).weight().median(), within(0.015));
        assertThat(plan.cooking().verdict().isMet()).isEqualTo(sketch.verdict().isMet());
    }

    @Test
    void faceAtATimeAndBathAreSketchedToo() {
        Plan pan = plan("pork-loin-chop", "pan", Request.Treatment.SURFACE_SALT, 7);
        TimedDays days = TimedDays.of(pan, Runnable::run);
        assertThat(days.unchanged().fronts().isTwoFaced()).isTrue();
        List<Double> lengths = new ArrayList<>(days.plannedLengths());
        lengths.set(0, lengths.get(0) + 60);
        TimedDay longer = days.with(lengths, Runnable::run);
        assertThat(longer.pullTemperature()).isGreaterThan(days.unchanged().pullTemperature() + 1);

        Plan bath = plan("chicken-breast-skinless", "water-bath", Request.Treatment.NONE, 7);
        TimedDays bathed = TimedDays.of(bath, Runnable::run);
        List<Double> twice = new ArrayList<>(bathed.plannedLengths());
        twice.set(0, 2 * twice.get(0));
        TimedDay held = bathed.with(twice, Runnable::run);
        assertThat(held.pullTemperature()).isLessThan(bath.request().cook().setting() + 0.1);
        assertThat(held.timeToPull().low()).isCloseTo(held.timeToPull().high(), within(1e-6));
        assertThat(held.ends().get(1).holdShare().low())
                .isGreaterThan(bathed.unchanged().ends().get(1).holdShare().low());
    }

    @Test
    void numbersDoNotDependOnThreads() {
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Double> lengths = new ArrayList<>(DAYS.plannedLengths());
            lengths.set(HEAT, 1.05 * lengths.get(HEAT));
            TimedDay alone = DAYS.with(lengths, Runnable::run);
            TimedDay shared = DAYS.with(lengths, two);
            assertThat(shared.ends()).isEqualTo(alone.ends());
            assertThat(shared.peak()).isEqualTo(alone.peak());
        } finally {
            two.shutdownNow();
        }
    }

    @Test
    void lengthsBeyondTheirBoundsAreRefused() {
        assertThatThrownBy(() -> with(HEAT, 1000))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("length of stage 2 (heat)")
                .hasMessageContaining("86400");
        assertThatThrownBy(() -> with(HEAT, Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> DAYS.with(List.of(60.0), Runnable::run)).hasMessageContaining("got 1");
        // pork chops rest 3 min by the official minimum (USDA FSIS, safe minimum internal temperature chart)
        Plan pan = plan("pork-loin-chop", "pan", Request.Treatment.NONE, 7);
        assertThat(TimedDays.of(pan, Runnable::run).bounds().get(1).shortest()).isEqualTo(180);
        assertThat(Temperature.toCelsius(
                        pan.cooking().verdict().rule().consumerMinimum().temperature()))
                .isCloseTo(62.78, within(0.01));
    }
}
