package io.github.saltfront.app.export;

import io.github.saltfront.words.Phrases;
import java.util.Locale;

/** Plain text narrow enough for a phone. */
final class TextLayout {
    /** Columns of a line. */
    static final int WIDTH = 64;

    private TextLayout() {}

    /** A named value; the name has nine columns. */
    static String row(String name, String value) {
        return wrapped(value, String.format(Locale.ROOT, "  %-9s ", name), " ".repeat(12));
    }

    /** A mass [kg] in grams. */
    static String grams(double kilograms) {
        double g = kilograms * 1000;
        return g < 100 ? Phrases.figures("%.1f g", g) : Phrases.figures("%.0f g", g);
    }

    /**
     * Breaks a text into lines.
     *
     * @param text the text
     * @param indent spaces in front of each line
     * @return lines, each with a line end
     */
    static String wrapped(String text, int indent) {
        return wrapped(text, " ".repeat(indent), " ".repeat(indent));
    }

    /**
     * Breaks a text into lines.
     *
     * @param text the text
     * @param first what stands before the first line
     * @param others what stands before the others
     * @return lines, each with a line end
     */
    static String wrapped(String text, String first, String others) {
        StringBuilder result = new StringBuilder();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : text.split(" ", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                result.append(line).append('\n');
                line = new StringBuilder(others);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        return result.append(line).append('\n').toString();
    }
}
