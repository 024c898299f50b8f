package io.github.saltfront.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A part of docs/validation.md between two marks, written by a test and held by it. */
public final class PageSection {
    private static final Path PAGE = Path.of("../docs/validation.md");

    private PageSection() {}

    /**
     * Compares the part with what it should be, or writes it with {@code -Dupdate.docs=true}.
     *
     * @param mark name of the marks
     * @param expected what stands between them
     */
    public static void hold(String mark, String expected) throws IOException {
        String begin = "<!-- " + mark + ":begin -->";
        String page = Files.readString(PAGE);
        int from = page.indexOf(begin) + begin.length();
        int to = page.indexOf("<!-- " + mark + ":end -->");
        assertThat(page.indexOf(begin) >= 0 && to > from).as("marks of " + mark).isTrue();
        if (Boolean.getBoolean("update.docs")) {
            Files.writeString(PAGE, page.substring(0, from) + "\n" + expected + page.substring(to));
            return;
        }
        assertThat(page.substring(from, to).strip())
                .as("docs/validation.md is stale between the marks " + mark + "; run its test with -Dupdate.docs=true")
                .isEqualTo(expected.strip());
    }

    /** Compares a file beside the page, or writes it. */
    static void holdFile(String name, String expected) throws IOException {
        Path file = PAGE.resolveSibling("validation").resolve(name);
        if (Boolean.getBoolean("update.docs")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, expected);
            return;
        }
        assertThat(Files.readString(file))
                .as("docs/validation/" + name + " is stale; run its test with -Dupdate.docs=true")
                .isEqualTo(expected);
    }
}
