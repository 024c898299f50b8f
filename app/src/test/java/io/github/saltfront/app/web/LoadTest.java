package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.app.follow.FollowSettings;
import io.github.saltfront.app.follow.Stove;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Many cooks at once, a reading a second each: all readings are kept, and the answers are quick. */
class LoadTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    /** An answer is quick below this [ms]: 99 of 100 in the long run, half of them in the short one with its cold start. */
    private static final double QUICK = 200;

    @TempDir
    private Path folder;

    private String base = "";

    private HttpResponse<String> post(String path, String body) {
        return WebServerTest.send(HttpRequest.newBuilder(URI.create(base + path))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(body)));
    }

    private JsonNode get(String path) {
        return MAPPER.readTree(WebServerTest.send(HttpRequest.newBuilder(URI.create(base + path)))
                .body());
    }

    @Test
    @Tag("slow")
    void twentyCooksAtAReadingASecondForTenMinutesLoseNothingAndNobodyWaits() throws InterruptedException {
        List<Double> waits = load(20, 600, FollowSettings.usual("test"));
        assertThat(waits.get((int) (0.99 * waits.size()))).isLessThan(QUICK);
    }

    @Test
    void fourSmallCooksAtAReadingASecondLoseNothingAndNobodyWaits() throws InterruptedException {
        List<Double> waits = load(4, 8, Stove.SMALL);
        assertThat(waits.get(waits.size() / 2)).isLessThan(QUICK);
    }

    /** Returns the sorted waits for an answer [ms], once every reading was found again. */
    private List<Double> load(int number, int seconds, FollowSettings settings) throws InterruptedException {
        try (WebServer server = WebServer.start(new WebOptions(0, false, folder.resolve("a.db"), "test"), settings)) {
            base = "http://localhost:" + server.port();
            List<String> cooks = new ArrayList<>();
            for (int i = 0; i < number; i++) {
                String begun =
                        post("/api/cooks", "{\"request\":" + Stove.BREAST + "}").body();
                cooks.add(MAPPER.readTree(begun).path("id").asString());
            }
            List<Double> waits = Collections.synchronizedList(new ArrayList<>());
            List<Thread> senders = new ArrayList<>();
            for (String cook : cooks) {
                Thread sender = new Thread(() -> send(cook, seconds, waits));
                senders.add(sender);
                sender.start();
            }
            for (Thread sender : senders) {
                sender.join();
            }
            List<Double> sorted = new ArrayList<>(waits);
            Collections.sort(sorted);
            System.out.printf(
                    "%d readings, median %.0f ms, 99 %% %.0f ms, longest %.0f ms%n",
                    sorted.size(),
                    sorted.get(sorted.size() / 2),
                    sorted.get((int) (0.99 * sorted.size())),
                    sorted.get(sorted.size() - 1));
            assertThat(sorted).hasSize(number * seconds);
            for (String cook : cooks) {
                assertThat(get("/api/cooks/" + cook + "/log.json")
                                .path("readings")
                                .size())
                        .isEqualTo(seconds);
            }
            return sorted;
        }
    }

    private void send(String cook, int seconds, List<Double> waits) {
        for (int second = 0; second < seconds; second++) {
            long start = System.nanoTime();
            HttpResponse<String> answer =
                    post("/api/cooks/" + cook + "/readings", "{\"value\":" + (4 + 0.01 * second) + "}");
            assertThat(answer.statusCode()).isEqualTo(200);
            double wait = (System.nanoTime() - start) / 1e6;
            waits.add(wait);
            try {
                Thread.sleep(Math.max(0, Math.round(1000 - wait)));
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
