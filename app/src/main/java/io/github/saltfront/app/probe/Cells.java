package io.github.saltfront.app.probe;

/** Cells of one line, as positions in the text, so that a million rows need no million strings. */
final class Cells {
    private final String text;
    private final char separator;
    private int[] starts = new int[16];
    private int[] ends = new int[16];
    private int count;

    Cells(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    /** Splits a line; quotes and spaces around a cell are not part of it. */
    void split(int from, int to) {
        count = 0;
        boolean quoted = false;
        int start = from;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (c == separator && !quoted) {
                add(start, i);
                start = i + 1;
            }
        }
        add(start, to);
    }

    private void add(int from, int to) {
        if (count == starts.length) {
            starts = java.util.Arrays.copyOf(starts, 2 * count);
            ends = java.util.Arrays.copyOf(ends, 2 * count);
        }
        int start = from;
        int end = to;
        while (start < end && isPadding(text.charAt(start))) {
            start++;
        }
        while (end > start && isPadding(text.charAt(end - 1))) {
            end--;
        }
        starts[count] = start;
        ends[count++] = end;
    }

    private static boolean isPadding(char c) {
        return c == ' ' || c == '"' || c == '\u00A0' || (c == '\t');
    }

    int count() {
        return count;
    }

    int start(int index) {
        return starts[index];
    }

    int end(int index) {
        return ends[index];
    }

    boolean isEmpty(int index) {
        return index >= count || starts[index] == ends[index];
    }

    String get(int index) {
        return index < count ? text.substring(starts[index], ends[index]) : "";
    }

    /** Returns a number with a decimal point or comma, or NaN. */
    double number(int index) {
        return index < count ? Numbers.parse(text, starts[index], ends[index]) : Double.NaN;
    }

    /** Returns the number of digits after the decimal sign. */
    int decimals(int index) {
        for (int i = ends[index] - 1; i >= starts[index]; i--) {
            if (text.charAt(i) == '.' || text.charAt(i) == ',') {
                return ends[index] - 1 - i;
            }
        }
        return 0;
    }
}
