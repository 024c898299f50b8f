package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/**
 * The schemas of the request files know just the keys that the readers ask for. A reader tells them when it is given one that it
 * does not know; {@code ODD} is put in the place of every group of keys for that.
 */
class RequestSchemaTest {
    private static final String ODD = "qqqqqqqqqq: 1";
    private static final Pattern KNOWN = Pattern.compile("qqqqqqqqqq: The key is not known, expected one of ([^;]+);");
    private static final Pattern CHOICES = Pattern.compile("Got \"qqq\", expected one of ([^;]+)[;?]");

    private static final String PIECE = "piece: {shape: {kind: slab, thickness: 30 mm}, meat: chicken-breast-skinless,"
            + " start_temperature: 4 °C}\n";
    private static final String PLAN = "cut: chicken-breast-skinless\nmass: 200 g\n";

    @TempDir
    private Path folder;

    /** A place in a schema, and documents that make the reader ask for all keys of that place. */
    private record Probe(String schema, String place, List<String> documents) {}

    private static Stream<Probe> probes() {
        return Stream.concat(planProbes(), simulationProbes());
    }

    private static Stream<Probe> planProbes() {
        return Stream.of(
                plan("", PLAN + ODD),
                plan("/$defs/salting", PLAN + "salting: {" + ODD + "}"),
                plan("/$defs/taste", PLAN + "taste: {" + ODD + "}"),
                plan("/$defs/vessel", PLAN + "vessel: {" + ODD + "}"),
                plan("/$defs/notebook", PLAN + "notebook: {" + ODD + "}"),
                plan("/$defs/label", PLAN + "label: {" + ODD + "}"),
                plan("/$defs/equipment", PLAN + "equipment: {" + ODD + "}"),
                plan("/$defs/guests", PLAN + "guests: {" + ODD + "}"),
                plan("/$defs/salt_label", PLAN + "salt: {" + ODD + "}"),
                plan("/$defs/meat", "mass: 200 g\nshape: {kind: slab, thickness: 3 cm}\nmeat: {" + ODD + "}"),
                plan("/$defs/slab", PLAN + shape("slab")),
                plan("/$defs/cylinder", PLAN + shape("cylinder")),
                plan("/$defs/sphere", PLAN + shape("sphere")),
                plan("/$defs/box", PLAN + shape("box")),
                plan("/$defs/cook_step", PLAN + "before:\n  - {" + ODD + "}"),
                plan("/$defs/expert", PLAN + "expert: {" + ODD + "}"),
                plan("/$defs/rest", PLAN + "rest: {" + ODD + "}"),
                plan("/$defs/ellipsoid", PLAN + shape("ellipsoid")));
    }

    private static Stream<Probe> simulationProbes() {
        String soak = "kind: soak, " + ODD;
        return Stream.of(
                simulation("", ODD),
                simulation("/$defs/piece", "piece: {" + ODD + "}"),
                simulation("/$defs/constants", "piece: {constants: {" + ODD + "}}"),
                simulation("/$defs/meat", "piece: {meat: {" + ODD + "}}"),
                simulation("/$defs/slab", "piece: {" + shape("slab") + "}"),
                simulation("/$defs/cylinder", "piece: {" + shape("cylinder") + "}"),
                simulation("/$defs/sphere", "piece: {" + shape("sphere") + "}"),
                simulation("/$defs/box", "piece: {" + shape("box") + "}"),
                simulation("/$defs/ellipsoid", "piece: {" + shape("ellipsoid") + "}"),
                simulation("/$defs/organism", "organism: {" + ODD + "}"),
                simulation("/$defs/output", "output: {" + ODD + "}"),
                simulation("/$defs/soak", stage(soak), stage(soak + ", appliance: oven-fan")),
                simulation(
                        "/$defs/soak_out",
                        stage("kind: soak-out, " + ODD),
                        stage("kind: soak-out, appliance: oven-fan, " + ODD)),
                simulation(
                        "/$defs/dry_salt",
                        stage("kind: dry-salt, " + ODD),
                        stage("kind: dry-salt, appliance: oven-fan, " + ODD)),
                simulation(
                        "/$defs/in_air", stage("kind: heat, " + ODD), stage("kind: heat, appliance: oven-fan, " + ODD)),
                simulation("/$defs/liquid_face", stage("kind: soak, second_face: {" + ODD + "}")),
                simulation("/$defs/salted_face", stage("kind: dry-salt, second_face: {" + ODD + "}")),
                simulation("/$defs/air_face", stage("kind: heat, second_face: {" + ODD + "}")),
                simulation("/$defs/until", stage("kind: heat, until: {" + ODD + "}")),
                simulation("/$defs/approach", stage("kind: heat, medium: {time_constant: 5 min, " + ODD + "}")),
                simulation("/$defs/ramp", stage("kind: heat, medium: {ramp: 5 min, " + ODD + "}")),
                simulation("/$defs/cycling", stage("kind: heat, medium: {period: 5 min, " + ODD + "}")));
    }

    private static Probe plan(String place, String... documents) {
        return new Probe("plan-request", place, List.of(documents));
    }

    private static Probe simulation(String place, String... documents) {
        return new Probe("simulation", place, List.of(documents));
    }

    private static String shape(String kind) {
        return "shape: {kind: " + kind + ", " + ODD + "}";
    }

    private static String stage(String keys) {
        return PIECE + "stages:\n  - {" + keys + "}\n";
    }

