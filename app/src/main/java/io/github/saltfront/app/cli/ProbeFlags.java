package io.github.saltfront.app.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** Options that tell what is known of the thermometer. */
final class ProbeFlags {
    @Option(
            names = "--probe-error",
            description = "Largest error of the thermometer [°C], if it was checked, e.g. 0.5.")
    private Optional<String> probeError = Optional.empty();

    @Option(
            names = "--distance",
            description = "How much colder the coldest spot may be than the tip [°C]; 0 if probed there.")
    private Optional<String> distance = Optional.empty();

    /** Largest error of the thermometer [K]. */
    OptionalDouble error() {
        return difference("--probe-error", probeError);
    }

    /** How much colder the coldest spot may be than the tip [K]. */
    OptionalDouble distance() {
        return difference("--distance", distance);
    }

    private static OptionalDouble difference(String name, Optional<String> text) {
        return text.isPresent() ? OptionalDouble.of(Quantities.difference(name, text.get())) : OptionalDouble.empty();
    }
}
