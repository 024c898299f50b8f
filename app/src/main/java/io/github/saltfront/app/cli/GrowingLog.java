package io.github.saltfront.app.cli;

import io.github.saltfront.app.probe.LogReadException;
import io.github.saltfront.live.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A log that another program goes on writing. Asked now and then, it gives the readings that are new. */
final class GrowingLog {
    private final Path log;
    private final LogProbes probes;
    private final Set<Reading> seen = new HashSet<>();
    private long size = -1;
    private Optional<FileTime> changed = Optional.empty();
    private String problem = "";

    GrowingLog(Path log, LogProbes probes) {
        this.log = log;
        this.probes = probes;
    }

    /** Returns the readings that came since the last time; what cannot be read yet comes later. */
    List<Reading> poll() throws IOException {
        try {
            FileTime time = Files.getLastModifiedTime(log);
            long length = Files.size(log);
            if (length == size && changed.equals(Optional.of(time))) {
                return List.of();
            }
            byte[] content = whole(Files.readAllBytes(log));
            size = length;
            changed = Optional.of(time);
            if (content.length == 0) {
                return List.of();
            }
            List<Reading> fresh =
                    probes.read(content).stream().filter(seen::add).toList();
            problem = "";
            return fresh;
        } catch (NoSuchFileException e) {
            problem = "there is no file " + log + " yet.";
        } catch (LogReadException e) {
            problem = log + ": " + e.getMessage();
        }
        return List.of();
    }

    /** Why nothing could be read the last time; empty if it could. */
    String problem() {
        return problem;
    }

    /** The last line may still be in the writing. */
    private static byte[] whole(byte[] content) {
        int end = content.length;
        while (end > 0 && content[end - 1] != '\n') {
            end--;
        }
        return Arrays.copyOf(content, end);
    }
}
