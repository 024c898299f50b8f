package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;

/** Which of two samples do you like better? */
public record PreferenceProtocol() implements Protocol {
    private static final Phrases PHRASES = Phrases.of(PreferenceProtocol.class);

    @Override
    public String id() {
        return "preference";
    }

    @Override
    public String title() {
        return PHRASES.say("paired-preference");
    }

    @Override
    public String question() {
        return PHRASES.say("which-one-do-you-like");
    }

    @Override
    public List<List<Integer>> orders(int samples) {
        Checks.require(samples == 2, "a preference compares 2 samples, got " + samples + ".");
        return ServingOrders.williams(2);
    }
}
