package io.github.saltfront.app.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.app.probe.LogOptions.TemperatureUnit;
import io.github.saltfront.app.probe.LogOptions.TimeUnit;
import io.github.saltfront.units.Temperature;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureLogReaderTest {
    private static LogReading read(String text) throws LogReadException {
        return read(text, LogOptions.NONE);
    }

    private static LogReading read(String text, LogOptions options) throws LogReadException {
        return TemperatureLogReader.read(text.getBytes(StandardCharsets.UTF_8), options);
    }

    private static List<LogProblem> problemsOf(String text, LogOptions options) {
        return catchThrowableOfType(LogReadException.class, () -> read(text, options))
                .problems();
    }

    private static void assertReadings(LogReading reading, double... timesAndCelsius) {
        assertThat(reading.log().size()).isEqualTo(timesAndCelsius.length / 2);
        for (int i = 0; i < reading.log().size(); i++) {
            assertThat(reading.log().time(i) - reading.log().time(0))
                    .as("time " + i)
                    .isEqualTo(timesAndCelsius[2 * i] - timesAndCelsius[0], within(1e-6));
            assertThat(Temperature.toCelsius(reading.log().reading(i)))
                    .as("reading " + i)
                    .isEqualTo(timesAndCelsius[2 * i + 1], within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "time_s,core_c\n0,60.5\n60,61\n",
                "\uFEFFTime (s);Core (°C)\r\n0;60,5\r\n60;61,0\r\n",
                "Elapsed seconds\tProbe 1 [degC]\n0\t60.5\n60\t61\n",
                "Zeit_min;Kern °C\n0;60,5\n1;61\n",
                "Time,Core °F\n0:00:00,140.9\n0:01:00,141.8\n",
                "Timestamp,Temp (F)\n2026-03-01T18:00:00,140.9\n2026-03-01T18:01:00,141.8\n",
                "Timestamp,Temp (C)\n2026-03-01 18:00:00.000+01:00,60.5\n2026-03-01 17:01:00Z,61\n",
                "Date,Time,Temp C\n05/01/2026,18:00:00,60.5\n05/01/2026,18:01:00,61\n",
                "Date/Time,Temp C\n\"01/05/2026, 11:59:30 PM\",60.5\n\"01/06/2026, 12:00:30 AM\",61\n",
                "Datum;Temp C\n05.01.2026 18:00;60,5\n05.01.2026 18:01;61,0\n",
                "time_s,core\n0,60.5 °C\n60,61 °C\n",
                "# exported\n\nLogger model 7\ntime_s,core_c\n0,60.5\n\n60,61\n",
                "time (mm:ss),core_c\n00:00,60.5\n01:00,61\n",
                "time (h:mm),core_c\n0:00,60.5\n0:01,61\n",
                "timestamp,core_c\n1767636000,60.5\n1767636060,61\n",
                "timestamp,core_c\n1767636000000,60.5\n1767636060000,61\n",
                "time_s,core_c\r0,60.5\r60,61\r",
                "No.,time_s,core_c,battery,set point (c)\n1,0,60.5,99,54\n2,60,61,99,54\n",
                "time_s,oven (c),core (c)\n0,20,60.5\n60,20,61\n",
                "\"time_s\",\"core_c\"\n\"0\",\"60,5\"\n\"60\",\"61,0\"\n"
            })
    void oneCookWrittenInManyWays(String text) throws LogReadException {
        LogReading reading = read(text);
        assertReadings(reading, 0, 60.5, 60, 61);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.rows()).isEqualTo(2);
    }

    @Test
    void withoutHeaderUnitsComeFromTheOptions() throws LogReadException {
        LogOptions options = LogOptions.NONE.withUnit(TemperatureUnit.F).withTimeUnit(TimeUnit.MIN);
        assertReadings(read("0,140.9\n1,141.8\n", options), 0, 60.5, 60, 61);
        assertReadings(
                read("2026-01-05,18:00:00,60.5\n2026-01-05,18:01:00,61\n", LogOptions.NONE.withUnit(TemperatureUnit.C)),
                0,
                60.5,
                60,
                61);
    }

    @Test
    void anUnknownUnitIsAskedFor() {
        assertThat(problemsOf("time_s,core\n0,60\n", LogOptions.NONE))
                .containsExactly(new LogProblem(1, "cannot tell the unit of \"core\"; add --unit C or --unit F."));
        assertThat(problemsOf("time,core_c\n0,60\n", LogOptions.NONE))
                .containsExactly(
                        new LogProblem(2, "cannot tell the unit of the time column; add --time-unit s, min or h."));
        assertThat(problemsOf("time,core_c\n00:10,60\n", LogOptions.NONE).get(0).message())
                .contains("h:min or min:s");
        assertThat(problemsOf("date,core_c\n2026-01-05,60\n", LogOptions.NONE)
                        .get(0)
                        .message())
                .contains("without a time of day");
    }

    @Test
    void aUnitThatContradictsTheHeaderIsAnError() {
        assertThat(problemsOf("time_s,core_c\n0,60\n", LogOptions.NONE.withUnit(TemperatureUnit.F))
                        .get(0)
                        .describe())
                .isEqualTo("line 1: \"core_c\" says °C but --unit says F; remove one of them.");
    }

    @Test
    void ofSeveralProbesTheLowestReadingCounts() throws LogReadException {
        LogReading both = read("time_s,probe 1 (c),probe 2 (c)\n0,60,62\n60,63,61\n");
        assertReadings(both, 0, 60, 60, 61);
        assertThat(both.probes()).containsExactly("probe 1 (c)", "probe 2 (c)");
        assertThat(both.notes()).anyMatch(n -> n.contains("lowest"));
    }

    @Test
    void aProbeCanBeChosenByName() throws LogReadException {
        String text = "time_s,breast (c),thigh (c)\n0,60,62\n60,63,61\n";
        assertReadings(read(text, LogOptions.NONE.withProbe("Thigh")), 0, 62, 60, 61);
        assertThat(problemsOf(text, LogOptions.NONE.withProbe("wing")).get(0).message())
                .contains("must name one column, got 0")
                .contains("\"breast (c)\", \"thigh (c)\"");
        assertThat(problemsOf(text, LogOptions.NONE.withProbe("(c)")).get(0).message())
                .contains("got 2");
    }

    @Test
    void aRowThatLacksOneOfTheProbesIsLeftOut() throws LogReadException {
        LogReading reading = read("time_s,a (c),b (c)\n0,60,\n60,60,61\n120,62,\n180,63,62\n");
        assertReadings(reading, 60, 60, 180, 62);
        assertThat(reading.problems()).extracting(LogProblem::line).containsExactly(2, 4);
        LogReading dead = read("time_s,a (c),b (c)\n0,60,\n60,61,\n");
        assertReadings(dead, 0, 60, 60, 61);
        assertThat(dead.probes()).containsExactly("a (c)");
    }

    @Test
    void onlyBathColumnsAreNoProof() {
        assertThat(problemsOf("time_s,bath (c)\n0,60\n", LogOptions.NONE).get(0).message())
                .contains("--probe");
    }

    @Test
    void dayAndMonthAreToldApartByTheWholeFile() throws LogReadException {
        assertReadings(read("time,c\n31/01/2026 23:59:00,60\n01/02/2026 00:00:00,61\n"), 0, 60, 60, 61);
        assertReadings(read("time,c\n01/31/2026 23:59:00,60\n02/01/2026 00:00:00,61\n"), 0, 60, 60, 61);
        LogReading shorter = read("time,c\n05/01/2026 23:59:00,60\n06/01/2026 00:00:00,61\n");
        assertReadings(shorter, 0, 60, 60, 61);
        assertThat(shorter.notes()).anyMatch(n -> n.contains("day/month"));
        LogReading american = read("time,c\n01/05/2026 23:59:00,60\n01/06/2026 00:00:00,61\n");
        assertReadings(american, 0, 60, 60, 61);
        assertThat(problemsOf("time,c\n31/01/2026 10:00:00,60\n01/31/2026 10:01:00,61\n", LogOptions.NONE)
                        .get(0)
                        .message())
                .contains("neither day/month nor month/day");
    }

    @Test
    void impossibleDatesAreProblemsOfTheirLine() throws LogReadException {
        LogReading reading = read("time,c\n2026-02-28T10:00:00,60\n2026-02-30T10:01:00,61\n2026-02-28T10:02:00,62\n");
        assertReadings(reading, 0, 60, 120, 62);
        assertThat(reading.problems()).extracting(LogProblem::line).containsExactly(3);
    }

    @Test
    void theRepeatedHourOfAutumnIsPutAfterTheFirst() throws LogReadException {
        // Sunday, 25 October 2026: clocks go back from 3:00 to 2:00
        LogReading reading = read("time,c\n2026-10-25T02:58:00,60\n2026-10-25T02:59:00,60\n2026-10-25T02:00:00,61\n"
                + "2026-10-25T02:01:00,61\n");
        assertReadings(reading, 0, 60, 60, 60, 120, 61, 180, 61);
        assertThat(reading.notes()).anyMatch(n -> n.contains("set back by 1 h"));
    }

    @Test
    void anHourBackOnAnyOtherDayIsALostClock() throws LogReadException {
        LogReading reading = read("time,c\n2026-10-24T02:58:00,60\n2026-10-24T02:59:00,60\n2026-10-24T02:00:00,61\n"
                + "2026-10-24T02:01:00,61\n2026-10-24T03:30:00,61\n");
        assertThat(reading.log().setAside()).isEqualTo(2);
        assertThat(reading.log().clockJumps()).isEqualTo(1);
    }

    @Test
    void theHourLeftOutInSpringStaysAGap() throws LogReadException {
        LogReading reading = read("time,c\n2026-03-29T01:59:00,60\n2026-03-29T03:00:00,60\n");
        assertThat(reading.log().time(1) - reading.log().time(0)).isEqualTo(3660);
    }

    @Test
    void timesOfDayPassMidnight() throws LogReadException {
        LogReading reading = read("time,core_c\n23:59:30,60\n0:00:30,61\n0:01:30,62\n");
        assertReadings(reading, 0, 60, 60, 61, 120, 62);
        assertThat(reading.notes()).anyMatch(n -> n.contains("midnight"));
    }

    @Test
    void aLogWithTheNewestRowFirstIsTurnedAround() throws LogReadException {
        LogReading reading = read("time_s,core_c\n180,63\n120,62\n60,61\n0,60\n");
        assertReadings(reading, 0, 60, 60, 61, 120, 62, 180, 63);
        assertThat(reading.notes()).anyMatch(n -> n.contains("newest row"));
    }

    @Test
    void aTruncatedLastLineIsLeftOut() throws LogReadException {
        LogReading noCell = read("time_s,core_c\n0,60.5\n60,61.5\n120,");
        assertReadings(noCell, 0, 60.5, 60, 61.5);
        assertThat(noCell.problems())
                .containsExactly(new LogProblem(4, "the file ends inside this row; it is left out."));
        LogReading cut = read("time_s,core_c\n0,60.5\n60,61.5\n120,6");
        assertReadings(cut, 0, 60.5, 60, 61.5);
        LogReading whole = read("time_s,core_c\n0,60.5\n60,61.5\n120,62.5");
        assertThat(whole.rows()).isEqualTo(3);
    }

    @Test
    void badRowsAreNamedOnceEachAndTheRestIsRead() throws LogReadException {
        LogReading reading = read("time_s,core_c\n0,60\n60,=B2+1\n120,err\n180,9999\nabc,60\n300,61,5\n360,60\n420,\n"
                + "0:08:00,60\n540,60\u0000\n600,60\n");
        assertReadings(reading, 0, 60, 360, 60, 600, 60);
        assertThat(reading.problems())
                .extracting(LogProblem::describe)
                .containsExactly(
                        "line 3: a formula stands in a cell; save the values instead. The row is left out.",
                        "line 4: cannot read the temperature \"err\"; the row is left out.",
                        "line 5: temperature 9999 is out of range; the row is left out.",
                        "line 6: cannot read the time \"abc\"; the row is left out.",
                        "line 7: found 3 cells, expected 2; decimal commas need semicolons between cells, or quotes.",
                        "line 9: a temperature is missing; the row is left out.",
                        "line 10: the time is written in another way than in the first row; the row is left out.",
                        "line 11: NUL bytes, as after a power cut; the row is left out.");
    }

    @Test
    void aFloodOfProblemsIsCounted() throws LogReadException {
        StringBuilder text = new StringBuilder("time_s,core_c\n0,60\n60,60\n");
        for (int i = 0; i < 250; i++) {
            text.append(120 + i).append(",err\n");
        }
        List<LogProblem> problems = read(text.toString()).problems();
        assertThat(problems).hasSize(TemperatureLogReader.MOST_PROBLEMS + 1);
        assertThat(problems.get(problems.size() - 1).message()).startsWith("150 more rows");
    }

    @Test
    void allProblemsAreToldWhenNothingCanBeRead() {
        assertThat(problemsOf("time_s,core_c\n0,err\n60,err\n", LogOptions.NONE))
                .extracting(LogProblem::line)
                .containsExactly(2, 3, 0);
    }

    @Test
    void emptyAndBinaryFilesAreRefused() {
        assertThat(problemsOf("", LogOptions.NONE).get(0).message()).contains("empty");
        assertThat(problemsOf("\n\n", LogOptions.NONE).get(0).message()).contains("no row");
        assertThat(problemsOf("time_s,core_c\n", LogOptions.NONE).get(0).message())
                .contains("no row");
        assertThat(problemsOf("time_s\n0\n", LogOptions.NONE).get(0).message()).contains("no temperature column");
        byte[] archive = new byte[500];
        for (int i = 0; i < archive.length; i++) {
            archive[i] = (byte) (i * 37);
        }
        assertThatThrownBy(() -> TemperatureLogReader.read(archive, LogOptions.NONE))
                .isInstanceOf(LogReadException.class)
                .hasMessageContaining("not a text file");
        assertThatThrownBy(() -> TemperatureLogReader.read(new byte[300], LogOptions.NONE))
                .isInstanceOf(LogReadException.class);
    }

    @Test
    void wideAndOldEncodingsAreRead() throws LogReadException {
        String text = "time_s,core °C\n0,60.5\n60,61\n";
        for (byte[] data : List.of(
                text.getBytes(StandardCharsets.UTF_16),
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
                text.getBytes(StandardCharsets.UTF_16LE),
                text.getBytes(StandardCharsets.UTF_16BE),
                text.getBytes(StandardCharsets.ISO_8859_1))) {
            assertReadings(TemperatureLogReader.read(data, LogOptions.NONE), 0, 60.5, 60, 61);
        }
    }

    @Test
    void theHashIsThatOfTheBytes() throws LogReadException {
        // FIPS 180-4 gives no such file; computed with a separate tool: printf 'time_s,core_c\n0,60\n60,61\n' |
        // sha256sum
        assertThat(read("time_s,core_c\n0,60\n60,61\n").sha256())
                .isEqualTo("151a547691736cfb255371678911ae8c3594291bc10d261e8634efa4a61318ea");
    }

    @Test
    void aMillionRowsTakeUnderASecond() throws LogReadException {
        StringBuilder text = new StringBuilder(30_000_000).append("Timestamp;Probe 1 (°C);Probe 2 (°C)\n");
        for (int i = 0; i < 1_000_000; i++) {
            int s = i % 60;
            int m = i / 60 % 60;
            int h = i / 3600 % 24;
            int d = 1 + i / 86400;
            text.append("2026-01-")
                    .append(d < 10 ? "0" : "")
                    .append(d)
                    .append(h < 10 ? "T0" : "T")
                    .append(h);
            text.append(m < 10 ? ":0" : ":")
                    .append(m)
                    .append(s < 10 ? ":0" : ":")
                    .append(s);
            text.append(";6").append(i % 10).append(",").append(i % 7).append(";61,5\n");
        }
        byte[] data = text.toString().getBytes(StandardCharsets.UTF_8);
        // processor time of this thread, so that other work on the machine does not decide
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        double best = Double.POSITIVE_INFINITY;
        for (int run = 0; run < 3; run++) {
            long start = clock.getCurrentThreadCpuTime();
            LogReading reading = TemperatureLogReader.read(data, LogOptions.NONE);
            best = Math.min(best, (clock.getCurrentThreadCpuTime() - start) / 1e9);
            assertThat(reading.rows()).isEqualTo(1_000_000);
        }
        assertThat(best).isLessThan(1.0);
    }
}
