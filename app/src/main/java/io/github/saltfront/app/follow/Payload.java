package io.github.saltfront.app.follow;

import io.github.saltfront.words.Phrases;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Bytes that should be text. */
final class Payload {
    private static final Phrases PHRASES = Phrases.of(Payload.class);

    private Payload() {}

    /** Returns the text, or refuses what is none. */
    static String text(byte[] body) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(body))
                    .toString();
            boolean control = text.chars().anyMatch(c -> c < 32 && c != '\n' && c != '\r' && c != '\t');
            if (!control) {
                return text.startsWith("\uFEFF") ? text.substring(1) : text;
            }
        } catch (CharacterCodingException e) {
            throw Problems.of("", PHRASES.say("got-bytes-that-are-no", body.length));
        }
        throw Problems.of("", PHRASES.say("got-bytes-with-control-characters", body.length));
    }
}
