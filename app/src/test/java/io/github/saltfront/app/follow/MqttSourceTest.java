package io.github.saltfront.app.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3BlockingClient;
import io.github.saltfront.app.store.StoredReading;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings through a real broker, which is restarted in between. Without mosquitto these tests are left out. */
class MqttSourceTest {
    private static final Path BROKER = Path.of("/usr/sbin/mosquitto");

    @TempDir
    private Path folder;

    private int port;
    private Process broker;
    private CookRegistry cooks;

    @BeforeEach
    void start() throws IOException {
        assumeTrue(Files.isExecutable(BROKER), "mosquitto is not installed; .ci/run installs it");
        try (ServerSocket socket = new ServerSocket(0)) {
            port = socket.getLocalPort();
        }
        Files.writeString(
                folder.resolve("broker.conf"), "listener " + port + " 127.0.0.1\nallow_anonymous true\nuser root\n");
        broker = startBroker();
        cooks = Stove.open(folder.resolve("cooks.db"));
    }

    private Process startBroker() throws IOException {
        return new ProcessBuilder(
                        BROKER.toString(), "-c", folder.resolve("broker.conf").toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("broker.log").toFile())
                .start();
    }

    @AfterEach
    void stop() {
        if (cooks != null) {
            cooks.close();
        }
        if (broker != null) {
            broker.destroyForcibly();
        }
    }

    private void publish(String topic, boolean retain, byte[] payload) {
        Mqtt3BlockingClient client = MqttClient.builder()
                .useMqttVersion3()
                .serverHost("127.0.0.1")
                .serverPort(port)
                .buildBlocking();
        client.connect();
        client.publishWith()
                .topic(topic)
                .qos(MqttQos.AT_LEAST_ONCE)
                .retain(retain)
                .payload(payload)
                .send();
        client.disconnect();
    }

    private void publish(String topic, String payload) {
        publish(topic, false, payload.getBytes(StandardCharsets.UTF_8));
    }

    private List<Double> values(String id) {
        return cooks.find(id).orElseThrow().readings().stream()
                .map(StoredReading::value)
                .toList();
    }

    private String words(String id) {
        return String.valueOf(cooks.find(id).orElseThrow().sources().get(0).get("words"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"3.1.1", "5"})
    void readingsComeInAndABrokenConnectionIsTakenUpAgain(String version) throws Exception {
        Stove.await("the broker answers", () -> {
            try {
                publish("kitchen/old", true, "{\"probe\":{\"t\":99}}".getBytes(StandardCharsets.UTF_8));
                return true;
            } catch (RuntimeException e) {
                return false;
            }
        });
        String id = Stove.begin(cooks);
        String source = "{\"broker\":\"mqtt://127.0.0.1:" + port + "\",\"version\":\"" + version
                + "\",\"topic\":\"kitchen/+\",\"value_path\":\"probe.t\",\"probe\":\"core\"}";
        long number = cooks.connect(id, source.getBytes(StandardCharsets.UTF_8));
        Stove.await("the old value is seen", () -> words(id).contains("old value"));
        assertThat(values(id)).as("a value of an unknown time").isEmpty();
        publish("pantry/oven", "{\"probe\":{\"t\":1}}");
        publish("kitchen/oven", "{\"probe\":{\"t\":5.5}}");
        Stove.await("the first reading", () -> values(id).equals(List.of(5.5)));
        publish("kitchen/oven", false, new byte[] {(byte) 0xC0, 0, 1, 2});
        Stove.await("binary is told", () -> words(id).contains("4 bytes"));
        publish("kitchen/oven", "{\"temperature\":5.6}");
        Stove.await("a wrong path is told", () -> words(id).contains("no value under \"probe.t\""));

        broker.destroyForcibly().waitFor(5, TimeUnit.SECONDS);
        Stove.await("the loss is seen", () -> words(id).contains("no connection"));
        broker = startBroker();
        Stove.await("it is connected again", () -> {
            try {
                publish("kitchen/oven", "{\"probe\":{\"t\":6.5}}");
            } catch (RuntimeException e) {
                return false;
            }
            return values(id).contains(6.5);
        });
        cooks.tell(id, ("{\"kind\":\"undo\",\"undone\":" + number + "}").getBytes(StandardCharsets.UTF_8));
        assertThat(cooks.find(id).orElseThrow().sources()).isEmpty();
    }
}
