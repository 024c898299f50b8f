package io.github.saltfront.app.export;

import io.github.saltfront.trial.Estimate;
import io.github.saltfront.trial.SampleSize;
import java.util.Locale;
import java.util.Optional;

/** Numbers of a trial as a cook reads them. */
final class TrialWords {
    /** What an interval is. */
    static final String INTERVAL = "An interval is the range of true values that fit these answers. Of many such"
            + " intervals about %s in 100 hold the truth.";

    private TrialWords() {}

    /** A probability, never as 0 or 100 percent. */
    static String chance(double probability) {
        double percent = 100 * probability;
        if (percent < 0.1) {
            return "below 0.1 %";
        }
        if (percent > 99.9) {
            return "above 99.9 %";
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
        return String.format(Locale.ROOT, whole ? "%.0f" : "%.1f", percent);
    }

    /** A share with its interval, in whole percent. */
    static String share(Estimate share) {
        return String.format(
                Locale.ROOT, "%.0f %% (%.0f to %.0f)", 100 * share.value(), 100 * share.low(), 100 * share.high());
    }

    /** A distance d'; no upper end is told as such. */
    static String distance(Estimate distance) {
        if (Double.isInfinite(distance.value())) {
            return String.format(
                    Locale.ROOT, "above %.1f; every answer is right, so no upper end can be given", distance.low());
        }
        String high =
                Double.isInfinite(distance.high()) ? "no end" : String.format(Locale.ROOT, "%.1f", distance.high());
        return String.format(Locale.ROOT, "%.1f (%.1f to %s)", distance.value(), distance.low(), high);
    }

    /** A signed difference with its interval. */
    static String difference(Estimate difference, String unit) {
        return String.format(
                Locale.ROOT,
                "%+.1f %s (%+.1f to %+.1f)",
                difference.value(),
                unit,
                difference.low(),
                difference.high());
    }

    /** How many it takes, of what. */
    static String size(Optional<SampleSize> size, String unit) {
        if (size.isEmpty()) {
            return "more than " + SampleSize.MOST + " " + unit
                    + "; look for a larger effect or ask a more direct question";
        }
        SampleSize found = size.get();
        if (found.first() == found.stable()) {
            return found.stable() + " " + unit;
        }
        return found.stable() + " " + unit + " (the first number that reaches it is " + found.first()
                + ", but one more can lose it again)";
    }
}
