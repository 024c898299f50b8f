package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class LethalityCommandTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(new LethalityCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    /** One reading a minute from 4 deg C up to a plateau in half an hour. */
    private String cook(double plateau, int minutes) throws IOException {
        StringBuilder text = new StringBuilder("time_min,core_c\n");
        for (int i = 0; i <= 30 + minutes; i++) {
            text.append(i)
                    .append(',')
                    .append(4 + (plateau - 4) * Math.min(1, i / 30.0))
                    .append('\n');
        }
        return write(text.toString().replaceAll("(\\.\\d\\d)\\d+", "$1"));
    }

    private String write(String text) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        return file.toString();
    }

    @Test
    void aCheckedAndPlacedProbeCanShowTheHold() throws IOException {
        int code = run(cook(62.5, 40), "--meat", "chicken", "--fat", "5", "--probe-error", "0.3", "--distance", "0");
        assertThat(err.toString()).isEmpty();
        assertThat(code).isZero();
        assertThat(out.toString())
                .contains("Shown by measurement: the required hold was reached.")
                .contains("74 °C (165 °F): not reached")
                .contains("7 or more")
                .doesNotContainIgnoringCase(" safe ");
        assertThat(out.toString().lines()).allMatch(line -> line.length() <= 72);
    }

    @Test
    void withoutCheckItCannotTellAndExitsWithOne() throws IOException {
        assertThat(run(cook(62.5, 40), "--meat", "chicken")).isEqualTo(1);
        assertThat(out.toString())
                .contains("Cannot tell")
                .contains("thermometer")
                .contains("74 °C (165 °F)");
    }

    @Test
    void vulnerableGuestsNeedTheOfficialMinimum() throws IOException {
        String log = cook(62.5, 60);
        assertThat(run(log, "--meat", "chicken", "--vulnerable", "--probe-error", "0.3", "--distance", "0"))
                .isEqualTo(1);
        assertThat(out.toString()).contains("Not met");
        String hot = cook(76, 5);
        assertThat(run(hot, "--meat", "chicken", "--vulnerable", "--probe-error", "0.3", "--distance", "0"))
                .isZero();
    }

    @Test
    void bothPointsOfTheInstrumentCheckAreUsed() throws IOException {
        // 5280 ft: water boils at 94.62 deg C (IAPWS-IF97 with the 1976 standard atmosphere)
        int code = run(
                cook(64, 40),
                "--meat",
                "turkey",
                "--ice-reading",
                "32.4F",
                "--boiling-reading",
                "94.4",
                "--altitude",
                "5280ft",
                "--distance",
                "0.5");
        assertThat(code).isZero();
        assertThat(out.toString().replaceAll("\\s+", " ")).contains("boils at 94.62 °C here");
    }

    /** Boiling points of water by IAPWS-IF97 and the 1976 standard atmosphere; 198 °F at 7500 ft is also what FoodSafety.gov prints. */
    @ParameterizedTest
    @CsvSource({"0, 99.97", "2000ft, 97.95", "1000, 96.65", "7500ft, 92.36", "3000m, 89.97", "4000, 86.62"})
    void theBoilingPointFollowsTheAltitude(String altitude, String boils) throws IOException {
        String reading = boils + "C";
        run(
                cook(64, 40),
                "--meat",
                "turkey",
                "--ice-reading",
                "0.0",
                "--boiling-reading",
                reading,
                "--altitude",
                altitude,
                "--distance",
                "0");
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString().replaceAll("\\s+", " ")).contains("boils at " + boils + " °C here");
    }

    @Test
    void saltedMeatMustHoldLongerBelow64Degrees() throws IOException {
        // 62 °C: the table asks 13 min at 5 % fat; 20 min are enough without salt and too short with it
        String log = cook(62.3, 20);
        assertThat(run(log, "--meat", "chicken", "--fat", "5", "--probe-error", "0", "--distance", "0"))
                .isZero();
        out.getBuffer().setLength(0);
        assertThat(run(log, "--meat", "chicken", "--fat", "5", "--probe-error", "0", "--distance", "0", "--salted"))
                .isEqualTo(1);
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains("Not met")
                .contains("our allowance")
                .contains("without our allowance for salt: 100 % or more")
                .contains("Salt shields bacteria");
        assertThat(out.toString().lines()).allMatch(line -> line.length() <= 72);
    }

    @Test
    void bareReadingsNeverCountAsReached() throws IOException {
        assertThat(run(cook(78, 10), "--meat", "chicken", "--json")).isEqualTo(1);
        JsonNode json = JsonMapper.builder().build().readTree(out.toString());
        assertThat(json.get("verdict").asString()).isEqualTo("cannot_tell");
        assertThat(json.get("consumer_minimum").get("met").asBoolean()).isFalse();
        assertThat(json.get("consumer_minimum").get("finding").asString()).contains("if the readings are true");
    }

    @Test
    void jsonCarriesTheWholeFinding() throws IOException {
        int code = run(
                cook(62.5, 40),
                "--meat",
                "chicken",
                "--fat",
                "5 %",
                "--probe-error",
                "0.5F",
                "--distance",
                "0",
                "--json");
        assertThat(code).isZero();
        JsonNode json = JsonMapper.builder().build().readTree(out.toString());
        assertThat(json.get("schema").asString()).isEqualTo("saltfront-lethality-1");
        assertThat(json.get("verdict").asString()).isEqualTo("shown_by_measurement");
        assertThat(json.get("log_reduction_text").asString()).isEqualTo("7 or more");
        assertThat(json.get("consumer_minimum").get("temperature_c").asDouble()).isEqualTo(73.8889, within(1e-4));
        assertThat(json.get("consumer_minimum").get("met").asBoolean()).isFalse();
        assertThat(json.get("log").get("sha256").asString()).hasSize(64);
        assertThat(json.get("series").get("time_s").size()).isEqualTo(71);
        assertThat(json.get("series").get("hold_share").get(70).asDouble())
                .isEqualTo(json.get("hold_share").asDouble());
        assertThat(json.get("limits").get(0).get("id").asString()).isEqualTo("come-up");
        assertThat(json.get("cautions").size()).isPositive();
        assertThat(json.get("fulfilled_at_s").asDouble()).isBetween(1800.0, 4200.0);
    }

    @Test
    void jsonOfAFailureSaysWhy() throws IOException {
        assertThat(run(cook(55, 10), "--meat", "beef", "--json")).isEqualTo(1);
        JsonNode json = JsonMapper.builder().build().readTree(out.toString());
        assertThat(json.get("verdict").asString()).isEqualTo("not_met");
        assertThat(json.get("log_reduction_text").asString()).isEqualTo("not shown");
        assertThat(json.get("reasons").size()).isEqualTo(1);
        assertThat(json.get("fulfilled_at_s").isNull()).isTrue();
    }

    @Test
    void theReportStandsOnItsOwn() throws IOException {
        Path page = folder.resolve("record.html");
        int code = run(
                cook(62.5, 40),
                "--meat",
                "chicken",
                "--probe-error",
                "0.3",
                "--distance",
                "0",
                "--kitchen",
                "professional",
                "--report",
                page.toString());
        assertThat(code).isZero();
        String html = Files.readString(page);
        assertThat(html)
                .contains("Shown by measurement")
                .contains("FSIS-GD-2021-0014")
                .contains("SHA-256")
                .contains("saltfront development")
                .contains("74 °C (165 °F)")
                .contains("Local code comes first")
                .contains("<svg")
                .doesNotContain("<script")
                .doesNotContain("http");
    }

    @Test
    void aHostileNameIsHarmlessInTheReport() throws IOException {
        Path page = folder.resolve("record.html");
        String log = write("time_min,<b onload=x>&core_c\n0,60\n1,60\n");
        assertThat(run(log, "--meat", "chicken", "--report", page.toString())).isEqualTo(1);
        assertThat(Files.readString(page))
                .contains("&lt;b onload=x&gt;&amp;core_c")
                .doesNotContain("<b onload");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --meat yeti | --meat: got "yeti", expected one of beef, chicken
            --meat chicken --fat lots | --fat: got "lots"
            --meat chicken --fat 150 | percentage from 0 to 100
            --meat chicken --unit K | --unit: got "K", expected C or F
            --meat chicken --time-unit days | --time-unit
            --meat chicken --kitchen ship | --kitchen
            --meat chicken --boiling-reading 99 | needs --ice-reading
            --meat chicken --ice-reading 0 --boiling-reading 99 | needs --altitude
            --meat chicken --ice-reading 0 --probe-error 1 | exclude each other
            --meat chicken --ice-reading 33 | within 5 °C of 0.0 °C, got 33.0 °C
            --meat chicken --ice-reading 0 --boiling-reading 99 --altitude 99999 | altitude
            --meat chicken --ice-reading 0 --boiling-reading 99 --altitude high | --altitude: got "high"
            --meat chicken --probe-error 9 | probe error must be between 0 and 5 K
            --meat chicken --probe-error 1kg | --probe-error: got "1kg"
            --meat chicken --distance -1 | coldest spot
            --meat chicken --longest-gap 0 | longest gap
            --meat chicken --response x | --response
            --meat chicken --probe wing | must name one column
            """)
    void wrongInputIsNamedAndExitsWithTwo(String arguments, String message) throws IOException {
        List<String> all = new ArrayList<>(List.of(arguments.strip().split(" ")));
        all.add(0, cook(60, 1));
        assertThat(run(all.toArray(String[]::new))).isEqualTo(2);
        assertThat(err.toString()).contains(message).doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void filesThatCannotBeReadAreWrongInput() throws IOException {
        assertThat(run(folder.resolve("none.csv").toString(), "--meat", "chicken"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("no file").contains("none.csv");
        assertThat(run(folder.toString(), "--meat", "chicken")).isEqualTo(2);
        assertThat(run(write(""), "--meat", "chicken")).isEqualTo(2);
        assertThat(run("bad\0name", "--meat", "chicken")).isEqualTo(2);
        assertThat(run(cook(60, 1))).isEqualTo(2);
        assertThat(err.toString()).doesNotContain("\tat ");
    }

    @Test
    void aReportThatCannotBeWrittenIsWrongInput() throws IOException {
        assertThat(run(
                        cook(60, 1),
                        "--meat",
                        "chicken",
                        "--report",
                        folder.resolve("no/such/x.html").toString()))
                .isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"--ground, 72 °C (160 °F)", "--injected, 72 °C (160 °F)", "--json, 63 °C (145 °F)"})
    void groundAndInjectedMeatMoveUp(String flag, String minimum) throws IOException {
        run(cook(60, 1), "--meat", "beef", flag);
        assertThat(out.toString()).contains(minimum);
    }

    /** "comminuted ... fish": 155 F for 17 s; "stuffed ... fish": 165 F (wac2022, Food Code 3-401.11(A)(2) and (3)). */
    @ParameterizedTest
    @ValueSource(strings = {"--ground", "--injected"})
    void fishThatIsNotWholeIsNotJudgedAsWhole(String flag) throws IOException {
        assertThat(run(cook(64, 5), "--meat", "fish", flag)).isEqualTo(2);
        assertThat(out.toString() + err).contains("155 °F", "165 °F");
    }

    @Test
    void fahrenheitLogsWithTwoProbesAreRead() throws IOException {
        StringBuilder text = new StringBuilder("\uFEFFTime;Breast;Thigh\r\n");
        for (int i = 0; i <= 60; i++) {
            text.append(String.format(
                    "0:%02d:00;%d,5;%d,0\r\n", i == 60 ? 59 : i, 40 + 3 * Math.min(i, 40), 45 + 3 * Math.min(i, 40)));
        }
        String log = write(text.toString());
        assertThat(run(log, "--meat", "chicken")).isEqualTo(2);
        assertThat(err.toString()).contains("--unit C or --unit F");
        assertThat(run(
                        log,
                        "--meat",
                        "chicken",
                        "--unit",
                        "f",
                        "--probe",
                        "thigh",
                        "--probe-error",
                        "0",
                        "--distance",
                        "0"))
                .isZero();
    }

    @Test
    void helpIsShown() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString()).contains("--ice-reading").contains("0   met");
    }

    @Test
    void theCommandIsRegistered() {
        assertThat(Main.commandLine()
                        .getSubcommands()
                        .get("lethality")
                        .getCommandSpec()
                        .userObject())
                .isInstanceOf(LethalityCommand.class);
    }
}
