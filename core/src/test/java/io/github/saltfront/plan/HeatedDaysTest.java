package io.github.saltfront.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** Days to several readings that part from a common way; invented request. */
class HeatedDaysTest {
    private static final Request REQUEST = Requests.of(
            "pork-loin-chop",
            "oven-low",
            Request.Treatment.SURFACE_SALT,
            OptionalDouble.empty(),
            Optional.empty(),
            List.of());

    private static final CookStages STAGES = new CookStages(REQUEST, Planner.rule(REQUEST));

    private static DayEnsemble ensemble() {
        return new DayEnsemble(
                REQUEST.food().meat(),
                REQUEST.food().shape(),
                REQUEST.food().startTemperature(),
                Draw.ensemble(24, 3),
                Planner.settings(Planner.rule(REQUEST)));
    }

    private static List<DayEnsemble.StageFor> to(double celsius) {
        return STAGES.through(Temperature.fromCelsius(celsius), SaltExchange.NONE);
    }

    @Test
    void partingFromALowerReadingComesToWhatGoingThereAtOnceDoes() {
        List<MemberDay> parted =
                HeatedDays.of(ensemble(), to(52), Runnable::run).after(to(60), Runnable::run);
        List<MemberDay> atOnce = ensemble().run(to(60), Runnable::run);
        for (int i = 0; i < parted.size(); i++) {
            MemberDay.StageEnd a = parted.get(i).end(CookStages.HEAT);
            MemberDay.StageEnd b = atOnce.get(i).end(CookStages.HEAT);
            assertThat(a.end()).isCloseTo(b.end(), within(0.01 * b.end()));
            assertThat(a.coreTemperature()).isCloseTo(b.coreTemperature(), within(1e-3));
            MemberDay.StageEnd c = parted.get(i).end(CookStages.REST);
            MemberDay.StageEnd d = atOnce.get(i).end(CookStages.REST);
            assertThat(c.coreTemperature()).isCloseTo(d.coreTemperature(), within(0.1));
            assertThat(c.massLoss()).isCloseTo(d.massLoss(), within(0.003));
            assertThat(parted.get(i).ends()).hasSameSizeAs(atOnce.get(i).ends());
        }
    }

    @Test
    void whatIsTriedBeforeAndOnHowManyThreadsMakesNoDifference() {
        HeatedDays days = HeatedDays.of(ensemble(), to(52), Runnable::run);
        List<Double> first = losses(days.after(to(60), Runnable::run));
        days.after(to(56), Runnable::run);
        days.after(to(63), Runnable::run);
        assertThat(losses(days.after(to(60), Runnable::run))).isEqualTo(first);
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            assertThat(losses(HeatedDays.of(ensemble(), to(52), two).after(to(60), two)))
                    .isEqualTo(first);
        } finally {
            two.shutdown();
        }
    }

    @Test
    void theReadingItPartsFromMayBeTheOneAskedFor() {
        List<MemberDay> parted =
                HeatedDays.of(ensemble(), to(60), Runnable::run).after(to(60), Runnable::run);
        List<MemberDay> atOnce = ensemble().run(to(60), Runnable::run);
        for (int i = 0; i < parted.size(); i++) {
            assertThat(parted.get(i).end(CookStages.HEAT).end())
                    .isEqualTo(atOnce.get(i).end(CookStages.HEAT).end());
            assertThat(parted.get(i).end(CookStages.REST).massLoss())
                    .isCloseTo(atOnce.get(i).end(CookStages.REST).massLoss(), within(1e-6));
        }
    }

    private static List<Double> losses(List<MemberDay> days) {
        return days.stream().map(day -> day.end(CookStages.REST).massLoss()).toList();
    }
}
