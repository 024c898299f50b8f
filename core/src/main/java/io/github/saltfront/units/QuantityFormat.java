package io.github.saltfront.units;

import io.github.saltfront.words.Phrases;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes quantities as a cook reads them. What is written can be read back by {@link QuantityParser} and lies within half of
 * the last printed step. Steps follow what kitchen tools show, not what was computed; safety limits must not be taken from
 * rounded text. All methods throw {@link IllegalArgumentException} if the value is not finite, and, save for temperatures,
 * if it is negative.
 */
public final class QuantityFormat {
    private static final Phrases PHRASES = Phrases.of(QuantityFormat.class);
    private static final double POUND = 0.45359237;
    private static final double OUNCE = POUND / 16;
    private static final double INCH = 0.0254;
    private static final double DAY = 86400;
    /** Below this share of a teaspoon the smallest spoon, 1/8, would be off by more than a tenth. */
    private static final double SMALLEST_SPOON = 0.1125;

    private QuantityFormat() {}

    /**
     * Writes a mass: to 0.1 g below 10 g, to 1 g below 1 kg, then three figures; or to 1/4 oz below 1 lb, then to 1 oz.
     * Below 1 g or 1/4 oz two figures.
     *
     * @param mass mass [kg]
     * @param units units wanted
     * @return such as {@code 230 g}, {@code 1.5 kg}, {@code 1 lb 4 oz}
     */
    public static String mass(double mass, KitchenUnits units) {
        requireNotNegative("mass", mass, "kg");
        if (units == KitchenUnits.METRIC) {
            double grams = mass * 1e3;
            return grams < 999.5 ? small(grams) + " g" : significant(mass, 3) + " kg";
        }
        double ounces = mass / OUNCE;
        if (ounces < 0.25) {
            return significant(ounces, 2) + " oz";
        }
        if (ounces < 15.875) {
            return fraction(ounces, 4) + " oz";
        }
        return join(Math.round(ounces), 16, "lb", "oz");
    }

    /**
     * Writes a length: to 0.1 mm below 10 mm, to 1 mm below 1 m, then three figures in m; or to 1/16 in below 1 in, to 1/8 in
     * below 1 ft, then to 1/4 in.
     *
     * @param length length [m]
     * @param units units wanted
     * @return such as {@code 30 mm} or {@code 1 1/4 in}
     */
    public static String length(double length, KitchenUnits units) {
        requireNotNegative("length", length, "m");
        if (units == KitchenUnits.METRIC) {
            double millimeters = length * 1e3;
            return millimeters < 999.5 ? small(millimeters) + " mm" : significant(length, 3) + " m";
        }
        double inches = length / INCH;
        if (inches < 1 / 16.0) {
            return significant(inches, 2) + " in";
        }
        return fraction(inches, inches < 1 ? 16 : inches < 12 ? 8 : 4) + " in";
    }

    /**
     * Writes a temperature: to 0.5 °C below 100 °C and to 1 °C above, or to 1 °F.
     *
     * @param temperature temperature [K]
     * @param units units wanted
     * @return such as {@code 54.5 °C} or {@code 350 °F}
     */
    public static String temperature(double temperature, KitchenUnits units) {
        Checks.requireFinite("temperature", temperature);
        if (units == KitchenUnits.US) {
            return plain(Math.rint(Temperature.toFahrenheit(temperature))) + " °F";
        }
        double celsius = Temperature.toCelsius(temperature);
        return plain(Math.abs(celsius) < 100 ? Math.rint(celsius * 2) / 2 : Math.rint(celsius)) + " °C";
    }

    /**
     * Writes a difference of temperatures to 0.1 K, or to 0.1 °F.
     *
     * @param difference difference [K]
     * @param units units wanted
     * @return such as {@code 5 K} or {@code 9 °F}
     */
    public static String temperatureDifference(double difference, KitchenUnits units) {
        Checks.requireFinite("temperature difference", difference);
        return units == KitchenUnits.US ? decimals(difference * 1.8, 1) + " °F" : decimals(difference, 1) + " K";
    }

    /**
     * Writes a time: to 1 s below 10 min, to 1 min below 2 days, then to 1 h.
     *
     * @param time time [s]
     * @return such as {@code 45 s}, {@code 2 min 30 s}, {@code 2 h 30 min}, {@code 3 d 4 h}
     */
    public static String time(double time) {
        requireNotNegative("time", time, "s");
        if (time > 0 && time < 0.5) {
            return significant(time, 2) + " s";
        }
        if (time < 599.5) {
            return join(Math.round(time), 60, "min", "s");
        }
        return time < 2 * DAY - 30
                ? join(Math.round(time / 60), 60, "h", "min")
                : join(Math.round(time / 3600), 24, "d", "h");
    }

    /**
     * Writes a volume in mL (steps as for g) or L; in US units as {@link #spoons} does.
     *
     * @param volume volume [m3]
     * @param units units wanted
     * @return such as {@code 500 mL}, {@code 1.5 L} or {@code 2 cups}
     */
    public static String volume(double volume, KitchenUnits units) {
        requireNotNegative("volume", volume, "m3");
        if (units == KitchenUnits.US) {
            return spoons(volume, SpoonSystem.US);
        }
        double milliliters = volume * 1e6;
        return milliliters < 999.5 ? small(milliliters) + " mL" : significant(volume * 1e3, 3) + " L";
    }

