package io.github.saltfront.units;

import io.github.saltfront.words.Phrases;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a quantity with its unit as cooks and engineers write it, and returns it in SI.
 *
 * <p>Numbers: {@code 1 1/2}, {@code 1½}, {@code 1-1/2}, {@code 0.5}, {@code 0,5}, {@code 2e-10}, {@code 2×10⁻¹⁰}. A comma before
 * exactly three digits is refused, since it can be a thousands separator. Sums: {@code 1 lb 4 oz}, {@code 5' 3 1/2"},
 * {@code 2 h 30 min}, {@code 1 tbsp + 1/2 tsp}, each unit once and the larger first. Clock forms: {@code 1:30 h},
 * {@code 4:30 min}, {@code 1:30:00}. Products of units: {@code 3.5 kJ/kg/K}, {@code 20 W/(m2.K)}.
 *
 * <p>Spoons and cups are US customary unless {@code metric} or {@code label} stands before them ({@link SpoonSystem}). {@code c}
 * is a cup where a volume is asked for and {@code m} a minute where a time is. A calorie is the thermochemical one, a BTU
 * the International Table one.
 *
 * <p>Refused: a missing or unknown unit, the wrong kind of quantity, a range, a negative value where none can be meant,
 * anything not finite or above {@value #LARGEST} in SI. Temperatures below absolute zero are refused too.
 */
public final class QuantityParser {
    private static final Phrases PHRASES = Phrases.of(QuantityParser.class);

    /** Largest magnitude read [SI unit]; above it a slip of the pen is more likely than a kitchen. */
    public static final double LARGEST = 1e12;

    private static final int LONGEST = 200;
    private static final Pattern RANGE = Pattern.compile("(?:-|to |or )\\s*[0-9].*");
    private static final Pattern FIRST_OF_SUM =
            Pattern.compile("([^0-9/^(]+?)(\\s*(?:,|\\+|&|\\band\\b)?\\s*)(\\.?[0-9].*)");
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,4}):([0-9]{2})(?::([0-9]{2}))?(?: ?([A-Za-z]+))?");

    private final Dimension dimension;
    private final Refusal refusal;

    private QuantityParser(String text, Dimension dimension) {
        this.dimension = dimension;
        this.refusal = new Refusal(text, dimension);
    }

    /**
     * Reads a quantity.
     *
     * @param text what was written
     * @param dimension kind of quantity that is wanted
     * @return the value in the SI unit of the kind, {@link Dimension#siUnit}
     * @throws QuantityException if the text is not such a quantity or can be read in two ways
     */
    public static double parse(String text, Dimension dimension) {
        return new QuantityParser(text.strip(), dimension).read(text);
    }

    private double read(String text) {
        if (text.length() > LONGEST) {
            throw refusal.tooLong();
        }
        String plain = QuantityText.normalize(text);
        if (plain.isEmpty()) {
            throw refusal.nothing();
        }
        boolean clock = dimension == Dimension.TIME && plain.contains(":");
        return checked(clock ? clock(plain) : sum(plain));
    }

    private double checked(double value) {
        if (!(Math.abs(value) <= LARGEST)) {
            throw refusal.size(PHRASES.say("is-too-large-to-be"));
        }
        if (value < 0 && !dimension.isSigned()) {
            throw refusal.negative();
        }
        if (value < 0 && dimension == Dimension.TEMPERATURE) {
            throw refusal.size(PHRASES.say("is-below-absolute-zero"));
        }
        return value == 0 ? 0 : value; // no negative zero
    }

    private double sum(String text) {
        double total = 0;
        double last = Double.POSITIVE_INFINITY;
        String rest = text;
        boolean negative = false;
        while (!rest.isEmpty()) {
            NumberText.Read number = NumberText.read(rest, refusal);
            String unitText = unitText(number);
            rest = "";
            Matcher sum = FIRST_OF_SUM.matcher(unitText);
            if (dimension.isAdditive() && sum.matches() && isNextTerm(sum)) {
                unitText = sum.group(1).strip();
                rest = sum.group(3);
            }
            Unit unit = unit(unitText);
            if (!(unit.factor() < last)) {
                throw refusal.order();
            }
            last = unit.factor();
            negative |= number.written().startsWith("-");
            total += toSi(Math.abs(number.value()), negative, unit);
        }
        return negative && dimension != Dimension.TEMPERATURE ? -total : total;
    }

    /** Tells "lb 4 oz" and "h 30" from "m3" and "cm3": a power of a unit stands close and has no letters after it. */
    private static boolean isNextTerm(Matcher sum) {
        return !sum.group(2).isEmpty()
                || sum.group(3).chars().anyMatch(c -> Character.isLetter(c) || c == '"' || c == '\'');
    }

    private String unitText(NumberText.Read number) {
        String rest = number.rest();
        if (rest.isEmpty()) {
            throw refusal.missingUnit(number.written());
        }
        if (RANGE.matcher(rest).matches()) {
            throw refusal.range();
        }
        char first = rest.charAt(0);
        if (first >= '0' && first <= '9') {
            throw refusal.badNumber(number.written() + " " + rest);
        }
        return first == '-' ? rest.substring(1) : rest; // "2-inch"
    }

    private Unit unit(String text) {
        Unit unit = UnitExpression.read(text, dimension, refusal);
        if (!unit.exponents().equals(dimension.exponents())) {
            throw refusal.wrongDimension(unit);
        }
        return unit;
    }

    private double toSi(double magnitude, boolean negative, Unit unit) {
        if (dimension != Dimension.TEMPERATURE) {
            return magnitude * unit.factor();
        }
        double degrees = negative ? -magnitude : magnitude;
        return switch (unit.symbol()) {
            case "degC" -> Temperature.fromCelsius(degrees);
            case "degF" -> Temperature.fromFahrenheit(degrees);
            default -> degrees * unit.factor();
        };
    }

    private double clock(String text) {
        Matcher matcher = CLOCK.matcher(text);
        if (!matcher.matches()) {
            throw refusal.badClock();
        }
        double first = Double.parseDouble(matcher.group(1));
        double second = sixtieths(matcher.group(2));
        String third = matcher.group(3);
        String unitText = matcher.group(4);
        if (third == null && unitText == null) {
            throw refusal.clock();
        }
        double unit = unitText == null ? 3600 : unit(unitText).factor();
        if (unit == 3600) {
            return first * 3600 + second * 60 + (third == null ? 0 : sixtieths(third));
        }
        if (unit == 60 && third == null) {
            return first * 60 + second;
        }
        throw refusal.badClock();
    }

    private double sixtieths(String digits) {
        double value = Double.parseDouble(digits);
        if (value >= 60) {
            throw refusal.badClock();
        }
        return value;
    }
}
