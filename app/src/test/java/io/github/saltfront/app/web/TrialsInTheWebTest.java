package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The trial of our own scenario from design to the printed result, with simulated tasters who answer all at once. */
class TrialsInTheWebTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    private static Path folder;

    private static Optional<WebServer> open = Optional.empty();
    private static Optional<WebServer> guarded = Optional.empty();

    @BeforeAll
    static void start() {
        open = Optional.of(WebServer.start(new WebOptions(0, false, folder.resolve("a.db"), "test")));
        guarded = Optional.of(WebServer.start(new WebOptions(0, true, folder.resolve("a.db"), "test")));
    }

    @AfterAll
    static void stop() {
        open.ifPresent(WebServer::close);
        guarded.ifPresent(WebServer::close);
    }

    private static HttpResponse<byte[]> send(Optional<WebServer> server, String method, String path, String body) {
        HttpRequest.Builder request = HttpRequest.newBuilder(
                URI.create("http://localhost:" + server.orElseThrow().port() + path));
        request.header("Content-Type", "application/json");
        request.method(method, body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body));
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofByteArray());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static JsonNode json(String method, String path, String body) {
        HttpResponse<byte[]> answer = send(open, method, path, body);
        assertThat(answer.statusCode())
                .as(new String(answer.body(), java.nio.charset.StandardCharsets.UTF_8))
                .isBetween(200, 299);
        return JSON.readTree(answer.body());
    }

    private static JsonNode draw(String example) throws IOException {
        String file = Files.readString(Path.of("../examples/trial/" + example + ".yaml"));
        return json(
                "POST",
                "/api/trials",
                JSON.writeValueAsString(YAMLMapper.builder().build().readTree(file)));
    }

    private static String token(JsonNode taster) {
        String address = taster.get("address").asString();
        return address.substring(address.indexOf('#') + 1);
    }

    @Test
    void aTrialRunsFromDesignToThePrintedResult() throws IOException {
        JsonNode trial = draw("brined-or-plain");
        String base = "/api/trials/" + trial.get("id").asString();
        assertThat(send(open, "GET", base + "/analysis", "").statusCode()).isEqualTo(422);
        JsonNode sheets = trial.get("design").get("sheets");
        List<CompletableFuture<Integer>> sent = new ArrayList<>();
        for (JsonNode taster : trial.get("tasters")) {
            sent.add(CompletableFuture.supplyAsync(() -> {
                int number = taster.get("taster").asInt();
                Random luck = new Random(number);
                String path = "/api/tasting/" + token(taster);
                JsonNode form = json("GET", path, "");
                List<String> answers = new ArrayList<>();
                for (JsonNode round : form.get("rounds")) {
                    JsonNode servings = sheets.get(
                                    (number - 1) * form.get("rounds").size() + answers.size())
                            .get("servings");
                    // four of five find the brined one juicier
                    boolean right = luck.nextDouble() < 0.8;
                    int pick = servings.get(0).get("sample").asString().startsWith("brined") == right ? 0 : 1;
                    answers.add("{\"round\":" + round.get("round") + ",\"code\":\"\",\"answer\":\""
                            + round.get("codes").get(pick).asString() + "\"}");
                }
                String body = "{\"answers\":[" + String.join(",", answers) + "],\"note\":\"=1+1\"}";
                int status = send(open, "POST", path, body).statusCode();
                assertThat(send(open, "POST", path, body).statusCode())
                        .as("twice")
                        .isEqualTo(409);
                return status;
            }));
        }
        assertThat(sent.stream().map(CompletableFuture::join)).containsOnly(200);
        JsonNode after = json("GET", base, "");
        assertThat(after.get("answered").asInt()).isEqualTo(trial.get("tasters").size());
        JsonNode found = json("GET", base + "/analysis", "");
        assertThat(found.get("analysis").get("difference_shown").asBoolean()).isTrue();
        assertThat(found.get("analysis").get("unanswered").asInt()).isZero();
        String report = new String(
                send(open, "GET", base + "/report.html", "").body(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(report)
                .contains("What was found", "How it was laid out", "How it was analyzed", "Clopper")
                .doesNotContain("<script", "http://");
        assertThat(report.indexOf("share of right answers")).isPositive().isLessThan(report.indexOf("chance of"));
        for (String name : List.of("/sheets.pdf", "/codes.pdf")) {
            byte[] pdf = send(open, "GET", base + name, "").body();
            assertThat(new String(pdf, 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                    .isEqualTo("%PDF-");
            Files.write(folder.resolve(name.substring(1)), pdf);
        }
    }

    @Test
    void aTastersFormGivesNothingAwayAndOpensNothingElse() throws IOException {
        JsonNode trial = draw("wet-or-dry");
        JsonNode taster = trial.get("tasters").get(0);
        HttpResponse<byte[]> form = send(guarded, "GET", "/api/tasting/" + token(taster), "");
        assertThat(form.statusCode()).as("needs no access code").isEqualTo(200);
        String text = new String(form.body(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(text).doesNotContain("wet", "dry", "turkey 1", "piece", "right", "sample");
        assertThat(send(guarded, "GET", "/tasting.html", "").statusCode()).isEqualTo(200);
        // and what its form is made of
        for (String file : List.of("tasting.js", "say.js", "entries.js", "words-en.json", "words-de.json")) {
            assertThat(send(guarded, "GET", "/" + file, "").statusCode())
                    .as(file)
                    .isEqualTo(200);
        }
        for (String closed : List.of(
                "/api/trials",
                "/api/trials/" + trial.get("id").asString(),
                "/api/notebook",
                "/notebook.html",
                "/api/saved",
                "/api/tasting/../trials",
                "/api/tasting/%2e%2e/trials")) {
            assertThat(send(guarded, "GET", closed, "").statusCode()).as(closed).isIn(400, 401, 404);
        }
        assertThat(send(open, "GET", "/api/tasting/guess", "").statusCode()).isEqualTo(404);
        String other = JSON.readTree(send(
                                open,
                                "GET",
                                "/api/tasting/" + token(trial.get("tasters").get(1)),
                                "")
                        .body())
                .get("rounds")
                .get(0)
                .get("codes")
                .get(0)
                .asString();
        String stolen = "{\"answers\":[{\"round\":1,\"code\":\"\",\"answer\":\"" + other + "\"}]}";
        assertThat(send(open, "POST", "/api/tasting/" + token(taster), stolen).statusCode())
                .isEqualTo(400);
    }
}
