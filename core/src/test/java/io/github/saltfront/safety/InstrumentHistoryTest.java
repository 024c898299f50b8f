package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class InstrumentHistoryTest {
    private static final LocalDate MARCH = LocalDate.of(2026, 3, 1);
    private static final double HOLD = Temperature.fromCelsius(60);

    private static InstrumentHistory.Visit visit(LocalDate day, double iceErrorK) {
        return new InstrumentHistory.Visit(day, InstrumentCheck.icePoint(Temperature.ZERO_CELSIUS + iceErrorK, 0.1));
    }

    @Test
    void theLastCheckUpToTheDayCounts() {
        InstrumentHistory history = new InstrumentHistory(List.of(visit(MARCH.plusDays(20), 0.9), visit(MARCH, 0.3)));
        assertThat(history.on(MARCH.minusDays(1))).isEmpty();
        assertThat(history.on(MARCH.plusDays(19)).orElseThrow().day()).isEqualTo(MARCH);
        assertThat(history.on(MARCH.plusDays(20)).orElseThrow().check().corrected(HOLD))
                .isCloseTo(HOLD - 0.9, within(1e-9));
    }

    @Test
    void aDriftingThermometerIsDueInHalfTheTime() {
        InstrumentHistory steady = new InstrumentHistory(List.of(visit(MARCH, 0.3), visit(MARCH.plusDays(30), 0.4)));
        assertThat(steady.drift(HOLD).orElseThrow()).isCloseTo(-0.1, within(1e-9));
        assertThat(steady.daysLeft(MARCH.plusDays(30), 30, HOLD)).isEqualTo(30);
        InstrumentHistory drifting = new InstrumentHistory(List.of(visit(MARCH, 0.3), visit(MARCH.plusDays(30), 1.0)));
        assertThat(drifting.dueOn(30, HOLD)).contains(MARCH.plusDays(45));
        assertThat(drifting.daysLeft(MARCH.plusDays(50), 30, HOLD)).isEqualTo(-5);
    }

    @Test
    void aThermometerThatWasNeverCheckedIsDueNow() {
        InstrumentHistory none = new InstrumentHistory(List.of());
        assertThat(none.dueOn(30, HOLD)).isEmpty();
        assertThat(none.daysLeft(MARCH, 30, HOLD)).isZero();
        assertThat(none.drift(HOLD)).isEmpty();
        assertThatThrownBy(() -> none.dueOn(0, HOLD)).hasMessageContaining("got 0");
    }
}
