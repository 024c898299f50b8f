package io.github.saltfront.units;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a product of units: {@code J/(kg.K)}, {@code kJ/kg/K}, {@code W m^-2 K^-1}, {@code g/100 g}. A point, a star or a
 * space multiplies; a slash divides by the next factor only, as SI has it, unless just the other reading
 * ({@code W/m2 K}, everything after the slash below it) gives the kind that was asked for.
 */
final class UnitExpression {
    private static final Pattern NAME = Pattern.compile("[A-Za-z_°%\"']+");
    private static final Pattern POWER = Pattern.compile("\\^?(-?[1-4])(?![0-9])");
    private static final Pattern COUNT = Pattern.compile("100?0?(?![0-9])");
    private static final Pattern PER = Pattern.compile("(?i)\\bper\\b");

    private final String text;
    private final Dimension asked;
    private final Refusal refusal;
    private int at;

    private UnitExpression(String text, Dimension asked, Refusal refusal) {
        this.text = text;
        this.asked = asked;
        this.refusal = refusal;
    }

    static Unit read(String text, Dimension asked, Refusal refusal) {
        String plain = PER.matcher(text).replaceAll("/");
        Unit strict = new UnitExpression(plain, asked, refusal).all();
        int slash = plain.indexOf('/');
        boolean oneSlash = slash > 0 && slash == plain.lastIndexOf('/') && plain.indexOf('(') < 0;
        if (strict.exponents().equals(asked.exponents()) || !oneSlash) {
            return strict;
        }
        String grouped = plain.substring(0, slash) + "/(" + plain.substring(slash + 1) + ")";
        Unit loose = new UnitExpression(grouped, asked, refusal).all();
        return loose.exponents().equals(asked.exponents()) ? loose : strict;
    }

    private Unit all() {
        Unit unit = product();
        if (at < text.length()) {
            throw refusal.unknownUnit(text);
        }
        return unit;
    }

    private Unit product() {
        Unit unit = factor(1, Unit.ONE);
        while (at < text.length() && text.charAt(at) != ')') {
            int power = 1;
            int before = at;
            skipSpaces();
            if (at < text.length() && "/.*".indexOf(text.charAt(at)) >= 0) {
                power = text.charAt(at) == '/' ? -1 : 1;
                at++;
            } else if (at == before) {
                throw refusal.unknownUnit(text);
            }
            unit = factor(power, unit);
        }
        return unit;
    }

    private Unit factor(int power, Unit before) {
        skipSpaces();
        if (at < text.length() && text.charAt(at) == '(') {
            at++;
            Unit inner = product();
            if (at >= text.length()) {
                throw refusal.unknownUnit(text);
            }
            at++;
            return before.times(inner, power);
        }
        Matcher count = matcher(COUNT);
        if (power < 0 && count.lookingAt()) {
            at = count.end();
            return factor(power, before.times(new Unit("", Double.parseDouble(count.group()), Exponents.NONE), power));
        }
        Matcher name = matcher(NAME);
        if (!name.lookingAt()) {
            throw refusal.unknownUnit(text);
        }
        at = name.end();
        Unit unit = UnitTable.find(name.group(), asked).orElseThrow(() -> refusal.unknownUnit(name.group()));
        return before.times(unit, power * power());
    }

    private int power() {
        Matcher matcher = matcher(POWER);
        if (!matcher.lookingAt()) {
            return 1;
        }
        at = matcher.end();
        return Integer.parseInt(matcher.group(1));
    }

    private void skipSpaces() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    private Matcher matcher(Pattern pattern) {
        return pattern.matcher(text).region(at, text.length());
    }
}
