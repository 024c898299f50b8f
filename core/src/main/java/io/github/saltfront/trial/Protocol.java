package io.github.saltfront.trial;

import java.util.List;

/** What tasters are asked to do. */
public sealed interface Protocol permits RightWrongProtocol, PreferenceProtocol, RatingProtocol {
    /** Returns the name used in files. */
    String id();

    /** Returns the name for people. */
    String title();

    /** Returns what a taster is asked. */
    String question();

    /**
     * Returns the orders in which the samples can be served; all should be used equally often.
     *
     * @param samples number of samples [-]
     * @return orders, each a list of samples from 0
     * @throws IllegalArgumentException if the protocol is not for so many samples
     */
    List<List<Integer>> orders(int samples);

    /** Returns whether an order begins with a sample that is marked as the reference. */
    default boolean hasReference() {
        return false;
    }
}
