package io.github.saltfront.app.request;

import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityParser;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Small phrases of the file format that are more than a quantity. */
final class Words {
    private static final Pattern STRENGTH = Pattern.compile(
            "(?<amount>[^a-z%]+%|[^a-z]+g/kg)\\s*(?:of|of the)\\s+(?<basis>solution|water)", Pattern.CASE_INSENSITIVE);
    private static final Pattern PER_LITER = Pattern.compile(
            "(?<mass>.+?)\\s*(?:per|/)\\s*(?:liter|litre|l)\\s*(?:of)?\\s*(?<basis>water|solution)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PER_MEAT = Pattern.compile(
            "(?<ratio>[^a-z]+)\\s*kg\\s*(?:per|/)\\s*kg(?:\\s*(?:of)?\\s*meat)?", Pattern.CASE_INSENSITIVE);

    private Words() {}

    /** Forms of a strength, for messages. */
    static final String STRENGTH_FORMS = "\"6 % of solution\", \"6 % of water\" or \"60 g per liter of water\"";

    /**
     * Reads the strength of a brine with its basis.
     *
     * @param text such as {@code 6 % of solution}
     * @param temperature temperature of the brine [K], for a basis by volume
     * @return the strength
     * @throws IllegalArgumentException if the basis is missing or the number is out of range
     */
    static SaltStrength strength(String text, double temperature) {
        Matcher byMass = STRENGTH.matcher(text.strip());
        if (byMass.matches()) {
            double fraction = QuantityParser.parse(byMass.group("amount").strip(), Dimension.FRACTION);
            return byMass.group("basis").toLowerCase(Locale.ROOT).equals("water")
                    ? SaltStrength.ofSaltPerWater(fraction)
                    : new SaltStrength(fraction);
        }
        Matcher byVolume = PER_LITER.matcher(text.strip());
        if (byVolume.matches()) {
            double perCubicMeter = QuantityParser.parse(byVolume.group("mass").strip(), Dimension.MASS) * 1000;
            boolean ofSolution = "solution".equalsIgnoreCase(byVolume.group("basis"));
            return ofSolution
                    ? SaltStrength.ofSaltPerSolutionVolume(perCubicMeter, temperature)
                    : SaltStrength.ofSaltPerWaterVolume(perCubicMeter, temperature);
        }
        throw new IllegalArgumentException("\"" + text + "\" does not say of what; write " + STRENGTH_FORMS + ".");
    }

    /**
     * Reads a mass per mass of meat.
     *
     * @param text such as {@code 2 kg per kg meat}
     * @return ratio [kg/kg]
     */
    static double perMeat(String text) {
        Matcher matcher = PER_MEAT.matcher(text.strip());
        if (matcher.matches()) {
            return Double.parseDouble(matcher.group("ratio").strip());
        }
        throw new IllegalArgumentException("\"" + text + "\" is no amount per meat; write it as 2 kg per kg meat.");
    }
}
