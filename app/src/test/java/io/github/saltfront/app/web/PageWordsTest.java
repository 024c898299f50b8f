package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.catalog.Catalog;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The words of the pages: both languages hold the same, all of it is used, and nothing is said past them. */
class PageWordsTest {
    private static final Path PAGES = Path.of("src/main/resources/io/github/saltfront/app/web/page");
    private static final Pattern SLOT = Pattern.compile("\\{([a-z]+)}");
    private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*(\\.[a-z0-9]+([_-][a-z0-9]+)*)+");
    private static final Pattern CALL = Pattern.compile("\\b(say|parts|sayCount|countParts|table|merit)\\(");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern TEMPLATE = Pattern.compile("`((?:[^`\\\\]|\\\\.)*)`");
    private static final List<String> NUMBERS = List.of(".one", ".other");

    /** What German writes as English does: names, signs and words that both languages have. */
    private static final Set<String> ALIKE = Set.of("page.plan", "view.in");

    /** What stands on a page in every language: names, and units that are signs. */
    private static final Set<String> NAMES = Set.of("Saltfront", "English", "Deutsch", "g, °C", "oz, °F");

    /** Literals of the scripts that look like sentences and are none: requests, selectors and signs of the browser. */
    private static final Set<String> NO_WORDS = Set.of(
            "as soon as possible",
            " % of water",
            "much too weak",
            "slightly too weak",
            "just about right",
            "slightly too strong",
            "much too strong",
            "no words in ",
            "no words for ",
            "no slot ",
            "answered with ");

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> words(String language) {
        Map<String, String> words = new TreeMap<>();
        JsonNode bundle = JsonMapper.shared().readTree(text(PAGES.resolve("words-" + language + ".json")));
        bundle.properties()
                .forEach(entry -> words.put(entry.getKey(), entry.getValue().asString()));
        return words;
    }

