package io.github.saltfront.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Temperature;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for every log. */
class LethalityPropertiesTest {
    private static final HoldTable TABLE = HoldTable.poultry(Bird.OTHER, OptionalDouble.empty());

    /** Up to 40 readings, 1-290 s apart, 45-85 deg C: about the credited range and the growth range. */
    @Provide
    Arbitrary<TemperatureLog> logs() {
        Arbitrary<Double> steps = Arbitraries.doubles().between(1, 290);
        Arbitrary<Double> celsius = Arbitraries.doubles().between(45, 85);
        return Arbitraries.integers()
                .between(2, 40)
                .flatMap(n -> steps.list()
                        .ofSize(n)
                        .flatMap(s -> celsius.list().ofSize(n).map(c -> log(s, c))));
    }

    private static TemperatureLog log(List<Double> steps, List<Double> celsius) {
        double[] times = new double[steps.size()];
        double[] kelvin = new double[steps.size()];
        double time = 0;
        for (int i = 0; i < times.length; i++) {
            time += steps.get(i);
            times[i] = time;
            kelvin[i] = Temperature.fromCelsius(celsius.get(i));
        }
        return TemperatureLog.of(times, kelvin);
    }

    private static double[] times(TemperatureLog log) {
        double[] times = new double[log.size()];
        Arrays.setAll(times, log::time);
        return times;
    }

    private static double[] readings(TemperatureLog log) {
        double[] readings = new double[log.size()];
        Arrays.setAll(readings, log::reading);
        return readings;
    }

    private static double share(double[] times, double[] readings) {
        return record(TemperatureLog.of(times, readings)).lethality(TABLE).share();
    }

    private static MeasuredRecord record(TemperatureLog log) {
        return MeasuredRecord.of(
                log, InstrumentCheck.twoPoint(273.45, 372.5, 372.9, 0.6, 0.1), Placement.colderBy(0.3));
    }

    @Property(tries = 300)
    void shareNeverFallsWithTime(@ForAll("logs") TemperatureLog log) {
        double before = 0;
        for (int n = 1; n <= log.size(); n++) {
            double now = share(Arrays.copyOf(times(log), n), Arrays.copyOf(readings(log), n));
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
    }

    @Property(tries = 300)
    void shareNeverRisesWhenTheLogIsShiftedDown(
            @ForAll("logs") TemperatureLog log, @ForAll @DoubleRange(min = 0.01, max = 20) double shift) {
        double[] lower = Arrays.stream(readings(log)).map(k -> k - shift).toArray();
        double share = share(times(log), readings(log));
        assertThat(share(times(log), lower)).isLessThanOrEqualTo(share * (1 + 1e-12));
    }

    @Property(tries = 300)
    void shareDoesNotDependOnResampling(
            @ForAll("logs") TemperatureLog log, @ForAll @IntRange(min = 2, max = 7) int pieces) {
        int n = log.size();
        double[] times = new double[(n - 1) * pieces + 1];
        double[] kelvin = new double[times.length];
        for (int i = 0; i < n - 1; i++) {
            for (int k = 0; k < pieces; k++) {
                double weight = k / (double) pieces;
                times[i * pieces + k] = log.time(i) + weight * (log.time(i + 1) - log.time(i));
                kelvin[i * pieces + k] = log.reading(i) + weight * (log.reading(i + 1) - log.reading(i));
            }
        }
        times[times.length - 1] = log.time(n - 1);
        kelvin[times.length - 1] = log.reading(n - 1);
        double share = share(times(log), readings(log));
        assertThat(share(times, kelvin)).isEqualTo(share, within(1e-9 * Math.max(1, share)));
    }

    @Property(tries = 300)
    void duplicateReadingsChangeNothing(@ForAll("logs") TemperatureLog log, @ForAll Random random) {
        double[] times = new double[2 * log.size()];
        double[] kelvin = new double[2 * log.size()];
        for (int i = 0; i < log.size(); i++) {
            int earlier = random.nextInt(i + 1);
            times[2 * i] = log.time(i);
            kelvin[2 * i] = log.reading(i);
            times[2 * i + 1] = log.time(earlier);
            kelvin[2 * i + 1] = log.reading(earlier);
        }
        assertThat(share(times, kelvin)).isEqualTo(share(times(log), readings(log)));
    }

    @Property(tries = 300)
    void aGapIsNeverBridgedUpward(
            @ForAll("logs") TemperatureLog log,
            @ForAll @IntRange(min = 0, max = 39) int at,
            @ForAll @DoubleRange(min = 301, max = 20_000) double gap) {
        int cut = at % log.size();
        double[] times = times(log);
        for (int i = cut; i < times.length; i++) {
            times[i] += gap;
        }
        double withGap = share(times, readings(log));
        double[] known = times(log);
        assertThat(withGap).isLessThanOrEqualTo(share(known, readings(log)) * (1 + 1e-12) + 1e-12);
    }

    @Property(tries = 200)
    void removingReadingsSoThatAGapOpensNeverAddsShare(
            @ForAll("logs") TemperatureLog log, @ForAll @IntRange(min = 1, max = 39) int from) {
        int start = Math.min(from, log.size() - 1);
        int end = start;
        double[] times = times(log);
        while (end < log.size() && times[end] - times[start - 1] <= 300) {
            end++;
        }
        if (end >= log.size()) {
            return;
        }
        double[] fewerTimes = new double[log.size() - (end - start)];
        double[] fewer = new double[fewerTimes.length];
        for (int i = 0, j = 0; i < log.size(); i++) {
            if (i < start || i >= end) {
                fewerTimes[j] = times[i];
                fewer[j++] = log.reading(i);
            }
        }
        assertThat(share(fewerTimes, fewer)).isLessThanOrEqualTo(share(times, readings(log)) * (1 + 1e-12));
    }

    @Property(tries = 200)
    void disorderedClocksNeverAddShare(@ForAll("logs") TemperatureLog log, @ForAll Random random) {
        double[] disordered = times(log);
        int astray = 1 + random.nextInt(log.size() - 1);
        disordered[astray] = log.time(random.nextInt(astray)) - 0.5;
        double original = share(times(log), readings(log));
        assertThat(share(disordered, readings(log))).isLessThanOrEqualTo(original * (1 + 1e-12));
    }
}
