package io.github.saltfront.safety;

import io.github.saltfront.words.Phrases;

/** The words that differ between kitchens. */
final class VerdictWords {
    private static final Phrases PHRASES = Phrases.of(VerdictWords.class);

    private VerdictWords() {}

    static String note(Kitchen kitchen, boolean measured) {
        String proof = measured ? PHRASES.say("the-record-speaks-for-the") : PHRASES.say("only-a-thermometer-in-the");
        return switch (kitchen) {
            case HOME -> proof;
            case TEACHING -> PHRASES.say("say-to-the-class-which", proof);
            case PROFESSIONAL -> PHRASES.say("local-code-comes-first-an", proof);
        };
    }
}
