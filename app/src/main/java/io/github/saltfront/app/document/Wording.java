package io.github.saltfront.app.document;

import io.github.saltfront.units.Dimension;
import io.github.saltfront.words.Phrases;
import java.util.List;

/** Parts of messages. */
final class Wording {
    private static final Phrases PHRASES = Phrases.of(Wording.class);

    private static final int SHOWN = 60;

    private Wording() {}

    static String words(Dimension dimension) {
        return PHRASES.say("such-as", dimension.noun(), dimension.example());
    }

    static String shown(Raw raw) {
        if (raw instanceof Raw.Scalar scalar) {
            return scalar.isEmpty() ? PHRASES.say("nothing") : "\"" + clipped(scalar.text()) + "\"";
        }
        return raw instanceof Raw.Mapping ? PHRASES.say("a-group-of-keys") : PHRASES.say("a-list");
    }

    static String clipped(String text) {
        String flat = text.strip();
        return flat.length() > SHOWN ? flat.substring(0, SHOWN) + "..." : flat;
    }

    static String joined(List<String> words, String last) {
        int n = words.size();
        return n == 1 ? words.get(0) : PHRASES.say(last, String.join(", ", words.subList(0, n - 1)), words.get(n - 1));
    }
}
