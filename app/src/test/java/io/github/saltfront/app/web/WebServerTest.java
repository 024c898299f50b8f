package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.app.export.PlanJson;
import io.github.saltfront.app.follow.CookRegistry;
import io.github.saltfront.app.follow.FollowSettings;
import io.github.saltfront.app.notebook.Notebook;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The server as a browser, a script and an attacker meet it. */
class WebServerTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final HttpClient CLIENT =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();
    private static final String JSON = "application/json";
    private static final String CHOP = """
            {"cut": "pork-loin-chop", "mass": "185 g", "thickness": "1 in", "appliance": "pan",
             "salting": {"treatment": "surface-salt"}, "now": "2026-11-28T12:00+01:00", "serve": "2026-11-28T19:00+01:00"}
            """;

    @TempDir
    private static Path folder;

    private static Optional<WebServer> server = Optional.empty();
    private static Optional<WebServer> guarded = Optional.empty();

    @BeforeAll
    static void start() {
        server = Optional.of(WebServer.start(new WebOptions(0, false, folder.resolve("a.db"), "test")));
        guarded = Optional.of(WebServer.start(new WebOptions(0, true, folder.resolve("b.db"), "test")));
    }

    @AfterAll
    static void stop() {
        server.ifPresent(WebServer::close);
        guarded.ifPresent(WebServer::close);
    }

    private static HttpRequest.Builder to(String path) {
        return HttpRequest.newBuilder(
                        URI.create("http://localhost:" + server.orElseThrow().port() + path))
                .timeout(Duration.ofMinutes(1));
    }

    static HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static HttpResponse<String> get(String path) {
        return send(to(path));
    }

    private static HttpResponse<String> post(String path, String body) {
        return send(to(path).header("Content-Type", JSON).POST(BodyPublishers.ofString(body)));
    }

    private static JsonNode json(HttpResponse<String> response) {
        return MAPPER.readTree(response.body());
    }

    @Test
    void theOpenApiDocumentNamesTheRoutesAndNoOthers() {
        Set<String> described = new TreeSet<>();
        JsonNode document = json(get("/api/openapi.json"));
        document.path("paths")
                .propertyStream()
                .forEach(path ->
                        path.getValue().propertyNames().forEach(method -> described.add(method + " " + path.getKey())));
        described.removeIf(name -> name.startsWith("parameters "));
        Set<String> routes = new TreeSet<>();
        PlanService service = new PlanService();
        WebOptions options = new WebOptions(0, false, folder.resolve("c.db"), "test");
        io.github.saltfront.app.store.Database database = io.github.saltfront.app.store.Database.open(options.data());
        CookRegistry cooks =
                new CookRegistry(database.cooks(), service::plan, Runnable::run, FollowSettings.usual("test"));
        WebServer.routes(
                        service,
                        database,
                        new CooksApi(cooks, new EventStreams(cooks), new Notebook(database, "test"), service),
                        options)
                .forEach(route ->
                        routes.add(route.method().name().toLowerCase(java.util.Locale.ROOT) + " " + route.path()));
        cooks.close();
        service.close();
        assertThat(described).isEqualTo(routes);
        assertThat(document.path("openapi").asString()).startsWith("3.1");
    }

    @Test
    void aPlanIsTheOneOfTheCommandLine() {
        HttpResponse<String> response = post("/api/plan", CHOP);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        JsonNode plan = json(response);
        assertThat(plan.path("schema").asString()).isEqualTo(PlanJson.SCHEMA);
        assertThat(plan.path("clock")
                        .get(plan.path("clock").size() - 1)
                        .path("time")
                        .asString())
                .isEqualTo("2026-11-28T19:00:00+01:00");
        // the official minimum for pork chops (USDA FSIS chart) is 145 F with 3 min rest
        JsonNode minimum = plan.path("cooking").path("safety").path("consumer_minimum");
        assertThat(minimum.path("temperature_c").asDouble())
                .isCloseTo(62.78, org.assertj.core.data.Offset.offset(0.01));
        JsonNode fronts = json(post("/api/fronts", CHOP));
        assertThat(fronts.path("temperature_c").size())
                .isEqualTo(fronts.path("time_s").size())
                .isGreaterThan(50);
        HttpResponse<String> picture = post("/api/download/fronts.svg", CHOP);
        assertThat(picture.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
        assertThat(picture.body()).startsWith("<svg").doesNotContain("<script", "http://localhost");
    }

    @Test
    void allProblemsAreToldWithTheirKeys() {
        HttpResponse<String> response = post(
                "/api/plan",
                "{\"cut\":\"unicorn\",\"mass\":\"1\",\"salting\":{\"tiem\":\"2 h\"},\"guests\":{\"count\":0}}");
        assertThat(response.statusCode()).isEqualTo(400);
        List<String> fields = new ArrayList<>();
        json(response)
                .path("problems")
                .forEach(problem -> fields.add(problem.path("field").asString()));
        assertThat(fields).containsExactlyInAnyOrder("cut", "mass", "salting.tiem", "guests.count");
    }

    @Test
    void whatCannotBePlannedIsToldBesideItsKey() {
        HttpResponse<String> response = post(
                "/api/plan?alternatives=no",
                "{\"cut\":\"chicken-breast-skinless\",\"mass\":\"220 g\",\"appliance\":\"water-bath\",\"setting\":\"50 °C\","
                        + "\"salting\":{\"treatment\":\"none\"}}");
        assertThat(response.statusCode()).isEqualTo(422);
        assertThat(json(response).path("problems").get(0).path("field").asString())
                .isEqualTo("appliance");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[]", "", "null", "\"x\"", "{\"mass\":{}}", "{\"cut\":\"a\",\"cut\":\"b\"}"})
    void jsonThatIsNoRequestIsWrongInput(String body) {
        HttpResponse<String> response = post("/api/plan", body);
        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(json(response).path("problems").get(0).path("message").asString())
                .isNotBlank();
    }

    @Test
    void aBodyThatIsTooLargeIsNotRead() {
        HttpResponse<String> declared = post("/api/plan", "{\"cut\":\"" + "x".repeat(200_000) + "\"}");
        assertThat(declared.statusCode()).isEqualTo(413);
        assertThat(post("/api/plan", CHOP).statusCode()).isEqualTo(200);
    }

    @Test
    void aPostThatAFormOfAnotherSiteCanSendIsRefused() {
        HttpRequest.Builder form =
                to("/api/plan").header("Content-Type", "text/plain").POST(BodyPublishers.ofString(CHOP));
        assertThat(send(form).statusCode()).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://evil.example", "https://localhost", "null", "http://localhost:1"})
    void aPostFromAPageOfAnotherSiteIsRefused(String origin) {
        HttpRequest.Builder foreign = to("/api/plan")
                .header("Content-Type", JSON)
                .header("Origin", origin)
                .POST(BodyPublishers.ofString(CHOP));
        assertThat(send(foreign).statusCode()).isEqualTo(403);
        HttpRequest.Builder crossed = to("/api/saved")
                .header("Content-Type", JSON)
                .header("Sec-Fetch-Site", "cross-site")
                .POST(BodyPublishers.ofString("{}"));
        assertThat(send(crossed).statusCode()).isEqualTo(403);
    }

    /** DNS rebinding: the name of another site is made to point here. */
    @ParameterizedTest
    @CsvSource({"evil.example, 403", "evil.example:80, 403", "localhost, 200", "127.0.0.1:9, 200"})
    void onlyItsOwnNamesAreAnswered(String host, int status) throws IOException {
        assertThat(raw("GET /api/catalog/salts HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 " + status);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../openapi.json",
                "/..%2fopenapi.json",
                "/%2e%2e/WebServer.class",
                "/page/index.html",
                "/Index.html"
            })
    void noPathLeadsOutOfThePages(String path) throws IOException {
        assertThat(raw("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .containsPattern("^HTTP/1.1 (400|404)");
    }

    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket("localhost", server.orElseThrow().port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            BufferedReader reader =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            return String.valueOf(reader.readLine());
        }
    }

    @Test
    void thePageHasAStrictPolicyAndIsNotSentTwice() {
        HttpResponse<String> page = get("/");
        String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
        assertThat(policy).contains("default-src 'none'", "script-src 'self';").doesNotContain("unsafe", "http:", "*");
        assertThat(page.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(page.body()).doesNotContain("https://", "onclick=", "style=");
        String tag = page.headers().firstValue("ETag").orElseThrow();
        assertThat(send(to("/").header("If-None-Match", tag)).statusCode()).isEqualTo(304);
    }

    @Test
    void savedPlansAreKeptWithTheirTitlesAsTheyAre() {
        String title = "<script>alert(1)</script> & \\\"quotes\\\"";
        HttpResponse<String> saved = post("/api/saved", "{\"title\":\"" + title + "\",\"request\":" + CHOP + "}");
        assertThat(saved.statusCode()).as(saved.body()).isEqualTo(201);
        String id = json(saved).path("id").asString();
        HttpResponse<String> read = get("/api/saved/" + id);
        assertThat(read.headers().firstValue("Content-Type").orElse("")).startsWith(JSON);
        assertThat(json(read).path("request")).isEqualTo(MAPPER.readTree(CHOP));
        assertThat(json(post("/api/saved/" + id + "/copy", "{}")).path("title").asString())
                .endsWith("(copy)");
        JsonNode file = json(get("/api/saved-file"));
        assertThat(send(to("/api/saved/" + id).DELETE()).statusCode()).isEqualTo(204);
        assertThat(get("/api/saved/" + id).statusCode()).isEqualTo(404);
        assertThat(json(post("/api/saved-file", MAPPER.writeValueAsString(file)))
                        .path("added")
                        .asInt())
                .isEqualTo(1);
        assertThat(get("/api/saved/" + id).statusCode()).isEqualTo(200);
    }

    @Test
    void aWrongRequestOrTitleIsNotSaved() {
        assertThat(post("/api/saved", "{\"title\":\"x\",\"request\":{\"cut\":\"unicorn\"}}")
                        .statusCode())
                .isEqualTo(400);
        assertThat(post("/api/saved", "{\"title\":\" \",\"request\":" + CHOP + "}")
                        .statusCode())
                .isEqualTo(400);
        assertThat(post("/api/saved-file", "{\"plans\":[]}").statusCode()).isEqualTo(400);
    }

    @Test
    void inANetworkOnlyTheCodeOpens() {
        WebServer lan = guarded.orElseThrow();
        String base = "http://localhost:" + lan.port();
        assertThat(status(base + "/api/catalog")).isEqualTo(401);
        assertThat(status(base + "/app.js")).isEqualTo(401);
        assertThat(status(base + "/")).isEqualTo(302);
        assertThat(status(base + "/enter")).isEqualTo(200);
        assertThat(status(base + "/enter?code=AAAAAAAA")).isEqualTo(403);
        HttpResponse<String> entered = send(HttpRequest.newBuilder(URI.create(lan.address())));
        assertThat(entered.statusCode()).isEqualTo(302);
        String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie)
                .contains("HttpOnly", "SameSite=Lax")
                .doesNotContain(lan.accessCode().orElseThrow());
        HttpRequest.Builder inside = HttpRequest.newBuilder(URI.create(base + "/api/catalog/salts"))
                .header("Cookie", cookie.substring(0, cookie.indexOf(';')));
        assertThat(send(inside).statusCode()).isEqualTo(200);
    }

    private static int status(String address) {
        return send(HttpRequest.newBuilder(URI.create(address))).statusCode();
    }
}
