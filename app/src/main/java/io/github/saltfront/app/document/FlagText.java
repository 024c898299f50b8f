package io.github.saltfront.app.document;

import java.util.Locale;
import java.util.Set;

/** Reads a yes or no in the words people use; YAML 1.2 knows only true and false and hands the others over as text. */
final class FlagText {
    static final String WORDS = "on or off (or yes, no, true, false)";

    private static final Set<String> TRUE = Set.of("on", "yes", "true");
    private static final Set<String> FALSE = Set.of("off", "no", "false");

    private FlagText() {}

    static Boolean parse(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (!TRUE.contains(lower) && !FALSE.contains(lower)) {
            throw new IllegalArgumentException(
                    "Got \"" + Wording.clipped(text) + "\", expected " + WORDS + "; write one of these words.");
        }
        return TRUE.contains(lower);
    }
}
