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
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A look at a changed plan while a slider moves, over HTTP. */
class GlanceApiTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    /** What the issue of the plan asks for when one slider changes [ms]. */
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

    private static String breast(double thicknessMm, double settingC) {
        return "{\"cut\": \"chicken-breast-skinless\", \"mass\": \"220 g\", \"thickness\": \"" + thicknessMm
                + " mm\", \"appliance\": \"oven-fan\", \"setting\": \"" + settingC
                + " °C\", \"salting\": {\"treatment\": \"wet-brine\"}, \"now\": \"2026-11-28T12:00+01:00\","
                + " \"serve\": \"2026-11-28T21:00+01:00\"}";
    }

    private static HttpResponse<String> post(String path, String body) {
        return WebServerTest.send(HttpRequest.newBuilder(
                        URI.create("http://localhost:" + server.orElseThrow().port() + path))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body)));
    }

    private static JsonNode glance(String changed, String before) {
        HttpResponse<String> answer = post("/api/glance", "{\"request\":" + changed + ",\"before\":" + before + "}");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return MAPPER.readTree(answer.body());
    }

    @Test
    void looksLikeThePlanItForetells() {
        String changed = breast(34, 170);
        JsonNode glance = glance(changed, breast(28, 180));
        JsonNode plan =
                MAPPER.readTree(post("/api/plan?alternatives=no", changed).body());
        assertThat(glance.path("plan").path("ensemble").path("members").asInt()).isLessThan(200);
        assertThat(glance.path("fronts").path("time_s").size()).isGreaterThan(50);
        double minutes = minutes(plan);
        assertThat(minutes(glance.path("plan"))).isCloseTo(minutes, within(0.06 * minutes));
    }

    private static double minutes(JsonNode plan) {
        return plan.path("cooking").path("time_to_pull_min").path("median").asDouble();
    }

    @Test
    void whatIsWrongIsToldAsOfAPlan() {
        assertThat(post("/api/glance", "{}").statusCode()).isEqualTo(400);
        assertThat(post("/api/glance", "{\"request\":" + breast(28, 999) + ",\"before\":" + breast(28, 180) + "}")
                        .statusCode())
                .isEqualTo(400);
        HttpResponse<String> cold =
                post("/api/glance", "{\"request\":" + breast(28, 60) + ",\"before\":" + breast(28, 180) + "}");
        assertThat(cold.statusCode()).isEqualTo(422);
    }

    /** As a slider moves: one look after the other, each with another value. Measured alone on 2 cores. */
    @Test
    @Tag("slow")
    void sliderIsFollowedInTime() {
        String before = breast(28, 180);
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String changed = i % 2 == 0 ? breast(24 + 0.2 * i, 180) : breast(28, 160 + 0.5 * i);
            long start = System.nanoTime();
            glance(changed, before);
            times.add((System.nanoTime() - start) / 1e6);
        }
        List<Double> warm = new ArrayList<>(times.subList(20, times.size()));
        Collections.sort(warm);
        System.out.printf(
                "slider: median %.0f ms, 95 %% %.0f ms, longest %.0f ms%n",
                warm.get(warm.size() / 2), warm.get((int) (0.95 * warm.size())), warm.get(warm.size() - 1));
        assertThat(warm.get(warm.size() / 2)).isLessThan(LONGEST_ROUND_MS);
    }
}
