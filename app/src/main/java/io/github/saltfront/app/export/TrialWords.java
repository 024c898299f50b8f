package io.github.saltfront.app.export;

import io.github.saltfront.trial.Estimate;
import io.github.saltfront.trial.SampleSize;
import io.github.saltfront.words.Phrases;
import java.util.Optional;

/** Numbers of a trial as a cook reads them. */
final class TrialWords {
    private static final Phrases PHRASES = Phrases.of(TrialWords.class);

    /**
     * Says what an interval is.
     *
     * @param level its level in percent
     */
    static String interval(String level) {
        return PHRASES.say("interval", level);
    }

    private TrialWords() {}

    /** A probability, never as 0 or 100 percent. */
    static String chance(double probability) {
        double percent = 100 * probability;
        if (percent < 0.1) {
            return PHRASES.say("below", Phrases.figures("%.1f", 0.1));
        }
        if (percent > 99.9) {
            return PHRASES.say("above", Phrases.figures("%.1f", 99.9));
        }
        return plain(percent) + " %";
    }

    /** A level in percent, such as 95. */
    static String level(double level) {
        return plain(100 * level);
    }

    /** Whole numbers without a point; small and large percentages with one place. */
    private static String plain(double percent) {
        boolean whole = Math.abs(percent - Math.rint(percent)) < 0.005 || percent >= 10 && percent <= 90;
        return Phrases.figures(whole ? "%.0f" : "%.1f", percent);
    }

    /** A share with its interval, in whole percent. */
    static String share(Estimate share) {
        return PHRASES.say("to", 100 * share.value(), 100 * share.low(), 100 * share.high());
    }

    /** A distance d'; no upper end is told as such. */
    static String distance(Estimate distance) {
        if (Double.isInfinite(distance.value())) {
            return PHRASES.say("above-every-answer-is-right", distance.low());
        }
        String high =
                Double.isInfinite(distance.high()) ? PHRASES.say("no-end") : Phrases.figures("%.1f", distance.high());
        return PHRASES.say("to-2", distance.value(), distance.low(), high);
    }

    /** A signed difference with its interval. */
    static String difference(Estimate difference, String unit) {
        return PHRASES.say("to-3", difference.value(), unit, difference.low(), difference.high());
    }

    /** How many it takes, of what. */
    static String size(Optional<SampleSize> size, String unit) {
        if (size.isEmpty()) {
            return PHRASES.say("more-than-look-for-a", SampleSize.MOST, unit);
        }
        SampleSize found = size.get();
        if (found.first() == found.stable()) {
            return found.stable() + " " + unit;
        }
        return PHRASES.say("the-first-number-that-reaches", found.stable(), unit, found.first());
    }
}
