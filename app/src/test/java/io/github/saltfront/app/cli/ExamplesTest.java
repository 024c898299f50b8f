package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Every example gives a plan that a cook could follow, and the README shows the true one. */
class ExamplesTest {
    private static final Path FOLDER = Path.of("../examples");
    private static final Path README = Path.of("../README.md");

    /** Fit for a phone and for a page of eighty columns. */
    private static final int WIDEST = 72;

    private final TimeZone zone = TimeZone.getDefault();

    /** Times of a request without a zone are those of the computer; the README shows them in one. */
    @BeforeEach
    void useOneZone() {
        TimeZone.setDefault(TimeZone.getTimeZone("Etc/UTC"));
    }

    @AfterEach
    void restoreZone() {
        TimeZone.setDefault(zone);
    }

    @TestFactory
    Stream<DynamicTest> exampleGivesAPlan() throws IOException {
        List<Path> examples = files(FOLDER);
        assertThat(examples).hasSizeGreaterThanOrEqualTo(3);
        return examples.stream().map(f -> DynamicTest.dynamicTest(String.valueOf(f.getFileName()), () -> check(f)));
    }

    @TestFactory
    Stream<DynamicTest> exampleOfSaltingGivesAPlanWithinTheSchema() throws IOException {
        List<Path> examples = files(FOLDER.resolve("salting"));
        assertThat(examples).hasSizeGreaterThanOrEqualTo(12);
        return examples.stream().map(f -> DynamicTest.dynamicTest(String.valueOf(f.getFileName()), () -> json(f)));
    }

    /** Ten evenings of a small cookery school; what each is about is named in its file. */
    @TestFactory
    Stream<DynamicTest> exampleOfTheWeekGivesAPlanThatCanBeFollowed() throws IOException {
        List<Path> examples = files(FOLDER.resolve("week"));
        assertThat(examples).hasSize(10);
        return examples.stream().map(f -> DynamicTest.dynamicTest(String.valueOf(f.getFileName()), () -> check(f)));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(f -> !f.endsWith("slab.yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static JsonNode json(Path file) {
        CommandRun run = CommandRun.of("plan", file.toString(), "--json");
        assertThat(run.code()).as(run.err()).isZero();
        JsonNode json = run.json();
        SchemaDocument.of("plan").requireValid(file.toString(), json);
        assertThat(json.get("cooking").get("safety").get("predicted_met").asBoolean())
                .isTrue();
        return json;
    }

    private static void check(Path file) throws IOException {
        CommandRun text = CommandRun.of("plan", file.toString());
        assertThat(text.code()).as(text.err()).isZero();
        assertThat(text.err()).isEmpty();
        assertThat(text.out())
                .contains("SALT:", "COOK:", "take out", "carry-over", "official", "consumer minimum")
                .contains("A prediction is not proof", "ON THE PLATE", "CLOCK", "Serve.", "TAKE CARE", "seed 1")
                .doesNotContain("NaN", "Infinity", "null", "Optional");
        assertThat(text.out().lines()).allMatch(line -> line.length() <= WIDEST);

        JsonNode clock = json(file).get("clock");
        List<String> times =
                clock.valueStream().map(s -> s.get("time").asString()).toList();
        assertThat(times).isSorted();
        String serve = SchemaDocument.file(file).get("serve").asString();
        assertThat(times.get(times.size() - 1)).startsWith(serve);
    }

    @Test
    void sameSeedGivesTheSamePlan() {
        String file = FOLDER.resolve("overnight-tenderloin.yaml").toString();
        assertThat(CommandRun.of("plan", file)).isEqualTo(CommandRun.of("plan", file, "--seed", "1"));
    }

    /** Run with {@code -Dupdate.docs=true} to write the output into the README. */
    @ParameterizedTest
    @ValueSource(strings = {"sunday-chicken", "friday-ribeye", "overnight-tenderloin"})
    void readmeShowsTheTrueOutput(String name) throws IOException {
        String readme = Files.readString(README);
        String opening = "<!-- plan " + name + " -->";
        String closing = "<!-- end of " + name + " -->";
        assertThat(readme).containsOnlyOnce(opening).containsOnlyOnce(closing);
        int begin = readme.indexOf(opening) + opening.length();
        int end = readme.indexOf(closing);
        String out =
                CommandRun.of("plan", FOLDER.resolve(name + ".yaml").toString()).out();
        String block = "\n\n```text\n" + out.stripTrailing() + "\n```\n\n";
        if (Boolean.getBoolean("update.docs")) {
            Files.writeString(README, readme.substring(0, begin) + block + readme.substring(end));
            return;
        }
        assertThat(readme.substring(begin, end))
                .as("the plan of %s in README.md; -Dupdate.docs=true writes it anew", name)
                .isEqualTo(block);
    }

    /** Run with {@code -Dupdate.docs=true} to draw it anew. */
    @Test
    void readmeShowsTheTruePicture() throws IOException {
        Path picture = README.resolveSibling("docs").resolve("sunday-chicken.svg");
        CommandRun run =
                CommandRun.of("plan", FOLDER.resolve("sunday-chicken.yaml").toString(), "--format", "svg");
        assertThat(run.code()).as(run.err()).isZero();
        if (Boolean.getBoolean("update.docs")) {
            Files.writeString(picture, run.out());
            return;
        }
        assertThat(run.out())
                .as("docs/sunday-chicken.svg; -Dupdate.docs=true draws it anew")
                .isEqualTo(Files.readString(picture));
    }
}
