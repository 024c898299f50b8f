package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.app.follow.Stove;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Cooks as a thermometer's program and a page meet them. */
class CooksApiTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String JSON = "application/json";

    @TempDir
    private static Path folder;

    private static Optional<WebServer> server = Optional.empty();
    private static String cook = "";

    @BeforeAll
    static void start() {
        server =
                Optional.of(WebServer.start(new WebOptions(0, false, folder.resolve("cooks.db"), "test"), Stove.SMALL));
        HttpResponse<String> begun =
                post("/api/cooks", JSON, "{\"title\":\"Breast\",\"request\":" + Stove.BREAST + "}");
        assertThat(begun.statusCode()).as(begun.body()).isEqualTo(201);
        cook = json(begun).path("id").asString();
        assertThat(begun.headers().firstValue("Location")).contains("/api/cooks/" + cook);
    }

    @AfterAll
    static void stop() {
        server.ifPresent(WebServer::close);
    }

    private static HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(
                URI.create("http://localhost:" + server.orElseThrow().port() + path));
    }

    private static HttpResponse<String> get(String path) {
        return WebServerTest.send(to(path));
    }

    private static HttpResponse<String> post(String path, String type, String body) {
        return WebServerTest.send(to(path).header("Content-Type", type).POST(BodyPublishers.ofString(body)));
    }

    private static JsonNode json(HttpResponse<String> response) {
        return MAPPER.readTree(response.body());
    }

    private static String readings() {
        return "/api/cooks/" + cook + "/readings";
    }

    /** What another program finds in the file. */
    private static int stored(String probe) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("cooks.db"));
                ResultSet rows = connection
                        .createStatement()
                        .executeQuery("select count(*) from cook_reading where probe = '" + probe + "'")) {
            return rows.getInt(1);
        }
    }

    @Test
    void anAnsweredReadingIsOnTheDiskAndCountsOnceInAnyOrder() throws SQLException {
        String heap =
                "[{\"probe\":\"brine\",\"value\":3,\"time_s\":-20},{\"probe\":\"brine\",\"value\":4,\"time_s\":-40},"
                        + "{\"probe\":\"brine\",\"value\":3,\"time_s\":-20}]";
        JsonNode first = json(post(readings(), JSON, heap));
        assertThat(first.path("accepted").asInt()).isEqualTo(2);
        assertThat(stored("brine")).isEqualTo(2);
        JsonNode again = json(post(readings(), JSON, heap));
        assertThat(again.path("accepted").asInt()).isZero();
        assertThat(again.path("known").asInt()).isEqualTo(3);
        List<String> rows = get("/api/cooks/" + cook + "/log.csv")
                .body()
                .lines()
                .filter(line -> line.startsWith("-"))
                .toList();
        assertThat(rows.stream().map(row -> row.substring(0, row.indexOf(',')))).containsExactly("-40", "-20");
    }

    @Test
    void whatCannotBeKeptIsToldAndTheRestIsKept() throws SQLException {
        HttpResponse<String> response = post(
                readings(),
                JSON,
                "[{\"probe\":\"refrigerator\",\"value\":5},{\"value\":\"NaN\"},{\"value\":3000},{\"value\":3001}]");
        assertThat(response.statusCode()).isEqualTo(200);
        JsonNode receipt = json(response);
        assertThat(receipt.path("accepted").asInt()).isEqualTo(1);
        assertThat(receipt.path("refused").asInt()).isEqualTo(3);
        assertThat(receipt.path("problems").get(0).path("readings").toString()).isEqualTo("[1]");
        assertThat(stored("refrigerator")).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "application/json | {\"value\":\"NaN\"} | 400",
                "application/json | [] | 400",
                "application/json | {\"value\":NaN} | 400",
                "application/json | [ | 400",
                "text/csv | core,,hot,C | 400",
                "text/csv | '' | 400",
                "text/plain | {\"value\":5} | 415",
            })
    void aHeapWithoutAnyReadingIsWrongInput(String type, String body, int status) {
        HttpResponse<String> response = post(readings(), type, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        assertThat(json(response).path("problems").get(0).path("message").asString())
                .endsWith(".");
    }

    @Test
    void aThousandReadingsInASecondAreAllThere() throws SQLException {
        List<CompletableFuture<HttpResponse<String>>> answers = new ArrayList<>();
        for (int part = 0; part < 50; part++) {
            StringBuilder lines = new StringBuilder("probe,time_s,value\n");
            for (int i = 0; i < 20; i++) {
                lines.append("surface,").append(-0.001 * (20 * part + i + 1)).append(",20\n");
            }
            answers.add(CLIENT.sendAsync(
                    to(readings())
                            .header("Content-Type", "text/csv")
                            .POST(BodyPublishers.ofString(lines.toString()))
                            .build(),
                    BodyHandlers.ofString()));
        }
        for (CompletableFuture<HttpResponse<String>> answer : answers) {
            assertThat(json(answer.join()).path("accepted").asInt())
                    .as(answer.join().body())
                    .isEqualTo(20);
        }
        assertThat(stored("surface")).isEqualTo(1000);
    }

    @Test
    void theStreamBeginsWithTheWholeCookAndTellsWhatComes() throws Exception {
        HttpResponse<InputStream> stream = CLIENT.send(
                to("/api/cooks/" + cook + "/stream")
                        .header("Accept", "text/event-stream")
                        .build(),
                BodyHandlers.ofInputStream());
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(stream.body(), StandardCharsets.UTF_8))) {
            assertThat(event(lines, "cook").path("id").asString()).isEqualTo(cook);
            post(readings(), JSON, "{\"probe\":\"oven-air\",\"value\":181.5}");
            JsonNode fresh = event(lines, "readings").path("readings").get(0);
            assertThat(fresh.path("point").get(1).asDouble()).isEqualTo(181.5);
            assertThat(event(lines, "look").path("outlook").path("phase").asString())
                    .isEqualTo("heat");
        }
        JsonNode outlook = json(get("/api/cooks/" + cook + "/outlook"));
        assertThat(outlook.path("schema").asString()).isEqualTo("saltfront.outlook");
        JsonNode state = json(get("/api/cooks/" + cook));
        assertThat(state.path("fan").size()).isGreaterThan(10);
        assertThat(json(get("/api/cooks")).path("cooks").get(0).path("title").asString())
                .isEqualTo("Breast");
    }

    private static JsonNode event(BufferedReader lines, String name) throws IOException {
        String line = lines.readLine();
        while (line != null && !line.equals("event: " + name)) {
            line = lines.readLine();
        }
        return MAPPER.readTree(String.valueOf(lines.readLine()).substring("data: ".length()));
    }

    @Test
    void theFileOfALoggerIsTakenAsItIsAndTwiceCountsOnce() {
        String log = "Time (s);Core (°C);oven-air_c\n-3;4,25;150\n-2;4,5;151\n";
        JsonNode first = json(post(readings(), "text/csv", log));
        assertThat(first.path("accepted").asInt()).as(first.toString()).isEqualTo(4);
        assertThat(json(post(readings(), "text/csv", log)).path("known").asInt())
                .isEqualTo(4);
        assertThat(get("/api/cooks/" + cook + "/log.csv").body()).contains("\n-3,", "4.25");
        assertThat(post(readings(), "text/csv", "time_s,core_c\n").statusCode()).isEqualTo(400);
    }

    @Test
    void aCookEndsIntoTheNotebookIfItIsAskedFor() {
        String id = json(post("/api/cooks", JSON, "{\"title\":\"Noted\",\"request\":" + Stove.BREAST + "}"))
                .path("id")
                .asString();
        assertThat(get("/api/cooks/" + id + "/record.html").statusCode()).isEqualTo(404);
        assertThat(post("/api/cooks/" + id + "/readings", JSON, "{\"value\":4.2}")
                        .statusCode())
                .isEqualTo(200);
        Stove.await("there is a front", () -> get("/api/cooks/" + id + "/front").statusCode() == 200);
        JsonNode front = json(get("/api/cooks/" + id + "/front"));
        assertThat(front.path("temperature_c").size())
                .isEqualTo(front.path("time_s").size());
        assertThat(front.path("temperature_c").path(0).size())
                .isEqualTo(front.path("depth_mm").size());
        Stove.await(
                "there is a record",
                () -> get("/api/cooks/" + id + "/record.html").statusCode() == 200);
        JsonNode ending = json(post(
                "/api/cooks/" + id + "/end",
                JSON,
                "{\"weight_before\":\"220 g\",\"weight_after\":\"180 g\",\"note\":\"fat side up\",\"notebook\":true}"));
        JsonNode noted = json(get("/api/notebook/" + ending.path("notebook_id").asString()));
        assertThat(noted.toString()).contains("Noted", "220.0 g", "fat side up");
        assertThat(get("/api/cooks/" + id + "/record.html").body()).contains("Cooking record", "Noted");
    }

    @Test
    void eventsAndSourcesAreCheckedAndWhatIsNotThereIsNotFound() {
        String base = "/api/cooks/" + cook;
        assertThat(post(base + "/events", JSON, "{\"kind\":\"setting\",\"setting\":\"900 °C\"}")
                        .statusCode())
                .isEqualTo(400);
        assertThat(post(base + "/events", JSON, "{\"kind\":\"undo\",\"undone\":77}")
                        .statusCode())
                .isEqualTo(400);
        assertThat(post(base + "/events", JSON, "{\"kind\":\"note\",\"text\":\"fat side up\"}")
                        .statusCode())
                .isEqualTo(201);
        HttpResponse<String> source =
                post(base + "/sources", JSON, "{\"broker\":\"http://x\",\"topic\":\"a/#/b\",\"probe\":\"left\"}");
        assertThat(source.statusCode()).isEqualTo(400);
        assertThat(json(source).path("problems").size()).isEqualTo(3);
        assertThat(post(base + "/alarms/12345", JSON, "{}").statusCode()).isEqualTo(404);
        assertThat(get("/api/cooks/none").statusCode()).isEqualTo(404);
        assertThat(get("/api/cooks/none/stream").statusCode()).isEqualTo(404);
        assertThat(post("/api/cooks", JSON, "{\"request\":{\"cut\":\"unicorn\"}}")
                        .statusCode())
                .isEqualTo(400);
        assertThat(post("/api/cooks", JSON, "{}").statusCode()).isEqualTo(400);
    }
}
