package io.github.saltfront.app.follow;

import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.app.document.Problem;
import java.util.List;

/** Makes the one exception for wrong input. */
final class Problems {
    private Problems() {}

    static DocumentException of(String field, String message) {
        return new DocumentException("cook", List.of(new Problem(field, 0, message)));
    }
}
