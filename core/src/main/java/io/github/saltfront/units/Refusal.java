package io.github.saltfront.units;

import io.github.saltfront.words.Phrases;
import java.util.Locale;
import java.util.Optional;

/** Writes the messages about one text: what was got, what was expected, how to repair it. */
final class Refusal {
    private static final Phrases PHRASES = Phrases.of(Refusal.class);

    private static final int SHOWN = 60;

    private final String text;
    private final Dimension dimension;

    Refusal(String text, Dimension dimension) {
        this.text = text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
        this.dimension = dimension;
    }

    QuantityException nothing() {
        return new QuantityException(PHRASES.say("got-nothing", expected()));
    }

    QuantityException tooLong() {
        return because(PHRASES.say("is-too-long"));
    }

    QuantityException notANumber(String found) {
        return because(PHRASES.say("does-not-begin-with-a", found));
    }

    QuantityException badNumber(String found) {
        return new QuantityException(PHRASES.say("is-not-a-number-use", text, found, expected()));
    }

    /** A comma before exactly three digits is a decimal comma to some and a thousands separator to others. */
    QuantityException ambiguousComma(String found) {
        String whole = found.replace(",", "");
        String decimal = found.replace(',', '.');
        String unit = text.contains(found) ? text.substring(text.indexOf(found) + found.length()) : "";
        return new QuantityException(PHRASES.say("can-be-read-as-or", text, decimal, unit, whole, unit));
    }

    QuantityException range() {
        return because(PHRASES.say("is-a-range"), PHRASES.say("write-one-number"));
    }

    QuantityException fraction(String found) {
        return new QuantityException(PHRASES.say("is-not-a-fraction-a", text, found, expected()));
    }

    QuantityException missingUnit(String number) {
        String first = dimension.units().split(",| or ", 2)[0];
        return new QuantityException(PHRASES.say(
                "has-no-unit-add-for",
                text,
                (text.equals(number) ? "" : PHRASES.say("after", number)),
                expected(),
                dimension.units(),
                number,
                first,
                (dimension == Dimension.FRACTION ? PHRASES.say("a-part-of-1-is") : ".")));
    }

    QuantityException unknownUnit(String unit) {
        String shown = unit.replace('_', ' ').replace("deg", "°");
        String fix = switch (shown) {
            case "t", "T", "Tb" -> PHRASES.say("write-tsp-or-tbsp-since", shown);
            case "gr" -> PHRASES.say("write-g-for-gram");
            case "°" -> PHRASES.say("write-c-or-f");
            default -> NearestName.question(shown, UnitTable.names(dimension));
        };
        String end = fix.endsWith("?") ? "" : ".";
        return new QuantityException(PHRASES.say(
                "the-unit-is-not-known",
                text,
                shown,
                expected(),
                (fix.isEmpty() ? PHRASES.say("the-usual-units-are", dimension.units()) : fix),
                end));
    }

    QuantityException wrongDimension(Unit unit) {
        Optional<Dimension> kind = kindOf(unit);
        String is = kind.map(k -> PHRASES.say("is-kind", k.noun())).orElse(PHRASES.say("is-in-units-of-another"));
        boolean ounces =
                dimension == Dimension.VOLUME && text.toLowerCase(Locale.ROOT).contains("oz");
        String fix = ounces ? PHRASES.say("write-fl-oz-for-fluid") : "";
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
        return because(PHRASES.say("does-not-go-from-the"), PHRASES.say("write-each-unit-once"));
    }

    QuantityException negative() {
        return because(PHRASES.say("is-negative"), PHRASES.say("leave-the-sign-out"));
    }

    QuantityException size(String words) {
        return because(words);
    }

    QuantityException clock() {
        return new QuantityException(PHRASES.say("can-be-hours-and-minutes", text, expected()));
    }

    QuantityException badClock() {
        return because(PHRASES.say("is-not-a-time-of"), PHRASES.say("minutes-and-seconds-go-from"));
    }

    private QuantityException because(String reason) {
        return new QuantityException("\"" + text + "\" " + reason + ", " + expected() + ".");
    }

    private QuantityException because(String reason, String fix) {
        return new QuantityException("\"" + text + "\" " + reason + ", " + expected() + "; " + fix + ".");
    }

    private String expected() {
        return PHRASES.say("expected-such-as", dimension.noun(), dimension.example());
    }
}
