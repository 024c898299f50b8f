package io.github.saltfront.app.web;

/** A request that is answered by a status and one problem. The message is shown to the user. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final String field;

    Refused(int status, String field, String message) {
        super(message);
        this.status = status;
        this.field = field;
    }

    int status() {
        return status;
    }

    String field() {
        return field;
    }
}
