package io.github.saltfront.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every form of a plan is read back by something that is not ours. */
class PlanFormatsTest {
    /** Across the end of summer time: at 03:00 local time of 2026-10-25 the clock goes back to 02:00 (Directive 2000/84/EC). */
    private static final String OVER_NIGHT = String.join(
            "\n",
            "cut: pork-tenderloin",
            "mass: 520 g",
            "thickness: 52 mm",
            "salting: {treatment: dry-salt, time: 12 h}",
            "appliance: oven-conventional",
            "setting: 180 °C",
            "now: 2026-10-24T12:00+02:00[Europe/Paris]",
            "serve: 2026-10-25T12:00+01:00[Europe/Paris]");

    @TempDir
    private Path folder;

    private byte[] written(String ending, String... more) throws IOException {
        Path request = folder.resolve("request.yaml");
        Files.writeString(request, OVER_NIGHT);
        Path out = folder.resolve("plan." + ending);
        CommandRun run = more.length == 0
                ? CommandRun.of("plan", request.toString(), "-o", out.toString())
                : CommandRun.of("plan", request.toString(), "-o", out.toString(), more[0], more[1]);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out()).isEmpty();
        return Files.readAllBytes(out);
    }

    private String text(String ending) throws IOException {
        return new String(written(ending), StandardCharsets.UTF_8);
    }

    /** RFC 5545: line ends, at most 75 octets, required properties; read by the biweekly library with its own checks. */
    @Test
    void calendarIsReadByAnotherLibrary() throws IOException {
        String text = text("ics");
        assertThat(text).endsWith("\r\n").doesNotContainPattern("[^\r]\n");
        assertThat(text.split("\r\n")).allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75);
        ICalendar calendar = Biweekly.parse(text).first();
        assertThat(calendar.validate(ICalVersion.V2_0).isEmpty())
                .as(calendar.validate(ICalVersion.V2_0).toString())
                .isTrue();
        List<VEvent> events = calendar.getEvents();
        assertThat(events)
                .hasSizeGreaterThanOrEqualTo(6)
                .allMatch(event -> event.getAlarms().size() == 1);
        assertThat(events.stream().map(event -> event.getUid().getValue())).doesNotHaveDuplicates();
        Instant salt = start(events.get(0));
        Instant serve = start(events.get(events.size() - 1));
        assertThat(serve).isEqualTo(Instant.parse("2026-10-25T11:00:00Z"));
        // twelve hours of salting are twelve hours, whatever the clock on the wall does in the night
        Instant out = events.stream()
                .filter(event -> event.getSummary().getValue().startsWith("Pat dry"))
                .map(PlanFormatsTest::start)
                .findFirst()
                .orElseThrow();
        assertThat(Duration.between(salt, out)).isEqualTo(Duration.ofHours(12));
        assertThat(events.get(0).getSummary().getValue()).isEqualTo("Salt: Pork tenderloin");
    }

    private static Instant start(VEvent event) {
        return event.getDateStart().getValue().toInstant();
    }

    /** Properties that schema.org/Recipe names for a recipe that others can use; durations are ISO 8601. */
    @Test
    void recipeHasThePropertiesOfTheVocabulary() throws IOException {
        JsonNode recipe = JsonMapper.builder().build().readTree(text("jsonld"));
        assertThat(recipe.get("@context").asString()).isEqualTo("https://schema.org");
        assertThat(recipe.get("@type").asString()).isEqualTo("Recipe");
        assertThat(recipe.get("name").asString()).isEqualTo("Pork tenderloin");
        assertThat(recipe.get("recipeIngredient").get(0).asString())
                .contains("520 g")
                .contains("lb");
        assertThat(recipe.get("recipeInstructions").valueStream())
                .allMatch(step -> step.get("@type").asString().equals("HowToStep") && step.has("text"));
        assertThat(recipe.get("nutrition").get("sodiumContent").asString()).matches("[0-9]+ mg");
        Duration cook = Duration.parse(recipe.get("cookTime").asString());
        Duration total = Duration.parse(recipe.get("totalTime").asString());
        assertThat(cook).isPositive().isLessThan(total);
        assertThat(total).isGreaterThan(Duration.ofHours(12));
    }

    @Test
    void cardIsOnePageWhoseTextCanBeReadBack() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(written("pdf", "--link", "http://192.168.1.20:8080/plan/7"))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("Pork tenderloin", "take it out at", "°C", "Sun 12:00", "Serve.", "Take care");
            assertThat(text).contains("Official minimum for consumers").doesNotContain("#");
        }
    }

    @Test
    void cardAndPictureAreWellFormedAndAskNoOtherHost() throws Exception {
        for (String ending : List.of("html", "svg")) {
            String text = text(ending);
            assertThat(text).doesNotContain("<script", "src=\"http", "href=\"http", "url(http", "NaN", "Infinity");
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(text.replaceFirst("<!DOCTYPE html>", ""))));
            assertThat(document.getElementsByTagName("title").getLength()).isPositive();
            assertThat(Objects.requireNonNull(
                                    document.getElementsByTagName("desc").item(0))
                            .getTextContent())
                    .contains("The required kill is reached at");
        }
    }

    @Test
    void pictureInPixelsIsTwiceAsWideAndNotBlank() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(written("png")));
        assertThat(image.getWidth()).isEqualTo(1920);
        long colors = java.util.stream.IntStream.range(0, image.getWidth())
                .map(x -> image.getRGB(x, 2 * 300))
                .distinct()
                .count();
        assertThat(colors).isGreaterThan(20);
    }

    @Test
    void frontsKeepToTheirSchema() throws IOException {
        JsonNode fronts = JsonMapper.builder().build().readTree(text("fronts"));
        SchemaDocument.of("fronts").requireValid("fronts", fronts);
        assertThat(fronts.get("temperature_c").size())
                .isEqualTo(fronts.get("time_s").size());
        assertThat(fronts.get("salt_pct").get(0).size())
                .isEqualTo(fronts.get("depth_mm").size());
    }

    @Test
    void markdownHasTheClockAsATable() throws IOException {
        assertThat(text("md"))
                .contains("# Pork tenderloin", "| when | what |", "## Take care")
                .contains("520 g");
    }

    @Test
    void pictureInPixelsNeedsAFile() throws IOException {
        Path request = folder.resolve("request.yaml");
        Files.writeString(request, OVER_NIGHT);
        CommandRun run = CommandRun.of("plan", request.toString(), "--format", "png");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("add -o plan.png");
    }
}
