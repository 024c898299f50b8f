package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.util.Optional;

/** The smallest effect that a trial should not miss. */
public sealed interface SoughtEffect {
    /**
     * Returns the probability that the trial shows it.
     *
     * @param tastings answers, or tasters who scored all samples [-]
     * @param alpha allowed probability of a finding where there is none [-], 0 to 1
     * @return power [-]
     */
    double power(int tastings, double alpha);

    /**
     * Returns how many it takes.
     *
     * @param alpha allowed probability of a finding where there is none [-], 0 to 1
     * @param power wanted power [-], 0.5 to 0.999
     * @return the number; empty above {@link SampleSize#MOST}
     */
    Optional<SampleSize> size(double alpha, double power);

    /** Returns the effect in words, as the end of "if ...". */
    String words();

    /**
     * Returns of how many pairs the right one is named if people are asked directly which of two is stronger; it gives d' a meaning.
     *
     * @param distance d' [-], not negative
     * @return share [-], 0.5 to 1
     */
    static double namedRight(double distance) {
        return Double.isInfinite(distance) ? 1 : new ForcedChoice(2).proportionCorrect(distance);
    }

    /**
     * A distance between the samples.
     *
     * @param method the test
     * @param distance d' [-], 0.05 to 10
     */
    record Distance(TastingMethod method, double distance) implements SoughtEffect {
        /** Checks the distance. */
        public Distance {
            Checks.requireInRange("d'", distance, 0.05, 10, "-");
        }

        @Override
        public double power(int tastings, double alpha) {
            return TrialPower.discrimination(method, tastings, method.proportionCorrect(distance), alpha);
        }

        @Override
        public Optional<SampleSize> size(double alpha, double power) {
            return SampleSize.discrimination(method, method.proportionCorrect(distance), alpha, power);
        }

        @Override
        public String words() {
            return Phrases.of(SoughtEffect.class)
                    .say(
                            "the-samples-are-d-apart",
                            QuantityFormat.significant(distance, 3),
                            100 * namedRight(distance));
        }
    }

    /**
     * A share of tasters who can tell, the others guessing.
     *
     * @param method the test
     * @param share share [-], 0.01 to 1
     */
    record Tellers(TastingMethod method, double share) implements SoughtEffect {
        /** Checks the share. */
        public Tellers {
            Checks.requireInRange("share of tasters who can tell", share, 0.01, 1, "-");
        }

        @Override
        public double power(int tastings, double alpha) {
            return TrialPower.discrimination(method, tastings, method.proportionCorrectOf(share), alpha);
        }

        @Override
        public Optional<SampleSize> size(double alpha, double power) {
            return SampleSize.discrimination(method, method.proportionCorrectOf(share), alpha, power);
        }

        @Override
        public String words() {
            return Phrases.of(SoughtEffect.class).say("of-100-people-can-tell", 100 * share);
        }
    }

    /**
     * A majority that likes one sample better.
     *
     * @param share share of people who like it better [-], 0.51 to 1
     */
    record Majority(double share) implements SoughtEffect {
        /** Checks the share. */
        public Majority {
            Checks.requireInRange("share that prefers one sample", share, 0.51, 1, "-");
        }

        @Override
        public double power(int tastings, double alpha) {
            return TrialPower.preference(tastings, share, alpha);
        }

        @Override
        public Optional<SampleSize> size(double alpha, double power) {
            return SampleSize.preference(share, alpha, power);
        }

        @Override
        public String words() {
            return Phrases.of(SoughtEffect.class).say("of-100-people-like-one", 100 * share);
        }
    }

    /**
     * A gap between the means of two samples scored or weighed in pairs.
     *
     * @param gap mean difference, above zero, in the unit of the spread
     * @param spread standard deviation of the differences, above zero
     */
    record Gap(double gap, double spread) implements SoughtEffect {
        /** Checks the numbers. */
        public Gap {
            Checks.requirePositive("gap", gap, "-");
            Checks.requirePositive("spread", spread, "-");
        }

        @Override
        public double power(int tastings, double alpha) {
            return TrialPower.pairedMeans(tastings, gap, spread, alpha);
        }

        @Override
        public Optional<SampleSize> size(double alpha, double power) {
            return SampleSize.pairedMeans(gap, spread, alpha, power);
        }

        @Override
        public String words() {
            return Phrases.of(SoughtEffect.class)
                    .say(
                            "the-means-are-apart-and",
                            QuantityFormat.significant(gap, 3),
                            QuantityFormat.significant(spread, 3));
        }
    }
}
