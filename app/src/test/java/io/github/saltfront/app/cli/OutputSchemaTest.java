package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What is written is valid by its schema, and the schema promises nothing that is never written. The schemas are closed, so the
 * first half finds names that they lack.
 */
class OutputSchemaTest {
    private static final String BREAST =
            "cut: chicken-breast-skinless\nmass: 220 g\nthickness: 28 mm\n" + "now: 2026-11-28T12:00\n";

    @TempDir
    private Path folder;

    @Test
    void plansAreValid() throws IOException {
        SchemaDocument schema = SchemaDocument.of("plan");
        List<JsonNode> plans = new ArrayList<>();
        for (String request : List.of(
                BREAST + "salting: {treatment: wet-brine}\n",
                BREAST + "salting: {treatment: surface-salt}\n",
                BREAST + "salting: {treatment: none}\n",
                "cut: pork-tenderloin\nmass: 500 g\nliquid: orange-juice\nsalting: {treatment: marinade, time: 2 h}\n"
                        + "appliance: oven-fan\nnow: 2026-11-28T12:00\n",
                "meat: {water: 72 %, protein: 21 %, fat: 6 %, species: beef}\nmass: 400 g\n"
                        + "shape: {kind: slab, thickness: 30 mm}\n"
                        + "salting: {treatment: dry-salt, time: 4 h}\ntaste: {core: 58 °C}\nnow: 2026-11-28T12:00\n")) {
            plans.add(run(schema, "plan", request));
        }
        assertThat(plans)
                .extracting(p -> p.get("salting").get("treatment").asString())
                .containsExactly("wet-brine", "surface-salt", "none", "marinade", "dry-salt");
        // a tough cut in several stages, one of which heats a face at a time
        JsonNode braise = run(
                schema,
                "plan",
                "cut: beef-chuck-roast\nmass: 800 g\nsalting: {treatment: none}\nappliance: simmer\nsetting: 95 °C\n"
                        + "before:\n  - {appliance: pan, time: 4 min}\nafter:\n  - {appliance: simmer, time: 1 h}\n"
                        + "rest: {foil: yes, time: 20 min}\ntaste: {core: 85 °C}\nnow: 2026-11-28T12:00\n");
        assertThat(braise.get("cooking").get("before").size()).isEqualTo(1);
        assertThat(braise.get("cooking").get("rest_min").asDouble()).isEqualTo(20);
        plans.add(braise);
        JsonNode frozen = run(
                schema,
                "plan",
                "cut: chicken-thigh-boneless\npieces: 20\nmass: 110 g\nstart_temperature: -18 °C\n"
                        + "equipment: {scale: no, thermometer: no, load: 8}\nsalting: {treatment: surface-salt}\n"
                        + "appliance: oven-fan\nnow: 2026-11-28T12:00\n");
        assertThat(frozen.get("cooking").get("by_time_alone").asBoolean()).isTrue();
        assertThat(frozen.get("cooking").get("loads").get("count").asInt()).isEqualTo(3);
        plans.add(frozen);
        JsonNode ways = run(schema, "plan", BREAST + "serve: 2026-11-28T19:00\n", "--ways");
        assertThat(ways.get("alternatives").size()).isPositive();
        plans.add(ways);
        // written only where another doneness wins, which none of these does
        requireAllUsed(schema, plans, "core_c");
    }

    @Test
    void historiesAreValid() throws IOException {
        SchemaDocument schema = SchemaDocument.of("history");
        JsonNode slab = CommandRun.of("simulate", "../examples/slab.yaml").json();
        schema.requireValid("slab", slab);
        JsonNode field = run(
                schema,
                "simulate",
                "piece: {shape: {kind: sphere, diameter: 50 mm}, meat: pork-tenderloin, start_temperature: -10 °C}\n"
                        + "stages:\n  - {kind: thaw, medium: 4 °C, time: 3 h}\noutput: {every: 10 min, field: yes}\n");
        JsonNode solid = run(
                schema,
                "simulate",
                "piece: {shape: {kind: sphere, diameter: 50 mm}, meat: pork-tenderloin, start_temperature: 4 °C}\n"
                        + "stages:\n  - {kind: heat, medium: 80 °C, time: 10 min}\noutput: {every: 1 min, cells: 4000}\n"
                        + "solver: 3d\n");
        requireAllUsed(schema, List.of(slab, field, solid));
    }

    @Test
    void outlooksAreValid() {
        SchemaDocument schema = SchemaDocument.of("outlook");
        String[] command = {
            "follow",
            "../examples/live/loin.yaml",
            "../examples/live/loin.csv",
            "--at",
            "0min",
            "--at",
            "81min",
            "--probe-error",
            "0.5",
            "--distance",
            "0",
            "--serve-in",
            "3h",
            "--json"
        };
        JsonNode outlook = CommandRun.of(command).json();
        schema.requireValid("follow", outlook);
        requireAllUsed(schema, List.of(outlook));
    }

    @Test
    void schemaSeesWhatIsWrong() {
        SchemaDocument schema = SchemaDocument.of("history");
        JsonNode slab = CommandRun.of("simulate", "../examples/slab.yaml").json();
        ((tools.jackson.databind.node.ObjectNode) slab.get("series")).put("time_min", 1);
        ((tools.jackson.databind.node.ObjectNode) slab).remove("diagnostics");
        assertThat(schema.errors(slab)).hasSize(2);
    }

    private JsonNode run(SchemaDocument schema, String command, String request, String... options) throws IOException {
        Path file = folder.resolve("request.yaml");
        Files.writeString(file, request);
        List<String> line = new ArrayList<>(List.of(command, file.toString(), "--json"));
        line.addAll(List.of(options));
        CommandRun run = CommandRun.of(line.toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        schema.requireValid(request, run.json());
        return run.json();
    }

    private static void requireAllUsed(SchemaDocument schema, List<JsonNode> outputs, String... elsewhere) {
        Set<String> written = new TreeSet<>(List.of(elsewhere));
        outputs.forEach(o -> collect(o, written));
        Map<String, Set<String>> never = new TreeMap<>();
        schema.objects().forEach((place, names) -> {
            Set<String> left = new TreeSet<>(names);
            left.removeAll(written);
            if (!left.isEmpty()) {
                never.put(place, left);
            }
        });
        assertThat(never).isEmpty();
    }

    private static void collect(JsonNode at, Set<String> names) {
        names.addAll(at.propertyNames());
        at.valueStream().forEach(child -> collect(child, names));
    }
}
