package io.github.saltfront.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.safety.DeclaredProbeError;
import io.github.saltfront.safety.Placement;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes wrong in a kitchen: each fault is told, left out, and never credited. */
class FaultsTest {
    private static final int MEMBERS = 60;
    private static LiveSetup setup = Cooks.breast();
    private static LiveCook start = LiveCook.start(Cooks.breast(), MEMBERS, 1, Runnable::run);
    private static TwinCook twin = TwinCook.of(setup, 3);

    @BeforeAll
    static void knownProbe() {
        setup = Cooks.breast().withProbe(new DeclaredProbeError(0.5), Placement.colderBy(0));
        start = LiveCook.start(setup, MEMBERS, 1, Runnable::run);
        twin = TwinCook.of(setup, 3);
    }

    private static LiveCook absorbed(List<Reading> readings) {
        LiveCook cook = start.another();
        readings.forEach(cook::add);
        return cook;
    }

    private static Reading with(Reading reading, double celsius) {
        return new Reading(reading.probe(), reading.role(), reading.time(), Temperature.fromCelsius(celsius));
    }

    private static boolean warns(Outlook outlook, LiveWarning.Kind kind) {
        return outlook.warnings().stream().anyMatch(w -> w.kind() == kind);
    }

    @Test
    void soundReadingsAllCountAndNothingIsWarnedOfTheProbe() {
        LiveCook cook = absorbed(twin.readings(1200));
        Outlook outlook = cook.outlook(1200);
        assertThat(outlook.quality().leftOut()).isZero();
        assertThat(outlook.quality().shocks()).isZero();
        assertThat(warns(outlook, LiveWarning.Kind.PROBE)).isFalse();
        assertThat(warns(outlook, LiveWarning.Kind.UNIT)).isFalse();
    }

    @Test
    void fahrenheitReadAsCelsiusIsToldAndNeverConverted() {
        LiveCook cook = start.another();
        for (Reading reading : twin.readings(600)) {
            double fahrenheit = Temperature.toFahrenheit(reading.temperature());
            assertThat(cook.add(with(reading, fahrenheit))).isEqualTo(ReadingState.UNIT_IN_DOUBT);
        }
        Outlook outlook = cook.outlook(600);
        assertThat(outlook.quality().used()).isZero();
        assertThat(outlook.measured()).isEmpty();
        assertThat(outlook.warnings().get(0).kind()).isEqualTo(LiveWarning.Kind.UNIT);
        assertThat(outlook.warnings().get(0).text()).contains("Fahrenheit").contains("left out");
    }

    @Test
    void aProbePulledOutIntoTheOvenIsLeftOutUntilItIsBack() {
        LiveCook cook = start.another();
        List<Reading> readings = twin.readings(1200);
        int out = 0;
        for (Reading reading : readings) {
            boolean pulled = reading.time() >= 600 && reading.time() < 720;
            ReadingState state = cook.add(pulled ? with(reading, 150) : reading);
            assertThat(state.isLeftOut()).as("at %s s", reading.time()).isEqualTo(pulled);
            out += pulled ? 1 : 0;
        }
        assertThat(out).isGreaterThan(3);
        assertThat(cook.outlook(1200).quality().leftOut()).isEqualTo(out);
        assertThat(cook.outlook(1200).pull().timeLeft().p50())
                .isCloseTo(absorbed(readings).outlook(1200).pull().timeLeft().p50(), within(240.0));
    }

    @Test
    void aProbeLyingOnTheBenchIsNeverTakenForColdMeat() {
        LiveCook cook = absorbed(twin.readings(1500));
        for (double t = 1515; t < 2400; t += 15) {
            assertThat(cook.add(with(twin.reading(t), 21.0)).isLeftOut()).isTrue();
        }
        assertThat(warns(cook.outlook(2400), LiveWarning.Kind.PROBE)).isTrue();
    }

