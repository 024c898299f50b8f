package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Explanations are one file each, and their numbers are those of the plan. */
class ExplainCommandTest {
    @TempDir
    private Path folder;

    @Test
    void aPlanIsExplainedFromItsOwnNumbers() throws IOException {
        Path request = folder.resolve("request.yaml");
        Files.writeString(
                request,
                "cut: chicken-breast-skinless\nmass: 220 g\nthickness: 28 mm\nappliance: oven-fan\n"
                        + "salting: {treatment: wet-brine, strength: 6 % of solution, time: 3 h}\nnow: 2026-11-28T12:00\n");
        Path page = folder.resolve("why.html");
        Path film = folder.resolve("fronts.gif");
        Path pictures = folder.resolve("pictures");
        CommandRun run = CommandRun.of(
                "explain",
                request.toString(),
                "-o",
                page.toString(),
                "--gif",
                film.toString(),
                "--pictures",
                pictures.toString());
        assertThat(run.code()).as(run.err()).isZero();
        // what is packed into pictures may spell anything
        String html = Files.readString(page).replaceAll("base64,[^\"]*", "");
        assertThat(html)
                .contains(
                        "In one minute",
                        "As a lesson",
                        "As the model has it",
                        "Questions for students",
                        "<svg",
                        "data:image/gif")
                // the square law: four times three hours
                .contains("Four times as long, 12 h")
                .contains("official minimum")
                .doesNotContain("<script", "src=\"http", "href=\"http", "NaN", "Infinity");
        // 6 % of the solution are 6.38 % of the water
        assertThat(html).contains("6.38 % of the water, 6.00 % of salt and water together");
        requireFilm(film);
        assertThat(Files.readString(pictures.resolve("fronts.svg")))
                .startsWith("<svg")
                .contains("viewBox");
        assertThat(Objects.requireNonNull(
                                ImageIO.read(pictures.resolve("fronts.png").toFile()))
                        .getWidth())
                .isEqualTo(2 * 960);
    }

    /** A film of GIF 89a: all frames of one size, one time through, with a time for each. */
    private static void requireFilm(Path file) throws IOException {
        assertThat(Files.size(file)).isBetween(20_000L, 1_500_000L);
        try (ImageInputStream stream = ImageIO.createImageInputStream(file.toFile())) {
            ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
            reader.setInput(Objects.requireNonNull(stream));
            int frames = reader.getNumImages(true);
            assertThat(frames).isEqualTo(64);
            int first = reader.read(0).getRGB(100, 190);
            int last = reader.read(frames - 1).getRGB(100, 90);
            assertThat(first).as("salt has come to the outside").isNotEqualTo(last);
            assertThat(reader.read(frames / 2).getRGB(5, 5) & 0xffffff)
                    .as("paper")
                    .isEqualTo(0xfbfaf6);
            int coldMiddle = reader.read(0).getRGB(500, 190) & 0xff;
            int hotMiddle = reader.read(frames - 1).getRGB(500, 190) & 0xff;
            assertThat(hotMiddle).as("darker is hotter").isLessThan(coldMiddle);
            reader.dispose();
        }
        byte[] bytes = Files.readAllBytes(file);
        assertThat(new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1))
                .startsWith("GIF89a")
                .doesNotContain("NETSCAPE");
    }

    @Test
    void aTrialIsExplainedToo() throws IOException {
        Path page = folder.resolve("why.html");
        CommandRun run = CommandRun.of("explain", "../examples/trial/wet-or-dry.yaml", "-o", page.toString());
        assertThat(run.code()).as(run.err()).isZero();
        // twelve tasters, twice, one in three by guessing
        assertThat(Files.readString(page))
                .contains("24 answers times 0.333, that is 8.0")
                .doesNotContain("<script");
        CommandRun film = CommandRun.of(
                "explain",
                "../examples/trial/wet-or-dry.yaml",
                "-o",
                page.toString(),
                "--gif",
                folder.resolve("x.gif").toString());
        assertThat(film.code()).isEqualTo(2);
    }
}
