package io.github.saltfront.app.document;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Reads numbers without unit. */
final class PlainNumber {
    private static final Pattern DECIMAL =
            Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,4})?");
    private static final Pattern WHOLE = Pattern.compile("[+-]?(?:0|[1-9][0-9]*)");

    private PlainNumber() {}

    static String words(double low, double high) {
        return "a number without unit from " + plain(low) + " to " + plain(high);
    }

    static String wholeWords(int low, int high) {
        return "a whole number from " + low + " to " + high;
    }

    static Double parse(String text, double low, double high) {
        if (!DECIMAL.matcher(text).matches()) {
            String fix =
                    text.indexOf(',') >= 0 ? "use a decimal point" : "write digits with a decimal point and no unit";
            throw new IllegalArgumentException(
                    "Got \"" + Wording.clipped(text) + "\", expected " + words(low, high) + "; " + fix + ".");
        }
        double value = Double.parseDouble(text);
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(
                    "Got " + Wording.clipped(text) + ", expected " + words(low, high) + "; check the number.");
        }
        return value;
    }

    static Integer parseWhole(String text, int low, int high) {
        if (!WHOLE.matcher(text).matches()) {
            throw new IllegalArgumentException("Got \"" + Wording.clipped(text) + "\", expected "
                    + wholeWords(low, high) + "; write digits only, without unit, point or leading zeros.");
        }
        double value = Double.parseDouble(text);
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(
                    "Got " + Wording.clipped(text) + ", expected " + wholeWords(low, high) + "; check the number.");
        }
        return (int) value;
    }

    private static String plain(double value) {
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
