package io.github.saltfront.units;

import java.util.Locale;
import java.util.Optional;

/** Writes the messages about one text: what was got, what was expected, how to repair it. */
final class Refusal {
    private static final int SHOWN = 60;

    private final String text;
    private final Dimension dimension;

    Refusal(String text, Dimension dimension) {
        this.text = text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
        this.dimension = dimension;
    }

    QuantityException nothing() {
        return new QuantityException("got nothing, " + expected() + ".");
    }

    QuantityException tooLong() {
        return because("is too long");
    }

    QuantityException notANumber(String found) {
        return because("does not begin with a number (found \"" + found + "\")");
    }

    QuantityException badNumber(String found) {
        return new QuantityException("\"" + text + "\": \"" + found + "\" is not a number, " + expected()
                + "; use one decimal point and no thousands separators.");
    }

    /** A comma before exactly three digits is a decimal comma to some and a thousands separator to others. */
    QuantityException ambiguousComma(String found) {
        String whole = found.replace(",", "");
        String decimal = found.replace(',', '.');
        String unit = text.contains(found) ? text.substring(text.indexOf(found) + found.length()) : "";
        return new QuantityException("\"" + text + "\" can be read as " + decimal + unit + " or as " + whole + unit
                + "; expected a number that can be read in one way, so write the one you mean without a comma.");
    }

    QuantityException range() {
        return because("is a range", "write one number");
    }

    QuantityException fraction(String found) {
        return new QuantityException(
                "\"" + text + "\": \"" + found + "\" is not a fraction a cook would write, " + expected()
                        + "; the lower number must not be 0, and after a whole number the fraction must be below 1.");
    }

    QuantityException missingUnit(String number) {
        String first = dimension.units().split(",| or ", 2)[0];
        return new QuantityException("\"" + text + "\" has no unit" + (text.equals(number) ? "" : " after " + number)
                + ", " + expected() + "; add " + dimension.units() + ", for example \"" + number + " " + first + "\""
                + (dimension == Dimension.FRACTION ? " (a part of 1 is written in percent: 0.06 is \"6 %\")." : "."));
    }

    QuantityException unknownUnit(String unit) {
        String shown = unit.replace('_', ' ').replace("deg", "°");
        String fix = switch (shown) {
            case "t", "T", "Tb" -> "; write tsp or tbsp, since \"" + shown + "\" is used for both";
            case "gr" -> "; write g for gram";
            case "°" -> "; write °C or °F";
            default -> NearestName.question(shown, UnitTable.names(dimension));
        };
        String end = fix.endsWith("?") ? "" : ".";
        return new QuantityException("\"" + text + "\": the unit \"" + shown + "\" is not known, " + expected()
                + (fix.isEmpty() ? "; the usual units are " + dimension.units() : fix) + end);
    }

    QuantityException wrongDimension(Unit unit) {
        Optional<Dimension> kind = kindOf(unit);
        String is = kind.map(k -> "is " + k.noun()).orElse("is in units of another kind");
        boolean ounces =
                dimension == Dimension.VOLUME && text.toLowerCase(Locale.ROOT).contains("oz");
        String fix = ounces ? "; write fl oz for fluid ounces" : "";
        return new QuantityException("\"" + text + "\" " + is + ", " + expected() + fix + ".");
    }

    private static Optional<Dimension> kindOf(Unit unit) {
        for (Dimension candidate : Dimension.values()) {
            if (candidate.exponents().equals(unit.exponents())) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }

    QuantityException order() {
        return because("does not go from the larger unit to the smaller one", "write each unit once");
    }

    QuantityException negative() {
        return because("is negative", "leave the sign out");
    }

    QuantityException size(String words) {
        return because(words);
    }

    QuantityException clock() {
        return new QuantityException("\"" + text + "\" can be hours and minutes or minutes and seconds, " + expected()
                + "; add h or min, for example \"1:30 h\".");
    }

    QuantityException badClock() {
        return because("is not a time of the form 1:30 h, 4:30 min or 1:30:00", "minutes and seconds go from 00 to 59");
    }

    private QuantityException because(String reason) {
        return new QuantityException("\"" + text + "\" " + reason + ", " + expected() + ".");
    }

    private QuantityException because(String reason, String fix) {
        return new QuantityException("\"" + text + "\" " + reason + ", " + expected() + "; " + fix + ".");
    }

    private String expected() {
        return "expected " + dimension.noun() + " such as " + dimension.example();
    }
}
