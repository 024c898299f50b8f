package io.github.saltfront.app.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.saltfront.data.CsvTable;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each file in {@code bad/} gives just the problems that {@code bad/index.csv} lists. */
class BadFilesTest {
    private static final Path FOLDER = Path.of("src/test/resources/bad");

    @TestFactory
    Stream<DynamicTest> fileGivesTheListedProblems() throws IOException {
        return index().rows().stream().collect(Collectors.groupingBy(row -> row.text("file"))).entrySet().stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> check(entry.getKey(), entry.getValue())));
    }

    private static void check(String file, List<CsvTable.Row> rows) {
        DocumentException thrown = catchThrowableOfType(
                DocumentException.class, () -> SampleRequest.read(DocumentReader.read(FOLDER.resolve(file))));
        assertThat(thrown).isNotNull();
        assertThat(thrown.problems()).as(thrown.getMessage()).hasSameSizeAs(rows);
        for (CsvTable.Row row : rows) {
            assertThat(thrown.problems())
                    .as(thrown.getMessage())
                    .anyMatch(p -> p.field().equals(row.text("field"))
                            && p.line() == (int) row.number("line")
                            && p.message().contains(row.text("message_part")));
        }
        assertThat(thrown.problems()).extracting(Problem::message).allMatch(m -> m.endsWith(".") || m.endsWith("?"));
        assertThat(thrown).hasMessageContaining(file);
    }

    @Test
    void everyFileIsListed() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> names = files.map(f -> String.valueOf(f.getFileName()))
                    .filter(n -> n.startsWith("bad-"))
                    .toList();
            assertThat(index().rows())
                    .extracting(row -> row.text("file"))
                    .containsAll(names)
                    .isSubsetOf(names);
        }
    }

    private static CsvTable index() throws IOException {
        return CsvTable.read("bad/index.csv", new StringReader(Files.readString(FOLDER.resolve("index.csv"))));
    }
}
