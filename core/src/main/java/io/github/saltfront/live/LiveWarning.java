package io.github.saltfront.live;

/**
 * Something the cook should know, gravest kinds first.
 *
 * @param kind what it is
 * @param text one or two sentences: what was seen and what to do
 */
public record LiveWarning(Kind kind, String text) {
    /** Kinds of warnings. */
    public enum Kind {
        /** A limit of safety is broken, or about to be. */
        SAFETY,
        /** Readings look like another unit. */
        UNIT,
        /** A probe is out of the meat, or sits elsewhere. */
        PROBE,
        /** No readings for a while. */
        GAP,
        /** Readings do not follow what was told of the cook. */
        MISMATCH,
        /** The meat was not as cold or warm as told. */
        START,
        /** The oven is off its setting. */
        OVEN,
        /** The oven door seems to be open. */
        DOOR,
        /** The probe is not in the coldest spot. */
        PLACE,
        /** The temperature hardly rises. */
        STALLED,
        /** It will not be ready in time. */
        LATE,
        /** It will be ready too early. */
        EARLY
    }
}
