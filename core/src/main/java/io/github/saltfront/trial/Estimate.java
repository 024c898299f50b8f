package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.function.DoubleUnaryOperator;

/**
 * An estimate with its interval. The ends and the value may be infinite where the data set no limit, never NaN.
 *
 * @param low lower end, same unit as the value
 * @param value best estimate
 * @param high upper end
 * @param level share of such intervals that hold the truth [-], 0.5 to 0.9999
 */
public record Estimate(double low, double value, double high, double level) {
    /** Checks the order. */
    public Estimate {
        Checks.require(
                low <= value && value <= high,
                "an estimate needs low <= value <= high, got " + low + ", " + value + ", " + high + ".");
        Checks.requireInRange("level of an interval", level, 0.5, 0.9999, "-");
    }

    /**
     * Returns the estimate on another scale.
     *
     * @param scale rising function
     * @return the estimate with all three numbers moved
     */
    public Estimate mapped(DoubleUnaryOperator scale) {
        return new Estimate(scale.applyAsDouble(low), scale.applyAsDouble(value), scale.applyAsDouble(high), level);
    }

    /**
     * Tells whether a number lies in the interval.
     *
     * @param number the number, same unit
     * @return true if it does, ends included
     */
    public boolean holds(double number) {
        return low <= number && number <= high;
    }
}
