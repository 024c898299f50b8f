package io.github.saltfront.app.follow;

import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** Finds the reading in a message. */
final class MqttPayload {
    private static final Phrases PHRASES = Phrases.of(MqttPayload.class);

    private static final int LARGEST = 100_000;

    private MqttPayload() {}

    /**
     * Reads a message.
     *
     * @throws IllegalArgumentException with what was got and expected
     */
    static SentReading reading(byte[] payload, MqttSettings settings) {
        if (payload.length > LARGEST) {
            throw new IllegalArgumentException(PHRASES.say("got-a-message-of-bytes", payload.length));
        }
        String text = text(payload).strip();
        boolean whole = settings.valuePath().isEmpty() && !settings.keepsTime();
        JsonNode top = whole
                ? FollowJson.stored("null")
                : FollowJson.read(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        String value = settings.valuePath().isEmpty() ? text : scalar(top, settings.valuePath(), text);
        SentReading reading = SentReading.now(number(value)).withProbe(settings.probe(), settings.role());
        if (settings.unit().isPresent()) {
            reading = reading.withUnit(settings.unit().get());
        }
        return settings.keepsTime() ? reading.at(ReadingText.instant(scalar(top, settings.timePath(), text))) : reading;
    }

    private static String text(byte[] payload) {
        try {
            return Payload.text(payload);
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e.problems().get(0).message(), e);
        }
    }

    /** A number with or without a unit behind it, as some devices send. */
    private static double number(String text) {
        return ReadingText.number("value", text.replaceFirst("\\s*°?\\s*[CF]?$", ""));
    }

    private static String scalar(JsonNode top, String path, String shown) {
        Optional<JsonNode> at = Optional.of(top);
        for (String name : List.of(path.split("\\."))) {
            at = at.map(node ->
                    node.isArray() && name.matches("[0-9]{1,4}") ? node.get(Integer.parseInt(name)) : node.get(name));
        }
        if (at.isEmpty() || at.get().isContainer() || at.get().isNull()) {
            throw new IllegalArgumentException(
                    PHRASES.say("there-is-no-value-under", ReadingText.shown(path), ReadingText.shown(shown)));
        }
        return at.get().asString();
    }
}
