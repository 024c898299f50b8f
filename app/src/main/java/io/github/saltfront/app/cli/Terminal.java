package io.github.saltfront.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tells whether somebody looks at standard error. */
final class Terminal {
    /** Set by the start script, which can ask the system: {@code true} or {@code false}. */
    static final String PROPERTY = "saltfront.terminal";

    private static final Path ERR = Path.of("/proc/self/fd/2");

    private Terminal() {}

    /**
     * Returns whether standard error is a terminal; false where that cannot be told.
     */
    static boolean isErr() {
        String told = System.getProperty(PROPERTY);
        if (told != null) {
            return Boolean.parseBoolean(told);
        }
        // java.io.Console of Java 17 knows of standard input and output only
        try {
            String target = Files.readSymbolicLink(ERR).toString();
            return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
        } catch (IOException | UnsupportedOperationException e) {
            return false;
        }
    }
}
