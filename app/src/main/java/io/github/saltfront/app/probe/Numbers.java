package io.github.saltfront.app.probe;

/** Reads plain decimal numbers without creating strings. */
final class Numbers {
    private static final double[] POWERS = {1, 10, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12};

    private Numbers() {}

    /**
     * Reads digits with an optional sign and one decimal point or comma.
     *
     * @return the number, or NaN if the text is anything else
     */
    static double parse(String text, int from, int to) {
        int i = from;
        boolean negative = false;
        if (i < to && (text.charAt(i) == '-' || text.charAt(i) == '+' || text.charAt(i) == '\u2212')) {
            negative = text.charAt(i) != '+';
            i++;
        }
        long digits = 0;
        int seen = 0;
        int decimals = -1;
        for (; i < to; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9' && seen < 18) {
                digits = 10 * digits + (c - '0');
                seen++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if ((c == '.' || c == ',') && decimals < 0) {
                decimals = 0;
            } else {
                return Double.NaN;
            }
        }
        if (seen == 0 || decimals >= POWERS.length) {
            return Double.NaN;
        }
        double value = digits / POWERS[Math.max(0, decimals)];
        return negative ? -value : value;
    }
}
