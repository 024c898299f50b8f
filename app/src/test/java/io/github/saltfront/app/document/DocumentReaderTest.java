package io.github.saltfront.app.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.units.Dimension;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentReaderTest {
    private static final String YAML = """
            # a roast
            piece:
              shape: {kind: slab, thickness: 1 1/4"}
              meat: chicken-breast-skinless
              start_temperature: 4 °C
              constants:
                density: 1060 kg/m3
            pieces: 4
            stages:
              - {kind: soak, strength: 6 %, time: 6 h}
              - kind: heat
                medium: 150 °C
                coefficient: 20 W/(m2.K)
                emissivity: 0
                evaporation: off
                at_most: 1:30 h
            solver: 3d
            serving_time: 2026-11-26 18:30
            guests: [two adults, 1 child]
            """;

    private static final String JSON = """
            {"piece": {"shape": {"kind": "slab", "thickness": "1 1/4\\""},
                       "meat": "chicken-breast-skinless", "start_temperature": "4 °C",
                       "constants": {"density": "1060 kg/m3"}},
             "pieces": 4,
             "stages": [{"kind": "soak", "strength": "6 %", "time": "6 h"},
                        {"kind": "heat", "medium": "150 °C", "coefficient": "20 W/(m2.K)", "emissivity": 0,
                         "evaporation": false, "at_most": "1:30 h"}],
             "solver": "3d", "serving_time": "2026-11-26 18:30", "guests": ["two adults", "1 child"]}
            """;

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static Document document(String yaml) {
        return DocumentReader.read("test.yaml", yaml.getBytes(StandardCharsets.UTF_8), DocumentFormat.YAML);
    }

    private static List<Problem> refusal(Path file) {
        return catchThrowableOfType(DocumentException.class, () -> DocumentReader.read(file))
                .problems();
    }

    @Test
    void yamlAndJsonGiveTheSameRequest() throws IOException {
        SampleRequest request = SampleRequest.read(DocumentReader.read(file("a.yaml", YAML)));
        assertThat(SampleRequest.read(DocumentReader.read(file("a.json", JSON))))
                .isEqualTo(request);
        assertThat(request.size()).isCloseTo(0.03175, within(1e-12));
        assertThat(request.density()).hasValue(1060);
        assertThat(request.pieces()).isEqualTo(4);
        assertThat(request.solver()).isEqualTo(SampleRequest.Solver.THREE_D);
        assertThat(request.servingTime()).hasValue("2026-11-26 18:30");
        SampleRequest.SampleStage heat = request.stages().get(1);
        assertThat(heat.emissivity()).isZero();
        assertThat(heat.evaporation()).isFalse();
        assertThat(heat.time()).isEqualTo(5400);
    }

    @Test
    void windowsLineEndsAndByteOrderMarkChangeNothing() throws IOException {
        SampleRequest request = SampleRequest.read(DocumentReader.read(file("a.yml", YAML)));
        Path windows = file("b.yaml", "\ufeff" + YAML.replace("\n", "\r\n"));
        assertThat(SampleRequest.read(DocumentReader.read(windows))).isEqualTo(request);
    }

    @Test
    void missingFileFolderAndForeignEndAreRefused() throws IOException {
        assertThat(refusal(folder.resolve("none.yaml")))
                .extracting(Problem::message)
                .containsExactly(
                        "There is no such file; expected a request in YAML or JSON; check the name and the folder.");
        assertThat(refusal(folder))
                .extracting(Problem::message)
                .containsExactly("This is a folder, expected a file in YAML or JSON; name a file in it.");
        assertThat(refusal(file("log.csv", "a,b")))
                .extracting(Problem::message)
                .containsExactly(
                        "The end of the file name is not known, expected .yaml, .yml or .json; rename the file.");
    }

    @Test
    @Timeout(5)
    void largeFileIsRefusedBeforeItIsParsed() throws IOException {
        Path large = Files.write(folder.resolve("large.yaml"), new byte[10_000_000]);
        assertThat(refusal(large))
                .singleElement()
                .satisfies(p -> assertThat(p.message()).contains("larger than 1 MB"));
    }

    /** Just below the limit and hostile: many unknown keys, many open brackets, one long line. */
    @ParameterizedTest
    @Timeout(20)
    @ValueSource(
            strings = {"k%d: 1\n", "[", "{a: ", "- ", "a: ", "x", "\"", "? ", "&a ", "!a ", "#\n", "'a': 'b'\n", "|\n"})
    void hostileFileUnderTheLimitIsRefusedInTime(String unit) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; text.length() < DocumentReader.LARGEST - 20; i++) {
            text.append(String.format(unit, i));
        }
        for (DocumentFormat format : DocumentFormat.values()) {
            byte[] content = text.toString().getBytes(StandardCharsets.UTF_8);
            DocumentException thrown = catchThrowableOfType(
                    DocumentException.class, () -> SampleRequest.read(DocumentReader.read("hostile", content, format)));
            assertThat(thrown).isNotNull();
            assertThat(thrown.problems()).hasSizeLessThanOrEqualTo(ProblemLog.MOST + 1);
            assertThat(thrown.getMessage()).hasSizeLessThan(100_000);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "on,true",
        "off,false",
        "yes,true",
        "no,false",
        "true,true",
        "false,false",
        "Off,false",
        "'\"no\"',false"
    })
    void flagsTakeTheWordsPeopleUse(String written, boolean expected) {
        Document document = document("evaporation: " + written);
        assertThat(document.root().flag("evaporation")).isEqualTo(expected);
        document.requireNoErrors();
    }

    @ParameterizedTest
    @CsvSource({"18:30", "2026-11-26", "2026-11-26T18:30:00Z", "'1_000'", "0x10", "007", "no", "1e3", "12.50"})
    void textStaysAsItStands(String written) {
        Document document = document("serving_time: " + written);
        assertThat(document.root().text("serving_time")).isEqualTo(written);
        document.requireNoErrors();
    }

    @Test
    void absentOptionalValuesAreEmptyAndNoProblem() {
        Document document = document("a: 1");
        Node root = document.root();
        assertThat(root.integer("a", 0, 9)).isEqualTo(1);
        assertThat(root.findText("b")).isEmpty();
        assertThat(root.findQuantity("c", Dimension.MASS)).isEmpty();
        assertThat(root.findQuantityInRange("c", Dimension.MASS, "1 g", "2 g")).isEmpty();
        assertThat(root.findNumber("d", 0, 1)).isEmpty();
        assertThat(root.findInteger("e", 0, 1)).isEmpty();
        assertThat(root.findFlag("f")).isEmpty();
        assertThat(root.findChild("g")).isEmpty();
        assertThat(root.findList("h")).isEmpty();
        assertThat(root.findTexts("i")).isEmpty();
        assertThat(root.findChoice("j", SampleRequest.Solver.class)).isEmpty();
        assertThat(document.problems()).isEmpty();
    }

    @Test
    void wrongValuesAnswerPlaceholders() {
        Document document = document("t: [1]\nq: x\nn: x\ni: x\nf: x\nc: x\ng: x\nl: x\n");
        Node root = document.root();
        assertThat(root.text("t")).isEmpty();
        assertThat(root.quantity("q", Dimension.MASS)).isNaN();
        assertThat(root.number("n", 0, 1)).isNaN();
        assertThat(root.integer("i", 3, 9)).isEqualTo(3);
        assertThat(root.flag("f")).isFalse();
        assertThat(root.choice("c", SampleRequest.Shape.class)).isEqualTo(SampleRequest.Shape.SLAB);
        assertThat(root.child("g").quantity("deep", Dimension.MASS)).isNaN();
        assertThat(root.list("l")).isEmpty();
        assertThat(document.problems())
                .extracting(Problem::field)
                .containsExactly("t", "q", "n", "i", "f", "c", "g", "l");
        assertThatThrownBy(document::requireNoErrors)
                .isInstanceOf(DocumentException.class)
                .hasMessageContaining("test.yaml, line 2, q: \"x\" does not begin with a number");
    }

    @Test
    void choicesTakeAnyCaseAndJoin() {
        Document document = document("a: one-d\nb: THREE_D\nc: Three d\n");
        for (String key : List.of("a", "b", "c")) {
            document.root().choice(key, SampleRequest.Solver.class);
        }
        assertThat(document.problems()).isEmpty();
    }

    @Test
    void messageCannotSteerTheTerminal() {
        Problem problem = new Problem("a\u001b", 1, "b\u0007\u202ec");
        assertThat(problem.at("f\n")).isEqualTo("f\\u000a, line 1, a\\u001b: b\\u0007\\u202ec");
    }

    @Test
    void askingTwiceIsTheSameAsAskingOnce() {
        Document document = document("a: {b: 1 kg}\nc: x\n");
        Node root = document.root();
        assertThat(root.child("a").quantity("b", Dimension.MASS)).isEqualTo(1);
        assertThat(root.findChild("a")).contains(root.child("a"));
        assertThat(root.quantity("c", Dimension.MASS)).isNaN();
        assertThat(root.quantity("c", Dimension.MASS)).isNaN();
        assertThat(document.problems()).extracting(Problem::field).containsExactly("c");
    }
}
