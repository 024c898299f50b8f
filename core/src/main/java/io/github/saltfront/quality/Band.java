package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;

/**
 * A value with the band in which it is thought to lie. The unit is that of whoever holds the band and stands there. Unless
 * its holder says otherwise the ends are the 5 % and 95 % points of a judgement, not hard limits.
 *
 * @param low lower end
 * @param typical middle value
 * @param high upper end
 */
public record Band(double low, double typical, double high) {
    /** Checks {@code low <= typical <= high}. */
    public Band {
        Checks.requireFinite("low end of a band", low);
        Checks.requireFinite("high end of a band", high);
        Checks.require(
                low <= typical && typical <= high,
                "A band must rise: expected low <= typical <= high, got " + low + ", " + typical + ", " + high + ".");
    }

    /**
     * Returns a band without width.
     *
     * @param value the value, any unit
     * @return low, typical and high all equal to the value
     */
    public static Band exactly(double value) {
        return new Band(value, value, value);
    }

    /**
     * Tells whether a value lies in the closed band.
     *
     * @param value the value, in the unit of the band
     * @return true if it does; false for NaN
     */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /**
     * Multiplies all three values.
     *
     * @param factor positive factor [-]
     * @return the band times the factor
     */
    public Band times(double factor) {
        Checks.requirePositive("factor of a band", factor, "-");
        return new Band(low * factor, typical * factor, high * factor);
    }
}
