package io.github.saltfront.app.document;

import io.github.saltfront.words.Phrases;
import java.util.Locale;
import java.util.Set;

/** Reads a yes or no in the words people use; YAML 1.2 knows only true and false and hands the others over as text. */
final class FlagText {
    private static final Phrases PHRASES = Phrases.of(FlagText.class);

    static String words() {
        return PHRASES.say("words");
    }

    private static final Set<String> TRUE = Set.of("on", "yes", "true");
    private static final Set<String> FALSE = Set.of("off", "no", "false");

    private FlagText() {}

    static Boolean parse(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (!TRUE.contains(lower) && !FALSE.contains(lower)) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-expected-write-one-of", Wording.clipped(text), words()));
        }
        return TRUE.contains(lower);
    }
}