    /**
     * Writes a volume with the spoons and cups that come nearest: eighths of a teaspoon below one, quarters below a
     * tablespoon, then tablespoons and half teaspoons below a quarter cup, then quarter cups and tablespoons. Below what
     * the smallest spoon of 1/8 teaspoon can measure, two figures.
     *
     * @param volume volume [m3]
     * @param system whose spoons
     * @return such as {@code 2 1/4 tsp}, {@code 1 tbsp + 1/2 tsp}, {@code 1 1/4 cups + 2 tbsp}
     */
    public static String spoons(double volume, SpoonSystem system) {
        requireNotNegative("volume", volume, "m3");
        String system0 = system.name().toLowerCase(Locale.ROOT);
        String teaspoon = PHRASES.say(system0 + "-teaspoon");
        String tablespoon = PHRASES.say(system0 + "-tablespoon");
        double teaspoons = volume / system.teaspoon();
        if (teaspoons < SMALLEST_SPOON) {
            return significant(teaspoons, 2) + " " + teaspoon;
        }
        if (teaspoons < 2.875) {
            return fraction(teaspoons, teaspoons < 1 ? 8 : 4) + " " + teaspoon;
        }
        if (volume < system.cup() / 4 - system.teaspoon() / 4) {
            return sum(volume, system.tablespoon(), 1, tablespoon, system.teaspoon() / 2, 2, teaspoon);
        }
        return sum(volume, system.cup() / 4, 4, system0 + "-cup", system.tablespoon(), 1, tablespoon);
    }

    /**
     * Writes a share in percent: to 0.1 %, below 1 % to 0.01 %.
     *
     * @param fraction share [-]
     * @return such as {@code 6.1 %}
     */
    public static String percent(double fraction) {
        requireNotNegative("share", fraction, "-");
        double percent = fraction * 100;
        return decimals(percent, percent < 0.995 ? 2 : 1) + " %";
    }

    /**
     * Writes a number with a given count of significant figures, without exponent below 1e6 and above 1e-4.
     *
     * @param value any finite number [-]
     * @param figures significant figures, at least 1; zeros at the end are dropped
     * @return such as {@code 0.48}
     */
    public static String significant(double value, int figures) {
        Checks.requireFinite("number", value);
        double size = Math.abs(value);
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(figures, RoundingMode.HALF_EVEN));
        boolean exponent = size != 0 && (size < 1e-4 || size >= 1e6);
        return exponent ? exponential(rounded) : plain(rounded);
    }

    private static String exponential(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        int power = stripped.precision() - stripped.scale() - 1;
        return Phrases.decimal(stripped.scaleByPowerOfTen(-power).toPlainString()) + "e" + power;
    }

    private static void requireNotNegative(String name, double value, String unit) {
        Checks.requireInRange(name, value, 0, QuantityParser.LARGEST, unit);
    }

    /** Two figures below 1, tenths below 10, whole above. */
    private static String small(double value) {
        return value < 0.995 ? significant(value, 2) : decimals(value, value < 9.95 ? 1 : 0);
    }

    private static String decimals(double value, int places) {
        return plain(BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN));
    }

    private static String plain(double value) {
        return plain(BigDecimal.valueOf(value));
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0
                ? "0"
                : Phrases.decimal(value.stripTrailingZeros().toPlainString());
    }

    /** The nearest multiple of 1/parts as a mixed number in lowest terms. */
    private static String fraction(double value, int parts) {
        long count = Math.round(value * parts);
        long whole = count / parts;
        long numerator = count % parts;
        if (numerator == 0) {
            return Long.toString(whole);
        }
        long divisor = Long.lowestOneBit(numerator); // parts is a power of two
        String part = numerator / divisor + "/" + parts / divisor;
        return whole == 0 ? part : whole + " " + part;
    }

    private static String join(long count, int ratio, String large, String small) {
        List<String> terms = new ArrayList<>();
        if (count >= ratio) {
            terms.add(count / ratio + " " + large);
        }
        if (count % ratio != 0 || terms.isEmpty()) {
            terms.add(count % ratio + " " + small);
        }
        return String.join(" ", terms);
    }

    /** Whole steps of the large measure, then the nearest count of the small; steps are 1/parts of the named measure. */
    private static String sum(
            double volume, double step, int parts, String name, double smallStep, int smallParts, String smallName) {
        long large = (long) (volume / step + 1e-9); // a full spoon must not fall short by rounding error
        long small = Math.max(0, Math.round((volume - large * step) / smallStep));
        if (small * smallStep > step - smallStep / 2) {
            large++;
            small = 0;
        }
        List<String> terms = new ArrayList<>();
        if (large > 0) {
            double amount = (double) large / parts;
            terms.add(fraction(amount, parts) + " "
                    + (!name.endsWith("-cup") ? name : PHRASES.say(amount > 1 ? name + "s" : name)));
        }
        if (small > 0) {
            terms.add(fraction((double) small / smallParts, smallParts) + " " + smallName);
        }
        return String.join(" + ", terms);
    }
}
