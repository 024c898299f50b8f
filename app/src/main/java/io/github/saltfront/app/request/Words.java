package io.github.saltfront.app.request;

import io.github.saltfront.matter.RogersPitzer1982;
import io.github.saltfront.matter.SaltSolubility;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.QuantityParser;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Small phrases of the file format that are more than a quantity. */
final class Words {
    private static final Phrases PHRASES = Phrases.of(Words.class);

    private static final Pattern STRENGTH = Pattern.compile(
            "(?<amount>[^a-z%]+%|[^a-z]+g/kg)\\s*(?:of|of the)\\s+(?<basis>solution|water)", Pattern.CASE_INSENSITIVE);
    private static final Pattern PER_LITER = Pattern.compile(
            "(?<mass>.+?)\\s*(?:per|/)\\s*(?:liter|litre|l)\\s*(?:of)?\\s*(?<basis>water|solution)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PER_MEAT = Pattern.compile(
            "(?<ratio>[^a-z]+)\\s*kg\\s*(?:per|/)\\s*kg(?:\\s*(?:of)?\\s*meat)?", Pattern.CASE_INSENSITIVE);

    private Words() {}

    /** What is expected of a cut, for messages. */
    static String aCut() {
        return PHRASES.say("a-cut");
    }

    /** What is expected of an appliance, for messages. */
    static String anAppliance() {
        return PHRASES.say("an-appliance");
    }

    /** Forms of a strength, for messages. */
    static String strengthForms() {
        return PHRASES.say("strength-forms");
    }

    /**
     * Reads the strength of a brine with its basis, up to saturation.
     *
     * @param text such as {@code 6 % of solution}
     * @param temperature temperature of the brine [K], for a basis by volume
     * @return the strength
     * @throws IllegalArgumentException if the basis is missing, the number cannot be read or the water cannot hold the salt
     */
    static SaltStrength strength(String text, double temperature) {
        double saturated = SaltSolubility.saturation(temperature);
        double perWater = saltPerWater(text, temperature);
        // a basis by volume is checked in the core, in SI; this says it in the user's words first
        if (!(perWater / (1 + perWater) <= saturated)) {
            throw new IllegalArgumentException(PHRASES.say(
                    "got-expected-at-most-saturation",
                    text,
                    Temperature.toCelsius(temperature),
                    100 * saturated,
                    100 * saturated / (1 - saturated)));
        }
        return SaltStrength.ofSaltPerWater(perWater);
    }

    /** Salt per mass of water [kg/kg]; beyond saturation any value that is. */
    private static double saltPerWater(String text, double temperature) {
        Matcher byMass = STRENGTH.matcher(text.strip());
        if (byMass.matches()) {
            double fraction = QuantityParser.parse(byMass.group("amount").strip(), Dimension.FRACTION);
            boolean ofWater = byMass.group("basis").toLowerCase(Locale.ROOT).equals("water");
            return ofWater ? fraction : fraction < 1 ? fraction / (1 - fraction) : Double.POSITIVE_INFINITY;
        }
        Matcher byVolume = PER_LITER.matcher(text.strip());
        if (byVolume.matches()) {
            double perCubicMeter = QuantityParser.parse(byVolume.group("mass").strip(), Dimension.MASS) * 1000;
            boolean ofSolution = "solution".equalsIgnoreCase(byVolume.group("basis"));
            if (!ofSolution) {
                return perCubicMeter / RogersPitzer1982.waterDensity(temperature);
            }
            double saturated = SaltSolubility.saturation(temperature);
            return perCubicMeter <= saturated * RogersPitzer1982.density(temperature, saturated)
                    ? SaltStrength.ofSaltPerSolutionVolume(perCubicMeter, temperature)
                            .saltPerWater()
                    : Double.POSITIVE_INFINITY;
        }
        throw new IllegalArgumentException(PHRASES.say("got-expected-a-strength-that", text, strengthForms()));
    }

    /**
     * Reads a mass per mass of meat.
     *
     * @param text such as {@code 2 kg per kg meat}
     * @param low lowest ratio [kg/kg]
     * @param high highest ratio [kg/kg]
     * @return ratio [kg/kg]
     * @throws IllegalArgumentException if the text is no such ratio or out of range
     */
    static double perMeat(String text, double low, double high) {
        Matcher matcher = PER_MEAT.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException(PHRASES.say("got-expected-an-amount-per", text));
        }
        double ratio = QuantityParser.parse(matcher.group("ratio").strip() + " kg", Dimension.MASS);
        if (!(low <= ratio && ratio <= high)) {
            throw new IllegalArgumentException(PHRASES.say(
                    "got-expected-from-to-kg",
                    text,
                    QuantityFormat.significant(low, 3),
                    QuantityFormat.significant(high, 3)));
        }
        return ratio;
    }

    /** Returns two choices in this order, which a map without order would show in another order each time. */
    static <T> Map<String, T> choices(String first, T a, String second, T b) {
        Map<String, T> choices = new LinkedHashMap<>();
        choices.put(first, a);
        choices.put(second, b);
        return choices;
    }

    /** Begins a message of the core with a capital, as all messages about a file do. */
    static String sentence(IllegalArgumentException e) {
        String message = String.valueOf(e.getMessage());
        return Character.toUpperCase(message.charAt(0)) + message.substring(1);
    }

    /** Names what was not found and what is nearest, for a message. */
    static String unknown(String got, String what, List<String> nearest, String fix) {
        String near = nearest.isEmpty() ? "" : PHRASES.say("nearest-are", String.join(", ", nearest));
        return PHRASES.say("got-expected", got, what, near, fix);
    }
}
