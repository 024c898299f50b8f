package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;

/**
 * A piece of meat for a trial.
 *
 * @param id name or number on its label
 * @param block what it has in common with other pieces: animal, package, left and right of one bird; empty if nothing
 */
public record Piece(String id, String block) {
    /** Checks the name. */
    public Piece {
        Checks.require(!id.isBlank(), "a piece needs a name or a number.");
    }
}
