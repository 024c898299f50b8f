package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
}
