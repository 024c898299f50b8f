package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.saltfront.units.Temperature;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ThawingTest {
    private static final double POUND = 0.45359237;

    /**
     * "24 h per 4-5 lb" and "12-16 lb 3-4 d" in the refrigerator (USDA FSIS, Turkey Basics: Safe Thawing; row G108 of the safety
     * reference): half of all turkeys of 12 lb are thawed within the days advised for the two rows that meet there, 1 to 4; the plan
     * waits for the slow ones.
     */
    @Test
    void turkeyThawsInTheDaysThatAreAdvised() {
        Request turkey = frozen("turkey-whole", 12 * POUND, Optional.empty());
        Thawing thawing = Thawing.of(turkey, Runnable::run, 1).orElseThrow();
        assertThat(thawing.time().median() / 86400).isBetween(1.0, 4.0);
        assertThat(thawing.planned()).isGreaterThanOrEqualTo(thawing.time().high());
    }

    @Test
    void planBeginsWithThawingAndSaltsWhatIsThawed() {
        Request frozen = frozen("pork-loin-roast", 1.2, Optional.of(Requests.NOON.plusDays(4)));
        Plan plan = Planner.plan(frozen, Runnable::run, 1);
        Thawing thawing = plan.thawing().orElseThrow();
        Plan.Step first = plan.clock().get(0);
        Plan.Step second = plan.clock().get(1);
        assertThat(first.kind()).isEqualTo(Plan.StepKind.THAW);
        assertThat(first.time()).isAfterOrEqualTo(Requests.NOON);
        assertThat(first.time().plusSeconds((long) thawing.time().high())).isBeforeOrEqualTo(second.time());
        assertThat(plan.request().food().startTemperature()).isEqualTo(Temperature.fromCelsius(4));
        assertThat(plan.cooking().verdict().isMet()).isTrue();
    }

    @Test
    void tooLittleTimeToThawIsToldWithWhatItNeeds() {
        Request frozen = frozen("pork-loin-roast", 1.2, Optional.of(Requests.NOON.plusHours(8)));
        assertThatThrownBy(() -> Planner.plan(frozen, Runnable::run, 1))
                .isInstanceOf(PlanningException.class)
                .hasMessageContaining("to thaw in the refrigerator; there are 8 h");
    }

    @Test
    void coldMeatIsNotFrozen() {
        Request cold = Requests.of(
                "pork-loin-roast",
                "oven-fan",
                Request.Treatment.NONE,
                OptionalDouble.empty(),
                Optional.empty(),
                List.of());
        assertThat(Thawing.of(cold, Runnable::run, 1)).isEmpty();
    }

    private static Request frozen(String cut, double mass, Optional<ZonedDateTime> serve) {
        Request usual =
                Requests.of(cut, "oven-conventional", Request.Treatment.NONE, OptionalDouble.empty(), serve, List.of());
        Request.Food food = usual.food();
        return usual.of(new Request.Food(
                food.cut(),
                food.meat(),
                PieceShape.of(food.cut().orElseThrow(), mass, OptionalDouble.empty()),
                1,
                mass,
                food.edibleShare(),
                Temperature.fromCelsius(-18)));
    }
}
