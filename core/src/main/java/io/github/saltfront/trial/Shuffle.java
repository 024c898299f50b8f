package io.github.saltfront.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random orders from a seeded generator. */
final class Shuffle {
    private Shuffle() {}

    /** Returns the entries in random order, every order equally likely. */
    static <T> List<T> of(List<T> entries, SplittableRandom random) {
        List<T> shuffled = new ArrayList<>(entries);
        for (int i = shuffled.size() - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            T swapped = shuffled.get(i);
            shuffled.set(i, shuffled.get(j));
            shuffled.set(j, swapped);
        }
        return shuffled;
    }
}
