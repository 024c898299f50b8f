package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class TrialCommandTest {
    private static final String FOLDER = "../examples/trial/";

    /** Nothing that would let a reader take a p-value for the whole finding. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "brined-or-plain-answers",
                "wet-or-dry-answers",
                "three-or-six-answers",
                "three-pulls-answers",
                "brined-or-plain-weights"
            })
    void everyFindingHasItsEffectAndIntervalBeforeTheChance(String name) {
        CommandRun run = CommandRun.of("trial", "analyze", FOLDER + name + ".csv");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        String text = run.out();
        assertThat(text.indexOf("95 % interval")).isPositive();
        assertThat(text.indexOf("chance of")).isGreaterThan(text.indexOf("95 % interval"));
        assertThat(text).doesNotContain("NaN", "Infinity", "null", "significant", "p =");
        assertThat(text.lines()).allMatch(line -> line.length() <= 72);
        JsonNode json = CommandRun.of("trial", "analyze", FOLDER + name + ".csv", "--json")
                .json();
        assertThat(json.get("schema").asString()).isEqualTo("saltfront.trial-analysis");
        assertThat(json.get("level").asDouble()).isCloseTo(0.95, within(1e-12));
    }

    @Test
    void noDifferenceShownIsNotNoDifference() {
        CommandRun run = CommandRun.of("trial", "analyze", FOLDER + "wet-or-dry-answers.csv");
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("11 of 24 answers are right")
                .contains("That is not the same as no difference")
                .contains("up to 46 of 100 people may be able to tell (d' up to 2.2)")
                .contains("24 tastings, 12 tasters");
        JsonNode json = CommandRun.of("trial", "analyze", FOLDER + "wet-or-dry-answers.csv", "--json")
                .json();
        // exact binomial tail of 11 of 24 at one third: 0.14006 (scipy)
        assertThat(json.get("p_value_one_sided").asDouble()).isCloseTo(0.14006, within(0.000005));
        assertThat(json.get("difference_shown").asBoolean()).isFalse();
        assertThat(json.get("right_needed").asInt()).isEqualTo(13);
    }

    @Test
    void designsAreReproducibleAndTheirTablesCanBeAnalyzed(@TempDir Path folder) throws IOException {
        for (String name : List.of("brined-or-plain", "wet-or-dry", "three-or-six", "three-pulls")) {
            Path answers = folder.resolve(name + ".csv");
            Path sheets = folder.resolve(name + ".html");
            Path weights = folder.resolve(name + "-weights.csv");
            CommandRun run = CommandRun.of(
                    "trial",
                    "design",
                    FOLDER + name + ".yaml",
                    "--answers",
                    answers.toString(),
                    "--sheets",
                    sheets.toString(),
                    "--weights",
                    weights.toString());
            assertThat(run.err()).isEmpty();
            assertThat(run.code()).isZero();
            assertThat(run.out()).contains("WHAT IT CAN SHOW", "HOLD EQUAL", "For the cook only");
            assertThat(run.out().lines()).allMatch(line -> line.length() <= 72);
            // the examples' answers were filled into this very table
            assertThat(keys(Files.readString(answers)))
                    .isEqualTo(keys(Files.readString(Path.of(FOLDER + name + "-answers.csv"))));
            CommandRun blank = CommandRun.of("trial", "analyze", answers.toString());
            assertThat(blank.code()).isEqualTo(2);
            assertThat(blank.err()).contains("No row has an answer yet");
            sheetsGiveNothingAway(Files.readString(sheets), run.out());
        }
    }

    private static List<String> keys(String table) {
        return table.lines()
                .filter(l -> !l.startsWith("#"))
                .map(l -> l.substring(0, l.lastIndexOf(',')))
                .toList();
    }

    private static void sheetsGiveNothingAway(String page, String plan) {
        assertThat(page)
                .doesNotContain("brined", "plain", "wet", "dry", "percent", "°C", "turkey 1", "loin A", "<script")
                .doesNotContain("http");
        Set<String> codes = new HashSet<>();
        Matcher matcher = Pattern.compile(">([1-9][0-9]{2})<").matcher(page);
        while (matcher.find()) {
            assertThat(codes.add(matcher.group(1))).as(matcher.group(1)).isTrue();
            assertThat(plan).contains(matcher.group(1));
        }
        assertThat(codes.size()).isGreaterThan(40);
    }

    @ParameterizedTest
    @ValueSource(strings = {"brined-or-plain", "wet-or-dry", "three-or-six", "three-pulls"})
    void examplesAreWithinTheSchema(String name) throws IOException {
        Path file = Path.of(FOLDER + name + ".yaml");
        SchemaDocument.of("trial").requireValid(name, SchemaDocument.file(file));
    }

    @Test
    void powerTellsTheStableNumber() {
        CommandRun run =
                CommandRun.of("trial", "power", "--method", "triangle", "--can-tell", "30 %", "--power", "95 %");
        // ISO 4120 Table A.3 (from memory): 66; from 73 on it holds
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("it takes 73 tastings", "the first number that reaches it is 66");
        JsonNode json = CommandRun.of(
                        "trial", "power", "--method", "preference", "--majority", "75 %", "--tasters", "30", "--json")
                .json();
        assertThat(json.get("first_that_reaches_it").asInt()).isEqualTo(30);
        assertThat(json.get("needed").asInt()).isEqualTo(35);
        assertThat(json.get("power").asDouble()).isBetween(0.8, 0.81);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --method triangle                            | --distance: or --can-tell is what triangle needs
            --method triangle --distance 1 --can-tell 9% | one of them and nothing else
            --method tetrad --distance 1                 | expected triangle, duo-trio
            --method preference --distance 1             | --majority: is what a preference needs
            --method ratings --gap 1                     | --gap: and --spread are what ratings needs
            --method triangle --distance 1 --alpha 90%   | between 0.1 % and 20 %
            --method triangle --distance 1 --tasters 1   | between 2 and 5000
            """)
    void wrongOptionsAreNamedAndExitWithTwo(String arguments, String message) {
        CommandRun run = CommandRun.of(("trial power " + arguments.strip()).split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            method,taster;triangle,1                                                              | column "right_code" is missing
            method,taster,code_1,code_2,right_code,answer_code;2-afc,1,123,456,123,789            | line 2: Got the answer "789"
            method,taster,sample,score;ratings,a,x,12                                             | expected 1 to 9
            method,taster,sample,score;ratings,a,x,good                                           | expected a number
            method,taster,sample,score;ratings,a,x,5;ratings,a,y,6;ratings,b,x,5                  | needs more than 3 scores
            method,sample,before_g,after_g;yield,a,200,150;yield,b,200,800                        | between 0 and 2
            method,taster,right_code,answer_code;triangle,1,5,5;duo-trio,1,5,5                    | expected one
            method,taster,right_code,answer_code;guess,1,5,5                                      | expected triangle, duo-trio
            taster,answer;1,2                                                                     | column "method" is missing
            """)
    void brokenTablesAreNamedAndExitWithTwo(String table, String message, @TempDir Path folder) throws IOException {
        Path file = folder.resolve("answers.csv");
        Files.writeString(file, table.strip().replace(';', '\n') + "\n");
        CommandRun run = CommandRun.of("trial", "analyze", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(message);
    }

    @Test
    void semicolonsAndByteOrderMarksAreRead(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("answers.csv");
        StringBuilder table = new StringBuilder("\uFEFFmethod;taster;right_code;answer_code\n");
        for (int i = 0; i < 12; i++) {
            table.append("2-afc;")
                    .append(i)
                    .append(";1;")
                    .append(i < 10 ? 1 : 2)
                    .append('\n');
        }
        Files.writeString(file, table);
        CommandRun run = CommandRun.of("trial", "analyze", file.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("10 of 12 answers are right");
    }

    @Test
    void wrongTrialFilesAreToldWhole(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("trial.yaml");
        Files.writeString(
                file,
                "title: t\nsheet_title: Is brined better\nmethod: 2-afc\nsamples: [plain, brined]\ntasters: 0\n"
                        + "pieces: [{count: 2}]\nportions_per_piece: 3\nlook_for: {majority: 60 %}\n");
        CommandRun run = CommandRun.of("trial", "design", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("gives the sample \"brined\" away")
                .contains("needs an attribute")
                .contains("a whole number from 1 to 480");
        Files.writeString(
                file,
                "title: t\nmethod: triangle\nsamples: [plain, brined]\ntasters: 12\npieces: [{count: 2}]\n"
                        + "portions_per_piece: 3\n");
        assertThat(CommandRun.of("trial", "design", file.toString()).err())
                .contains("needs 18 portions of \"plain\", got pieces for 3; take 6 pieces");
    }
}
