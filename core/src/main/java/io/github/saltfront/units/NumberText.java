package io.github.saltfront.units;

import io.github.saltfront.words.Phrases;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the number at the start of a normalized text: {@code 1 1/2}, {@code 3/4}, {@code 0,5}, {@code 2e-10}, {@code 2*10^-10}. */
final class NumberText {
    private static final Phrases PHRASES = Phrases.of(NumberText.class);

    private static final Pattern SIGN = Pattern.compile("([+-]) ?(?=[0-9.])");
    private static final Pattern FRACTION =
            Pattern.compile("(?:([0-9]{1,6})(?: ?& ?| and | ?- ?| ))?([0-9]{1,6}) ?/ ?([0-9]{1,6})(?![0-9.,])");
    private static final Pattern RUN = Pattern.compile("[0-9.,][0-9.,_]*");
    private static final Pattern POWER =
            Pattern.compile("[eE]([+-]?[0-9]{1,4})(?![0-9])| ?[*xX] ?10(?:\\^([+-]?[0-9]{1,4})|([+-][0-9]{1,4}))");

    private static final Pattern PLAIN = Pattern.compile("[0-9]+|[0-9]*\\.[0-9]+");
    private static final Pattern AMBIGUOUS = Pattern.compile("[1-9][0-9]{0,2},[0-9]{3}");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[0-9]+,[0-9]+");
    private static final Pattern THOUSANDS =
            Pattern.compile("[0-9]{1,3}(?:,[0-9]{3}){2,}|[0-9]{1,3}(?:,[0-9]{3})+\\.[0-9]+");
    private static final Pattern THOUSANDS_POINT = Pattern.compile("[0-9]{1,3}(?:\\.[0-9]{3})+,[0-9]+");

    /**
     * The number and what follows it.
     *
     * @param value the number, finite
     * @param written the number as it stands in the normalized text
     * @param rest what follows, stripped
     */
    record Read(double value, String written, String rest) {}

    private final String text;
    private final Refusal refusal;
    private int at;

    private NumberText(String text, Refusal refusal) {
        this.text = text;
        this.refusal = refusal;
    }

    static Read read(String text, Refusal refusal) {
        return new NumberText(text, refusal).read();
    }

    private Read read() {
        int sign = 1;
        Matcher matcher = matcher(SIGN);
        if (matcher.lookingAt()) {
            sign = matcher.group(1).equals("-") ? -1 : 1;
            at = matcher.end();
        }
        matcher = matcher(FRACTION);
        double value = matcher.lookingAt() ? fraction(matcher) : decimal();
        return new Read(
                sign * value, text.substring(0, at).strip(), text.substring(at).strip());
    }

    private double fraction(Matcher matcher) {
        at = matcher.end();
        double numerator = Double.parseDouble(matcher.group(2));
        double denominator = Double.parseDouble(matcher.group(3));
        String whole = matcher.group(1);
        if (denominator == 0 || (whole != null && numerator >= denominator)) {
            throw refusal.fraction(matcher.group());
        }
        return (whole == null ? 0 : Double.parseDouble(whole)) + numerator / denominator;
    }

    private double decimal() {
        Matcher matcher = matcher(RUN);
        if (!matcher.lookingAt()) {
            throw refusal.notANumber(text);
        }
        at = matcher.end();
        String digits = point(matcher.group());
        matcher = matcher(POWER);
        if (matcher.lookingAt()) {
            at = matcher.end();
            digits += "e" + firstGroup(matcher);
        }
        double value = Double.parseDouble(digits);
        if (!Double.isFinite(value)) {
            throw refusal.size(PHRASES.say("is-too-large-to-be"));
        }
        boolean vanished = value == 0 && digits.split("e", 2)[0].chars().anyMatch(c -> c >= '1' && c <= '9');
        if (vanished) {
            throw refusal.size(PHRASES.say("is-too-small-to-be"));
        }
        return value;
    }

    private static String firstGroup(Matcher matcher) {
        for (int i = 1; i <= matcher.groupCount(); i++) {
            String group = matcher.group(i);
            if (group != null) {
                return group;
            }
        }
        throw new AssertionError(matcher);
    }

    /** Rewrites a run of digits, points and commas with a decimal point, if it can be read in one way only. */
    private String point(String run) {
        if (AMBIGUOUS.matcher(run).matches()) {
            throw refusal.ambiguousComma(run);
        }
        if (PLAIN.matcher(run).matches()) {
            return run;
        }
        if (DECIMAL_COMMA.matcher(run).matches()) {
            return run.replace(',', '.');
        }
        if (THOUSANDS.matcher(run).matches()) {
            return run.replace(",", "");
        }
        if (THOUSANDS_POINT.matcher(run).matches()) {
            return run.replace(".", "").replace(',', '.');
        }
        throw refusal.badNumber(run);
    }

    private Matcher matcher(Pattern pattern) {
        return pattern.matcher(text).region(at, text.length());
    }
}
