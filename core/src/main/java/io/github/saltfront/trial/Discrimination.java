package io.github.saltfront.trial;

import io.github.saltfront.numerics.NormalDistribution;
import io.github.saltfront.numerics.Roots;
import io.github.saltfront.units.Checks;
import java.util.Optional;

/**
 * What the answers of a test with right and wrong answers show. The probability under guessing is the exact binomial tail. The
 * share of right answers has the exact interval ({@link ClopperPearson1934}), and so has the share of tasters who can tell. The
 * distance d' has the likelihood interval:
 *
 * <pre>all d' with 2 [l(best) - l(d')] <= z^2,  l = k ln p(d') + (n-k) ln(1 - p(d')),  Phi(z) = (1 + level)/2</pre>
 *
 * At 95 % and 24 to 60 tastings that interval covers 93 to 96 % on average over d' from 0.5 to 2, and 83 to 98 % at single distances.
 *
 * <p>Assumes tastings that do not depend on each other; several by one taster are evidence of a difference, not of its absence.
 *
 * @param method the test
 * @param right right answers [-]
 * @param tastings answers [-]
 * @param level level of the intervals [-]
 * @see "brockhoff2010, Food Qual. Prefer. 21, 330-338; iso4120 A.2-A.3 (similarity)"
 */
public record Discrimination(TastingMethod method, int right, int tastings, double level) {
    /** Checks the counts. */
    public Discrimination {
        Checks.require(
                tastings >= 1 && tastings <= Binomial.MOST,
                "answers must be between 1 and " + Binomial.MOST + ", got " + tastings + ".");
        Checks.require(
                right >= 0 && right <= tastings,
                "right answers must be between 0 and " + tastings + ", got " + right + ".");
        Checks.requireInRange("level of an interval", level, 0.5, 0.9999, "-");
    }

    /** Returns the probability that guessing alone gives this many right answers or more [-]. */
    public double probabilityByGuessing() {
        return Binomial.atLeast(right, tastings, method.guessRate());
    }

    /** Returns the right answers that guessing gives on average [-]. */
    public double expectedByGuessing() {
        return tastings * method.guessRate();
    }

    /**
     * Returns the right answers needed to call the samples different.
     *
     * @return the critical number at 1 - level; empty if there are too few tastings for any
     */
    public Optional<Integer> needed() {
        int critical = Binomial.critical(tastings, method.guessRate(), 1 - level);
        return critical > tastings ? Optional.empty() : Optional.of(critical);
    }

    /** Returns whether a difference is shown: guessing gives this result with a probability of at most 1 - level. */
    public boolean isDifferenceShown() {
        return needed().map(critical -> right >= critical).orElse(false);
    }

    /** Returns the share of right answers with its exact interval [-]. */
    public Estimate shareRight() {
        return ClopperPearson1934.interval(right, tastings, level);
    }

    /** Returns the share of tasters who can tell, with the exact interval brought over from the right answers [-]. */
    public Estimate discriminators() {
        return shareRight().mapped(method::discriminators);
    }

    /** Returns d' with its likelihood interval [-]; value and upper end are infinite where every answer is right. */
    public Estimate distance() {
        double best = method.distance((double) right / tastings);
        double z = NormalDistribution.quantile((1 + level) / 2);
        double limit = logLikelihood(best) - 0.5 * z * z;
        double low = 0;
        if (best > 0 && logLikelihood(0) < limit) {
            low = Roots.find(d -> logLikelihood(d) - limit, 0, Math.min(best, TastingMethod.LARGEST_DISTANCE), 1e-9);
        }
        double high = Double.POSITIVE_INFINITY;
        if (right < tastings && logLikelihood(TastingMethod.LARGEST_DISTANCE) < limit) {
            high = Roots.find(d -> logLikelihood(d) - limit, best, TastingMethod.LARGEST_DISTANCE, 1e-9);
        }
        return new Estimate(low, best, high, level);
    }

    private double logLikelihood(double distance) {
        double p = Double.isInfinite(distance) ? 1 : method.proportionCorrect(distance);
        int wrong = tastings - right;
        // 0 ln 0 is 0, and a rounded 1 must not make an impossible answer infinitely unlikely
        return (right == 0 ? 0 : right * Math.log(p)) + (wrong == 0 ? 0 : wrong * Math.log(Math.max(1 - p, 1e-12)));
    }

    /**
     * Returns the largest share of tasters who can tell that these answers allow, one-sided at the level [-]. This is what "no
     * difference shown" leaves open.
     */
    public double largestDiscriminators() {
        return method.discriminators(largestShareRight());
    }

    /** Returns the largest d' that these answers allow, one-sided at the level [-]; infinite where every answer is right. */
    public double largestDistance() {
        return method.distance(largestShareRight());
    }

    private double largestShareRight() {
        return ClopperPearson1934.upper(right, tastings, 1 - level);
    }
}
