package io.github.saltfront.data;

/** A table or another data file that cannot be read as what it claims to be. The message names file, line and column. */
public final class DataException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param message where, got, expected
     */
    public DataException(String message) {
        super(message);
    }
}
