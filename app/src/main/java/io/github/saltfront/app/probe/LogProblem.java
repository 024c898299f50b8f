package io.github.saltfront.app.probe;

import io.github.saltfront.words.Phrases;

/**
 * One thing wrong with a log.
 *
 * @param line line of the file, from 1; 0 if it concerns the whole file
 * @param message what was found and how to mend it
 */
public record LogProblem(int line, String message) {
    private static final Phrases PHRASES = Phrases.of(LogProblem.class);

    /** Returns the problem in one line for people. */
    public String describe() {
        return line > 0 ? PHRASES.say("line", line, message) : message;
    }
}
