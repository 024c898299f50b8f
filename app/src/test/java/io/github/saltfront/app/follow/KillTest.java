package io.github.saltfront.app.follow;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.app.cli.Main;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The server is killed under load, again and again; every reading that it answered for is there after its restart, and a reading is
 * answered again within 2 s of starting it anew.
 */
class KillTest {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final int SENDERS = 4;
    private static final String ADDRESS = "http://localhost:";

    /** From starting the process to the next answer [s]. */
    private static final double LONGEST_RESTART = 2;

    @TempDir
    private Path folder;

    private final HttpClient client = HttpClient.newHttpClient();
    private final Set<Integer> answered = ConcurrentHashMap.newKeySet();
    private final AtomicInteger next = new AtomicInteger(1);
    private final AtomicReference<String> address = new AtomicReference<>("");
    private volatile boolean over;

    /** How the server is started: here without what {@code run} prepares for a quick start. */
    private List<String> start = List.of();

    @BeforeEach
    void startPlainly() {
        start = command(List.of(), System.getProperty("java.class.path"), "cooks.db");
    }

    private List<String> command(List<String> options, String classPath, String data) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-XX:+UseSerialGC");
        command.addAll(options);
        command.addAll(List.of("-Xlog:disable", "-cp", classPath, Main.class.getName()));
        command.addAll(List.of("serve", "--no-browser", "--port", "0"));
        command.addAll(List.of("--data", folder.resolve(data).toString()));
        return command;
    }

    /** Prepares what {@code run} does after a build: an archive of the classes, which takes only jars, and the unpacked library. */
    private List<String> asTheProgramStarts() throws Exception {
        String classPath = JarredClassPath.of(System.getProperty("java.class.path"), folder.resolve("jars"));
        Path library = Files.createDirectories(folder.resolve("native"));
        Path archive = folder.resolve("server.jsa");
        Process recorded = serve(command(
                List.of("-XX:ArchiveClassesAtExit=" + archive, "-Dorg.sqlite.tmpdir=" + library),
                classPath,
                "recorded.db"));
        String id = beginCook();
        post("/api/cooks/" + id + "/readings", "{\"probe\":\"brine\",\"value\":4,\"time_s\":-1}");
        Path unpacked;
        try (Stream<Path> files = Files.list(library)) {
            unpacked = files.filter(file -> !file.toString().endsWith(".lck"))
                    .findFirst()
                    .orElseThrow();
        }
        String name = unpacked.getFileName().toString();
        Files.copy(unpacked, library.resolve(name.substring(name.lastIndexOf('-') + 1)));
        recorded.destroy();
        recorded.waitFor();
        assertThat(archive).isNotEmptyFile();
        return command(
                List.of(
                        "-XX:CompileThresholdScaling=8",
                        "-XX:SharedArchiveFile=" + archive,
                        "-Xshare:auto",
                        "-Dorg.sqlite.lib.path=" + library),
                classPath,
                "cooks.db");
    }

    @Test
    void nothingThatWasAnsweredIsLostAtAKill() throws Exception {
        killed(1);
    }

    // the median: single starts also measure what else this computer does

    @Test
    @Tag("slow")
    void nothingThatWasAnsweredIsLostAtFiftyKillsAndItGoesOnWithinTwoSeconds() throws Exception {
        start = asTheProgramStarts();
        List<Double> restarts = killed(50);
        Collections.sort(restarts);
        System.out.printf(
                "restart to the next answer: median %.2f s, 90 %% %.2f s, longest %.2f s%n",
                restarts.get(25), restarts.get(44), restarts.get(49));
        assertThat(restarts.get(25)).isLessThan(LONGEST_RESTART);
    }

    private Process serve() throws IOException {
        return serve(start);
    }

    private Process serve(List<String> how) throws IOException {
        Process server = new ProcessBuilder(how)
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
        BufferedReader lines =
                new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8));
        String line = lines.readLine();
        while (line != null && !line.contains(ADDRESS)) {
            line = lines.readLine();
        }
        if (line == null) {
            throw new AssertionError("the server did not start: " + Files.readString(folder.resolve("errors.txt")));
        }
        address.set(line.substring(line.indexOf(ADDRESS), line.lastIndexOf('/')));
        return server;
    }

    private HttpResponse<String> post(String path, String body) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(address.get() + path))
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private String beginCook() throws IOException, InterruptedException {
        return MAPPER.readTree(
                        post("/api/cooks", "{\"request\":" + Stove.BREAST + "}").body())
                .path("id")
                .asString();
    }

    /** Returns how long each restart took to the next answer [s]. */
    private List<Double> killed(int times) throws Exception {
        SplittableRandom random = new SplittableRandom(9);
        Process server = serve();
        String id = beginCook();
        List<Thread> senders = new ArrayList<>();
        for (int i = 0; i < SENDERS; i++) {
            senders.add(new Thread(() -> load(id)));
            senders.get(i).start();
        }
        List<Double> restarts = new ArrayList<>();
        for (int kill = 0; kill < times; kill++) {
            awaitAnswer();
            Thread.sleep(random.nextInt(400));
            server.destroyForcibly().waitFor();
            long start = System.nanoTime();
            server = serve();
            awaitAnswer();
            restarts.add((System.nanoTime() - start) / 1e9);
        }
        over = true;
        for (Thread sender : senders) {
            sender.join();
        }
        JsonNode log = MAPPER.readTree(client.send(
                        HttpRequest.newBuilder(URI.create(address.get() + "/api/cooks/" + id + "/log.json"))
                                .build(),
                        BodyHandlers.ofString())
                .body());
        server.destroyForcibly().waitFor();
        Set<Integer> kept = ConcurrentHashMap.newKeySet();
        log.path("readings")
                .forEach(reading ->
                        kept.add((int) Math.round(-1000 * reading.path("time_s").asDouble())));
        assertThat(answered.size()).isGreaterThan(times);
        assertThat(kept).containsAll(answered);
        return restarts;
    }

    private void awaitAnswer() {
        int before = answered.size();
        Stove.await("readings are answered again", () -> answered.size() > before);
    }

    /** Each reading has a time of its own, by which it is found again; one without an answer is sent again. */
    private void load(String id) {
        int number = next.getAndIncrement();
        while (!over) {
            try {
                String body = "{\"probe\":\"brine\",\"value\":4,\"time_s\":" + -0.001 * number + "}";
                HttpResponse<String> response = post("/api/cooks/" + id + "/readings", body);
                if (response.statusCode() == 200) {
                    answered.add(number);
                    number = next.getAndIncrement();
                }
            } catch (IOException e) {
                pause(); // it was killed; the same reading goes to the next server
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(20);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
