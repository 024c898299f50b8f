package io.github.saltfront.app.cli;

import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityParser;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects what is wrong with the options, so that all of it can be shown at once. */
final class InputErrors {
    private final List<String> messages = new ArrayList<>();

    void add(String option, String message) {
        messages.add(option + ": " + message);
    }

    /** Reads a quantity; what cannot be read is noted and a stand-in returned, which must not be used. */
    double quantity(String option, String text, Dimension dimension, double standIn) {
        return get(option, standIn, () -> QuantityParser.parse(text, dimension));
    }

    Optional<Double> quantity(String option, Optional<String> text, Dimension dimension) {
        return text.map(t -> quantity(option, t, dimension, Double.NaN));
    }

    /** Reads a quantity that must lie between two values in SI, named in the user's words. */
    double within(String option, String text, Dimension dimension, double low, double high, String range) {
        double value = quantity(option, text, dimension, low);
        if (!(low <= value && value <= high)) {
            add(option, "must be between " + range + ", got \"" + text + "\".");
            return low;
        }
        return value;
    }

    <T> T get(String option, T standIn, Supplier<T> read) {
        try {
            return read.get();
        } catch (IllegalArgumentException e) {
            String message = e.getMessage();
            add(option, message == null ? "cannot be read." : message);
            return standIn;
        }
    }

    boolean isEmpty() {
        return messages.isEmpty();
    }

    List<String> messages() {
        return List.copyOf(messages);
    }
}
