package io.github.saltfront.app.follow;

/** Hears what happens to cooks. Must return at once. */
@FunctionalInterface
public interface CookListener {
    /**
     * Hears that something changed.
     *
     * @param cook id of the cook
     * @param event {@code readings}, {@code look} or {@code told}
     * @param json what changed
     */
    void changed(String cook, String event, String json);
}
