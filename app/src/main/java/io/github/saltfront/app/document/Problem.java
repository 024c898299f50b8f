package io.github.saltfront.app.document;

import io.github.saltfront.words.Phrases;

/**
 * One thing that is wrong with a file.
 *
 * @param field where, as a path such as {@code stages[2].medium} with entries counted from 0; empty for the file as a whole
 * @param line line in the file, from 1; 0 if it has none
 * @param message what was got and expected and how to repair it, in whole sentences; control characters are made visible
 */
public record Problem(String field, int line, String message) {
    private static final Phrases PHRASES = Phrases.of(Problem.class);

    /** Makes control characters visible, so that a file cannot steer the terminal that shows the message. */
    public Problem {
        field = visible(field);
        message = visible(message);
    }

    /**
     * Returns the problem with its place.
     *
     * @param file name of the file
     * @return such as {@code roast.yaml, line 4, piece.mass: "30" has no unit, ...}
     */
    public String at(String file) {
        StringBuilder text = new StringBuilder(visible(file));
        if (line > 0) {
            text.append(PHRASES.say("line")).append(line);
        }
        if (!field.isEmpty()) {
            text.append(", ").append(field);
        }
        return text.append(": ").append(message).toString();
    }

    private static String visible(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(c -> {
            int type = Character.getType(c);
            if (Character.isISOControl(c) || type == Character.FORMAT || type == Character.LINE_SEPARATOR) {
                shown.append(String.format("\\u%04x", c));
            } else {
                shown.appendCodePoint(c);
            }
        });
        return shown.toString();
    }
}
