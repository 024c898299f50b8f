package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What somebody who means harm may send; nothing of it is an error of the server, and it answers the next one. */
class AttackTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final int MEGABYTE = 1_000_000;
    private static final List<String> PATHS = List.of(
            "/api/plan",
            "/api/fronts",
            "/api/stages",
            "/api/offers",
            "/api/saved",
            "/api/saved-file",
            "/api/download/card.pdf");

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

    private static int port() {
        return server.orElseThrow().port();
    }

    private static HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(URI.create("http://localhost:" + port() + path))
                .timeout(Duration.ofMinutes(1));
    }

    private static HttpResponse<String> post(String path, String body) {
        return WebServerTest.send(
                to(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(body)));
    }

    private static void assertAlive() {
        assertThat(WebServerTest.send(to("/api/catalog/salts")).statusCode()).isEqualTo(200);
    }

    static Stream<String> paths() {
        return PATHS.stream();
    }

    @ParameterizedTest
    @MethodSource("paths")
    void malformedJsonIsWrongInputEverywhere(String path) {
        for (String body : List.of(
                "{",
                "[]",
                "",
                "nul",
                "{\"request\":[}",
                "\u0000",
                "{\"request\":7}",
                "{\"a\":1e999999}",
                "[".repeat(5000))) {
            HttpResponse<String> answer = post(path, body);
            assertThat(answer.statusCode()).as(path + " " + body).isEqualTo(400);
            assertThat(MAPPER.readTree(answer.body()).path("problems").isEmpty())
                    .isFalse();
        }
        assertAlive();
    }

    /** A body may be declared as large, or come without saying so; it is refused long before it is read to its end. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void fiftyMegabytesAreNotRead(boolean declared) throws IOException {
        int sent = 0;
        String status = "";
        try (Socket socket = new Socket("localhost", port())) {
            socket.setSoTimeout(30_000);
            OutputStream out = socket.getOutputStream();
            String length = declared ? "Content-Length: " + 50 * MEGABYTE : "Transfer-Encoding: chunked";
            out.write(("POST /api/plan HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n" + length
                            + "\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            byte[] piece = " ".repeat(10_000).getBytes(StandardCharsets.US_ASCII);
            BufferedReader reader =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            try {
                for (; sent < 50 * MEGABYTE && !reader.ready(); sent += piece.length) {
                    if (!declared) {
                        out.write("2710\r\n".getBytes(StandardCharsets.US_ASCII));
                    }
                    out.write(piece);
                    if (!declared) {
                        out.write("\r\n".getBytes(StandardCharsets.US_ASCII));
                    }
                }
            } catch (IOException e) {
                // the server has closed its side, after its answer
                assertThat(sent).isPositive();
            }
            status = String.valueOf(reader.readLine());
        }
        assertThat(status).startsWith("HTTP/1.1 413");
        assertThat(sent).isLessThan(20 * MEGABYTE);
        assertAlive();
    }

    @Test
    void aTitleWithControlCharactersIsRefused() {
        String saved = "{\"title\":\"a\\u0000b\",\"request\":{\"cut\":\"pork-loin-chop\",\"mass\":\"185 g\"}}";
        HttpResponse<String> answer = post("/api/saved", saved);
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(MAPPER.readTree(answer.body())
                        .path("problems")
                        .get(0)
                        .path("field")
                        .asString())
                .isEqualTo("title");
    }

    /** Answers are data, never pages: a browser that is led to one must not run what is in it. */
    @Test
    void whatWasStoredNeverComesBackAsAPage() {
        String title = "<img src=x onerror=alert(1)>";
        String saved = "{\"title\":\"" + title + "\",\"request\":{\"cut\":\"pork-loin-chop\",\"mass\":\"185 g\"}}";
        JsonNode plan = MAPPER.readTree(post("/api/saved", saved).body());
        HttpResponse<String> read =
                WebServerTest.send(to("/api/saved/" + plan.path("id").asString()));
        assertThat(MAPPER.readTree(read.body()).path("title").asString()).isEqualTo(title);
        assertThat(read.headers().firstValue("Content-Type").orElse("")).startsWith("application/json");
        assertThat(read.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(read.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'")
                .doesNotContain("unsafe");
    }

    @Test
    void aPageOfAnotherSiteMayNeitherSaveNorDelete() {
        for (String method : List.of("POST", "PUT", "DELETE")) {
            HttpRequest.Builder foreign = to("/api/saved" + (method.equals("POST") ? "" : "/x"))
                    .header("Content-Type", "application/json")
                    .header("Origin", "http://evil.example")
                    .method(method, BodyPublishers.ofString("{\"title\":\"x\"}"));
            assertThat(WebServerTest.send(foreign).statusCode()).as(method).isEqualTo(403);
        }
        HttpResponse<String> asked = WebServerTest.send(
                to("/api/saved").header("Origin", "http://evil.example").method("OPTIONS", BodyPublishers.noBody()));
        assertThat(asked.headers().firstValue("Access-Control-Allow-Origin")).isEmpty();
    }

    @Test
    void wrongCodesAreSlowedDownAndThenNotEvenTheRightOneCounts() {
        try (WebServer lan = WebServer.start(new WebOptions(0, true, folder.resolve("lan.db"), "test"))) {
            String enter = "http://localhost:" + lan.port() + "/enter";
            for (int i = 0; i < 5; i++) {
                assertThat(code(enter, "AAAAAAA" + i).statusCode()).isEqualTo(403);
            }
            HttpResponse<String> closed = code(enter, "AAAAAAAA");
            assertThat(closed.statusCode()).isEqualTo(429);
            assertThat(Integer.parseInt(
                            closed.headers().firstValue("Retry-After").orElseThrow()))
                    .isBetween(1, 6);
            assertThat(code(enter, lan.accessCode().orElseThrow()).statusCode()).isEqualTo(429);
            assertThat(closed.body())
                    .contains("Wait")
                    .doesNotContain(lan.accessCode().orElseThrow());
        }
    }

    private static HttpResponse<String> code(String enter, String code) {
        return WebServerTest.send(HttpRequest.newBuilder(URI.create(enter))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("code=" + code)));
    }
}
