package io.github.saltfront.app.follow;

/** There is no such cook, or no such part of it. */
public final class NoSuchCook extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NoSuchCook(String id) {
        super("There is no cook, or no part of one, under " + ReadingText.shown(id) + "; look at the list of cooks.");
    }
}