    @Test
    void aProbeMovedToAnotherSpotCountsAgainForThePredictionButVouchesForNoHold() {
        LiveCook cook = absorbed(twin.readings(900));
        for (double t = 915; t < 1500; t += 15) {
            Reading reading = twin.reading(t);
            cook.add(new Reading("core", reading.role(), t, reading.temperature() + 7));
        }
        Outlook outlook = cook.outlook(1500);
        assertThat(cook.state("core", 915)).isEqualTo(ReadingState.JUMPED);
        assertThat(cook.state("core", 1485)).isEqualTo(ReadingState.ACCEPTED);
        assertThat(warns(outlook, LiveWarning.Kind.PROBE)).isTrue();
        assertThat(outlook.measuredTimeLeft()).isPresent();
        assertThat(outlook.measured().orElseThrow().isShown()).isFalse();
    }

    @Test
    void aDeadBatteryIsToldAndItsGapIsNotBridgedForKill() {
        LiveSetup cooked = setup;
        List<ProbeTrack.Accepted> whole = new ArrayList<>();
        List<ProbeTrack.Accepted> broken = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            ProbeTrack.Accepted reading =
                    new ProbeTrack.Accepted(60.0 * i, Temperature.fromCelsius(60 + 0.05 * i), 0, 0);
            whole.add(reading);
            if (i < 10 || i > 30) {
                broken.add(reading);
            }
        }
        double all = MeasuredHold.of(whole, cooked).orElseThrow().lethality().share();
        double part = MeasuredHold.of(broken, cooked).orElseThrow().lethality().share();
        assertThat(part).isLessThan(0.6 * all);
        Outlook outlook = absorbed(twin.readings(900)).outlook(2000);
        assertThat(warns(outlook, LiveWarning.Kind.GAP)).isTrue();
    }

    @Test
    void readingsThatWereLeftOutBreakTheRecordInTwo() {
        List<ProbeTrack.Accepted> whole = new ArrayList<>();
        List<ProbeTrack.Accepted> split = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            double time = 60.0 * i;
            double temperature = Temperature.fromCelsius(60);
            whole.add(new ProbeTrack.Accepted(time, temperature, 0, 0));
            split.add(new ProbeTrack.Accepted(time, temperature, i < 20 ? 0 : 1, 0));
        }
        double all = MeasuredHold.of(whole, setup).orElseThrow().lethality().share();
        double half = MeasuredHold.of(split, setup).orElseThrow().lethality().share();
        // 40 stretches of a minute in one run; the longer half has 20
        assertThat(half).isCloseTo(all / 2, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theOrderOfArrivalAndRepeatsChangeNothing(long seed) {
        List<Reading> readings = twin.readings(900);
        Outlook inOrder = absorbed(readings).outlook(900);
        List<Reading> shuffled = new ArrayList<>(readings);
        shuffled.addAll(readings.subList(3, 12));
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(absorbed(shuffled).outlook(900)).isEqualTo(inOrder);
    }

    @Test
    void ofTwoReadingsAtOneTimeTheLowerCounts() {
        List<Reading> readings = twin.readings(900);
        LiveCook cook = absorbed(readings);
        Reading last = readings.get(readings.size() - 1);
        cook.add(with(last, Temperature.toCelsius(last.temperature()) + 1));
        assertThat(cook.outlook(900)).isEqualTo(absorbed(readings).outlook(900));
    }

    @Test
    void impossibleReadingsAreRefusedWithTheirValue() {
        assertThatThrownBy(() -> new Reading("core", Reading.Role.CORE, 0, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> new Reading("core", Reading.Role.CORE, 0, Temperature.fromCelsius(3000)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("700 K");
        assertThatThrownBy(() -> new Reading(" ", Reading.Role.CORE, 0, 300))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("name");
    }

    @Test
    void airOfTheOvenTellsItsErrorAndAnOpenDoor() {
        LiveCook cook = start.another();
        double setting = setup.request().cook().setting();
        for (double t = 0; t <= 1500; t += 30) {
            cook.add(new Reading("air", Reading.Role.OVEN_AIR, t, setting - 8));
        }
        Outlook closed = cook.outlook(1500);
        // normal prior of standard deviation 10 K / 1.645, one reading of 5 K: mean -8 K 37/(37 + 25) = -4.8 K
        assertThat(closed.quality().ovenError().p50()).isCloseTo(-4.8, within(1.5));
        assertThat(warns(closed, LiveWarning.Kind.DOOR)).isFalse();
        Outlook open = cook.absorb(new Reading("air", Reading.Role.OVEN_AIR, 1530, setting - 70));
        assertThat(warns(open, LiveWarning.Kind.DOOR)).isTrue();
    }
}
