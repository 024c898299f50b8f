package io.github.saltfront.app.cli;

import io.github.saltfront.app.probe.LogOptions;
import io.github.saltfront.app.probe.LogReadException;
import io.github.saltfront.app.probe.TemperatureLogReader;
import io.github.saltfront.live.Reading;
import io.github.saltfront.safety.TemperatureLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options that tell which columns of a log are which probes, and when the meat went in. */
final class LogProbes {
    @Option(
            names = "--probe",
            description = "Column of the probe in the meat. Default: the lowest of all at each time.")
    private Optional<String> probe = Optional.empty();

    @Option(names = "--air", description = "Column of the probe in the air of the oven, if there is one.")
    private Optional<String> air = Optional.empty();

    @Option(names = "--unit", description = "C or F, where the log does not say.")
    private Optional<String> unit = Optional.empty();

    @Option(names = "--time-unit", description = "s, min or h, where the log does not say.")
    private Optional<String> timeUnit = Optional.empty();

    @Option(
            names = "--meat-in",
            paramLabel = "TIME",
            defaultValue = "0 min",
            description = "When the meat went into the heat, since the first row. Default: ${DEFAULT-VALUE}.")
    private String meatIn = "0 min";

    /** Reads a log; the readings in order of time. */
    List<Reading> read(Path log) {
        try {
            return read(Files.readAllBytes(log));
        } catch (LogReadException e) {
            throw new IllegalArgumentException(log + ": " + e.getMessage(), e);
        } catch (NoSuchFileException e) {
            throw new IllegalArgumentException("no file \"" + e.getFile() + "\"; check the path.", e);
        } catch (IOException e) {
            throw new IllegalArgumentException("cannot read " + log + ": " + e.getMessage(), e);
        }
    }

    /** Reads the content of a log; the readings in order of time. */
    List<Reading> read(byte[] content) throws LogReadException {
        List<Reading> readings = new ArrayList<>(column(content, probe, "core", Reading.Role.CORE));
        if (air.isPresent()) {
            readings.addAll(column(content, air, "oven-air", Reading.Role.OVEN_AIR));
        }
        readings.sort(Comparator.comparingDouble(Reading::time));
        return readings;
    }

    private List<Reading> column(byte[] content, Optional<String> column, String name, Reading.Role role)
            throws LogReadException {
        LogOptions options = LogFlags.options(unit, timeUnit, column);
        TemperatureLog read = TemperatureLogReader.read(content, options).log();
        double start = read.time(0) + FollowCommand.time("--meat-in", meatIn);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            readings.add(new Reading(name, role, read.time(i) - start, read.reading(i)));
        }
        return readings;
    }
}
