package io.github.saltfront.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source named in a shipped table is in the bibliography, and every entry of the bibliography is used somewhere. */
class BibliographyTest {
    private static final Path RESOURCES = Path.of("src/main/resources/io/github/saltfront");

    /** Marks for "no source", which may have no row yet. */
    private static final Set<String> GENERIC = Set.of("common-practice", "estimate");

    @Test
    void everySourceIdResolves() throws IOException {
        Bibliography bibliography = Bibliography.load();
        List<String> unknown = new ArrayList<>();
        for (Path file : tables()) {
            CsvTable table = CsvTable.read(file.toString(), new StringReader(Files.readString(file)));
            if (file.endsWith("references.csv") || !table.header().contains("source_id")) {
                continue;
            }
            for (CsvTable.Row row : table.rows()) {
                for (String id : row.text("source_id").split(";", -1)) {
                    if (bibliography.find(id.strip()).isEmpty()) {
                        unknown.add(file.getFileName() + " line " + row.line() + ": \"" + id.strip() + "\"");
                    }
                }
            }
        }
        assertThat(unknown).isEmpty();
    }

    @Test
    void everyTableNamesItsSources() throws IOException {
        List<String> without = new ArrayList<>();
        for (Path file : tables()) {
            CsvTable table = CsvTable.read(file.toString(), new StringReader(Files.readString(file)));
            // the words of a table in another language have no figures of their own
            boolean translates = table.header().equals(List.of("english", "de"));
            if (!translates && !table.header().contains("source_id")) {
                without.add(file.getFileName().toString());
            }
        }
        assertThat(without).isEmpty();
    }

    @Test
    void everyReferenceIsUsed() throws IOException {
        Set<String> text = new HashSet<>();
        for (Path root : List.of(RESOURCES, Path.of("src/main/java"))) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    if (!file.endsWith("references.csv")) {
                        text.add(Files.readString(file));
                    }
                }
            }
        }
        assertThat(Bibliography.load().all())
                .filteredOn(r -> !GENERIC.contains(r.id()))
                .filteredOn(r -> text.stream().noneMatch(t -> t.contains(r.id())))
                .extracting(Reference::id)
                .isEmpty();
    }

    private static List<Path> tables() throws IOException {
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            return files.filter(f -> f.toString().endsWith(".csv")).toList();
        }
    }
}
