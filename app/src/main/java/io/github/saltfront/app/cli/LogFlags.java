package io.github.saltfront.app.cli;

import io.github.saltfront.app.probe.LogOptions;
import java.util.Locale;
import java.util.Optional;

/** Reads what options of a command say about a log. */
final class LogFlags {
    private LogFlags() {}

    static LogOptions options(Optional<String> unit, Optional<String> timeUnit, Optional<String> probe) {
        return new LogOptions(
                unit.map(text -> switch (text.toUpperCase(Locale.ROOT).replace("°", "")) {
                    case "C" -> LogOptions.TemperatureUnit.C;
                    case "F" -> LogOptions.TemperatureUnit.F;
                    default -> throw new IllegalArgumentException("--unit: got \"" + text + "\", expected C or F.");
                }),
                timeUnit.map(text -> switch (text.toLowerCase(Locale.ROOT)) {
                    case "s" -> LogOptions.TimeUnit.S;
                    case "min" -> LogOptions.TimeUnit.MIN;
                    case "h" -> LogOptions.TimeUnit.H;
                    default ->
                        throw new IllegalArgumentException("--time-unit: got \"" + text + "\", expected s, min or h.");
                }),
                probe);
    }
}
