package io.github.saltfront.app.cli;

import io.github.saltfront.plan.StrengthBasis;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityException;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.QuantityParser;

/** Reads and writes the numbers of {@code brine} that have more than one form. */
final class BrineNumbers {
    private BrineNumbers() {}

    /** Reads a strength in the unit of its basis. */
    static double strength(StrengthBasis basis, String text) {
        return switch (basis) {
            case OF_SOLUTION, OF_WATER, OF_SATURATION -> QuantityParser.parse(text, Dimension.FRACTION);
            case PER_LITER_OF_WATER, PER_LITER_OF_BRINE, DENSITY -> QuantityParser.parse(text, Dimension.DENSITY);
            case SALOMETER -> degrees(text);
        };
    }

    private static double degrees(String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "must be a plain number of degrees salometer such as 23, got \"" + text + "\".", e);
        }
    }

    /** Reads a mass, or a volume and turns it into a mass; notes what is wrong. */
    static double massOrVolume(InputErrors errors, String option, String text, double density) {
        try {
            return QuantityParser.parse(text, Dimension.MASS);
        } catch (QuantityException e) {
            try {
                return QuantityParser.parse(text, Dimension.VOLUME) * density;
            } catch (QuantityException asVolume) {
                String message = e.getMessage();
                errors.add(option, message == null ? "cannot be read." : message);
                return 1;
            }
        }
    }

    static double length(String text, String expected) {
        try {
            return QuantityParser.parse(text, Dimension.LENGTH);
        } catch (QuantityException e) {
            throw new IllegalArgumentException("must be " + expected + ", got \"" + text + "\".", e);
        }
    }

    static String celsius(double temperature) {
        return QuantityFormat.temperature(temperature, KitchenUnits.METRIC).replace("°", "");
    }

    static String both(double temperature) {
        return celsius(temperature) + " ("
                + QuantityFormat.temperature(temperature, KitchenUnits.US).replace("°", "") + ")";
    }
}
