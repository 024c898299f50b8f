package io.github.saltfront.live;

import io.github.saltfront.words.Phrases;

/** What became of a reading. */
public enum ReadingState {
    /** It counts, for the prediction and for the record. */
    ACCEPTED("counts"),
    /** It is on record, but says nothing of the inside of the meat. */
    NOT_IN_MEAT("is-kept-beside-the-prediction"),
    /** It was taken before the meat went into the heat. */
    BEFORE_START("was-taken-before-the-heat"),
    /** It looks like the number of another unit; it is left out until the cook says what it is. */
    UNIT_IN_DOUBT("looks-like-degrees-fahrenheit-read"),
    /** It is hotter than meat can be. */
    TOO_HOT_FOR_MEAT("is-hotter-than-meat-can"),
    /** It jumps away from the reading before, as when a probe is pulled out or moved. */
    JUMPED("jumps-away-from-the-readings"),
    /** It is not where meat like this can be at this time. */
    DOES_NOT_FIT("does-not-fit-this-meat");

    private static final Phrases PHRASES = Phrases.of(ReadingState.class);

    private final String words;

    ReadingState(String words) {
        this.words = words;
    }

    /** Returns what became of it, in plain words after "the reading". */
    public String words() {
        return PHRASES.say(words);
    }

    /** Returns whether it was left out of prediction and record. */
    public boolean isLeftOut() {
        return this != ACCEPTED && this != NOT_IN_MEAT;
    }
}
