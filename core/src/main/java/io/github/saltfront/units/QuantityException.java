package io.github.saltfront.units;

/** A text that cannot be read as the quantity asked for. The message says got, expected and, where known, the fix. */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param message whole sentences: got, expected, fix
     */
    public QuantityException(String message) {
        super(message);
    }
}
