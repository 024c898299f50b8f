package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The day with stages of other lengths, and what can be done instead, over HTTP. */
class StagesApiTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final String BREAST = """
            {"cut": "chicken-breast-skinless", "mass": "220 g", "thickness": "28 mm", "appliance": "oven-fan",
             "salting": {"treatment": "wet-brine"}, "now": "2026-11-28T12:00+01:00", "serve": "2026-11-28T19:00+01:00"}
            """;

    /** What the issue of the web program asks for while dragging [ms]. */
    private static final double LONGEST_ROUND_MS = 150;

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

    private static HttpResponse<String> post(String path, String body) {
        return WebServerTest.send(HttpRequest.newBuilder(
                        URI.create("http://localhost:" + server.orElseThrow().port() + path))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body)));
    }

    private static JsonNode stages(String lengths) {
        HttpResponse<String> answer = post("/api/stages", "{\"request\":" + BREAST + lengths + "}");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return MAPPER.readTree(answer.body());
    }

    private static String lengths(JsonNode day, double heatFactor) {
        JsonNode all = day.path("stages");
        return String.format(
                Locale.ROOT,
                ",\"lengths_s\":[%.1f,%.1f,%.1f]",
                all.get(0).path("planned_s").asDouble(),
                heatFactor * all.get(1).path("planned_s").asDouble(),
                all.get(2).path("planned_s").asDouble());
    }

    @Test
    void withoutLengthsItIsTheDayOfThePlan() {
        JsonNode day = stages("");
        JsonNode plan =
                MAPPER.readTree(post("/api/plan?alternatives=no", BREAST).body());
        JsonNode cooking = plan.path("cooking");
        assertThat(day.path("pull_temperature_c").asDouble())
                .isEqualTo(cooking.path("pull_temperature_c").asDouble());
        assertThat(day.path("time_to_pull_min").path("median").asDouble())
                .isCloseTo(cooking.path("time_to_pull_min").path("median").asDouble(), within(0.06));
        assertThat(day.path("stages").size()).isEqualTo(3);
        assertThat(day.path("fronts").path("time_s").size()).isGreaterThan(100);
        assertThat(stages(lengths(day, 1)).path("peak_core_temperature_c"))
                .isEqualTo(day.path("peak_core_temperature_c"));
    }

    @Test
    void aLongerHeatMovesReadingJuiceAndTable() {
        JsonNode before = stages("");
        JsonNode longer = stages(lengths(before, 1.2));
        assertThat(longer.path("pull_temperature_c").asDouble())
                .isGreaterThan(before.path("pull_temperature_c").asDouble() + 3);
        assertThat(weight(longer)).isLessThan(weight(before));
        assertThat(longer.path("served").asString())
                .isGreaterThan(before.path("served").asString());
        assertThat(longer.path("predicted_met").asBoolean()).isTrue();
        assertThat(stages(lengths(before, 0.8)).path("predicted_met").asBoolean())
                .isFalse();
    }

    private static double weight(JsonNode day) {
        return day.path("stages").get(2).path("weight_pct").path("median").asDouble();
    }

    @Test
    void wrongLengthsAreToldWithTheirPlace() {
        for (String wrong : List.of("[60]", "7", "[60,\"x\",60]", "[60,60,1e9]", "[-1,60,300]", "[60,null,300]")) {
            HttpResponse<String> answer =
                    post("/api/stages", "{\"request\":" + BREAST + ",\"lengths_s\":" + wrong + "}");
            assertThat(answer.statusCode()).as(wrong).isEqualTo(400);
            JsonNode problem = MAPPER.readTree(answer.body()).path("problems").get(0);
            assertThat(problem.path("field").asString()).startsWith("lengths_s");
            assertThat(problem.path("message").asString()).contains("Got", "expected");
        }
    }

    @Test
    void whatCannotBeMetIsOfferedAsChangesThatCanBe() {
        String tooSoon = BREAST.replace("19:00", "14:00").replace("\"wet-brine\"", "\"dry-salt\", \"time\": \"3 h\"");
        assertThat(post("/api/plan?alternatives=no", tooSoon).statusCode()).isEqualTo(400);
        JsonNode offers = MAPPER.readTree(post("/api/offers", tooSoon).body()).path("offers");
        assertThat(offers.isEmpty()).isFalse();
        JsonNode first = offers.get(0);
        assertThat(first.path("words").asString()).startsWith("Serve at");
        String later = first.path("changes").path("serve").asString();
        assertThat(post("/api/plan?alternatives=no", tooSoon.replace("2026-11-28T14:00+01:00", later))
                        .statusCode())
                .isEqualTo(200);
        List<String> words = new ArrayList<>();
        offers.forEach(offer -> words.add(offer.path("changes").toString()));
        assertThat(words).anyMatch(changes -> changes.contains("surface-salt"));
    }

    /** As a browser drags: one question after the other, each with another length. Measured alone on 2 cores. */
    @Test
    @Tag("slow")
    void aDragIsFollowedInTime() {
        JsonNode before = stages("");
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String lengths = lengths(before, 0.9 + 0.005 * i);
            long start = System.nanoTime();
            stages(lengths);
            times.add((System.nanoTime() - start) / 1e6);
        }
        List<Double> warm = new ArrayList<>(times.subList(20, times.size()));
        Collections.sort(warm);
        System.out.printf(
                "drag: median %.0f ms, 95 %% %.0f ms, longest %.0f ms%n",
                warm.get(warm.size() / 2), warm.get((int) (0.95 * warm.size())), warm.get(warm.size() - 1));
        assertThat(warm.get(warm.size() / 2)).isLessThan(LONGEST_ROUND_MS);
    }
}
