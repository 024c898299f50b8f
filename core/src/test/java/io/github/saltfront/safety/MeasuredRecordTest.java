package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Temperature;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MeasuredRecordTest {
    private static final HoldTable CHICKEN = HoldTable.poultry(Bird.CHICKEN, OptionalDouble.of(0.05));

    private static TemperatureLog log(double... timesAndCelsius) {
        double[] times = new double[timesAndCelsius.length / 2];
        double[] temperatures = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = timesAndCelsius[2 * i];
            temperatures[i] = Temperature.fromCelsius(timesAndCelsius[2 * i + 1]);
        }
        return TemperatureLog.of(times, temperatures);
    }

    private static MeasuredRecord exact(TemperatureLog log) {
        return new MeasuredRecord(log, new DeclaredProbeError(0), Placement.colderBy(0), 0, 300);
    }

    @Test
    void repeatedReadingsAreDropped() {
        TemperatureLog log = log(0, 60, 60, 61, 60, 61, 120, 62, 60, 61, 180, 62);
        assertThat(log.size()).isEqualTo(4);
        assertThat(log.repeated()).isEqualTo(2);
        assertThat(log.clockJumps()).isZero();
        assertThat(log.setAside()).isZero();
    }

    @Test
    void ofTwoReadingsAtOneTimeTheLowerCounts() {
        TemperatureLog log = log(0, 60, 60, 64, 60, 62, 120, 60);
        assertThat(log.size()).isEqualTo(3);
        assertThat(log.contradicting()).isEqualTo(1);
        assertThat(log.reading(1)).isEqualTo(Temperature.fromCelsius(62));
        assertThat(log(0, 60, 60, 62, 60, 64).reading(1)).isEqualTo(Temperature.fromCelsius(62));
    }

    @Test
    void readingsAfterAJumpBackAreSetAsideUntilTheClockHasCaughtUp() {
        TemperatureLog log = log(0, 60, 100, 60, 200, 60, 50, 61, 150, 61, 250, 62, 300, 62);
        assertThat(log.setAside()).isEqualTo(2);
        assertThat(log.clockJumps()).isEqualTo(1);
        assertThat(log.size()).isEqualTo(5);
        assertThat(log.isClockLostBefore(3)).isTrue();
        assertThat(log.isClockLostBefore(4)).isFalse();
        assertThat(exact(log).gaps()).isEqualTo(1);
        assertThat(exact(log).longestInterval()).isEqualTo(100);
        assertThat(log.highest()).isEqualTo(Temperature.fromCelsius(62));
    }

    @Test
    void theHoldStartsAgainAfterALostClock() {
        double[] t = new double[21];
        double[] k = new double[21];
        for (int i = 0; i < 10; i++) {
            t[i] = 100 * i;
        }
        for (int i = 10; i < 21; i++) {
            t[i] = i == 10 ? 500 : 100 * (i - 1);
        }
        java.util.Arrays.fill(k, Temperature.fromFahrenheit(140));
        k[10] += 1;
        Lethality lethality = exact(TemperatureLog.of(t, k)).lethality(CHICKEN);
        // 900 s before the jump and 900 s of known time after it: neither run reaches 1650 s
        assertThat(lethality.share()).isEqualTo(900 / 1650.0, within(1e-9));
    }

    @Test
    void aGapIsCreditedNothingAndStartsTheHoldAgain() {
        MeasuredRecord gap = exact(log(0, 60, 200, 60, 700, 70, 900, 60));
        MeasuredRecord before = exact(log(0, 60, 200, 60));
        MeasuredRecord after = exact(log(700, 70, 900, 60));
        assertThat(gap.gaps()).isEqualTo(1);
        assertThat(gap.longestInterval()).isEqualTo(500);
        assertThat(after.lethality(CHICKEN).share())
                .isGreaterThan(before.lethality(CHICKEN).share());
        assertThat(gap.lethality(CHICKEN).share())
                .isEqualTo(after.lethality(CHICKEN).share(), within(1e-12));
        MeasuredRecord longer = new MeasuredRecord(gap.log(), gap.probe(), gap.placement(), 0, 500);
        assertThat(longer.lethality(CHICKEN).share())
                .isGreaterThan(after.lethality(CHICKEN).share());
    }

    @Test
    void runningShareFollowsTheReadings() {
        MeasuredRecord measured = exact(log(0, 60, 165, 60, 330, 60, 800, 60, 965, 60));
        // fsis2021 Table 3: 1650 s at 140 F for 5 % fat; the gap of 470 s starts the hold again
        assertThat(measured.runningShare(CHICKEN)).hasSize(5);
        double[] expected = {0, 0.1, 0.2, 0.2, 0.2};
        for (int i = 0; i < 5; i++) {
            assertThat(measured.runningShare(CHICKEN)[i]).isEqualTo(expected[i], within(1e-9));
        }
    }

    @Test
    void aSecondJumpOfTheClockIsCountedToo() {
        TemperatureLog log = log(0, 60, 100, 60, 50, 61, 150, 61, 120, 62, 200, 62);
        assertThat(log.clockJumps()).isEqualTo(2);
        assertThat(log.setAside()).isEqualTo(2);
    }

    @Test
    void exactlyTheLongestGapIsStillKnown() {
        assertThat(exact(log(0, 60, 300, 60)).gaps()).isZero();
        assertThat(exact(log(0, 60, 300.1, 60)).gaps()).isEqualTo(1);
    }

    @Test
    void errorAndPlaceAreTakenOffTheReading() {
        TemperatureLog shown = log(0, 63, 200, 63);
        MeasuredRecord measured = new MeasuredRecord(shown, new DeclaredProbeError(1), Placement.colderBy(2), 0, 300);
        assertThat(measured.lethality(CHICKEN).share())
                .isEqualTo(exact(log(0, 60, 200, 60)).lethality(CHICKEN).share(), within(1e-9));
    }

    @Test
    void aSlowProbeIsNotBelievedWhileItCools() {
        TemperatureLog falling = log(0, 66, 300, 60);
        MeasuredRecord slow = new MeasuredRecord(falling, new DeclaredProbeError(0), Placement.colderBy(0), 50, 300);
        // falls by 0.02 K/s, so with a response time of 50 s it shows 1 K too much
        assertThat(slow.lethality(CHICKEN).share())
                .isEqualTo(exact(log(0, 65, 300, 59)).lethality(CHICKEN).share(), within(1e-9));
        TemperatureLog rising = log(0, 60, 300, 66);
        MeasuredRecord slowRise = new MeasuredRecord(rising, new DeclaredProbeError(0), Placement.colderBy(0), 50, 300);
        assertThat(slowRise.lethality(CHICKEN).share())
                .isEqualTo(exact(rising).lethality(CHICKEN).share());
    }

    @Test
    void boundsOfAGapAreItsWarmerAndItsColderEnd() {
        MeasuredRecord measured =
                new MeasuredRecord(log(0, 60, 1000, 20), new DeclaredProbeError(1), Placement.colderBy(2), 0, 300);
        TemperatureHistory upper = measured.upperHistory();
        TemperatureHistory lower = measured.lowerHistory();
        assertThat(Temperature.toCelsius(upper.temperature(upper.size() - 2))).isEqualTo(61, within(1e-9));
        assertThat(Temperature.toCelsius(upper.temperature(upper.size() - 1))).isEqualTo(21, within(1e-9));
        assertThat(Temperature.toCelsius(lower.temperature(0))).isEqualTo(57, within(1e-9));
        assertThat(Temperature.toCelsius(lower.temperature(1))).isEqualTo(17, within(1e-9));
        assertThat(lower.time(1)).isEqualTo(0.001, within(1e-12));
        assertThat(upper.size()).isEqualTo(4);
        assertThat(exact(log(0, 60, 100, 61)).upperHistory().size()).isEqualTo(2);
    }

    @Test
    void logRefusesWhatIsNoReading() {
        assertThatThrownBy(() -> TemperatureLog.of(new double[0], new double[0]))
                .hasMessageContaining("at least one");
        assertThatThrownBy(() -> TemperatureLog.of(new double[] {0}, new double[] {60}))
                .hasMessageContaining("reading 1 must be between 150 and 700 K");
        assertThatThrownBy(() -> TemperatureLog.of(new double[] {0, Double.NaN}, new double[] {300, 300}))
                .hasMessageContaining("time of reading 2");
        assertThatThrownBy(() -> TemperatureLog.of(new double[] {0, 1}, new double[] {300}))
                .hasMessageContaining("equally many");
    }

    @Test
    void recordRefusesWrongSettings() {
        TemperatureLog log = log(0, 60);
        assertThatThrownBy(() -> new MeasuredRecord(log, new UnknownProbeError(), Placement.unknown(), -1, 300))
                .hasMessageContaining("response time");
        assertThatThrownBy(() -> new MeasuredRecord(log, new UnknownProbeError(), Placement.unknown(), 0, 0))
                .hasMessageContaining("longest gap");
        assertThatThrownBy(() -> Placement.colderBy(-1)).hasMessageContaining("coldest spot");
        assertThatThrownBy(() -> new DeclaredProbeError(Double.NaN)).hasMessageContaining("probe error");
    }

    @Test
    void impossibleReadingsAreNoticed() {
        assertThat(exact(log(0, 60, 10, 105)).hasImpossibleReading()).isFalse();
        assertThat(exact(log(0, 60, 10, 105.1)).hasImpossibleReading()).isTrue();
    }

    @Test
    void twoPointCheckCorrectsAlongTheStraightLine() {
        // reads 1.0 K too high in ice and 2.0 K too high in boiling water at 95 deg C: at 97/2 + 0.5 it is 1.5 K too
        // high
        InstrumentCheck check = InstrumentCheck.twoPoint(
                Temperature.fromCelsius(1), Temperature.fromCelsius(97), Temperature.fromCelsius(95), 0.6, 0.2);
        assertThat(Temperature.toCelsius(check.corrected(Temperature.fromCelsius(1))))
                .isEqualTo(0, within(1e-9));
        assertThat(Temperature.toCelsius(check.corrected(Temperature.fromCelsius(97))))
                .isEqualTo(95, within(1e-9));
        assertThat(Temperature.toCelsius(check.corrected(Temperature.fromCelsius(49))))
                .isEqualTo(47.5, within(1e-9));
        assertThat(check.bound(Temperature.fromCelsius(1))).isEqualTo(0.3, within(1e-9));
        assertThat(check.bound(Temperature.fromCelsius(97))).isEqualTo(0.7, within(1e-9));
        assertThat(check.bound(Temperature.fromCelsius(49))).isEqualTo(0.5, within(1e-9));
        assertThat(Temperature.toCelsius(check.lower(Temperature.fromCelsius(49))))
                .isEqualTo(47, within(1e-9));
        assertThat(Temperature.toCelsius(check.upper(Temperature.fromCelsius(49))))
                .isEqualTo(48, within(1e-9));
        assertThat(check.isKnown()).isTrue();
        assertThat(check.isWithinFoodCodeTolerance()).isFalse();
        assertThat(check.describe())
                .contains("1.0 °C (+1.0)")
                .contains("97.0 °C (+2.0")
                .contains("95.00 °C");
    }

    @Test
    void icePointAloneCarriesTheErrorOverAndAllowsOneKelvin() {
        InstrumentCheck check = InstrumentCheck.icePoint(Temperature.fromCelsius(-0.5), 0);
        assertThat(Temperature.toCelsius(check.corrected(Temperature.fromCelsius(60))))
                .isEqualTo(60.5, within(1e-9));
        assertThat(Temperature.toCelsius(check.lower(Temperature.fromCelsius(60))))
                .isEqualTo(59.5, within(1e-9));
        assertThat(check.isWithinFoodCodeTolerance()).isTrue();
        assertThat(InstrumentCheck.icePoint(Temperature.fromCelsius(0), 1).bound(330))
                .isEqualTo(1.5, within(1e-9));
    }

    @Test
    void aProbeThatIsFarOffIsRefused() {
        assertThatThrownBy(() -> InstrumentCheck.icePoint(Temperature.fromCelsius(5.1), 0))
                .hasMessageContaining("within 5 °C of 0.0 °C, got 5.1 °C")
                .hasMessageContaining("replace the probe");
        assertThatThrownBy(() -> InstrumentCheck.icePoint(Double.NaN, 0)).hasMessageContaining("ice water");
        assertThatThrownBy(() -> InstrumentCheck.twoPoint(273, 360, 373, 0.6, 0.1))
                .hasMessageContaining("boiling water");
        assertThatThrownBy(() -> InstrumentCheck.twoPoint(273, 373, 400, 0.6, 0.1))
                .hasMessageContaining("boiling point");
    }

    @Test
    void bothKindsOfBoundAreToldInWords() {
        assertThat(new DeclaredProbeError(0.5).describe()).isEqualTo("declared, up to 0.5 °C either way");
        assertThat(new DeclaredProbeError(0.5).upper(300)).isEqualTo(300.5);
        assertThat(new DeclaredProbeError(0.5).isKnown()).isTrue();
        assertThat(new UnknownProbeError().describe()).isEqualTo("not checked");
        assertThat(new UnknownProbeError().lower(300)).isEqualTo(300);
        assertThat(new UnknownProbeError().upper(300)).isEqualTo(300);
        assertThat(new UnknownProbeError().isKnown()).isFalse();
        assertThat(Placement.unknown().describe()).isEqualTo("not stated");
        assertThat(Placement.unknown().isKnown()).isFalse();
        assertThat(Placement.colderBy(1.5).describe()).contains("1.5 °C").contains("declared");
    }

    @Test
    void readingTooHighLengthensTheHoldAsTabulated() {
        // factor = 10^(error/z), printed to two decimals
        for (CsvTable.Row row : CsvTable.load(
                        io.github.saltfront.verification.OfficialHoldTablesMarker.class, "safety_error_effect.csv")
                .rows()) {
            FirstOrderKill kill = new FirstOrderKill(60, Temperature.fromCelsius(60), row.number("z_k"));
            double reading = Temperature.fromCelsius(62);
            double truth = new DeclaredProbeError(row.number("error_k")).lower(reading);
            assertThat(kill.rate(reading) / kill.rate(truth)).isEqualTo(row.number("factor"), within(0.00501));
        }
    }
}
