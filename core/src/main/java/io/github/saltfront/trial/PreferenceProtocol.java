package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.List;

/** Which of two samples do you like better? */
public record PreferenceProtocol() implements Protocol {
    @Override
    public String id() {
        return "preference";
    }

    @Override
    public String title() {
        return "Paired preference";
    }

    @Override
    public String question() {
        return "Which one do you like better?";
    }

    @Override
    public List<List<Integer>> orders(int samples) {
        Checks.require(samples == 2, "a preference compares 2 samples, got " + samples + ".");
        return ServingOrders.williams(2);
    }
}
