package io.github.saltfront.units;

import io.github.saltfront.words.Phrases;
import java.util.Locale;

/**
 * The kinds of quantity that can be read. Each knows how to name itself in a message, an example a cook or an engineer
 * would write, and the SI unit in which the core wants it.
 */
public enum Dimension {
    /** Length [m]. */
    LENGTH("m", false, 0, 1, 0, 0, 0),
    /** Area [m2]. */
    AREA("m2", false, 0, 2, 0, 0, 0),
    /** Volume [m3]. */
    VOLUME("m3", false, 0, 3, 0, 0, 0),
    /** Mass [kg]. */
    MASS("kg", false, 1, 0, 0, 0, 0),
    /** Time [s]. */
    TIME("s", false, 0, 0, 1, 0, 0),
    /** Temperature on a scale [K]; °C and °F are read with their offset. */
    TEMPERATURE("K", true, 0, 0, 0, 1, 0),
    /** Difference of two temperatures [K]; °C and °F are read as degrees without offset. */
    TEMPERATURE_DIFFERENCE("K", true, 0, 0, 0, 1, 0),
    /** Rate of change of temperature [K/s]. */
    TEMPERATURE_RATE("K/s", true, 0, 0, -1, 1, 0),
    /** Share of a whole [-], 1 is all of it. */
    FRACTION("-", false, 0, 0, 0, 0, 0),
    /** Density [kg/m3]. */
    DENSITY("kg/m3", false, 1, -3, 0, 0, 0),
    /** Specific heat capacity [J/(kg.K)]. */
    HEAT_CAPACITY("J/(kg.K)", false, 0, 2, -2, -1, 0),
    /** Thermal conductivity [W/(m.K)]. */
    CONDUCTIVITY("W/(m.K)", false, 1, 1, -3, -1, 0),
    /** Heat transfer coefficient [W/(m2.K)]. */
    HEAT_TRANSFER_COEFFICIENT("W/(m2.K)", false, 1, 0, -3, -1, 0),
    /** Diffusivity of heat or matter [m2/s]. */
    DIFFUSIVITY("m2/s", false, 0, 2, -1, 0, 0),
    /** Speed or mass transfer coefficient [m/s]. */
    SPEED("m/s", false, 0, 1, -1, 0, 0),
    /** Pressure [Pa]. */
    PRESSURE("Pa", false, 1, -1, -2, 0, 0),
    /** Energy [J]. */
    ENERGY("J", false, 1, 2, -2, 0, 0),
    /** Power [W]. */
    POWER("W", false, 1, 2, -3, 0, 0),
    /** Energy by mass [J/kg]. */
    SPECIFIC_ENERGY("J/kg", false, 0, 2, -2, 0, 0),
    /** Energy by amount of substance, as an activation energy [J/mol]. */
    MOLAR_ENERGY("J/mol", false, 1, 2, -2, 0, -1);

    private static final Phrases PHRASES = Phrases.of(Dimension.class);

    private final String siUnit;
    private final boolean signed;
    private final Exponents exponents;

    Dimension(String siUnit, boolean signed, int kilogram, int meter, int second, int kelvin, int mole) {
        this.siUnit = siUnit;
        this.signed = signed;
        this.exponents = new Exponents(kilogram, meter, second, kelvin, mole);
    }

    /** Returns what it is with its article, such as {@code a length}. */
    public String noun() {
        return PHRASES.say(key());
    }

    /** Returns one or two examples that {@link QuantityParser} reads, joined by "or". */
    public String example() {
        return PHRASES.say(key() + ".example");
    }

    /** Returns the usual units as a list for a sentence, such as {@code mm, cm, m, in or ft}. */
    public String units() {
        return PHRASES.say(key() + ".units");
    }

    /** Returns the SI unit in ASCII, "-" for none. */
    public String siUnit() {
        return siUnit;
    }

    /** Returns whether a negative value can make sense. */
    public boolean isSigned() {
        return signed;
    }

    Exponents exponents() {
        return exponents;
    }

    /** Kinds of which cooks add up several units: {@code 1 lb 4 oz}. */
    boolean isAdditive() {
        return this == LENGTH || this == MASS || this == TIME || this == VOLUME;
    }

    private String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
