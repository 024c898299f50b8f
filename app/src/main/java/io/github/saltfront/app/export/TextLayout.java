package io.github.saltfront.app.export;

/** Plain text narrow enough for a phone. */
final class TextLayout {
    /** Columns of a line. */
    static final int WIDTH = 64;

    private TextLayout() {}

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
