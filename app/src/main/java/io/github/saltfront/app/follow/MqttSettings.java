package io.github.saltfront.app.follow;

import com.hivemq.client.mqtt.datatypes.MqttTopicFilter;
import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.words.Phrases;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * Where readings come from by MQTT.
 *
 * @param host broker
 * @param port its port
 * @param secure whether to talk to it by TLS
 * @param version 3 for MQTT 3.1.1, or 5
 * @param topic topic filter to subscribe to
 * @param valuePath where in a JSON payload the value is, names joined by points; empty if the payload is the number
 * @param timePath where in it the time is; empty if readings are taken when they arrive
 * @param probe name of the probe
 * @param role where the probe is, if said
 * @param unit unit of the value, if said
 * @param user name to log in with; empty without
 * @param password password to log in with
 */
record MqttSettings(
        String host,
        int port,
        boolean secure,
        int version,
        String topic,
        String valuePath,
        String timePath,
        String probe,
        Optional<String> role,
        Optional<String> unit,
        String user,
        String password) {
    private static final Phrases PHRASES = Phrases.of(MqttSettings.class);

    static final String KIND = "mqtt";
    private static final int PORT = 1883;
    private static final int SECURE_PORT = 8883;

    /** Reads what was sent; the content to keep. */
    static Map<String, Object> read(byte[] body) {
        Document document = DocumentReader.read("source", body, DocumentFormat.JSON);
        Node root = document.root();
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("kind", KIND);
        content.put("time_s", 0);
        content.put("broker", root.parsed("broker", PHRASES.say("an-address-such-as-mqtt"), MqttSettings::broker, ""));
        content.put(
                "version",
                root.findChoice("version", Map.of("3.1.1", 3, "5", 5)).orElse(3));
        content.put("topic", root.parsed("topic", PHRASES.say("a-topic-such-as-kitchen"), MqttSettings::filter, ""));
        for (String key : new String[] {"value_path", "time_path", "user", "password"}) {
            content.put(key, root.findText(key).orElse(""));
        }
        String probe = root.findText("probe").filter(name -> !name.isEmpty()).orElse(SentReading.USUAL_PROBE);
        content.put("probe", probe);
        Optional<String> role = root.findText("role").filter(text -> !text.isEmpty());
        role.ifPresent(text -> content.put("role", text));
        String place = role.orElse(probe);
        if (!ReadingCheck.ROLES.containsKey(place)) {
            root.problem("role", PHRASES.say("the-probe-does-not-say", ReadingText.shown(probe)));
        }
        root.findChoice("unit", Map.of("C", "C", "F", "F")).ifPresent(unit -> content.put("unit", unit));
        document.requireNoErrors();
        return content;
    }

    private static String broker(String text) {
        try {
            URI uri = URI.create(text.strip());
            boolean known = "mqtt".equals(uri.getScheme()) || "mqtts".equals(uri.getScheme());
            if (known && uri.getHost() != null && uri.getUserInfo() == null && uri.getPort() <= 65535) {
                return uri.toString();
            }
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(brokerWords(text), e);
        }
        throw new IllegalArgumentException(brokerWords(text));
    }

    private static String brokerWords(String text) {
        return PHRASES.say("got-expected-the-address-of", ReadingText.shown(text));
    }

    private static String filter(String text) {
        try {
            return MqttTopicFilter.of(text.strip()).toString();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-the-topic-expected-levels", ReadingText.shown(text)), e);
        }
    }

    static MqttSettings of(JsonNode content) {
        URI uri = URI.create(content.path("broker").asString());
        boolean secure = uri.getScheme().toLowerCase(Locale.ROOT).equals("mqtts");
        return new MqttSettings(
                uri.getHost(),
                uri.getPort() > 0 ? uri.getPort() : secure ? SECURE_PORT : PORT,
                secure,
                content.path("version").asInt(3),
                content.path("topic").asString(),
                content.path("value_path").asString(""),
                content.path("time_path").asString(""),
                content.path("probe").asString(),
                text(content, "role"),
                text(content, "unit"),
                content.path("user").asString(""),
                content.path("password").asString(""));
    }

    private static Optional<String> text(JsonNode content, String key) {
        return content.has(key) ? Optional.of(content.get(key).asString()) : Optional.empty();
    }

    /** Returns whether messages that waited at the broker still know when they were taken. */
    boolean keepsTime() {
        return !timePath.isEmpty();
    }
}
