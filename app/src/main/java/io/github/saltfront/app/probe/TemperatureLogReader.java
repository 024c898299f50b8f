package io.github.saltfront.app.probe;

import io.github.saltfront.safety.TemperatureLog;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * Reads temperature logs as real loggers write them: with or without header and byte order mark, comma, semicolon or tab, decimal
 * comma or point, degrees Celsius or Fahrenheit, ISO or day/month dates, {@code h:mm:ss} or elapsed times, one or several probes.
 *
 * <p>What cannot be told is asked for, never guessed toward more heat: an unknown unit is an error, several probes count as the
 * lowest of them, a row with a doubtful cell is left out and so becomes a gap. All problems are collected with their lines.
 */
public final class TemperatureLogReader {
    /** Problems kept one by one; more of them are counted. */
    static final int MOST_PROBLEMS = 100;

    private TemperatureLogReader() {}

    /**
     * Reads a file.
     *
     * @param file the log
     * @param options what the user states about it
     * @return the readings and all that was decided
     * @throws LogReadException if there is nothing to judge; carries all problems
     * @throws IOException if the file cannot be read
     */
    public static LogReading read(Path file, LogOptions options) throws LogReadException, IOException {
        return read(Files.readAllBytes(file), options);
    }

    /**
     * Reads the bytes of a file.
     *
     * @param data the bytes; not modified
     * @param options what the user states about them
     * @return the readings and all that was decided
     * @throws LogReadException if there is nothing to judge; carries all problems
     */
    public static LogReading read(byte[] data, LogOptions options) throws LogReadException {
        String text = LogText.decode(data);
        LogScan scan = new LogScan(text, options);
        scan.run();
        double[] times = scan.times();
        if (scan.isFatal() || times.length == 0) {
            throw new LogReadException(scan.problems());
        }
        TemperatureLog log = TemperatureLog.of(times, scan.kelvin());
        return new LogReading(log, scan.usedProbes(), times.length, scan.problems(), scan.notes(), sha256(data));
    }

    private static String sha256(byte[] data) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(data));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Returns a name list for messages. */
    static String names(List<LogColumns.Probe> probes) {
        return String.join(
                ", ", probes.stream().map(p -> "\"" + p.name() + "\"").toList());
    }
}
