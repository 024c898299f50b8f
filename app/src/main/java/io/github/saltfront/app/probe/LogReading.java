package io.github.saltfront.app.probe;

import io.github.saltfront.safety.TemperatureLog;
import java.util.List;

/**
 * A log that was read, with all that had to be decided on the way.
 *
 * @param log the readings
 * @param probes names of the columns used; more than one means that the lowest reading counts
 * @param rows number of rows with a reading
 * @param problems rows left out, each with its line
 * @param notes decisions about the file as a whole, in plain words
 * @param sha256 SHA-256 of the bytes of the file, hexadecimal
 */
public record LogReading(
        TemperatureLog log,
        List<String> probes,
        int rows,
        List<LogProblem> problems,
        List<String> notes,
        String sha256) {}
