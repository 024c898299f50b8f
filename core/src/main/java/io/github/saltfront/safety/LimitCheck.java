package io.github.saltfront.safety;

/**
 * How a history stands against one official limit of time and temperature.
 *
 * @param id key of the limit
 * @param outcome pass, fail, or not covered by the history
 * @param measured time counted against the limit [s]; 0 where the temperature alone is the limit
 * @param limit longest time allowed [s]; 0 where the temperature alone is the limit
 * @param text the finding in one sentence
 */
public record LimitCheck(String id, Outcome outcome, double measured, double limit, String text) {
    /** Share of a limit from which it counts as near [-]. */
    public static final double NEAR = 0.75;

    /** Returns whether the limit is broken or so near that a cook should hear of it. */
    public boolean isNear() {
        return outcome == Outcome.FAIL || (limit > 0 && measured >= NEAR * limit);
    }

    /** What a history says about a limit. */
    public enum Outcome {
        /** The whole span was seen and kept to. */
        PASS,
        /** The limit was broken. */
        FAIL,
        /** The history does not cover the span, so it neither passes nor fails. */
        NOT_COVERED
    }
}
