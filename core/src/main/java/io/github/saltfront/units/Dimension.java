package io.github.saltfront.units;

/**
 * The kinds of quantity that can be read. Each knows how to name itself in a message, an example a cook or an engineer
 * would write, and the SI unit in which the core wants it.
 */
public enum Dimension {
    /** Length [m]. */
    LENGTH("a length", "30 mm or 1 1/4 in", "mm, cm, m, in or ft", "m", false, 0, 1, 0, 0, 0),
    /** Area [m2]. */
    AREA("an area", "250 cm2", "mm2, cm2, m2, in2 or ft2", "m2", false, 0, 2, 0, 0, 0),
    /** Volume [m3]. */
    VOLUME("a volume", "2 cups or 500 mL", "mL, L, tsp, tbsp, cup, fl oz, pt, qt or gal", "m3", false, 0, 3, 0, 0, 0),
    /** Mass [kg]. */
    MASS("a mass", "230 g or 1 1/2 lb", "g, kg, oz or lb", "kg", false, 1, 0, 0, 0, 0),
    /** Time [s]. */
    TIME("a time", "45 s or 2 h 30 min", "s, min, h or d", "s", false, 0, 0, 1, 0, 0),
    /** Temperature on a scale [K]; °C and °F are read with their offset. */
    TEMPERATURE("a temperature", "68 °C or 350 °F", "°C, °F or K", "K", true, 0, 0, 0, 1, 0),
    /** Difference of two temperatures [K]; °C and °F are read as degrees without offset. */
    TEMPERATURE_DIFFERENCE("a temperature difference", "5 K or 9 °F", "K, °C or °F", "K", true, 0, 0, 0, 1, 0),
    /** Rate of change of temperature [K/s]. */
    TEMPERATURE_RATE("a heating rate", "10 K/min", "K/s, K/min or °F/min", "K/s", true, 0, 0, -1, 1, 0),
    /** Share of a whole [-], 1 is all of it. */
    FRACTION("a share", "6 % or 60 g/kg", "% or g/kg", "-", false, 0, 0, 0, 0, 0),
    /** Density [kg/m3]. */
    DENSITY("a density", "1060 kg/m3", "kg/m3, g/cm3, kg/L or lb/ft3", "kg/m3", false, 1, -3, 0, 0, 0),
    /** Specific heat capacity [J/(kg.K)]. */
    HEAT_CAPACITY(
            "a heat capacity",
            "3500 J/(kg.K)",
            "J/(kg.K), kJ/(kg.K) or BTU/(lb.°F)",
            "J/(kg.K)",
            false,
            0,
            2,
            -2,
            -1,
            0),
    /** Thermal conductivity [W/(m.K)]. */
    CONDUCTIVITY("a conductivity", "0.48 W/(m.K)", "W/(m.K) or BTU/(h.ft.°F)", "W/(m.K)", false, 1, 1, -3, -1, 0),
    /** Heat transfer coefficient [W/(m2.K)]. */
    HEAT_TRANSFER_COEFFICIENT(
            "a heat transfer coefficient",
            "20 W/(m2.K)",
            "W/(m2.K) or BTU/(h.ft2.°F)",
            "W/(m2.K)",
            false,
            1,
            0,
            -3,
            -1,
            0),
    /** Diffusivity of heat or matter [m2/s]. */
    DIFFUSIVITY("a diffusivity", "2e-10 m2/s", "m2/s, mm2/s or cm2/s", "m2/s", false, 0, 2, -1, 0, 0),
    /** Speed or mass transfer coefficient [m/s]. */
    SPEED("a speed", "0.3 m/s", "m/s, mm/s or ft/min", "m/s", false, 0, 1, -1, 0, 0),
    /** Pressure [Pa]. */
    PRESSURE("a pressure", "101.3 kPa", "Pa, hPa, kPa, bar or psi", "Pa", false, 1, -1, -2, 0, 0),
    /** Energy [J]. */
    ENERGY("an energy", "150 kJ", "J, kJ, kWh, kcal or BTU", "J", false, 1, 2, -2, 0, 0),
    /** Power [W]. */
    POWER("a power", "1800 W", "W, kW or BTU/h", "W", false, 1, 2, -3, 0, 0),
    /** Energy by mass [J/kg]. */
    SPECIFIC_ENERGY("an energy by mass", "334 kJ/kg", "J/kg, kJ/kg or BTU/lb", "J/kg", false, 0, 2, -2, 0, 0),
    /** Energy by amount of substance, as an activation energy [J/mol]. */
    MOLAR_ENERGY("an energy by amount", "23 kJ/mol", "J/mol, kJ/mol or kcal/mol", "J/mol", false, 1, 2, -2, 0, -1);

    private final String noun;
    private final String example;
    private final String units;
    private final String siUnit;
    private final boolean signed;
    private final Exponents exponents;

    Dimension(
            String noun,
            String example,
            String units,
            String siUnit,
            boolean signed,
            int kilogram,
            int meter,
            int second,
            int kelvin,
            int mole) {
        this.noun = noun;
        this.example = example;
        this.units = units;
        this.siUnit = siUnit;
        this.signed = signed;
        this.exponents = new Exponents(kilogram, meter, second, kelvin, mole);
    }

    /** Returns what it is with its article, such as {@code a length}. */
    public String noun() {
        return noun;
    }

    /** Returns one or two examples that {@link QuantityParser} reads, joined by "or". */
    public String example() {
        return example;
    }

    /** Returns the usual units as a list for a sentence, such as {@code mm, cm, m, in or ft}. */
    public String units() {
        return units;
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
}
