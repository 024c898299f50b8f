package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.data.CsvTable;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each malformed request in {@code bad/} gives just the messages that {@code bad/requests.csv} lists, and its exit code. */
class BadRequestsTest {
    private static final Path FOLDER = Path.of("src/test/resources/bad");

    @TempDir
    private Path folder;

    @TestFactory
    Stream<DynamicTest> fileGivesTheListedMessages() throws IOException {
        return index().rows().stream().collect(Collectors.groupingBy(row -> row.text("file"))).entrySet().stream()
                .sorted(Comparator.comparing(Map.Entry::getKey))
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> check(entry.getKey(), entry.getValue())));
    }

    private static void check(String name, List<CsvTable.Row> rows) {
        String file = FOLDER.resolve(name).toString();
        CommandRun run = CommandRun.of(name.substring(0, name.indexOf('-')), file);
        assertThat(run.code()).as(run.err()).isEqualTo((int) rows.get(0).number("code"));
        assertThat(run.out()).isEmpty();
        // offers that follow are no faults
        List<String> messages = run.err()
                .lines()
                .takeWhile(line -> !line.equals("What can be done instead:"))
                .toList();
        assertThat(messages).hasSameSizeAs(rows);
        for (CsvTable.Row row : rows) {
            int line = (int) row.number("line");
            String place = file + (line > 0 ? ", line " + line : "")
                    + (row.text("field").isEmpty() ? "" : ", " + row.text("field")) + ": ";
            assertThat(messages).anySatisfy(m -> assertThat(m).startsWith(place).contains(row.text("message_part")));
        }
        for (String message : messages) {
            assertSentences(message.substring(message.indexOf(": ") + 2));
        }
    }

    /** What was got or what is wrong, with a capital, to a full stop or a question; nothing of the program's inside. */
    private static void assertSentences(String message) {
        assertThat(message).matches("[A-Z\"].*[.?]");
        assertThat(message).doesNotContain("Exception", "java.", "NaN must", "kg/kg", "null", "\tat ");
    }

    @Test
    void everyFileIsListed() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> names = files.map(f -> String.valueOf(f.getFileName()))
                    .filter(n -> n.startsWith("plan-") || n.startsWith("simulate-"))
                    .toList();
            assertThat(names).hasSizeGreaterThanOrEqualTo(30);
            assertThat(index().rows())
                    .extracting(row -> row.text("file"))
                    .containsAll(names)
                    .isSubsetOf(names);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "simulate"})
    void missingFileAndFolderAreSaid(String command) {
        CommandRun missing = CommandRun.of(command, folder.resolve("none.yaml").toString());
        assertThat(missing.code()).isEqualTo(2);
        assertThat(missing.err()).contains("none.yaml: There is no such file").hasLineCount(1);
        CommandRun directory = CommandRun.of(command, folder.toString());
        assertThat(directory.code()).isEqualTo(2);
        assertThat(directory.err()).contains("This is a folder").hasLineCount(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "simulate"})
    void fileOfTenMegabytesIsRefusedAtOnce(String command) throws IOException {
        Path file = folder.resolve("large.yaml");
        Files.writeString(file, "cut: chicken-breast-skinless\n# " + "x".repeat(10_000_000) + "\n");
        CommandRun run = CommandRun.of(command, file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("The file is larger than 1 MB").hasLineCount(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "simulate"})
    void binaryFileIsRefused(String command) throws IOException {
        Path file = folder.resolve("picture.yaml");
        // the first bytes of a PNG file (ISO/IEC 15948, 5.2)
        Files.write(file, new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        CommandRun run = CommandRun.of(command, file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("expected text in UTF-8").hasLineCount(1);
    }

    @Test
    void fileNameCannotSteerTheTerminal() throws IOException {
        Path file = folder.resolve("a\u001b[2Jb.yaml");
        Files.write(file, "cut: x\n".getBytes(StandardCharsets.UTF_8));
        assertThat(CommandRun.of("plan", file.toString()).err()).doesNotContain("\u001b");
    }

    private static CsvTable index() throws IOException {
        return CsvTable.read("bad/requests.csv", new StringReader(Files.readString(FOLDER.resolve("requests.csv"))));
    }
}
