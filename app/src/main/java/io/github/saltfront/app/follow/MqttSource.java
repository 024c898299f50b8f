package io.github.saltfront.app.follow;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.MqttClientBuilder;
import com.hivemq.client.mqtt.MqttGlobalPublishFilter;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.lifecycle.MqttClientDisconnectedContext;
import com.hivemq.client.mqtt.mqtt3.Mqtt3AsyncClient;
import com.hivemq.client.mqtt.mqtt3.Mqtt3ClientBuilder;
import com.hivemq.client.mqtt.mqtt5.Mqtt5AsyncClient;
import com.hivemq.client.mqtt.mqtt5.Mqtt5ClientBuilder;
import io.github.saltfront.words.Phrases;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * Readings by MQTT 3.1.1 or 5. A message is acknowledged to the broker when its reading is on the disk. A broken connection is
 * taken up again. Where messages tell their time, the broker keeps them while this program is away; where they do not, what was
 * missed stays a gap, for it would come with a wrong time.
 */
final class MqttSource implements AutoCloseable {
    private static final Phrases PHRASES = Phrases.of(MqttSource.class);

    private static final long FIRST_DELAY_MS = 500;
    private static final long LONGEST_DELAY_MS = 15_000;
    private static final long SESSION_S = 86_400;

    private final long number;
    private final MqttSettings settings;
    private final RunningCook cook;
    private final Runnable changed;
    private final Runnable stop;
    private boolean connected;
    private String trouble = "";
    private String problem = "";
    private int accepted;
    private int refused;
    private int old;

    /**
     * Starts to listen.
     *
     * @param number number of the source among the events of the cook
     * @param changed told when its state changes
     */
    MqttSource(long number, MqttSettings settings, RunningCook cook, Runnable changed) {
        this.number = number;
        this.settings = settings;
        this.cook = cook;
        this.changed = changed;
        MqttClientBuilder builder = MqttClient.builder()
                .identifier("saltfront-" + cook.id().substring(0, 8) + "-" + number)
                .serverHost(settings.host())
                .serverPort(settings.port())
                .addConnectedListener(context -> link(true, ""))
                .addDisconnectedListener(this::lost)
                .automaticReconnect()
                .initialDelay(FIRST_DELAY_MS, TimeUnit.MILLISECONDS)
                .maxDelay(LONGEST_DELAY_MS, TimeUnit.MILLISECONDS)
                .applyAutomaticReconnect();
        if (settings.secure()) {
            builder = builder.sslWithDefaultConfig();
        }
        stop = settings.version() == 5 ? five(builder) : three(builder);
    }

    private Runnable five(MqttClientBuilder builder) {
        Mqtt5ClientBuilder own = builder.useMqttVersion5();
        if (!settings.user().isEmpty()) {
            own = own.simpleAuth()
                    .username(settings.user())
                    .password(settings.password().getBytes(StandardCharsets.UTF_8))
                    .applySimpleAuth();
        }
        Mqtt5AsyncClient client = own.buildAsync();
        client.publishes(
                MqttGlobalPublishFilter.ALL,
                message -> take(message.getPayloadAsBytes(), message.isRetain(), message::acknowledge),
                true);
        CompletableFuture<?> begun = client.connectWith()
                .cleanStart(!settings.keepsTime())
                .sessionExpiryInterval(settings.keepsTime() ? SESSION_S : 0)
                .send()
                .thenCompose(ack -> client.subscribeWith()
                        .topicFilter(settings.topic())
                        .qos(MqttQos.AT_LEAST_ONCE)
                        .send());
        begun.whenComplete((done, failure) -> tellFailure(Optional.ofNullable(failure)));
        return client::disconnect;
    }

    private Runnable three(MqttClientBuilder builder) {
        Mqtt3ClientBuilder own = builder.useMqttVersion3();
        if (!settings.user().isEmpty()) {
            own = own.simpleAuth()
                    .username(settings.user())
                    .password(settings.password().getBytes(StandardCharsets.UTF_8))
                    .applySimpleAuth();
        }
        Mqtt3AsyncClient client = own.buildAsync();
        client.publishes(
                MqttGlobalPublishFilter.ALL,
                message -> take(message.getPayloadAsBytes(), message.isRetain(), message::acknowledge),
                true);
        CompletableFuture<?> begun = client.connectWith()
                .cleanSession(!settings.keepsTime())
                .send()
                .thenCompose(ack -> client.subscribeWith()
                        .topicFilter(settings.topic())
                        .qos(MqttQos.AT_LEAST_ONCE)
                        .send());
        begun.whenComplete((done, failure) -> tellFailure(Optional.ofNullable(failure)));
        return client::disconnect;
    }

    private void tellFailure(Optional<Throwable> failure) {
        failure.ifPresent(thrown -> link(false, words(thrown)));
    }

    private void lost(MqttClientDisconnectedContext context) {
        link(false, words(context.getCause()));
    }

    private static String words(Throwable thrown) {
        Throwable cause = thrown;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return ReadingText.shown(String.valueOf(cause.getMessage()));
    }

    private void link(boolean isConnected, String why) {
        synchronized (this) {
            connected = isConnected;
            trouble = why;
        }
        changed.run();
    }

    private void take(byte[] payload, boolean retained, Runnable acknowledge) {
        if (retained) {
            // kept by the broker from any time before
            count(0, 0, 1, "");
            acknowledge.run();
            return;
        }
        ReadingText.Line line;
        try {
            line = new ReadingText.Line(0, Optional.of(MqttPayload.reading(payload, settings)), "");
        } catch (IllegalArgumentException e) {
            line = new ReadingText.Line(0, Optional.empty(), String.valueOf(e.getMessage()));
        }
        cook.take(List.of(line), "mqtt", System.currentTimeMillis()).whenComplete((taken, failure) -> {
            if (failure == null) {
                count(
                        taken.accepted() + taken.known(),
                        taken.refused().isEmpty() ? 0 : 1,
                        0,
                        taken.refused().keySet().stream().findFirst().orElse(""));
                acknowledge.run();
            } else {
                count(0, 1, 0, PHRASES.say("the-reading-could-not-be"));
            }
        });
    }

    private void count(int good, int bad, int before, String message) {
        boolean news;
        synchronized (this) {
            news = accepted == 0 && good > 0 || !message.equals(problem) || before > 0 && old == 0;
            accepted += good;
            refused += bad;
            old += before;
            problem = message;
        }
        if (news) {
            changed.run();
        }
    }

    /** How it stands, for people and programs. */
    synchronized Map<String, Object> state() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", number);
        json.put("kind", MqttSettings.KIND);
        json.put("connected", connected);
        json.put("accepted", accepted);
        json.put("refused", refused);
        json.put("words", sentence());
        return json;
    }

    private String sentence() {
        String name = PHRASES.say("at", settings.topic(), settings.host(), settings.port());
        if (!connected) {
            return PHRASES.say(
                    "no-connection-it-is-tried", name, (trouble.isEmpty() ? PHRASES.say("yet") : " (" + trouble + ")"));
        }
        if (!problem.isEmpty()) {
            return PHRASES.say("the-last-message-was-left", name, problem);
        }
        if (accepted == 0) {
            return PHRASES.say(
                    "connected-nothing-came-on-this",
                    name,
                    (old > 0 ? PHRASES.say("but-an-old-value-of") : PHRASES.say("is-it-the-right-one")));
        }
        return PHRASES.say("connected", name, accepted, (PHRASES.say(accepted == 1 ? "one-reading" : "readings")));
    }

    @Override
    public void close() {
        stop.run();
    }
}
