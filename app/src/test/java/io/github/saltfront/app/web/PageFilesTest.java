package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;

/** The files of the pages as they lie on the class path. */
class PageFilesTest {
    /** What the issue of the web program asks for: the page under 300 kB. */
    private static final int LARGEST_PAGE = 300_000;

    private static final Path PAGES = Path.of("src/main/resources/io/github/saltfront/app/web/page");
    private static final Pattern USED =
            Pattern.compile("(?:src|href|from|import)\\s*[=(]?\\s*\"\\.?/([a-z0-9-]+\\.[a-z]+)\"");

    private static String text(String name) {
        try {
            return Files.readString(PAGES.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> names() throws IOException {
        try (Stream<Path> files = Files.list(PAGES)) {
            return new TreeSet<>(
                    files.map(file -> String.valueOf(file.getFileName())).toList());
        }
    }

    /** The sheet of a taster needs the server anyway, and the worker does not keep itself. */
    @Test
    void theWorkerKeepsAllFilesOfThePages() throws IOException {
        Set<String> expected = names();
        expected.removeAll(List.of("tasting.html", "tasting.js", "worker.js", "index.html"));
        Set<String> kept = new TreeSet<>();
        Matcher named = Pattern.compile("\"/([a-z][a-z0-9-]*\\.[a-z]+)\"").matcher(text("worker.js"));
        while (named.find()) {
            kept.add(named.group(1));
        }
        assertThat(kept).isEqualTo(expected);
        assertThat(text("worker.js")).contains("FILES = [\"/\",", "@VERSION@").doesNotContain("\"/api");
    }

    @Test
    void thePlanPageIsLight() throws IOException {
        Set<String> needed = new HashSet<>();
        need("index.html", needed);
        // the words are asked for once the language is known: one of them is enough, and both are counted
        needed.addAll(List.of("words-en.json", "words-de.json"));
        assertThat(needed)
                .contains("app.js", "style.css", "fronts-draw.js", "own.js", "say.js")
                .doesNotContain("live.js");
        int plain = 0;
        int packed = 0;
        for (String name : needed) {
            byte[] content = Files.readAllBytes(PAGES.resolve(name));
            plain += content.length;
            packed += gzip(content);
        }
        System.out.printf("plan page: %d files, %d bytes, %d packed%n", needed.size(), plain, packed);
        assertThat(plain).isLessThan(LARGEST_PAGE);
    }

    private static void need(String name, Set<String> needed) {
        if (!needed.add(name) || !name.matches(".*\\.(js|html)")) {
            return;
        }
        Matcher used = USED.matcher(text(name));
        while (used.find()) {
            // a link to another page is not part of this one
            if (!used.group(1).endsWith(".html")) {
                need(used.group(1), needed);
            }
        }
    }

    private static int gzip(byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream packing = new GZIPOutputStream(bytes)) {
            packing.write(content);
        }
        return bytes.size();
    }

    @Test
    void anotherFileMakesAnotherWorker() {
        // the version is a hash: the word that stands for it never goes out
        assertThat(new String(PageFiles.content("worker.js"), StandardCharsets.UTF_8))
                .containsPattern("pages-[0-9a-f]{24}")
                .doesNotContain("@VERSION@");
    }
}
