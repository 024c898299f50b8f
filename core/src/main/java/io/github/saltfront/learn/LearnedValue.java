package io.github.saltfront.learn;

import io.github.saltfront.units.Checks;

/**
 * A value that was learned, with its 90 % interval.
 *
 * @param value middle of the posterior distribution, in the unit of whoever holds it
 * @param low value that 5 % stay below
 * @param high value that 5 % exceed
 * @param count observations behind it [-]
 */
public record LearnedValue(double value, double low, double high, int count) {
    /** Checks the order. */
    public LearnedValue {
        Checks.require(
                low <= value && value <= high,
                "a learned value needs low <= value <= high, got " + low + ", " + value + ", " + high + ".");
        Checks.require(count >= 1, "a learned value needs an observation, got " + count + ".");
    }

    /**
     * Tells whether the interval covers a value.
     *
     * @param truth the value, in the same unit
     * @return true if it does
     */
    public boolean covers(double truth) {
        return low <= truth && truth <= high;
    }

    /**
     * Returns the same in another unit.
     *
     * @param factor factor, above zero
     * @return the value and its interval times the factor
     */
    public LearnedValue times(double factor) {
        return new LearnedValue(value * factor, low * factor, high * factor, count);
    }
}
