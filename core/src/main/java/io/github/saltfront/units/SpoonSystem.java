package io.github.saltfront.units;

/**
 * Whose spoons and cups are meant. They differ by 1.4 % for a spoon and up to 6 % for a cup, less than the way a spoon is
 * leveled, but enough to be said.
 *
 * @see "nist811, appendix B.8 (US customary); cfr21-101-9, (b)(5)(viii) (label); metric: from memory"
 */
public enum SpoonSystem {
    /** US customary: 1/768 gallon of 231 in3, and 3 and 48 times that. The default for a bare {@code tsp}. */
    US("", 4.92892159375e-6, 14.78676478125e-6, 236.5882365e-6),
    /** Metric kitchen measures: 5, 15 and 250 mL. */
    METRIC("metric ", 5e-6, 15e-6, 250e-6),
    /** What a US nutrition label means: 5, 15 and 240 mL. */
    LABEL("label ", 5e-6, 15e-6, 240e-6);

    private final String prefix;
    private final double teaspoon;
    private final double tablespoon;
    private final double cup;

    SpoonSystem(String prefix, double teaspoon, double tablespoon, double cup) {
        this.prefix = prefix;
        this.teaspoon = teaspoon;
        this.tablespoon = tablespoon;
        this.cup = cup;
    }

    /** Returns the volume of a level teaspoon [m3]. */
    public double teaspoon() {
        return teaspoon;
    }

    /** Returns the volume of a level tablespoon [m3]. */
    public double tablespoon() {
        return tablespoon;
    }

    /** Returns the volume of a cup [m3]. */
    public double cup() {
        return cup;
    }

    /** The word before "tsp" that makes {@link QuantityParser} read this system, with its space; empty for the default. */
    String prefix() {
        return prefix;
    }
}
