package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class CoolCommandTest {
    @Test
    void aRoastInTheRefrigeratorBreaksTheLimitsAndTheTextSaysWhatHelps() {
        CommandRun run = CommandRun.of("cool", "--cut", "pork-loin-roast", "--mass", "2 kg");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(1);
        String text = run.out().replaceAll("\\s+", " ");
        assertThat(text)
                .contains("Predicted to break an official limit")
                .contains("A prediction is not proof")
                .contains("discard; do not taste")
                .contains("Smallest change that keeps both limits: ice bath.")
                .contains("3 to 4 days at 4 °C")
                .contains("74 °C (165 °F)")
                .doesNotContainIgnoringCase(" safe");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 72);
    }

    @Test
    void jsonNamesTheLimitsAndNeverClaimsAMeasurement() {
        CommandRun run = CommandRun.of(
                "cool", "--pot", "--mass", "8 kg", "--depth", "20 cm", "--in", "ice-bath", "--stirred", "--json");
        assertThat(run.code()).isZero();
        JsonNode json = run.json();
        assertThat(json.get("schema").asString()).isEqualTo("saltfront.cooling");
        assertThat(json.get("verdict").get("predicted_to_keep_limits").asBoolean())
                .isTrue();
        assertThat(json.get("verdict").get("proof").asString()).isEqualTo("prediction");
        assertThat(json.get("cautious").get("to_21_c").get("limit_min").asDouble())
                .isEqualTo(120);
        assertThat(json.get("cautious").get("to_5_c").get("limit_min").asDouble())
                .isEqualTo(360);
        assertThat(json.get("changes").size()).isZero();
        assertThat(json.get("ice_kg").asDouble()).isBetween(4.5, 6.5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --mass 2kg                                             | name a cut
            --cut pork-loin-roast --mass 2kg --depth 3cm           | is for a --pot
            --pot --mass 2kg                                       | depth of the liquid decides
            --pot --mass 2kg --depth 5cm --refrigerator 30C        | between -20 and 15 C
            --pot --mass 2kg --depth 5cm --start 40C               | 57.4 and 100 C
            --pot --mass 2kg --depth 5cm --in lake                 | one of refrigerator
            --pot --mass 2kg --depth 5cm --in ice-bath --refrigerator 3C | holds its own temperature
            """)
    void wrongInputIsNamedAndExitsWithTwo(String arguments, String message) {
        CommandRun run = CommandRun.of(("cool " + arguments.strip()).split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(message);
    }
}
