package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.units.Temperature;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlannerTest {
    private static final Catalog CATALOG = Catalog.load();
    private static final ZonedDateTime NOON = ZonedDateTime.parse("2026-11-28T12:00+01:00[Europe/Berlin]");

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

    @Test
    void fishIsRefusedWithTheConsumerMinimum() {
        assertThatThrownBy(() -> Planner.plan(
                        request("cod-fillet", "oven-fan", OptionalDouble.empty(), false), Runnable::run, 1))
                .isInstanceOf(PlanningException.class)
                .hasMessageContaining("63 °C");
    }

    private static Request request(String id, String applianceId, OptionalDouble core, boolean vulnerable) {
        Cut cut = CATALOG.cuts().get(id);
        double mass = cut.size().mass().typical();
        Appliance appliance = CATALOG.appliances().get(applianceId);
        return new Request(
                new Request.Food(
                        Optional.of(cut),
                        MeatModel.of(cut),
                        PieceShape.of(cut, mass, OptionalDouble.empty()),
                        2,
                        mass,
                        1 - cut.traits().boneShare(),
                        Temperature.fromCelsius(4)),
                new Request.Salting(
                        Request.Treatment.AUTO,
                        CATALOG.salts().get("table-salt-fine"),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Request.Liquor.USUAL,
                        Temperature.fromCelsius(4),
                        SaltedAlready.of(Optional.of(cut), cut.composition().nativeSalt(), SaltedAlready.Label.NONE)),
                new Request.Cook(appliance, appliance.temperature().typical(), 0),
                new Request.Taste(0.0075, core, OptionalDouble.empty()),
                new Request.Timing(NOON, Optional.empty()),
                new Request.Guests(2, vulnerable, Kitchen.HOME),
                List.of());
    }
}
