package io.github.saltfront.app.request;

import io.github.saltfront.trial.Discrimination;
import io.github.saltfront.trial.Preference;
import io.github.saltfront.trial.RatingsAnalysis;
import io.github.saltfront.trial.YieldComparison;

/** What a table of answers holds, analyzed. */
public sealed interface TrialFindings {
    /** Returns the level of the intervals [-]. */
    double level();

    /** Returns rows without an answer [-]. */
    int unanswered();

    /**
     * Right and wrong answers.
     *
     * @param found the analysis
     * @param tasters different tasters [-]
     * @param unanswered rows without an answer [-]
     */
    record RightWrong(Discrimination found, int tasters, int unanswered) implements TrialFindings {
        @Override
        public double level() {
            return found.level();
        }
    }

    /**
     * Preferences.
     *
     * @param found the analysis
     * @param first first sample
     * @param second second sample
     * @param tasters different tasters [-]
     * @param unanswered rows without an answer [-]
     */
    record Preferred(Preference found, String first, String second, int tasters, int unanswered)
            implements TrialFindings {
        @Override
        public double level() {
            return found.level();
        }
    }

    /**
     * Ratings.
     *
     * @param found the analysis
     * @param level level of the intervals [-]
     * @param unanswered rows without a score [-]
     */
    record Rated(RatingsAnalysis found, double level, int unanswered) implements TrialFindings {}

    /**
     * Yields.
     *
     * @param found the analysis
     * @param unanswered pieces that were not weighed twice [-]
     */
    record Weighed(YieldComparison found, int unanswered) implements TrialFindings {
        @Override
        public double level() {
            return found.yields().difference().level();
        }
    }
}
