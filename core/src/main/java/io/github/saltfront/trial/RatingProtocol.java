package io.github.saltfront.trial;

import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How much do you like each sample? Answers on the scale of nine points from 1, dislike extremely, over 5, neither, to 9, like
 * extremely.
 *
 * @see "peryam1957 (the scale)"
 */
public record RatingProtocol() implements Protocol {
    /** Lowest point. */
    public static final int LOWEST = 1;

    /** Highest point. */
    public static final int HIGHEST = 9;

    private static final Phrases PHRASES = Phrases.of(RatingProtocol.class);

    @Override
    public String id() {
        return "ratings";
    }

    @Override
    public String title() {
        return PHRASES.say("title");
    }

    @Override
    public String question() {
        return PHRASES.say("question");
    }

    /** Returns the words of the nine points, from the lowest. */
    public static List<String> words() {
        return IntStream.rangeClosed(LOWEST, HIGHEST)
                .mapToObj(point -> PHRASES.say("point-" + point))
                .toList();
    }

    @Override
    public List<List<Integer>> orders(int samples) {
        return ServingOrders.williams(samples);
    }
}
