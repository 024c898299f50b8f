package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Days of several heats; invented requests. */
class CookSequenceTest {
    private static final Request ALONE = Requests.of(
            "pork-loin-chop",
            "oven-low",
            Request.Treatment.SURFACE_SALT,
            OptionalDouble.empty(),
            Optional.empty(),
            List.of());

    private static CookSequence.Step step(String id, double celsius, double minutes) {
        Appliance appliance = Catalog.load().appliances().get(id);
        return new CookSequence.Step(appliance, Temperature.fromCelsius(celsius), 60 * minutes, 60);
    }

    private static Request with(List<CookSequence.Step> before, List<CookSequence.Step> after) {
        Request.Cook cook = ALONE.cook();
        return new Request(
                ALONE.food(),
                ALONE.salting(),
                new Request.Cook(
                        cook.appliance(),
                        cook.setting(),
                        cook.altitude(),
                        new CookSequence(before, after, 60, 0, CookSequence.Rest.USUAL)),
                ALONE.taste(),
                ALONE.timing(),
                ALONE.guests(),
                ALONE.assumptions());
    }

    private static MemberDay day(Request request, double pull, SaltExchange salt) {
        CookStages stages = new CookStages(request, Planner.rule(request));
        DayEnsemble one = new DayEnsemble(
                request.food().meat(),
                request.food().shape(),
                request.food().startTemperature(),
                List.of(Draw.MEDIAN),
                Planner.settings(Planner.rule(request)));
        return one.run(stages.through(Temperature.fromCelsius(pull), salt), Runnable::run)
                .get(0);
    }

    @Test
    void aSearAfterTheOvenHeatsTheMiddleAndBrownsWithoutLengtheningTheOven() {
        MemberDay plain = day(ALONE, 50, SaltExchange.NONE);
        MemberDay seared = day(with(List.of(), List.of(step("pan", 230, 3))), 50, SaltExchange.NONE);
        double oven = plain.end(CookStages.HEAT).end();
        // half the layers of a day that stays in one grid
        assertThat(seared.end(CookStages.HEAT).end()).isBetween(0.995 * oven, 1.005 * oven);
        assertThat(seared.peakCore(0)).isGreaterThan(plain.peakCore(0) + 1);
        assertThat(seared.end(CookStages.REST).massLoss())
                .isGreaterThan(plain.end(CookStages.REST).massLoss());
    }

    @Test
    void aPanBeforeTheOvenShortensIt() {
        MemberDay plain = day(ALONE, 55, SaltExchange.NONE);
        MemberDay browned = day(with(List.of(step("pan", 220, 4)), List.of()), 55, SaltExchange.NONE);
        MemberDay.StageEnd heat = browned.end(CookStages.HEAT);
        assertThat(browned.heatStart()).isZero();
        assertThat(heat.start()).isEqualTo(240);
        assertThat(heat.end() - heat.start())
                .isLessThan(plain.end(CookStages.HEAT).end() - 120);
    }

    /** Dry salt laid on before the pan is in the meat or on it when the oven begins; none is lost on the way. */
    @Test
    void saltGoesOnBeforeTheFirstHeat() {
        Request request = with(List.of(step("pan", 200, 2)), List.of());
        MemberDay salted =
                day(request, 55, SaltStages.dose(request, 0.006 * request.food().mass()));
        MemberDay plain = day(request, 55, SaltExchange.NONE);
        double taken = salted.ends().get(0).meanSalt() - plain.ends().get(0).meanSalt();
        double served = salted.end(CookStages.REST).meanSalt()
                - plain.end(CookStages.REST).meanSalt();
        assertThat(taken).isGreaterThan(2e-4);
        assertThat(served).isBetween(taken, 0.009);
    }

    @Test
    void theCheckInThreeDimensionsSaysWhyItWasNotMade() {
        assertThat(SolidCheck.whyNot(ALONE)).isEmpty();
        assertThat(SolidCheck.whyNot(with(List.of(), List.of(step("steam", 100, 2)))))
                .isEmpty();
        assertThat(SolidCheck.whyNot(with(List.of(), List.of(step("pan", 230, 2)))))
                .hasValueSatisfying(why -> assertThat(why).contains("one face is heated at a time"));
    }

    @Test
    void aStepNeedsATime() {
        assertThatThrownBy(() -> step("pan", 200, 0)).hasMessageContaining("time of a step");
    }
}
