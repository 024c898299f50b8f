package io.github.saltfront.trial;

import io.github.saltfront.numerics.Roots;
import io.github.saltfront.units.Checks;
import io.github.saltfront.words.Phrases;
import java.util.List;

/**
 * A test with right and wrong answers. Each kind knows the share of right answers at a distance d' between the two samples,
 * in standard deviations of one impression.
 *
 * @see "ennis1993, J. Sens. Stud. 8, 353-370; brockhoff2010, Food Qual. Prefer. 21, 330-338"
 */
public sealed interface TastingMethod permits Triangle, DuoTrio, ForcedChoice {
    /** Largest distance that is searched for [-]; beyond it every method is right to six digits or nearly so. */
    double LARGEST_DISTANCE = 15;

    /** Returns the name used in files, such as {@code triangle}. */
    String id();

    /** Returns the name for people. */
    String title();

    /** Returns the question put to a taster; a word such as {@code juicier} is filled in where the method needs one. */
    String question(String attribute);

    /** Returns the share of right answers by guessing alone [-]. */
    double guessRate();

    /**
     * Returns the share of right answers: the psychometric function of the method.
     *
     * @param distance d' between the samples [-], not negative
     * @return share [-], from the guess rate to 1
     * @throws IllegalArgumentException if the distance is NaN or negative
     */
    double proportionCorrect(double distance);

    /**
     * Returns the orders in which samples can be served, 0 for the first and 1 for the second; all should be used equally often.
     */
    List<List<Integer>> orders();

    /** Returns whether an order begins with a sample that is marked as the reference. */
    boolean hasReference();

    /**
     * Returns the place of the right answer in an order.
     *
     * @param order one of {@link #orders}
     * @return place, from 0
     */
    int rightPlace(List<Integer> order);

    /**
     * Returns the distance at which a share of right answers is expected: the inverse of {@link #proportionCorrect}.
     *
     * @param share share of right answers [-], 0 to 1
     * @return d' [-]; 0 at or below the guess rate, infinite at 1
     * @throws IllegalArgumentException if the share is NaN or out of range
     */
    default double distance(double share) {
        Checks.requireInRange("share of right answers", share, 0, 1, "-");
        if (share <= guessRate()) {
            return 0;
        }
        if (share >= proportionCorrect(LARGEST_DISTANCE)) {
            return Double.POSITIVE_INFINITY;
        }
        return Roots.find(d -> proportionCorrect(d) - share, 0, LARGEST_DISTANCE, 1e-10);
    }

    /**
     * Returns the share of tasters who would have to tell every time, the others guessing, to give a share of right answers.
     *
     * @param share share of right answers [-], 0 to 1
     * @return share of tasters [-]; 0 at or below the guess rate
     */
    default double discriminators(double share) {
        Checks.requireInRange("share of right answers", share, 0, 1, "-");
        return Math.max(0, (share - guessRate()) / (1 - guessRate()));
    }

    /**
     * Returns the share of right answers if some tasters tell every time and the others guess.
     *
     * @param discriminators share of tasters who tell [-], 0 to 1
     * @return share of right answers [-]
     */
    default double proportionCorrectOf(double discriminators) {
        Checks.requireInRange("share of tasters who can tell", discriminators, 0, 1, "-");
        return guessRate() + discriminators * (1 - guessRate());
    }

    /**
     * Returns the method of a name.
     *
     * @param id {@code triangle}, {@code duo-trio}, or {@code 2-afc} to {@code 10-afc}
     * @return the method
     * @throws IllegalArgumentException if there is none
     */
    static TastingMethod get(String id) {
        if (id.equals("triangle")) {
            return new Triangle();
        }
        if (id.equals("duo-trio")) {
            return new DuoTrio();
        }
        for (int n = ForcedChoice.FEWEST; n <= ForcedChoice.MOST; n++) {
            if (id.equals(n + "-afc")) {
                return new ForcedChoice(n);
            }
        }
        throw new IllegalArgumentException(Phrases.of(TastingMethod.class).say("got-the-method-expected-triangle", id));
    }
}
