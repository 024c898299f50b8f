package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class MealCommandTest {
    private static final String TABLE = "../examples/meal/sunday-table.yaml";

    @TempDir
    private Path folder;

    @Test
    void mealHasOneClockAndAPlanForEveryDish() {
        CommandRun text = CommandRun.of("meal", TABLE);
        assertThat(text.code()).as(text.err()).isZero();
        assertThat(text.out())
                .contains("HOW IT FITS", "CLOCK", "APPLIANCES", "PORK LOIN", "CRISP THIGHS", "CHOPS", "TAKE CARE")
                .contains("Pork loin is cooked first and waits")
                .doesNotContain("NaN", "null", "Optional");
        assertThat(text.out().lines()).allMatch(line -> line.length() <= 72);
    }

    @Test
    void jsonKeepsToItsSchemas() {
        JsonNode meal = CommandRun.of("meal", TABLE, "--json").json();
        assertThat(meal.get("schema").asString()).isEqualTo("saltfront-meal");
        SchemaDocument plan = SchemaDocument.of("plan");
        for (JsonNode dish : meal.get("dishes")) {
            plan.requireValid(dish.get("name").asString(), dish.get("plan"));
        }
        SchemaDocument.of("meal").requireValid("meal", meal);
        List<String> times = meal.get("clock")
                .valueStream()
                .map(step -> step.get("time").asString())
                .toList();
        assertThat(times).isSorted();
        assertThat(times.get(times.size() - 1)).startsWith("2026-12-06T18:30");
    }

    /** RFC 5545, read by the biweekly library with its own checks. */
    @Test
    void calendarIsReadByAnotherLibrary() {
        ICalendar calendar =
                Biweekly.parse(CommandRun.of("meal", TABLE, "--calendar").out()).first();
        assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).isTrue();
        assertThat(calendar.getEvents().stream().map(event -> event.getUid().getValue()))
                .hasSizeGreaterThan(15)
                .doesNotHaveDuplicates();
    }

    @Test
    void badMealTellsAllThatIsWrong() throws IOException {
        Path file = folder.resolve("meal.yaml");
        Files.writeString(file, """
                now: 2026-12-05T12:00
                appliances: {oven-fann: 2}
                dishes:
                  - {name: Roast, cut: pork-loin-roast, mass: 1.2 kg, serve: 2026-12-05T18:00}
                  - {name: Roast, cut: pork-lion-chop, mass: 200}
                """);
        CommandRun run = CommandRun.of("meal", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("serve: Got no time, expected the time at which all dishes are served")
                .contains("appliances.oven-fann: The key is not known")
                .contains("dishes[0].serve: The key is not known")
                .contains("dishes[1].name: Got \"Roast\" twice")
                .contains("dishes[1].cut: Got \"pork-lion-chop\"")
                .contains("dishes[1].mass: \"200\" has no unit");
    }

    @Test
    void mealThatDoesNotFitSaysWhatCanBeDone() throws IOException {
        Path file = folder.resolve("crowded.yaml");
        Files.writeString(file, """
                now: 2026-12-05T08:00
                serve: 2026-12-05T20:00
                dishes:
                  - {name: Loin, cut: pork-loin-roast, mass: 1.2 kg, salting: {treatment: surface-salt}, setting: 150 °C}
                  - {name: Turkey, cut: turkey-breast-boneless, mass: 1.4 kg, salting: {treatment: surface-salt}, setting: 180 °C}
                  - {name: Leg, cut: pork-shoulder-butt, mass: 2 kg, salting: {treatment: surface-salt}, setting: 210 °C}
                """);
        CommandRun run = CommandRun.of("meal", file.toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("dishes: There are too few appliances").contains("Possible instead");
    }
}
