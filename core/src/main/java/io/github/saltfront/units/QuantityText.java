package io.github.saltfront.units;

import java.util.Map;
import java.util.regex.Pattern;

/** Brings the many ways of writing the same sign down to one, so that the parser sees plain ASCII and {@code degC}. */
final class QuantityText {
    private static final Map<Character, String> FRACTIONS = Map.ofEntries(
            Map.entry('½', "1/2"),
            Map.entry('⅓', "1/3"),
            Map.entry('⅔', "2/3"),
            Map.entry('¼', "1/4"),
            Map.entry('¾', "3/4"),
            Map.entry('⅕', "1/5"),
            Map.entry('⅖', "2/5"),
            Map.entry('⅗', "3/5"),
            Map.entry('⅘', "4/5"),
            Map.entry('⅙', "1/6"),
            Map.entry('⅚', "5/6"),
            Map.entry('⅛', "1/8"),
            Map.entry('⅜', "3/8"),
            Map.entry('⅝', "5/8"),
            Map.entry('⅞', "7/8"));

    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺";
    private static final String SUPERSCRIPTS_PLAIN = "0123456789-+";

    private static final Map<Character, String> SIGNS = Map.ofEntries(
            Map.entry('\u2044', "/"), // fraction slash
            Map.entry('\u2215', "/"), // division slash
            Map.entry('\u2212', "-"), // minus sign
            Map.entry('\u2010', "-"), // hyphen
            Map.entry('\u2011', "-"), // non-breaking hyphen
            Map.entry('\u2013', "-"), // en dash
            Map.entry('\u00d7', "*"), // multiplication sign
            Map.entry('\u00b7', "."), // middle dot
            Map.entry('\u22c5', "."), // dot operator
            Map.entry('\u2033', "\""), // double prime
            Map.entry('\u201c', "\""), // quotation marks
            Map.entry('\u201d', "\""),
            Map.entry('\u2032', "'"), // prime
            Map.entry('\u2018', "'"), // apostrophes
            Map.entry('\u2019', "'"),
            Map.entry('\u00ba', "°"), // masculine ordinal indicator, beside the degree sign on some keyboards
            Map.entry('\u02da', "°"), // ring above
            Map.entry('\u2103', "°C"), // one-character degree Celsius
            Map.entry('\u2109', "°F"), // one-character degree Fahrenheit
            Map.entry('\u00b5', "u"), // micro sign
            Map.entry('\u03bc', "u")); // Greek mu

    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u2000-\\u200b\\u202f\\u205f\\u3000]+");
    private static final Pattern DEGREES =
            Pattern.compile("(?:°|\\bdeg(?:rees?)?\\b\\.?|\\bdeg(?=[CF]\\b))\\s*([CcFf])(?:elsius|ahrenheit)?\\b");
    private static final Pattern SCALE_NAME = Pattern.compile("(?i)\\b(c)elsius\\b|\\b(f)ahrenheit\\b");
    private static final Pattern FLUID_OUNCE = Pattern.compile("(?i)\\bfl(?:uid)?\\.?\\s*(?:oz\\b\\.?|ounces?\\b)");
    private static final Pattern SPOON_SYSTEM =
            Pattern.compile("(?i)\\b(us|u\\.s\\.|metric|label)\\s+(?=t(?:sp|bs|ea|ab)|cups?\\b)");
    /** Full stop of an abbreviation: after a letter, before a space, a comma or the end. */
    private static final Pattern ABBREVIATION_STOP = Pattern.compile("(?<=[A-Za-z])\\.(?=\\s|,|$)");

    private QuantityText() {}

    static String normalize(String text) {
        String plain = SPACES.matcher(replaceSigns(text)).replaceAll(" ").strip();
        plain = DEGREES.matcher(plain).replaceAll(m -> "deg" + m.group(1).toUpperCase(java.util.Locale.ROOT));
        plain = SCALE_NAME.matcher(plain).replaceAll(m -> m.group(1) != null ? "degC" : "degF");
        plain = FLUID_OUNCE.matcher(plain).replaceAll("floz");
        plain = SPOON_SYSTEM.matcher(plain).replaceAll(m -> m.group(1).replace(".", "") + "_");
        return ABBREVIATION_STOP.matcher(plain).replaceAll("");
    }

    private static String replaceSigns(String text) {
        StringBuilder plain = new StringBuilder();
        boolean raised = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int superscript = SUPERSCRIPTS.indexOf(c);
            if (superscript >= 0) {
                plain.append(raised ? "" : "^").append(SUPERSCRIPTS_PLAIN.charAt(superscript));
            } else if (FRACTIONS.containsKey(c)) {
                plain.append(' ').append(FRACTIONS.get(c));
            } else {
                plain.append(SIGNS.getOrDefault(c, String.valueOf(c)));
            }
            raised = superscript >= 0;
        }
        return plain.toString();
    }
}
