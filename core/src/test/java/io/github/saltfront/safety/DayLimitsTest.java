package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.safety.LimitCheck.Outcome;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits of fsis2021 pp. 23-25, wac2022 and fsisdangerzone along a day. */
class DayLimitsTest {
    private static final double HOUR = 3600;

    private static TemperatureHistory history(double... hoursAndCelsius) {
        double[] times = new double[hoursAndCelsius.length / 2];
        double[] temperatures = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = HOUR * hoursAndCelsius[2 * i];
            temperatures[i] = Temperature.fromCelsius(hoursAndCelsius[2 * i + 1]);
        }
        return TemperatureHistory.of(times, temperatures);
    }

    private static DayLimits day(TemperatureHistory core, TemperatureHistory surface, double heat, double end) {
        return DayLimits.of(core, List.of(surface), heat * HOUR, end * HOUR);
    }

    @Test
    void aColdSoakBreaksNothing() {
        TemperatureHistory cold = history(0, 4, 20, 4.9, 21, 70, 22, 65);
        DayLimits limits = day(cold, cold, 20, 21);
        assertThat(limits.coldBefore()).isTrue();
        assertThat(limits.before()).hasSize(1);
        assertThat(limits.before().get(0).isNear()).isFalse();
        assertThat(limits.comeUpKept()).isTrue();
        assertThat(limits.comeUp()).hasSize(1);
        // kept hot above 60 °C to the end
        assertThat(limits.after()).hasSize(1);
        assertThat(limits.after().get(0).measured()).isZero();
        assertThat(limits.checks()).hasSize(3);
    }

    @Test
    void theWarmestPlaceCountsBeforeTheHeat() {
        // five hours on the bench: the middle stays cold, the surface does not
        TemperatureHistory core = history(0, 2, 5, 4, 6, 70);
        TemperatureHistory surface = history(0, 2, 0.01, 15, 5, 18, 6, 75);
        DayLimits limits = day(core, surface, 5, 6);
        assertThat(limits.coldBefore()).isFalse();
        assertThat(limits.before()).extracting(LimitCheck::id).containsExactly("time-control", "consumer-out");
        assertThat(limits.before()).extracting(LimitCheck::outcome).containsOnly(Outcome.FAIL);
        assertThat(limits.before().get(0).measured()).isEqualTo(4.99 * HOUR, within(40.0));
        assertThat(limits.after()).isEmpty();
    }

    @Test
    void threeHoursOnTheBenchBreakTheHouseholdRuleAlone() {
        TemperatureHistory core = history(0, 15, 3, 15, 4, 70);
        DayLimits limits = day(core, core, 3, 4);
        assertThat(limits.before()).extracting(LimitCheck::outcome).containsExactly(Outcome.PASS, Outcome.FAIL);
        assertThat(limits.coldBefore()).isFalse();
        assertThat(limits.before().get(0).isNear()).isTrue();
    }

    @Test
    void aLateComeUpIsBrokenAndNear() {
        TemperatureHistory slow = history(0, 4, 1, 10, 8, 55, 8.5, 60, 9, 59);
        DayLimits limits = day(slow, slow, 0, 8.5);
        assertThat(limits.comeUpKept()).isFalse();
        assertThat(limits.comeUp().get(0).measured()).isGreaterThan(6 * HOUR);
        assertThat(limits.comeUp().get(0).limit()).isEqualTo(6 * HOUR);
        assertThat(limits.before()).isEmpty();
        assertThat(limits.coldBefore()).isTrue();
        TemperatureHistory near = history(0, 4, 1, 10, 5.8, 54.5, 6, 60, 6.1, 59.9);
        LimitCheck check = day(near, near, 0, 6).comeUp().get(0);
        assertThat(check.outcome()).isEqualTo(Outcome.PASS);
        assertThat(check.isNear()).isTrue();
    }

    @Test
    void aComeUpThatIsNotSeenWholeIsLeftOut() {
        TemperatureHistory warmStart = history(0, 20, 1, 70, 2, 66);
        assertThat(day(warmStart, warmStart, 0, 1).comeUp()).isEmpty();
    }

    @Test
    void afterTheHeatEitherTheCoolingOrTheTwoHoursCount() {
        TemperatureHistory out = history(0, 4, 1, 70, 1.5, 59, 4.5, 25);
        LimitCheck check = day(out, out, 0, 1).after().get(0);
        assertThat(check.id()).isEqualTo("consumer-out");
        assertThat(check.outcome()).isEqualTo(Outcome.FAIL);
        TemperatureHistory core = history(0, 4, 1, 70, 1.5, 57.3, 3, 20, 6, 4);
        TemperatureHistory outside = history(0, 4, 1, 75, 1.2, 57.3, 2, 18, 6, 3);
        List<LimitCheck> cooled = day(core, outside, 0, 1).after();
        assertThat(cooled).extracting(LimitCheck::id).containsExactly("cooling-first", "cooling-total");
        assertThat(cooled).extracting(LimitCheck::outcome).containsOnly(Outcome.PASS);
        // the clock starts with the outside at 1.2 h and stops with the middle at 2.96 h
        assertThat(cooled.get(0).measured()).isEqualTo(1.76 * HOUR, within(60.0));
        TemperatureHistory late = history(0, 4, 1, 70, 1.5, 57.3, 4, 20, 7, 4);
        assertThat(day(late, late, 0, 1).after().get(0).outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void growthIsThatOfTheWorstPlace() {
        TemperatureHistory core = history(0, 4, 4, 4, 5, 70);
        TemperatureHistory surface = history(0, 30, 4, 30, 5, 70);
        DayLimits limits = day(core, surface, 4, 5);
        // Salmonella at 30 °C: 0.5102 log10/h without lag (oscar2002), four hours and the way up
        assertThat(limits.growthBefore()).isBetween(4 * 0.5102, 4 * 0.5102 + 0.4);
        assertThat(limits.growthAfter()).isZero();
        TemperatureHistory kept = history(0, 4, 1, 70, 2, 46.4, 3, 46.4);
        // Clostridium perfringens at its optimum: 2.6318 log10/h (perfringens2019)
        assertThat(day(kept, kept, 0, 1).growthAfter()).isBetween(2.6318, 2.6318 + 0.6);
        assertThat(day(kept, kept, 0, 1).growthBefore()).isLessThan(0.5);
    }

    @Test
    void aDayWithoutHeatHasOnlyItsColdPart() {
        TemperatureHistory cold = history(0, 3, 10, 3);
        DayLimits limits = DayLimits.of(cold, List.of(cold), 10 * HOUR, 10 * HOUR);
        assertThat(limits.checks()).hasSize(1);
        assertThat(limits.comeUpKept()).isTrue();
        assertThat(limits.growthBefore()).isZero();
    }

    @Test
    void aPartOfAHistoryMustLieWithinIt() {
        TemperatureHistory whole = history(0, 0, 2, 20);
        TemperatureHistory part = whole.between(0.5 * HOUR, 2 * HOUR);
        assertThat(part.size()).isEqualTo(2);
        assertThat(part.temperature(0)).isEqualTo(Temperature.fromCelsius(5), within(1e-9));
        assertThat(part.temperature(1)).isEqualTo(Temperature.fromCelsius(20), within(1e-9));
        assertThatThrownBy(() -> whole.between(0, 3 * HOUR)).hasMessageContaining("10800");
        assertThatThrownBy(() -> whole.between(-1, HOUR)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> whole.between(HOUR, HOUR)).isInstanceOf(IllegalArgumentException.class);
    }
}
