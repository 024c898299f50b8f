package io.github.saltfront.plan;

import io.github.saltfront.words.Phrases;
import java.util.Locale;

/**
 * What a cook may wish for most, and the difference that counts as one: smaller ones nobody notices or cares about. The
 * differences are common practice or estimates, no measurements.
 */
public enum Wish {
    /** Little loss of weight: juice stays in. */
    JUICE("weight-left", "%", 0.02, true),
    /** Tender to the bite: muscle protein still soft, or collagen dissolved in cuts rich in it. */
    TENDER("tenderness-of-100", "", 0.10, true),
    /** Salt as even from the outside to the middle as can be. */
    EVEN_SALT("salt-of-the-middle-against", "%", 0.10, true),
    /** A hot, dry outside, for crust and crisp skin. */
    CRISP_SKIN("outside-when-it-comes-out", "°C", 5, true),
    /** Few minutes of work. */
    LITTLE_WORK("minutes-of-work", "min", 5, false),
    /** Soon on the table. */
    SHORT("time-from-start-to-table", "", 1800, false),
    /** Little sodium. */
    LOW_SODIUM("sodium-in-85-g", "mg", 50e-6, false);

    private static final Phrases PHRASES = Phrases.of(Wish.class);

    private final String words;
    private final String unit;
    private final double difference;
    private final boolean moreIsBetter;

    Wish(String words, String unit, double difference, boolean moreIsBetter) {
        this.words = words;
        this.unit = unit;
        this.difference = difference;
        this.moreIsBetter = moreIsBetter;
    }

    /** Returns what is compared, in plain words. */
    public String words() {
        return PHRASES.say(words);
    }

    /** Returns the unit it is told in; empty for a time. */
    public String unit() {
        return unit;
    }

    /** Returns the least difference that counts, in the unit of {@link Outcome#value} [kg/kg, K, s, kg or min]. */
    public double difference() {
        return difference;
    }

    /** Tells whether more of it is better. */
    public boolean moreIsBetter() {
        return moreIsBetter;
    }

    /** Returns the word of the request file, such as {@code even-salt}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How much better a value is than another, in differences that count; negative if it is worse [-]. */
    double gain(double value, double other) {
        return (moreIsBetter ? value - other : other - value) / difference;
    }
}
