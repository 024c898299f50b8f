package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;

/**
 * One score.
 *
 * @param taster who gave it
 * @param sample what it is for
 * @param value the score, in points of its scale
 */
public record Score(String taster, String sample, double value) {
    /** Checks the score. */
    public Score {
        Checks.requireFinite("score", value);
        Checks.require(!taster.isBlank() && !sample.isBlank(), "a score needs a taster and a sample.");
    }
}
