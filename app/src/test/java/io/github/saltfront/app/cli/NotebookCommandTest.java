package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The notebook and the thermometer bench as a cook uses them. */
class NotebookCommandTest {
    @TempDir
    private Path folder;

    private CommandRun run(String... line) {
        String[] all = java.util.Arrays.copyOf(line, line.length + 2);
        all[line.length] = "--data";
        all[line.length + 1] = folder.resolve("test.db").toString();
        return CommandRun.of(all);
    }

    @Test
    void aKitchenLearnsFromACook() throws IOException {
        CommandRun added = run("notebook", "add", "../examples/notebook/sunday.yaml");
        assertThat(added.code()).as(added.err()).isZero();
        assertThat(added.out()).contains("Sunday chicken, brined", "taken out, °C", "loss, planned, %");
        JsonNode list = run("notebook", "list", "--json").json();
        SchemaDocument.of("notebook-list").requireValid("list", list);
        JsonNode figures = list.get("cooks").get(0);
        // 762 of 880 g are left
        assertThat(figures.get("loss_pct").asDouble()).isCloseTo(13.409, org.assertj.core.data.Offset.offset(0.001));
        String id = figures.get("id").asString();
        JsonNode whole = run("notebook", "show", id.substring(0, 6), "--json").json();
        SchemaDocument.of("cook").requireValid("cook", whole);

        JsonNode learned = run("notebook", "learned", "--json").json();
        SchemaDocument.of("notebook-learned").requireValid("learned", learned);
        JsonNode offset = learned.get("ovens").get(0).get("offset_k");
        // a thermometer at 171 in an oven set to 180, and a cook longer than planned: below its dial
        assertThat(offset.get("value").asDouble()).isBetween(-9.0, -3.0);
        assertThat(offset.get("low").asDouble()).isLessThan(-9.0);
        assertThat(learned.get("refrigerator_c").get("value").asDouble()).isBetween(4.0, 5.5);

        CommandRun plan = run("plan", "../examples/sunday-chicken.yaml", "--notebook", "--json");
        assertThat(plan.err()).isEmpty();
        SchemaDocument.of("plan").requireValid("plan", plan.json());
        assertThat(plan.out())
                .contains(
                        "using your oven, fan:",
                        "below its dial (1 cook",
                        "using your taste:",
                        "using your refrigerator:");
        assertThat(plan.json().get("cooking").get("setting_c").asDouble()).isEqualTo(180.0);

        run("notebook", "learned", "--reset", "oven");
        assertThat(run("notebook", "learned").out()).doesNotContain("dial").contains("refrigerator");
        assertThat(run("notebook", "compare", id, id).out()).contains("Sunday chicken, brined", "design a trial");
        JsonNode compared = run("notebook", "compare", id, id, "--json").json();
        SchemaDocument.of("notebook-compare").requireValid("compare", compared);
        assertThat(run("notebook", "delete", id).code()).isZero();
        assertThat(run("notebook", "list").out()).contains("Nothing is noted yet");
        assertThat(run("notebook", "show", id).err()).contains("There is no cook");
    }

    @Test
    void whatIsWrongWithACookFileIsToldWithItsLine() throws IOException {
        Path file = folder.resolve("cook.yaml");
        Files.writeString(
                file,
                "title: x\nrequest: none.yaml\nmeasured:\n  raw: 880\n  salted: 4 kg\nratings:\n"
                        + "  - {taster: A, saltiness: salty, juice: 11}\n");
        CommandRun run = run("notebook", "add", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("measured.raw", "ratings[0].saltiness", "just about right", "ratings[0].juice", "line");
    }

    @Test
    void aThermometerKeepsItsHistory() throws IOException {
        CommandRun first = run(
                "thermometer",
                "check",
                "blue-pen",
                "--ice",
                "0.4",
                "--boiling",
                "95.2",
                "--altitude",
                "1600",
                "--day",
                "2026-01-10");
        assertThat(first.code()).as(first.err()).isZero();
        // the standard atmosphere has 83 524 Pa at 1600 m, where water boils at 94.6 °C (IAPWS-IF97)
        assertThat(first.out()).contains("boils at 94.6", "(+0.6", "A check is DUE (since 2026-02-09)");
        CommandRun second =
                run("thermometer", "check", "Blue-Pen", "--ice", "32.9F", "--boiling", "99.0", "--pressure", "985 hPa");
        assertThat(second.out()).contains("+0.5", "The next check is due on");
        JsonNode history =
                run("thermometer", "history", "blue-pen", "--json").json().get(0);
        SchemaDocument.of("thermometer").requireValid("history", history);
        assertThat(history.get("checks")).hasSize(2);

        Path log = folder.resolve("log.csv");
        Files.writeString(log, "time_s,probe_c\n0,60\n60,66\n120,75\n180,76\n240,76\n");
        CommandRun judged =
                run("lethality", log.toString(), "--meat=chicken", "--thermometer=blue-pen", "--distance=0");
        assertThat(judged.out()).contains("ice water read 0.5 °C (+0.5)");
        CommandRun unknown = run("lethality", log.toString(), "--meat=chicken", "--thermometer=red");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("never checked here");
        assertThat(run("thermometer", "check", "x", "--ice", "9").err()).contains("within 5 °C");
        assertThat(run("thermometer", "check", "x", "--ice", "0", "--boiling", "99")
                        .err())
                .contains("altitude or the pressure");
    }
}
