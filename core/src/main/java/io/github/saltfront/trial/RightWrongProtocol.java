package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * A test with right and wrong answers. For a forced choice the second sample is the one that should be chosen.
 *
 * @param method the test
 * @param attribute what to look for, such as {@code juicier}; used by forced choices only
 */
public record RightWrongProtocol(TastingMethod method, String attribute) implements Protocol {
    /** Checks the attribute. */
    public RightWrongProtocol {
        Checks.require(
                !(method instanceof ForcedChoice) || !attribute.isBlank(),
                "a forced choice needs to know what to look for; give a word such as \"juicier\" or \"saltier\".");
    }

    @Override
    public String id() {
        return method.id();
    }

    @Override
    public String title() {
        return method.title();
    }

    @Override
    public String question() {
        return method.question(attribute);
    }

    @Override
    public List<List<Integer>> orders(int samples) {
        Checks.require(samples == 2, "a " + method.id() + " test compares 2 samples, got " + samples + ".");
        return method.orders();
    }

    @Override
    public boolean hasReference() {
        return method.hasReference();
    }
}
