package io.github.saltfront.trial;

import java.util.List;

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

    private static final List<String> WORDS = List.of(
            "dislike extremely",
            "dislike very much",
            "dislike moderately",
            "dislike slightly",
            "neither like nor dislike",
            "like slightly",
            "like moderately",
            "like very much",
            "like extremely");

    @Override
    public String id() {
        return "ratings";
    }

    @Override
    public String title() {
        return "Liking on nine points";
    }

    @Override
    public String question() {
        return "How much do you like each one?";
    }

    /** Returns the words of the nine points, from the lowest. */
    public static List<String> words() {
        return WORDS;
    }

    @Override
    public List<List<Integer>> orders(int samples) {
        return ServingOrders.williams(samples);
    }
}
