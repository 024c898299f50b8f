package io.github.saltfront.app.document;

import io.github.saltfront.words.Phrases;
import java.math.BigDecimal;
import java.util.regex.Pattern;

/** Reads numbers without unit. */
final class PlainNumber {
    private static final Phrases PHRASES = Phrases.of(PlainNumber.class);

    private static final Pattern DECIMAL =
            Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,4})?");
    private static final Pattern WHOLE = Pattern.compile("[+-]?(?:0|[1-9][0-9]*)");

    private PlainNumber() {}

    static String words(double low, double high) {
        return PHRASES.say("a-number-without-unit-from", plain(low), plain(high));
    }

    static String wholeWords(int low, int high) {
        return PHRASES.say("a-whole-number-from-to", low, high);
    }

    static Double parse(String text, double low, double high) {
        if (!DECIMAL.matcher(text).matches()) {
            String fix = text.indexOf(',') >= 0
                    ? PHRASES.say("use-a-decimal-point")
                    : PHRASES.say("write-digits-with-a-decimal");
            throw new IllegalArgumentException(
                    PHRASES.say("got-expected", Wording.clipped(text), words(low, high), fix));
        }
        double value = Double.parseDouble(text);
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-expected-check-the-number", Wording.clipped(text), words(low, high)));
        }
        return value;
    }

    static Integer parseWhole(String text, int low, int high) {
        if (!WHOLE.matcher(text).matches()) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-expected-write-digits-only", Wording.clipped(text), wholeWords(low, high)));
        }
        double value = Double.parseDouble(text);
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-expected-check-the-number", Wording.clipped(text), wholeWords(low, high)));
        }
        return (int) value;
    }

    private static String plain(double value) {
        return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
