package io.github.saltfront.app.cli;

import io.github.saltfront.units.Temperature;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the few quantities that options of {@code lethality} take, with their unit or a stated default. */
final class Quantities {
    private static final Pattern NUMBER =
            Pattern.compile("\\s*([-+]?[0-9]+(?:[.,][0-9]+)?)\\s*(°?\\s*[A-Za-z]+|%|)\\s*");

    private Quantities() {}

    /** Reads a temperature in degrees Celsius unless it says F; returns it [K]. */
    static double temperature(String name, String text) {
        Matcher parts = match(name, text, "such as 0.4 or 32.7F");
        double number = number(parts);
        return switch (unit(parts)) {
            case "", "c" -> Temperature.fromCelsius(number);
            case "f" -> Temperature.fromFahrenheit(number);
            default -> throw wrong(name, text, "such as 0.4 or 32.7F");
        };
    }

    /** Reads a temperature difference in degrees Celsius unless it says F; returns it [K]. */
    static double difference(String name, String text) {
        Matcher parts = match(name, text, "such as 0.5 or 1F");
        double number = number(parts);
        return switch (unit(parts)) {
            case "", "c", "k" -> number;
            case "f" -> number / 1.8;
            default -> throw wrong(name, text, "such as 0.5 or 1F");
        };
    }

    /** Reads a height in meters unless it says ft; returns it [m]. */
    static double height(String name, String text) {
        Matcher parts = match(name, text, "such as 1600 or 5280ft");
        double number = number(parts);
        return switch (unit(parts)) {
            case "", "m" -> number;
            case "ft" -> number * 0.3048;
            default -> throw wrong(name, text, "such as 1600 or 5280ft");
        };
    }

    /** Reads a percentage; returns it as a fraction. */
    static double percent(String name, String text) {
        Matcher parts = match(name, text, "a percentage such as 5");
        if (!unit(parts).isEmpty() && !unit(parts).equals("%")) {
            throw wrong(name, text, "a percentage such as 5");
        }
        double number = number(parts);
        if (!(number >= 0 && number <= 100)) {
            throw wrong(name, text, "a percentage from 0 to 100");
        }
        return number / 100;
    }

    /** Reads a time in minutes unless it says s or h; returns it [s]. */
    static double duration(String name, String text) {
        Matcher parts = match(name, text, "such as 5 or 90s");
        double number = number(parts);
        return switch (unit(parts)) {
            case "", "min" -> number * 60;
            case "s" -> number;
            case "h" -> number * 3600;
            default -> throw wrong(name, text, "such as 5 or 90s");
        };
    }

    private static Matcher match(String name, String text, String expected) {
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.matches()) {
            throw wrong(name, text, expected);
        }
        return matcher;
    }

    private static double number(Matcher parts) {
        return Double.parseDouble(parts.group(1).replace(',', '.'));
    }

    private static String unit(Matcher parts) {
        return parts.group(2).replace("°", "").strip().toLowerCase(Locale.ROOT);
    }

    private static IllegalArgumentException wrong(String name, String text, String expected) {
        return new IllegalArgumentException(name + ": got \"" + text + "\", expected " + expected + ".");
    }
}
