package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GlanceTest {
    /** A look while a slider moves says what the plan will say, to what a cook would round. */
    @ParameterizedTest
    @CsvSource({"chicken-breast-skinless, oven-fan, 10", "pork-loin-roast, oven-conventional, -10"})
    void saysNearlyWhatTheWholePlanSays(String cut, String appliance, double hotter) {
        Request request = Requests.of(
                cut, appliance, Request.Treatment.DRY_SALT, OptionalDouble.of(6 * 3600), Optional.empty(), List.of());
        Plan before = Planner.plan(request, Runnable::run, 1);
        Request.Cook cook = request.cook();
        Request changed = request.cookedBy(
                new Request.Cook(cook.appliance(), cook.setting() + hotter, cook.altitude(), cook.sequence()));
        Plan glance = Planner.glance(changed, before, Runnable::run, 1);
        Plan whole = Planner.plan(changed, Runnable::run, 1);
        assertThat(glance.members()).isLessThan(whole.members());
        assertThat(glance.cooking().pullTemperature()).isCloseTo(whole.cooking().pullTemperature(), within(1.5));
        assertThat(glance.cooking().timeToPull().median()
                        / whole.cooking().timeToPull().median())
                .isCloseTo(1, within(0.06));
        assertThat(glance.result().massLoss().median())
                .isCloseTo(whole.result().massLoss().median(), within(0.01));
        assertThat(glance.result().meanSalt().median()
                        / whole.result().meanSalt().median())
                .isCloseTo(1, within(0.03));
    }

    private static Plan brined() {
        Request request = Requests.of(
                "chicken-breast-skinless",
                "oven-fan",
                Request.Treatment.WET_BRINE,
                OptionalDouble.empty(),
                Optional.empty(),
                List.of());
        return Planner.plan(request, Runnable::run, 1);
    }

    private static Request hotter(Request request, double by) {
        Request.Cook cook = request.cook();
        return request.cookedBy(
                new Request.Cook(cook.appliance(), cook.setting() + by, cook.altitude(), cook.sequence()));
    }

    /** The window of a look's own is read off fewer members, so that one searched anew would not be equal. */
    @Test
    void keepsTheSaltingWhenOnlyTheOvenChanges() {
        Plan before = brined();
        assertThat(before.salting().window()).isPresent();
        Plan glance = Planner.glance(hotter(before.request(), 10), before, Runnable::run, 1);
        assertThat(glance.salting()).isEqualTo(before.salting());
        assertThat(glance.cooking().timeToPull().median())
                .isLessThan(before.cooking().timeToPull().median());
    }

    @Test
    void saltsAnewWhenAnythingOfTheSaltingChanges() {
        Plan before = brined();
        Request request = before.request();
        Request.Taste taste = request.taste();
        Request saltier = new Request(
                request.food(),
                request.salting(),
                request.cook(),
                new Request.Taste(1.2 * taste.rawSalt(), taste.core(), taste.sodiumLimit(), taste.wishes()),
                request.timing(),
                request.guests(),
                request.equipment(),
                request.assumptions());
        Plan glance = Planner.glance(saltier, before, Runnable::run, 1);
        assertThat(glance.salting().target()).isGreaterThan(before.salting().target());
        Request.Food food = request.food();
        Request warmer = new Request(
                new Request.Food(
                        food.cut(),
                        food.meat(),
                        food.shape(),
                        food.pieces(),
                        food.pieceMass(),
                        food.edibleShare(),
                        food.startTemperature() + 5),
                request.salting(),
                request.cook(),
                taste,
                request.timing(),
                request.guests(),
                request.equipment(),
                request.assumptions());
        assertThat(Planner.glance(warmer, before, Runnable::run, 1).salting()).isNotEqualTo(before.salting());
    }

    @Test
    void saltsAnewWhenTheTimeIsTooShortForTheSaltingBefore() {
        Plan before = brined();
        Request request = before.request();
        Request.Timing soon = new Request.Timing(
                request.timing().now(), Optional.of(request.timing().now().plusSeconds((long)
                        (before.salting().time() + before.cooking().timeToPull().high()))));
        Request late = new Request(
                request.food(),
                request.salting(),
                request.cook(),
                request.taste(),
                soon,
                request.guests(),
                request.equipment(),
                request.assumptions());
        assertThat(Planner.glance(late, before, Runnable::run, 1).salting().time())
                .isLessThan(before.salting().time());
    }
}
