package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.safety.LimitCheck.Outcome;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Limits of fsis2021 pp. 23-25, fsis1999 and wac2022, at their edges. */
class OfficialLimitsTest {
    private static TemperatureHistory history(double... hoursAndFahrenheit) {
        double[] times = new double[hoursAndFahrenheit.length / 2];
        double[] temperatures = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = 3600 * hoursAndFahrenheit[2 * i];
            temperatures[i] = Temperature.fromFahrenheit(hoursAndFahrenheit[2 * i + 1]);
        }
        return TemperatureHistory.of(times, temperatures);
    }

    @Test
    void comeUpOfJustUnderSixHoursPasses() {
        // 50 to 130 F in 5.99 h
        LimitCheck check = OfficialLimits.comeUp(history(0, 40, 1, 50, 6.99, 130, 7.5, 150));
        assertThat(check.outcome()).isEqualTo(Outcome.PASS);
        assertThat(check.measured()).isEqualTo(5.99 * 3600, within(1e-6));
        assertThat(check.id()).isEqualTo("come-up");
        assertThat(OfficialLimits.comeUp(history(0, 40, 1, 50, 7.01, 130, 7.5, 150))
                        .outcome())
                .isEqualTo(Outcome.FAIL);
    }

    @Test
    void comeUpCountsAllStaysInTheRange() {
        LimitCheck check =
                OfficialLimits.comeUp(history(0, 40, 0.1, 60, 4, 60, 4.1, 40, 5, 40, 5.1, 60, 9, 60, 9.2, 150));
        assertThat(check.outcome()).isEqualTo(Outcome.FAIL);
    }

    @Test
    void comeUpThatIsNotSeenWholeIsNotCovered() {
        assertThat(OfficialLimits.comeUp(history(0, 60, 1, 150)).outcome()).isEqualTo(Outcome.NOT_COVERED);
        assertThat(OfficialLimits.comeUp(history(0, 40, 1, 120)).outcome()).isEqualTo(Outcome.NOT_COVERED);
        assertThat(OfficialLimits.comeUp(history(0, 40, 7, 120, 8, 120)).outcome())
                .isEqualTo(Outcome.FAIL);
    }

    @Test
    void coolingAfterTheKillIsNoComeUp() {
        assertThat(OfficialLimits.comeUp(history(0, 40, 2, 150, 12, 60)).outcome())
                .isEqualTo(Outcome.PASS);
    }

    @Test
    void measuredComeUpRunsToTheCompletionOfTheKill() {
        TemperatureLog log = TemperatureLog.of(
                new double[] {0, 100, 200, 25_000}, new double[] {277, Temperature.fromFahrenheit(60), 289, 350});
        MeasuredRecord measured = MeasuredRecord.of(log, new DeclaredProbeError(0), Placement.colderBy(0));
        // the gap counts as its colder end for leaving the range, so it runs on to the last reading
        assertThat(OfficialLimits.comeUp(measured, OptionalDouble.empty()).outcome())
                .isEqualTo(Outcome.FAIL);
        assertThat(OfficialLimits.comeUp(measured, OptionalDouble.of(21_000)).outcome())
                .isEqualTo(Outcome.PASS);
    }

    @Test
    void foodCodeCoolingInTwoSteps() {
        List<LimitCheck> good = OfficialLimits.cooling(history(0, 160, 1, 135, 3, 70, 7, 41, 8, 38));
        assertThat(good).extracting(LimitCheck::outcome).containsExactly(Outcome.PASS, Outcome.PASS);
        assertThat(good.get(0).measured()).isEqualTo(7200, within(1e-6));
        assertThat(good.get(1).measured()).isEqualTo(21_600, within(1e-6));
        List<LimitCheck> slow = OfficialLimits.cooling(history(0, 160, 1, 135, 3.01, 70, 7.01, 41, 8, 38));
        assertThat(slow).extracting(LimitCheck::outcome).containsExactly(Outcome.FAIL, Outcome.FAIL);
    }

    @Test
    void coolingThatIsStillRunningFailsOnlyWhenTheTimeIsUp() {
        assertThat(OfficialLimits.cooling(history(0, 160, 1, 135, 2.5, 100)))
                .extracting(LimitCheck::outcome)
                .containsExactly(Outcome.NOT_COVERED, Outcome.NOT_COVERED);
        assertThat(OfficialLimits.cooling(history(0, 160, 1, 135, 3.5, 100)))
                .extracting(LimitCheck::outcome)
                .containsExactly(Outcome.FAIL, Outcome.NOT_COVERED);
    }

    @Test
    void coolingWithoutItsStartIsNotCovered() {
        assertThat(OfficialLimits.cooling(history(0, 120, 1, 65, 3, 40)))
                .extracting(LimitCheck::outcome)
                .containsExactly(Outcome.NOT_COVERED, Outcome.NOT_COVERED);
        assertThat(OfficialLimits.cooling(history(0, 38, 3, 38)))
                .extracting(LimitCheck::outcome)
                .containsExactly(Outcome.NOT_COVERED, Outcome.NOT_COVERED);
    }

    @Test
    void warmingUpAgainRestartsNothing() {
        // reaches 70 F in time, is warm again at 3 h: the last fall through 70 F counts
        assertThat(OfficialLimits.cooling(history(0, 150, 0.2, 135, 1, 65, 3, 75, 3.5, 60, 5, 40))
                        .get(0)
                        .outcome())
                .isEqualTo(Outcome.FAIL);
    }

    @Test
    void plantCoolingInTwoSteps() {
        assertThat(OfficialLimits.plantCooling(history(0, 150, 1, 130, 2.5, 80, 7.5, 40, 8, 39)))
                .extracting(LimitCheck::outcome)
                .containsExactly(Outcome.PASS, Outcome.PASS);
        assertThat(OfficialLimits.plantCooling(history(0, 150, 1, 130, 2.6, 80, 7.7, 40, 8, 39)))
                .extracting(LimitCheck::outcome)
                .containsExactly(Outcome.FAIL, Outcome.FAIL);
    }

    @Test
    void holdingColdAndHot() {
        assertThat(OfficialLimits.coldHolding(history(0, 38, 5, 41)).outcome()).isEqualTo(Outcome.PASS);
        LimitCheck warm = OfficialLimits.coldHolding(history(0, 38, 5, 41.2, 6, 39));
        assertThat(warm.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(warm.text()).isEqualTo("keeping cold: broken; warmest 5.1 °C, at most 5.0 °C");
        assertThat(OfficialLimits.hotHolding(history(0, 140, 5, 135)).outcome()).isEqualTo(Outcome.PASS);
        LimitCheck cool = OfficialLimits.hotHolding(history(0, 140, 5, 134, 6, 150));
        assertThat(cool.outcome()).isEqualTo(Outcome.FAIL);
        assertThat(cool.text()).contains("coldest 56.7 °C, at least 57.2 °C");
    }

    @Test
    void timeAsControlAndTimeOutAtHome() {
        assertThat(OfficialLimits.timeAsControl(history(0, 60, 4, 60)).outcome())
                .isEqualTo(Outcome.PASS);
        assertThat(OfficialLimits.timeAsControl(history(0, 60, 4.01, 60)).outcome())
                .isEqualTo(Outcome.FAIL);
        assertThat(OfficialLimits.timeAsControl(history(0, 140, 9, 140)).outcome())
                .isEqualTo(Outcome.PASS);
        assertThat(OfficialLimits.outOfRefrigeration(history(0, 68, 1.5, 68), false)
                        .outcome())
                .isEqualTo(Outcome.PASS);
        assertThat(OfficialLimits.outOfRefrigeration(history(0, 68, 1.5, 68), true)
                        .outcome())
                .isEqualTo(Outcome.FAIL);
        assertThat(OfficialLimits.outOfRefrigeration(history(0, 68, 2.1, 68), false)
                        .text())
                .isEqualTo("out of the refrigerator at home, 4 to 60 °C: broken; took 2.1 h, at most 2.0 h");
    }

    @Test
    void timeBetweenCountsPartsOfStretches() {
        TemperatureHistory rise = history(0, 0, 10, 100);
        assertThat(OfficialLimits.timeBetween(rise, Temperature.fromFahrenheit(40), Temperature.fromFahrenheit(60)))
                .isEqualTo(2 * 3600, within(1e-6));
        TemperatureHistory fall = history(0, 100, 10, 0);
        assertThat(OfficialLimits.timeBetween(fall, Temperature.fromFahrenheit(40), Temperature.fromFahrenheit(60)))
                .isEqualTo(2 * 3600, within(1e-6));
    }
}
