package io.github.saltfront.trial;

import java.util.List;

/**
 * One set of portions for one taster.
 *
 * @param taster taster, from 1
 * @param round round, from 1
 * @param servings portions in the order of tasting
 */
public record Sheet(int taster, int round, List<Serving> servings) {
    /** Copies the list. */
    public Sheet {
        servings = List.copyOf(servings);
    }
}
