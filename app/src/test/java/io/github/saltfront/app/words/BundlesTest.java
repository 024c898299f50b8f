package io.github.saltfront.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.words.Language;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every bundle is complete in every language, says the same with the same figures, and holds nothing that nobody says. */
class BundlesTest {
    private static final List<Path> MODULES = List.of(Path.of("..", "core"), Path.of("."));
    private static final Pattern SLOT = Pattern.compile("%(\\d+\\$)?[-#+ 0,(]*\\d*(?:\\.\\d+)?[a-zA-Z%]");

    /** Slots that hold an ending of English alone. */
    private static final Set<String> ENGLISH_ENDINGS = Set.of(
            "KitchenCard.piece-in-all-at-c",
            "PlanText.piece-of-half-thickness",
            "TrialDesignText.the-serving-orders-are-used");

    /** What is no language. */
    private static final Set<String> FORMULAS = Set.of("TrialExplained.p-k-k-c-n");

    static List<Path> bundles() throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path module : MODULES) {
            try (Stream<Path> files = Files.walk(module.resolve("src/main/resources"))) {
                files.filter(file -> file.getFileName().toString().equals("words.properties"))
                        .sorted()
                        .forEach(found::add);
            }
        }
        return found;
    }

    @Test
    void thereAreBundlesOfBothModules() throws IOException {
        assertThat(bundles()).hasSizeGreaterThan(12);
        assertThat(Language.tags()).containsExactly("en", "de");
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void germanIsComplete(Path bundle) throws IOException {
        Map<String, String> english = read(bundle);
        Map<String, String> german = read(bundle.resolveSibling("words_de.properties"));
        assertThat(german.keySet()).isEqualTo(english.keySet());
        german.values().forEach(words -> assertThat(words).isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void germanPutsInTheSameFigures(Path bundle) throws IOException {
        Map<String, String> german = read(bundle.resolveSibling("words_de.properties"));
        read(bundle).forEach((key, words) -> {
            if (ENGLISH_ENDINGS.contains(key)) {
                assertThat(slots(words)).as(key).containsAll(slots(german.get(key)));
            } else {
                assertThat(slots(german.get(key))).as(key).isEqualTo(slots(words));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everythingIsSaidBySomebody(Path bundle) throws IOException {
        Path sources = Path.of(bundle.getParent().toString().replace("resources", "java"));
        Map<String, String> source = new TreeMap<>();
        for (String key : read(bundle).keySet()) {
            String user = key.substring(0, key.indexOf('.'));
            String said = key.substring(key.indexOf('.') + 1);
            if (key.startsWith("Wording.")) {
                continue; // says what other classes of the package hand it
            }
            String text = source.computeIfAbsent(user, name -> text(sources.resolve(name + ".java")));
            assertThat(isSaid(text, said)).as(key).isTrue();
        }
    }

    /** A key stands in the class whole, or begins with or ends in a part that the class puts together. */
    private static boolean isSaid(String text, String key) {
        Matcher literal = Pattern.compile("\"([a-z0-9.-]+)\"").matcher(text);
        boolean of = text.contains("PHRASES.say(key())");
        while (literal.find()) {
            String part = literal.group(1);
            boolean begins = part.matches(".*[.-]") && key.startsWith(part);
            boolean ends = part.matches("[.-].*") && (key.endsWith(part) || key.endsWith(part + "s"));
            if (part.equals(key) || (part + "s").equals(key) || begins || ends) {
                return true;
            }
        }
        return of;
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void germanIsNotEnglish(Path bundle) throws IOException {
        Map<String, String> german = read(bundle.resolveSibling("words_de.properties"));
        read(bundle).forEach((key, words) -> {
            if (words.split(" ", -1).length > 2 && !FORMULAS.contains(key)) {
                assertThat(german.get(key)).as(key).isNotEqualTo(words);
            }
        });
    }

    /** The classes that read a table say which of its columns are words. */
    @Test
    void tablesAreTranslated() throws IOException {
        Set<String> missing = new TreeSet<>();
        int found = 0;
        for (Path module : MODULES) {
            try (Stream<Path> files = Files.walk(module.resolve("src/main/resources"))) {
                for (Path table :
                        files.filter(f -> f.toString().endsWith("_de.csv")).toList()) {
                    found++;
                    missing.addAll(missing(table));
                }
            }
        }
        assertThat(found).isEqualTo(16);
        assertThat(missing).isEmpty();
    }

    private static Set<String> missing(Path table) throws IOException {
        String name = table.getFileName().toString().replace("_de.csv", ".csv");
        CsvTable english = csv(table.resolveSibling(name));
        Set<String> translated = new TreeSet<>();
        csv(table).rows().forEach(row -> {
            assertThat(row.text("de")).as(table + ": " + row.text("english")).isNotBlank();
            translated.add(row.text("english"));
        });
        Set<String> columns = new TreeSet<>();
        // the notes of rules are for those who keep the table
        Set<String> inner = name.equals("treatment_rules.csv") ? Set.of("note") : Set.of();
        Path sources = Path.of(table.getParent().toString().replace("resources", "java"));
        try (Stream<Path> files = Files.list(sources)) {
            files.map(BundlesTest::text)
                    .filter(text -> text.contains("\"" + name + "\"") || isRead(text, name))
                    .forEach(text -> {
                        Matcher column =
                                Pattern.compile("\\.words\\(\"(\\w+)\"\\)").matcher(text);
                        while (column.find()) {
                            columns.add(column.group(1));
                        }
                    });
        }
        assertThat(columns).as(name).isNotEmpty();
        Set<String> missing = new TreeSet<>();
        for (String column : columns) {
            if (english.header().contains(column) && !inner.contains(column)) {
                english.rows().stream()
                        .map(row -> row.text(column))
                        .filter(words -> !words.isEmpty() && !translated.contains(words))
                        .forEach(words -> missing.add(name + ", " + column + ": " + words));
            }
        }
        return missing;
    }

    /** The catalog hands rows to the records that read them. */
    private static boolean isRead(String text, String table) {
        Map<String, String> readers = Map.of(
                "cuts.csv", "record Cut(",
                "salt_forms.csv", "record SaltForm(",
                "liquids.csv", "record Liquid(",
                "appliances.csv", "record Appliance(",
                "measures.csv", "record Measure(",
                "salt_diffusivity.csv", "record SaltDiffusivity(");
        return readers.containsKey(table) && text.contains(readers.get(table));
    }

    private static CsvTable csv(Path file) throws IOException {
        try (Reader reader = Files.newBufferedReader(file)) {
            return CsvTable.read(file.getFileName().toString(), reader);
        }
    }

    private static Map<String, String> read(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            properties.load(reader);
        }
        Map<String, String> words = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> words.put(key, properties.getProperty(key)));
        return words;
    }

    private static Set<String> slots(String words) {
        Set<String> slots = new TreeSet<>();
        Matcher slot = SLOT.matcher(words);
        while (slot.find()) {
            slots.add(slot.group());
        }
        return slots;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
