package io.github.saltfront.plan;

/** A request that cannot be met; the message says which wish binds and what is possible instead. */
public final class PlanningException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;

    /**
     * Creates the exception.
     *
     * @param field field of the request that binds
     * @param message what cannot be, and what can
     */
    public PlanningException(String field, String message) {
        super(message);
        this.field = field;
    }

    /** Returns the field of the request that binds. */
    public String field() {
        return field;
    }
}
