package io.github.saltfront.app.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where the data are: a file, or a PostgreSQL server.
 *
 * @param server address of the server for its driver, if there is one
 * @param file the file; with a server, the file whose folder the pictures lie in
 */
public record DataPlace(Optional<String> server, Path file) {
    private static final String SERVER = "jdbc:postgresql:";

    /** Anything in an address that may be a secret. */
    private static final Pattern SECRET = Pattern.compile("(?i)(password|passphrase|sslpassword)=[^&]*");

    /**
     * Returns a file.
     *
     * @param file the file
     * @return the place
     */
    public static DataPlace of(Path file) {
        return new DataPlace(Optional.empty(), file);
    }

    /**
     * Reads a place as it is given on the command line.
     *
     * @param text path of a file, or an address such as {@code jdbc:postgresql://localhost/kitchen?user=cook}
     * @param usual the usual file
     * @return the place
     * @throws IllegalArgumentException if it is an address of something else
     */
    public static DataPlace parse(String text, Path usual) {
        if (text.startsWith(SERVER)) {
            return new DataPlace(Optional.of(text), usual.resolveSibling("shared.db"));
        }
        if (text.toLowerCase(Locale.ROOT).matches("(jdbc:|postgres(ql)?:).*")) {
            throw new IllegalArgumentException("--data: got the address " + hidden(text)
                    + ", expected a file or jdbc:postgresql://HOST/DATABASE?user=NAME; write it so.");
        }
        return of(Path.of(text));
    }

    /** Returns the place in words, without secrets. */
    @Override
    public String toString() {
        return server.map(DataPlace::hidden).orElseGet(file::toString);
    }

    private static String hidden(String address) {
        return SECRET.matcher(address).replaceAll("$1=***").replaceFirst("//[^/@]*:[^/@]*@", "//***@");
    }
}
