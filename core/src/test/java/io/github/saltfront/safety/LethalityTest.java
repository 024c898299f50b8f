package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LethalityTest {
    /** Chicken with 5 % fat asks for 1650 s at 140 F (fsis2021 Table 3). */
    private static final HoldTable CHICKEN = HoldTable.poultry(Bird.CHICKEN, OptionalDouble.of(0.05));

    private static TemperatureHistory history(double... timesAndFahrenheit) {
        double[] times = new double[timesAndFahrenheit.length / 2];
        double[] temperatures = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = timesAndFahrenheit[2 * i];
            temperatures[i] = Temperature.fromFahrenheit(timesAndFahrenheit[2 * i + 1]);
        }
        return TemperatureHistory.of(times, temperatures);
    }

    @Test
    void twoHalfCooksWithAColdSpellDoNotAddUp() {
        Lethality half = Lethality.of(CHICKEN, history(0, 140, 900, 140));
        Lethality interrupted =
                Lethality.of(CHICKEN, history(0, 140, 900, 140, 900.001, 100, 2000, 100, 2000.001, 140, 2900, 140));
        assertThat(half.share()).isEqualTo(900 / 1650.0, within(1e-9));
        assertThat(interrupted.share()).isEqualTo(900 / 1650.0, within(1e-6));
        assertThat(interrupted.isFulfilled()).isFalse();
    }

    @Test
    void aDipThatStaysAboveTheGrowthRangeDoesNotResetTheHold() {
        Lethality dipped =
                Lethality.of(CHICKEN, history(0, 140, 900, 140, 900.001, 130, 2000, 130, 2000.001, 140, 2900, 140));
        assertThat(dipped.share()).isEqualTo(1800 / 1650.0, within(1e-5));
    }

    @Test
    void aKillCompletedBeforeTheFoodCoolsStaysComplete() {
        assertThat(Lethality.of(CHICKEN, history(0, 140, 1650, 140, 3000, 40)).isFulfilled())
                .isTrue();
    }

    @Test
    void momentOfCompletionIsFoundInsideAStretch() {
        Lethality flat = Lethality.of(CHICKEN, history(0, 140, 5000, 140));
        assertThat(flat.fulfilledAt().orElseThrow()).isEqualTo(1650, within(1e-3));
        TemperatureHistory rising = history(100, 136, 1000, 150);
        double at = Lethality.of(CHICKEN, rising).fulfilledAt().orElseThrow();
        double reached = 136 + 14 * (at - 100) / 900;
        assertThat(history(100, 136, at, reached).integrate(CHICKEN)).isEqualTo(1, within(1e-6));
        assertThat(Lethality.of(CHICKEN, history(0, 140, 1600, 140)).fulfilledAt())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 %, not shown",
        "0.5, 50 %, not shown",
        "0.9999, 99 %, not shown",
        "1, 100 % or more, 7 or more",
        "40, 100 % or more, 7 or more"
    })
    void partialLogsAreNeverShownAndFiguresAreCapped(double share, String percent, String logs) {
        Lethality lethality = new Lethality(share, 7, OptionalDouble.empty());
        assertThat(lethality.shareText()).isEqualTo(percent);
        assertThat(lethality.logReductionText()).isEqualTo(logs);
    }

    @Test
    void fractionOfALogIsPrintedWithOneDecimal() {
        assertThat(new Lethality(1, 6.5, OptionalDouble.empty()).logReductionText())
                .isEqualTo("6.5 or more");
    }

    @Test
    void historyRefusesWhatIsNoCurve() {
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {}, new double[] {}))
                .hasMessageContaining("at least one");
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {0, 1}, new double[] {300}))
                .hasMessageContaining("equally many");
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {0, 0}, new double[] {300, 300}))
                .hasMessageContaining("rise strictly");
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {0}, new double[] {60}))
                .hasMessageContaining("between 150 and 700 K, got 60 K");
        assertThatThrownBy(() -> TemperatureHistory.of(new double[] {Double.NaN}, new double[] {300}))
                .hasMessageContaining("time 0");
    }

    @Test
    void historyCopiesItsArrays() {
        double[] times = {0, 10};
        double[] temperatures = {300, 310};
        TemperatureHistory history = TemperatureHistory.of(times, temperatures);
        times[0] = 5;
        temperatures[1] = 999;
        assertThat(history.time(0)).isZero();
        assertThat(history.temperature(1)).isEqualTo(310);
        assertThat(history.size()).isEqualTo(2);
    }
}