    @ParameterizedTest
    @MethodSource("probes")
    void readerAndSchemaKnowTheSameKeys(Probe probe) throws IOException {
        Set<String> asked = new TreeSet<>();
        for (String document : probe.documents()) {
            String messages = run(probe.schema(), document).err();
            Matcher matcher = KNOWN.matcher(messages);
            assertThat(matcher.find()).as(messages).isTrue();
            asked.addAll(List.of(matcher.group(1).split(", | or ")));
        }
        Set<String> inSchema = SchemaDocument.of(probe.schema()).objects().getOrDefault(probe.place(), Set.of());
        // which keys a medium has is told by one of three, which the reader looks for together
        if (Set.of("/$defs/approach", "/$defs/ramp", "/$defs/cycling").contains(probe.place())) {
            asked.removeAll(Set.of("time_constant", "ramp", "period"));
            inSchema.removeAll(Set.of("time_constant", "ramp", "period"));
        }
        assertThat(inSchema).isEqualTo(asked);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan-request", "simulation"})
    void everyObjectOfTheSchemaIsCompared(String schema) {
        Set<String> compared = new TreeSet<>();
        probes().filter(p -> p.schema().equals(schema)).forEach(p -> compared.add(p.place()));
        assertThat(SchemaDocument.of(schema).objects().keySet()).isEqualTo(compared);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plan-request | /$defs/salting/properties/treatment/enum | salting: {treatment: qqq}",
                "plan-request | /properties/kitchen/enum | kitchen: qqq",
                "simulation | /properties/solver/enum | solver: qqq",
                "simulation | /$defs/constants/properties/water/enum | piece: {constants: {water: qqq}}",
            })
    void readerAndSchemaKnowTheSameWords(String schema, String place, String document) throws IOException {
        assertThat(words(schema, document))
                .containsExactlyElementsOf(
                        texts(SchemaDocument.of(schema).node().at(place)));
    }

    @Test
    void readerAndSchemaKnowTheSameKindsOfStages() throws IOException {
        Set<String> inSchema = new TreeSet<>();
        JsonNode definitions = SchemaDocument.of("simulation").node().get("$defs");
        for (String stage : List.of("soak", "soak_out", "dry_salt", "in_air")) {
            JsonNode kind = definitions.get(stage).get("properties").get("kind");
            inSchema.addAll(kind.has("const") ? List.of(kind.get("const").asString()) : texts(kind.get("enum")));
        }
        assertThat(inSchema).isEqualTo(new TreeSet<>(words("simulation", stage("kind: qqq"))));
    }

    @Test
    void examplesAreValid() throws IOException {
        Map<String, String> schemas = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Path.of("../examples"))) {
            files.filter(f -> f.toString().endsWith(".yaml")
                            && !f.toString().contains("trial")
                            && !f.toString().contains("notebook"))
                    .forEach(f -> schemas.put(f.toString(), schema(f)));
        }
        assertThat(schemas).hasSizeGreaterThanOrEqualTo(4);
        for (Map.Entry<String, String> one : schemas.entrySet()) {
            SchemaDocument.of(one.getValue()).requireValid(one.getKey(), SchemaDocument.file(Path.of(one.getKey())));
        }
    }

    private static String schema(Path example) {
        if (example.getParent().endsWith("meal")) {
            return "meal-request";
        }
        return example.endsWith("slab.yaml") ? "simulation" : "plan-request";
    }

    /** What the schema can see of what is wrong; ranges of quantities and names of the catalog are the reader's. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "plan-unknown-key.yaml",
                "plan-missing-unit.yaml",
                "plan-missing-mass.yaml",
                "plan-missing-cut.yaml",
                "plan-unknown-treatment.yaml",
                "plan-half-piece.yaml",
                "plan-meat-and-cut.yaml",
                "plan-shape-and-thickness.yaml",
                "plan-json.json",
                "simulate-unknown-key.yaml",
                "simulate-shape-kind.yaml",
                "simulate-time-and-at-most.yaml",
                "simulate-no-time.yaml",
                "simulate-two-goals.yaml",
                "simulate-humidity-twice.yaml",
                "simulate-turn-alone.yaml",
                "simulate-no-stages.yaml",
                "simulate-only-stages.yaml",
                "simulate-constants.yaml",
                "simulate-many.yaml",
                "simulate-json.json",
            })
    void badRequestsAreNotValid(String name) throws IOException {
        SchemaDocument schema = SchemaDocument.of(name.startsWith("plan") ? "plan-request" : "simulation");
        assertThat(schema.errors(SchemaDocument.file(Path.of("src/test/resources/bad", name))))
                .isNotEmpty();
    }

    @Test
    void commandPrintsTheSchemaAndNamesThemAll() {
        CommandRun all = CommandRun.of("schema");
        assertThat(all.code()).isZero();
        for (String name : List.of("plan-request", "simulation", "plan", "history")) {
            assertThat(all.out()).contains(name);
            CommandRun one = CommandRun.of("schema", name);
            assertThat(one.code()).isZero();
            assertThat(one.json().get("$schema").asString()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
        }
        CommandRun unknown = CommandRun.of("schema", "plan-reqest");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("did you mean \"plan-request\"").hasLineCount(1);
    }

    private List<String> words(String schema, String document) throws IOException {
        String messages = run(schema, document).err();
        Matcher matcher = CHOICES.matcher(messages);
        assertThat(matcher.find()).as(messages).isTrue();
        return List.of(matcher.group(1).split(", "));
    }

    private static List<String> texts(JsonNode array) {
        return array.valueStream().map(JsonNode::asString).toList();
    }

    private CommandRun run(String schema, String document) throws IOException {
        Path file = folder.resolve("probe.yaml");
        Files.writeString(file, document + "\n");
        return CommandRun.of(schema.equals("simulation") ? "simulate" : "plan", file.toString());
    }
}
