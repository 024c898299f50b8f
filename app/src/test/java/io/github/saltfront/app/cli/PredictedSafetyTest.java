package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What plan and simulate say of safety. Limits of fsis2021, wac2022 and fsisdangerzone. */
class PredictedSafetyTest {
    private static final String PIECE = """
            piece:
              shape: {kind: slab, thickness: 40 mm}
              meat: chicken-breast-skinless
              start_temperature: 4 °C
            stages:
            """;

    private static final String HEAT =
            "  - {kind: heat, medium: 80 °C, coefficient: 200 W/(m2.K), evaporation: off, until: {core: 76 °C}, at_most: 5 h}\n";

    @TempDir
    private Path folder;

    private CommandRun simulate(String stages, String output) throws IOException {
        Path file = folder.resolve("day.yaml");
        Files.writeString(file, PIECE + stages + output);
        return CommandRun.of("simulate", file.toString());
    }

    private static List<String> failed(JsonNode safety) {
        return safety.get("limits")
                .valueStream()
                .filter(limit -> limit.get("outcome").asString().equals("fail"))
                .map(limit -> limit.get("id").asString())
                .toList();
    }

    @Test
    void aHotCookIsPredictedToBeMetAndIsNoProof() throws IOException {
        CommandRun run = simulate(HEAT, "");
        JsonNode safety = run.json().get("safety");
        assertThat(safety.get("proof").asString()).isEqualTo("prediction");
        assertThat(safety.get("predicted_met").asBoolean()).isTrue();
        assertThat(safety.get("headline").asString()).contains("not proof");
        assertThat(safety.get("consumer_minimum").get("temperature_c").asDouble())
                .isBetween(73.8, 74.0);
        assertThat(safety.get("salted").asBoolean()).isFalse();
        assertThat(failed(safety)).isEmpty();
        assertThat(run.err()).isEmpty();
    }

    @Test
    void meatLeftOnTheBenchBeforeTheHeatIsNotMended() throws IOException {
        CommandRun run =
                simulate("  - {kind: temper, medium: 22 °C, coefficient: 10 W/(m2.K), time: 8 h}\n" + HEAT, "");
        JsonNode safety = run.json().get("safety");
        assertThat(safety.get("predicted_met").asBoolean()).isFalse();
        assertThat(safety.get("headline").asString()).contains("does not mend it");
        assertThat(failed(safety)).contains("time-control", "consumer-out");
        assertThat(safety.get("information")
                        .get("salmonella_growth_to_end_of_heat_no_lag_log10")
                        .asDouble())
                .isGreaterThan(1);
        assertThat(run.err()).contains("near or past an official limit");
    }

    @Test
    void aDayWithoutHeatOrWithFewSamplesCannotTell() throws IOException {
        JsonNode raw = simulate("  - {kind: rest, medium: 4 °C, coefficient: 10 W/(m2.K), time: 1 h}\n", "")
                .json()
                .get("safety");
        assertThat(raw.get("predicted_met").asBoolean()).isFalse();
        assertThat(raw.get("reasons").get(0).asString()).contains("heat");
        JsonNode coarse = simulate(HEAT, "output: {every: 10 min}\n").json().get("safety");
        assertThat(coarse.get("predicted_met").asBoolean()).isFalse();
        assertThat(coarse.get("reasons").get(0).asString()).contains("samples");
    }

    @Test
    void aBrinedPieceCarriesTheAllowanceForSalt() throws IOException {
        JsonNode safety = simulate(
                        "  - {kind: soak, strength: 6 % of water, temperature: 4 °C, time: 2 h}\n" + HEAT, "")
                .json()
                .get("safety");
        assertThat(safety.get("salted").asBoolean()).isTrue();
        assertThat(safety.get("salt_allowance").get("factor").asDouble()).isEqualTo(2.45);
        assertThat(safety.get("hold_table").asString()).doesNotContain("salt");
    }

    @Test
    void aPlanShowsComeUpAndServingAgainstTheirLimits() throws IOException {
        Path file = folder.resolve("plan.yaml");
        Files.writeString(
                file,
                "cut: chicken-breast-skinless\nmass: 220 g\nthickness: 25 mm\nserve: as soon as possible\n"
                        + "salting: {treatment: none}\n");
        JsonNode safety = CommandRun.of("plan", file.toString(), "--json")
                .json()
                .get("cooking")
                .get("safety");
        assertThat(safety.get("proof").asString()).isEqualTo("prediction");
        assertThat(safety.get("salted").asBoolean()).isFalse();
        assertThat(safety.get("come_up_min").get("high").asDouble()).isBetween(5.0, 60.0);
        assertThat(safety.get("warm_before_heat_min").get("high").asDouble()).isZero();
        assertThat(safety.get("serving").get("hot_holding_c").asDouble()).isBetween(57.2, 57.3);
        assertThat(safety.get("serving").get("out_at_most_min").asDouble()).isEqualTo(120);
        assertThat(safety.has("met")).isFalse();
    }

    @Test
    void aWarmRefrigeratorTurnsTheVerdictOfAPlan() throws IOException {
        Path file = folder.resolve("plan.yaml");
        Files.writeString(
                file,
                "cut: chicken-breast-skinless\nmass: 220 g\nthickness: 25 mm\nserve: as soon as possible\n"
                        + "refrigerator: 8 °C\nsalting: {treatment: dry-salt, time: 20 h}\n");
        CommandRun run = CommandRun.of("plan", file.toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("more cooking does not mend it")
                .contains("Near or past a limit")
                .contains("74 °C (165 °F)");
    }
}