    private static Map<String, String> files(String end) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(PAGES)) {
            all.filter(file -> file.toString().endsWith(end))
                    .forEach(file -> files.put(String.valueOf(file.getFileName()), text(file)));
        }
        return files;
    }

    /** The scripts without their comments. */
    private static Map<String, String> scripts() throws IOException {
        Map<String, String> scripts = files(".js");
        scripts.replaceAll((name, text) ->
                text.replaceAll("(?s)(?<=^|\\s)/\\*.*?\\*/", "").replaceAll("(?m)(^|[\\s;{])//.*$", "$1"));
        return scripts;
    }

    private static List<String> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(match -> match.group(1)).toList();
    }

    private static List<String> slots(String text) {
        List<String> slots = new ArrayList<>(found(SLOT, text));
        Collections.sort(slots);
        return slots;
    }

    @Test
    void bothLanguagesHoldTheSame() {
        Map<String, String> english = words("en");
        Map<String, String> german = words("de");
        assertThat(english).hasSizeGreaterThan(100);
        assertThat(german.keySet()).isEqualTo(english.keySet());
        english.forEach((key, text) -> {
            assertThat(key).matches(KEY);
            assertThat(slots(german.get(key))).as(key).isEqualTo(slots(text));
            assertThat(text).as(key).isNotBlank().doesNotContain("<").doesNotContainPattern("&[a-z]+;");
            assertThat(german.get(key)).as(key).isNotBlank().doesNotContain("<").doesNotContainPattern("&[a-z]+;");
        });
    }

    @Test
    void theBundlesAreSorted() {
        for (String language : List.of("en", "de")) {
            List<String> keys = found(
                    Pattern.compile("\"([a-z0-9._-]+)\": \""), text(PAGES.resolve("words-" + language + ".json")));
            assertThat(keys).hasSameSizeAs(words(language).keySet()).isSorted();
        }
    }

    @Test
    void germanIsGerman() {
        Map<String, String> english = words("en");
        words("de").forEach((key, text) -> {
            if (!ALIKE.contains(key)) {
                assertThat(text).as(key).isNotEqualTo(english.get(key));
            }
            assertThat(text).as(key).doesNotContainPattern("\\d\\.\\d").doesNotContain("\"");
        });
    }

    /** What a call names by its first argument: keys, and beginnings of keys, which end in a dot. */
    private static void named(String script, Set<String> keys, Set<String> beginnings) {
        Matcher call = CALL.matcher(script);
        while (call.find()) {
            String argument = firstArgument(script, call.end());
            boolean counts = call.group(1).endsWith("Count") || call.group(1).startsWith("count");
            for (String literal : found(LITERAL, argument)) {
                if (literal.matches(".+\\.")) {
                    beginnings.add(literal);
                } else if (KEY.matcher(literal).matches()) {
                    (counts ? NUMBERS : List.of("")).forEach(end -> keys.add(literal + end));
                }
            }
        }
    }

    private static String firstArgument(String script, int from) {
        int depth = 0;
        for (int i = from; i < script.length(); i++) {
            char c = script.charAt(i);
            if ("([{".indexOf(c) >= 0) {
                depth++;
            } else if (depth == 0 && (c == ',' || c == ')')) {
                return script.substring(from, i);
            } else if (")]}".indexOf(c) >= 0) {
                depth--;
            }
        }
        throw new AssertionError("a call is not closed: " + script.substring(from));
    }

    private static Set<String> keysOfPages() throws IOException {
        Set<String> keys = new TreeSet<>();
        files(".html")
                .values()
                .forEach(page -> keys.addAll(found(Pattern.compile("data-say(?:-[a-z]+)?=\"([^\"]+)\""), page)));
        return keys;
    }

    @Test
    void everyKeyThatIsSaidExists() throws IOException {
        Set<String> keys = keysOfPages();
        Set<String> beginnings = new TreeSet<>();
        scripts().values().forEach(script -> named(script, keys, beginnings));
        assertThat(keys).hasSizeGreaterThan(100);
        Set<String> known = words("en").keySet();
        assertThat(keys).isSubsetOf(known);
        for (String beginning : beginnings) {
            assertThat(known).as(beginning).anyMatch(key -> key.startsWith(beginning));
        }
        Set<String> species = new TreeSet<>();
        Catalog.load().cuts().all().forEach(cut -> species.add("species." + cut.species()));
        assertThat(known).containsAll(species);
    }

    @Test
    void everyKeyIsUsed() throws IOException {
        Set<String> keys = keysOfPages();
        Set<String> beginnings = new TreeSet<>();
        Map<String, String> scripts = scripts();
        scripts.values().forEach(script -> named(script, keys, beginnings));
        String all = String.join("\n", scripts.values());
        Set<String> literals = new TreeSet<>(found(LITERAL, all));
        Set<String> tokens = new TreeSet<>(found(Pattern.compile("([a-z0-9_-]+)"), all));
        Catalog.load().cuts().all().forEach(cut -> tokens.add(cut.species()));
        List<String> unused = words("en").keySet().stream()
                .filter(key -> !keys.contains(key) && !literals.contains(key))
                .filter(key -> !hasEnding(key, keys, literals))
                .filter(key -> beginnings.stream().noneMatch(start -> goesOn(key, start, tokens, literals)))
                .toList();
        assertThat(unused).isEmpty();
    }

    /** Some keys are made of another one and an ending, such as "-what". */
    private static boolean hasEnding(String key, Set<String> keys, Set<String> literals) {
        return Stream.of("-what", "-in")
                .filter(end -> key.endsWith(end) && literals.contains(end))
                .map(end -> key.substring(0, key.length() - end.length()))
                .anyMatch(start -> keys.contains(start) || literals.contains(start));
    }

    private static boolean goesOn(String key, String start, Set<String> tokens, Set<String> literals) {
        if (!key.startsWith(start)) {
            return false;
        }
        String rest = key.substring(start.length()).replaceFirst("\\.hint$", "");
        return tokens.contains(rest) || literals.contains(rest);
    }

    @Test
    void whatAPageBringsAlongIsEnglish() throws IOException {
        Map<String, String> english = words("en");
        files(".html").forEach((name, page) -> {
            String seen = page.replaceAll("(?s)<noscript>.*?</noscript>", "");
            for (MatchResult tag : Pattern.compile("<[a-z0-9]+[^>]*data-say=\"([^\"]+)\"[^>]*>([^<]*)<")
                    .matcher(seen)
                    .results()
                    .toList()) {
                assertThat(tag.group(2)).as(name + " " + tag.group(1)).isEqualTo(english.get(tag.group(1)));
            }
            sameInTag(seen, "aria-label", "data-say-label", english);
            sameInTag(seen, "content", "data-say-content", english);
            String rest = seen.replaceAll("(<[a-z0-9]+[^>]*data-say=\"[^>]*>)[^<]*<", "$1<")
                    .replaceAll("<[^>]*>", "\n");
            List<String> unsaid = rest.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .toList();
            assertThat(NAMES).as(name).containsAll(unsaid);
        });
    }

    private static void sameInTag(String page, String attribute, String marker, Map<String, String> english) {
        for (String tag : found(Pattern.compile("(<[a-z0-9]+[^>]*>)"), page)) {
            List<String> keys = found(Pattern.compile(marker + "=\"([^\"]+)\""), tag);
            List<String> texts = found(Pattern.compile("[ \\n]" + attribute + "=\"([^\"]+)\""), tag);
            boolean speaks = attribute.equals("aria-label") || tag.contains("name=\"description\"");
            if (speaks && !texts.isEmpty()) {
                assertThat(keys).as(tag).hasSize(1);
                assertThat(texts).as(tag).containsExactly(english.get(keys.get(0)));
            }
        }
    }

    /** Two words after each other are a sentence, and so is the first child of an element that begins with a capital letter. */
    @Test
    void noScriptSpeaksPastTheBundles() throws IOException {
        Pattern child = Pattern.compile("\\}, \"([A-Z][a-z]+[^\"]*)\"");
        List<String> spoken = new ArrayList<>();
        scripts().forEach((name, script) -> {
            String bare = script.replaceAll("class: \"[^\"]*\"", "").replaceAll("import .*", "");
            found(child, bare).forEach(literal -> spoken.add(name + ": " + literal));
            Stream.concat(found(LITERAL, bare).stream(), found(TEMPLATE, bare).stream())
                    .filter(literal -> Pattern.compile("(^|[^a-z.#-])[a-z]{2,} [a-z]{2,}")
                            .matcher(literal)
                            .find())
                    .filter(literal -> !NO_WORDS.contains(literal))
                    .forEach(literal -> spoken.add(name + ": " + literal));
        });
        assertThat(spoken).isEmpty();
    }
}
