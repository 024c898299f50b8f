package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class FollowCommandTest {
    private static final String REQUEST = "../examples/live/loin.yaml";
    private static final String LOG = "../examples/live/loin.csv";

    /** The true time stands in the head of the log; its tip is at an unknown place. */
    @Test
    void theExampleClosesInOnItsTrueTimeAndClaimsNoMeasurement() throws IOException {
        CommandRun run =
                CommandRun.of("follow", REQUEST, LOG, "--at", "20min", "--at", "50min", "--at", "68min", "--json");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        JsonNode json = run.json();
        assertThat(json.get("schema").asString()).isEqualTo("saltfront.outlook");
        Matcher head = Pattern.compile("come out after ([0-9.]+) min").matcher(Files.readString(Path.of(LOG)));
        assertThat(head.find()).isTrue();
        double truth = Double.parseDouble(head.group(1));
        double width = 45;
        for (JsonNode outlook : json.get("outlooks")) {
            JsonNode left = outlook.get("pull").get("time_left_min");
            double now = outlook.get("time_min").asDouble();
            double low = now + left.get("p05").asDouble();
            double high = now + left.get("p95").asDouble();
            assertThat(truth).as("after %.0f min", now).isBetween(low, high);
            assertThat(high - low).isLessThan(0.8 * width);
            width = high - low;
        }
        assertThat(width).isLessThan(8);
        assertThat(json.get("outlooks").get(1).get("measured").get("met").asBoolean())
                .isFalse();
        assertThat(json.get("outlooks").get(1).get("inferred").get("proof").asString())
                .isEqualTo("prediction");
    }

    @Test
    void textFitsAPhoneAndKeepsMeasuredAndInferredApart() {
        CommandRun run = CommandRun.of("follow", REQUEST, LOG, "--probe-error", "0.5", "--distance", "0");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("inferred")
                .contains("measured")
                .contains("consumer minimum")
                .doesNotContainIgnoringCase(" safe ");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 64);
    }

    @Test
    void fahrenheitReadAsCelsiusIsToldOfAWatchedLogToo(@TempDir Path folder) throws IOException {
        Path log = folder.resolve("log.csv");
        Files.writeString(
                log, "time_min,core_c\n0,39.5\n2,40.1\n4,41.0\n6,42.4\n8,44.2\n10,46.6\n12,49.0\n14,51.6\n16,54.3\n");
        CommandRun run = CommandRun.of("follow", REQUEST, log.toString(), "--watch", "--until-silent", "1s");
        assertThat(run.code()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("AFTER 16 min")
                .contains("degrees Fahrenheit, not Celsius");
    }

    @Test
    void aCookOfSeveralStagesIsFollowedFromHeatToHeat() {
        String steak = "../examples/reverse-seared-steak.yaml";
        CommandRun first = CommandRun.of("follow", steak, LOG, "--at", "40min");
        assertThat(first.code()).as(first.err()).isZero();
        assertThat(first.out()).contains("AFTER 40 min").contains("take out");
        CommandRun told = CommandRun.of("follow", steak, LOG, "--heat", "75min=2");
        assertThat(told.code()).as(told.err()).isZero();
        assertThat(told.out())
                .contains("AFTER 1 h 21 min")
                .isNotEqualTo(CommandRun.of("follow", steak, LOG).out());
        CommandRun wrong = CommandRun.of("follow", steak, LOG, "--heat", "6min=7");
        assertThat(wrong.code()).isNotZero();
        assertThat(wrong.err()).contains("7").contains("heat");
    }

    @Test
    void wrongInputsAreNamedWithTheirOption() {
        CommandRun missing = CommandRun.of("follow", REQUEST, "nowhere.csv");
        assertThat(missing.code()).isEqualTo(2);
        assertThat(missing.err()).contains("nowhere.csv");
        CommandRun setting = CommandRun.of("follow", REQUEST, LOG, "--setting", "20min");
        assertThat(setting.code()).isEqualTo(2);
        assertThat(setting.err()).contains("--setting").contains("40min=150C");
        CommandRun watch = CommandRun.of("follow", REQUEST, LOG, "--watch", "--at", "5min");
        assertThat(watch.code()).isEqualTo(2);
        assertThat(watch.err()).contains("--watch");
        CommandRun time = CommandRun.of("follow", REQUEST, LOG, "--at", "soon");
        assertThat(time.code()).isEqualTo(2);
        assertThat(time.err()).contains("--at");
    }
}
