package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.units.Temperature;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MealPlannerTest {
    private static final ZonedDateTime DINNER = Requests.NOON.plusDays(1).withHour(19);

    @Test
    void dishThatNeedsAnotherSettingIsCookedFirstAndWaits() {
        Meal meal = plan(
                List.of(
                        dish("Loin", "pork-loin-roast", 160, false),
                        dish("Thighs", "chicken-thigh-boneless", 210, false)),
                Map.of());
        List<Meal.Use> oven = meal.uses();
        assertThat(oven).hasSize(2);
        assertThat(oven.get(0).to()).isBeforeOrEqualTo(oven.get(1).from());
        assertThat(meal.courses()).filteredOn(course -> course.delay() > 0).hasSize(1);
        for (Meal.Course course : meal.courses()) {
            Plan plan = course.plan();
            assertThat(plan.cooking().verdict().isMet()).isTrue();
            assertThat(plan.cooking().rest())
                    .isLessThanOrEqualTo(OfficialLimits.serving().out());
            assertThat(plan.clock().get(plan.clock().size() - 1).time()).isEqualTo(DINNER);
        }
        assertThat(meal.clock())
                .isSortedAccordingTo(Comparator.comparing(step -> step.step().time()));
        assertThat(meal.notes()).anyMatch(note -> note.contains("is cooked first and waits"));
    }

    @Test
    void twoOvensNeedNoWaiting() {
        Meal meal = plan(
                List.of(
                        dish("Loin", "pork-loin-roast", 160, false),
                        dish("Thighs", "chicken-thigh-boneless", 210, false)),
                Map.of("oven-fan", 2));
        assertThat(meal.courses()).allMatch(course -> course.delay() == 0);
    }

    @Test
    void openSettingGivesWay() {
        Meal meal = plan(
                List.of(
                        dish("Loin", "pork-loin-roast", 160, false),
                        dish("Thighs", "chicken-thigh-boneless", 210, true)),
                Map.of());
        assertThat(meal.courses()).allMatch(course -> course.delay() == 0);
        assertThat(meal.courses().get(1).plan().request().cook().setting()).isEqualTo(Temperature.fromCelsius(160));
        assertThat(meal.notes()).anyMatch(note -> note.contains("so that both share the oven"));
    }

    @Test
    void waitPastTheOfficialLimitIsRefusedWithWhatCanBeDone() {
        List<Meal.Dish> dishes = List.of(
                dish("Loin", "pork-loin-roast", 150, false),
                dish("Round", "beef-round-roast", 180, false),
                dish("Turkey", "turkey-breast-boneless", 210, false));
        assertThatThrownBy(() -> plan(dishes, Map.of()))
                .isInstanceOf(PlanningException.class)
                .hasMessageContaining("the official limit")
                .hasMessageContaining("Possible instead");
    }

    private static Meal plan(List<Meal.Dish> dishes, Map<String, Integer> counts) {
        return MealPlanner.plan(dishes, counts, Runnable::run, 1);
    }

    private static Meal.Dish dish(String name, String cut, double celsius, boolean open) {
        Request usual = Requests.of(
                cut,
                "oven-fan",
                Request.Treatment.SURFACE_SALT,
                OptionalDouble.empty(),
                Optional.of(DINNER),
                List.of());
        Request.Cook cook = usual.cook();
        Request set = usual.cookedBy(
                new Request.Cook(cook.appliance(), Temperature.fromCelsius(celsius), 0, cook.sequence()));
        return new Meal.Dish(name, open ? set : Requests.withGivenHeat(set));
    }
}
