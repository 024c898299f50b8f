package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many who plan at once, over loopback and for a bounded time. Each asks, then thinks, then asks again. */
class PlanningLoadTest {
    /** What the issue of the web program asks for: 95 of 100 answers within this time [ms]. */
    private static final double LONGEST_MS = 1500;

    private static final int USERS = 200;

    @TempDir
    private Path folder;

    /** How it is loaded; the recipes asked before are those that the teacher of a class has planned. */
    private record Load(int users, int seconds, int thinkSeconds, int recipes, int askedBefore) {}

    private record Seen(List<Double> times, int errors) {
        double share(double share) {
            return times.get((int) Math.min(times.size() - 1.0, share * times.size()));
        }
    }

    /** Chops of different thickness: the same recipe is the same request, so that it is computed once. */
    private static String recipe(int number) {
        return String.format(
                Locale.ROOT,
                "{\"cut\":\"pork-loin-chop\",\"mass\":\"%d g\",\"thickness\":\"%.2f mm\",\"appliance\":\"oven-fan\","
                        + "\"salting\":{\"treatment\":\"surface-salt\"},"
                        + "\"now\":\"2026-11-28T12:00+01:00\",\"serve\":\"2026-11-28T19:00+01:00\"}",
                150 + Math.floorMod(number, 60),
                20 + 0.01 * number);
    }

    private Seen run(Load load) throws InterruptedException {
        try (WebServer server =
                WebServer.start(new WebOptions(0, false, folder.resolve(load.recipes() + ".db"), "test"))) {
            URI plan = URI.create("http://localhost:" + server.port() + "/api/plan?alternatives=no");
            HttpClient client = HttpClient.newHttpClient();
            for (int i = 0; i < 8; i++) {
                ask(client, plan, recipe(-1 - i)); // the compiler of the virtual machine warms up
            }
            for (int i = 0; i < load.askedBefore(); i++) {
                ask(client, plan, recipe(i));
            }
            List<Double> times = Collections.synchronizedList(new ArrayList<>());
            AtomicInteger errors = new AtomicInteger();
            AtomicInteger next = new AtomicInteger();
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(load.seconds());
            ExecutorService users = Executors.newFixedThreadPool(load.users());
            for (int user = 0; user < load.users(); user++) {
                Random random = new Random(user);
                users.execute(() -> {
                    pause(1000 * random.nextDouble() * load.thinkSeconds());
                    while (System.nanoTime() < end) {
                        long start = System.nanoTime();
                        if (ask(client, plan, recipe(next.getAndIncrement() % load.recipes())) != 200) {
                            errors.incrementAndGet();
                        }
                        times.add((System.nanoTime() - start) / 1e6);
                        // half to one and a half of the mean, so that they do not fall into step
                        pause(1000 * load.thinkSeconds() * (0.5 + random.nextDouble()));
                    }
                });
            }
            users.shutdown();
            Thread.sleep(1000L * load.seconds());
            users.awaitTermination(70, TimeUnit.SECONDS);
            users.shutdownNow();
            List<Double> sorted = new ArrayList<>(times);
            Collections.sort(sorted);
            Seen seen = new Seen(sorted, errors.get());
            System.out.printf(
                    Locale.ROOT,
                    "%s: %d answers, median %.0f ms, 95 %% %.0f ms, longest %.0f ms, %d errors%n",
                    load,
                    sorted.size(),
                    seen.share(0.5),
                    seen.share(0.95),
                    seen.share(1),
                    seen.errors());
            return seen;
        }
    }

    private static int ask(HttpClient client, URI plan, String body) {
        try {
            HttpRequest request = HttpRequest.newBuilder(plan)
                    .header("Content-Type", "application/json")
                    .timeout(Duration.ofSeconds(65))
                    .POST(BodyPublishers.ofString(body))
                    .build();
            return client.send(request, BodyHandlers.ofString()).statusCode();
        } catch (IOException e) {
            return 0;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return 200;
        }
    }

    private static void pause(double ms) {
        try {
            Thread.sleep(Math.round(ms));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A class: twenty recipes that the teacher planned before, and everybody asks for one of them every ten seconds. */
    @Test
    @Tag("slow")
    void aClassOfTwoHundredWithTwentyRecipesDoesNotWait() throws InterruptedException {
        Seen seen = run(new Load(USERS, 60, 10, 20, 20));
        assertThat(seen.errors()).isZero();
        assertThat(seen.share(0.95)).isLessThan(LONGEST_MS);
    }

    /** Everybody has a piece of his own, so that no plan is asked for twice, and asks every four minutes. */
    @Test
    @Tag("slow")
    void twoHundredWithAPieceOfTheirOwnDoNotWait() throws InterruptedException {
        Seen seen = run(new Load(USERS, 240, 240, 100_000, 0));
        assertThat(seen.errors()).isZero();
        assertThat(seen.share(0.95)).isLessThan(LONGEST_MS);
    }

    /** A short one for every check: all at once, on a machine that does other things too, so only errors count. */
    @Test
    void twoHundredAtOnceAreAllAnswered() throws InterruptedException {
        Seen seen = run(new Load(USERS, 4, 1, 5, 0));
        assertThat(seen.errors()).isZero();
        assertThat(seen.times()).hasSizeGreaterThanOrEqualTo(USERS);
    }
}
