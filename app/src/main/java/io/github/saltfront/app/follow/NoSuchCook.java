package io.github.saltfront.app.follow;

import io.github.saltfront.words.Phrases;

/** There is no such cook, or no such part of it. */
public final class NoSuchCook extends RuntimeException {
    private static final Phrases PHRASES = Phrases.of(NoSuchCook.class);

    private static final long serialVersionUID = 1L;

    NoSuchCook(String id) {
        super(PHRASES.say("there-is-no-cook-or", ReadingText.shown(id)));
    }
}
