package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.safety.Meat;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.units.Temperature;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannerTest {
    /** Small, lean, fatty, hollow and strongly drying pieces; attempted steps of some once held impossible states. */
    @ParameterizedTest
    @CsvSource({"quail-whole, oven-conventional", "duck-breast, oven-fan", "beef-stew-cube, simmer"})
    void planOfAnyPieceMeetsTheRuleAtItsLowerEnd(String cut, String appliance) {
        Plan plan = Planner.plan(request(cut, appliance, OptionalDouble.empty(), false), Runnable::run, 1);
        assertThat(plan.cooking().verdict().isMet()).isTrue();
        assertThat(plan.cooking().holdShare().low()).isGreaterThanOrEqualTo(1);
        assertThat(plan.result().massLoss().median()).isBetween(0.02, 0.45);
    }

    @Test
    void sameSeedGivesTheSamePlanOnAnyNumberOfThreads() {
        Request request = request("chicken-breast-skinless", "oven-fan", OptionalDouble.empty(), false);
        Plan alone = Planner.plan(request, Runnable::run, 7);
        Plan again = Planner.plan(request, task -> new Thread(task).start(), 7);
        assertThat(again).isEqualTo(alone);
    }

    @Test
    void vulnerableGuestsForceTheConsumerMinimum() {
        Request request = request("chicken-breast-skinless", "oven-fan", OptionalDouble.of(338.15), true);
        Plan plan = Planner.plan(request, Runnable::run, 1);
        assertThat(plan.cooking().verdict().isMet()).isTrue();
        assertThat(plan.cooking().peak().low()).isGreaterThanOrEqualTo(Temperature.fromFahrenheit(165));
    }

    @Test
    void wishBelowTheSafeTemperatureIsRaisedAndSaidSo() {
        Request request = request("beef-ribeye-steak", "oven-conventional", OptionalDouble.of(325.15), false);
        Plan plan = Planner.plan(request, Runnable::run, 1);
        assertThat(plan.cooking().peak().median()).isGreaterThan(328.15);
        assertThat(plan.cooking().reasons()).anyMatch(reason -> reason.startsWith("Raised from"));
    }

    /** "fish ... 145 F ... 15 s" (wac2022, Food Code 3-401.11(A)(1)): a usual core of 50 degrees Celsius is raised to it. */
    @Test
    void fishIsCookedToTheOneFigureThereIs() {
        Plan plan = Planner.plan(request("cod-fillet", "oven-fan", OptionalDouble.empty(), false), Runnable::run, 1);
        assertThat(plan.cooking().verdict().isMet()).isTrue();
        assertThat(plan.cooking().verdict().evidence().consumerMinimumMet()).isTrue();
        assertThat(plan.cooking().peak().low()).isGreaterThan(Temperature.fromFahrenheit(145));
        assertThat(plan.cautions()).extracting(Caution::id).contains("fish");
        Set<Caution.Situation> soaked = EnumSet.of(Caution.Situation.BRINED, Caution.Situation.SALTED);
        SafetyRule fish = plan.cooking().verdict().rule();
        assertThat(Caution.select(fish, soaked)).extracting(Caution::id).doesNotContain("salt");
        SafetyRule pork = new SafetyRule(Meat.INTACT, OptionalDouble.empty(), false, Kitchen.HOME);
        assertThat(Caution.select(pork, soaked)).extracting(Caution::id).contains("salt");
    }

    /** What the program promises of every plan it gives, whatever is asked for: its own verdict is met. */
    @Property(tries = 12)
    void noPlanServesBelowItsOwnVerdict(
            @ForAll("cuts") String cut,
            @ForAll("appliances") String appliance,
            @ForAll @IntRange(min = 45, max = 85) int core,
            @ForAll boolean vulnerable,
            @ForAll boolean thermometer) {
        Request asked = request(cut, appliance, OptionalDouble.of(Temperature.fromCelsius(core)), vulnerable);
        Request request =
                Requests.equipped(asked, new Request.Equipment(true, thermometer, OptionalInt.empty(), List.of()));
        try {
            Plan plan = Planner.plan(request, Runnable::run, 3);
            assertThat(plan.cooking().verdict().isMet())
                    .as(plan.cooking().verdict().reasons().toString())
                    .isTrue();
        } catch (PlanningException e) {
            assertThat(e)
                    .hasMessageContaining(" ")
                    .matches(refused -> !e.field().isEmpty());
        }
    }

    @Provide
    Arbitrary<String> cuts() {
        return Arbitraries.of(
                "chicken-breast-skinless", "pork-loin-chop", "beef-ribeye-steak", "cod-fillet", "quail-whole");
    }

    @Provide
    Arbitrary<String> appliances() {
        return Arbitraries.of("oven-fan", "oven-low", "simmer", "water-bath");
    }

    private static Request request(String id, String applianceId, OptionalDouble core, boolean vulnerable) {
        Request usual = Requests.of(
                id, applianceId, Request.Treatment.AUTO, OptionalDouble.empty(), Optional.empty(), List.of());
        return new Request(
                usual.food(),
                usual.salting(),
                usual.cook(),
                new Request.Taste(usual.taste().rawSalt(), core, OptionalDouble.empty()),
                usual.timing(),
                new Request.Guests(usual.guests().count(), vulnerable, Kitchen.HOME),
                List.of());
    }
}
