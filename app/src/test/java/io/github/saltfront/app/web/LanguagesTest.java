package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Each request is answered in its own language, side by side. */
class LanguagesTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final String BREAST = """
            {"cut": "chicken-breast-skinless", "pieces": 2, "mass": "220 g", "salt": "table-salt-fine",
             "now": "2026-11-28T12:00+01:00", "serve": "2026-11-28T19:00+01:00"}
            """;

    /** Words of English sentences that no German sentence holds. */
    private static final Pattern ENGLISH =
            Pattern.compile("\\b(the|of|and|with|is|for|at|or|not|from|this|that|it|to|by|than|until|about)\\b");

    @TempDir
    private static Path folder;

    private static Optional<WebServer> server = Optional.empty();

    @BeforeAll
    static void start() {
        server = Optional.of(WebServer.start(new WebOptions(0, false, folder.resolve("a.db"), "test")));
    }

    @AfterAll
    static void stop() {
        server.ifPresent(WebServer::close);
    }

    private static HttpResponse<String> post(String path, String language, String body) {
        return WebServerTest.send(HttpRequest.newBuilder(
                        URI.create("http://localhost:" + server.orElseThrow().port() + path))
                .header("Content-Type", "application/json")
                .header("Accept-Language", language)
                .POST(BodyPublishers.ofString(body)));
    }

    private static JsonNode json(HttpResponse<String> response) {
        return MAPPER.readTree(response.body());
    }

    private static String clock(HttpResponse<String> plan) {
        StringBuilder words = new StringBuilder();
        json(plan).findValues("words").stream()
                .filter(JsonNode::isString)
                .forEach(step -> words.append(step.asString()).append("\n"));
        return words.toString();
    }

    @Test
    void theSamePlanIsToldToEachInHisLanguage() {
        HttpResponse<String> german = post("/api/plan", "de-DE,de;q=0.9", BREAST);
        HttpResponse<String> english = post("/api/plan", "en-US", BREAST);
        assertThat(german.statusCode()).isEqualTo(200);
        assertThat(german.headers().firstValue("Content-Language")).hasValue("de");
        assertThat(german.headers().firstValue("Vary"))
                .hasValueSatisfying(v -> assertThat(v).contains("Accept-Language"));
        assertThat(clock(german)).contains("Servieren.").doesNotContain("Serve.");
        assertThat(clock(english)).contains("Serve.").doesNotContain("Servieren.");
        // what is computed is the same
        assertThat(json(german).findValues("pull_temperature_c"))
                .isEqualTo(json(english).findValues("pull_temperature_c"));
    }

    @Test
    void problemsAreToldInTheLanguageOfTheRequest() {
        HttpResponse<String> german =
                post("/api/plan", "de", "{\"cut\": \"chicken-breast-skinless\", \"mass\": \"220\"}");
        assertThat(german.statusCode()).isEqualTo(400);
        assertThat(json(german).path("problems").get(0).path("message").asString())
                .contains("keine Einheit")
                .doesNotContainPattern(ENGLISH);
    }

    @Test
    void aLinkCanNameItsLanguage() {
        HttpResponse<String> catalog = WebServerTest.send(HttpRequest.newBuilder(
                        URI.create("http://localhost:" + server.orElseThrow().port() + "/api/catalog/cuts?language=de"))
                .header("Accept-Language", "en"));
        assertThat(catalog.body()).contains("Hähnchenbrust");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan.md", "calendar.ics", "fronts.svg", "recipe.jsonld"})
    void downloadsHoldNoEnglish(String name) {
        HttpResponse<String> file = post("/api/download/" + name, "de", BREAST);
        assertThat(file.statusCode()).as(file.body()).isEqualTo(200);
        // markup and the names of its attributes are English
        String words = file.body()
                .replaceAll("(?s)<style>.*?</style>", " ")
                .replaceAll("(?s)<[^>]*>", " ")
                .replaceAll("data:[^\" ]*", " ")
                .replaceAll("\"@?[a-zA-Z]+\":", " ");
        assertThat(words).doesNotContainPattern(ENGLISH);
    }
}
