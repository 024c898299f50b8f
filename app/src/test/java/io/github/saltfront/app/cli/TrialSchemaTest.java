package io.github.saltfront.app.cli;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What the trials write is valid by its schema. */
class TrialSchemaTest {
    private static final String FOLDER = "../examples/trial/";

    @Test
    void trialOutputsAreValid() {
        SchemaDocument power = SchemaDocument.of("trial-power");
        power.requireValid(
                "d'",
                CommandRun.of("trial", "power", "--method=triangle", "--distance=1.5", "--tasters=24", "--json")
                        .json());
        power.requireValid(
                "gap",
                CommandRun.of("trial", "power", "--method=ratings", "--gap=1", "--spread=2", "--json")
                        .json());
        SchemaDocument design = SchemaDocument.of("trial-design");
        SchemaDocument analysis = SchemaDocument.of("trial-analysis");
        for (String name : List.of("brined-or-plain", "wet-or-dry", "three-or-six", "three-pulls")) {
            design.requireValid(
                    name,
                    CommandRun.of("trial", "design", FOLDER + name + ".yaml", "--json")
                            .json());
            analysis.requireValid(
                    name,
                    CommandRun.of("trial", "analyze", FOLDER + name + "-answers.csv", "--json")
                            .json());
        }
        analysis.requireValid(
                "weights",
                CommandRun.of("trial", "analyze", FOLDER + "brined-or-plain-weights.csv", "--json")
                        .json());
    }

    /** The cook file of the schema is the one that is read. */
    @Test
    void exampleCooksAreValid() throws java.io.IOException {
        SchemaDocument schema = SchemaDocument.of("cook-file");
        for (String name : List.of("sunday", "wednesday")) {
            schema.requireValid(
                    name, SchemaDocument.file(java.nio.file.Path.of("../examples/notebook/" + name + ".yaml")));
        }
    }
}
