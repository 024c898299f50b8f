package io.github.saltfront.units;

/**
 * Argument checks whose messages say what, got and expected. All are written so that NaN fails.
 */
public final class Checks {
    private Checks() {}

    /**
     * Returns the value if it is finite.
     *
     * @param name what the value is, as a reader of the message knows it
     * @param value the value to check, any unit
     * @return the value
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public static double requireFinite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, got " + value + ".");
        }
        return value;
    }

    /**
     * Returns the value if it lies in the closed range.
     *
     * @param name what the value is
     * @param value the value to check
     * @param low lowest allowed value
     * @param high highest allowed value
     * @param unit unit of all three, shown in the message; "-" for none
     * @return the value
     * @throws IllegalArgumentException if the value is NaN or outside
     */
    public static double requireInRange(String name, double value, double low, double high, String unit) {
        if (!(low <= value && value <= high)) {
            String shown = unit.equals("-") ? "" : " " + unit;
            throw new IllegalArgumentException(name + " must be between " + plain(low) + " and " + plain(high) + shown
                    + ", got " + plain(value) + shown + ".");
        }
        return value;
    }

    /**
     * Returns the value if it is finite and above zero.
     *
     * @param name what the value is
     * @param value the value to check
     * @param unit its unit, shown in the message; "-" for none
     * @return the value
     * @throws IllegalArgumentException if the value is NaN, infinite, zero or negative
     */
    public static double requirePositive(String name, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            String shown = unit.equals("-") ? "" : " " + unit;
            throw new IllegalArgumentException(
                    name + " must be a finite number above 0" + shown + ", got " + plain(value) + shown + ".");
        }
        return value;
    }

    /**
     * Throws if the condition does not hold.
     *
     * @param condition what must be true
     * @param message the whole message: what, got, expected
     * @throws IllegalArgumentException if the condition is false
     */
    public static void require(boolean condition, String message) {
        if (!condition) {
            throw new IllegalArgumentException(message);
        }
    }

    private static String plain(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        return Double.toString(value);
    }
}
