package io.github.saltfront.learn;

import io.github.saltfront.numerics.NormalDistribution;
import io.github.saltfront.quality.Seasoning;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * The taste for salt of a table, learned from ratings on a just-about-right scale against the salt that the plan predicted.
 * <pre>P(rating up to k) = Phi[(b_k - (ln s - ln i)) / w],  b = -B, -a, a, B</pre>
 * with s the salt of the raw salted meat, i the salt that suits this table, w the noise of a rating, a half the width of "just
 * about right" and B where "much" begins.
 *
 * <p>From the published acceptance of chicken breast fillets: from 0.5 % in the formulation on the salt was just about right to
 * most, and at 1.0 % a fifth said too salty. Read as half at 0.5 % and as 0.2 at 1.0 %, with the noise below, this gives a = 0.47 and a
 * middle of 0.80 %. The noise adds the difference threshold of seasoned meat, 0.19 (a fifth of the salt told apart in three of four
 * pairs), to the spread between people, 0.21 (the plans' band of 0.5 to 1.0 % read as people). The ideal begins at the target of the plans,
 * 0.75 %, with their band as its 90 % interval. B is an estimate. What the plan does not know of the salt is averaged over, once for
 * all who ate of the same piece.
 *
 * @see "saha2009, abstract; cubero2019, abstract"
 */
public final class SaltTaste {
    /** Half width of "just about right", as a logarithm of salt [-]. */
    public static final double RIGHT = 0.4686;

    /** Noise of a rating, as a logarithm of salt [-]: other people, other bites. */
    public static final double NOISE = 0.29;

    /** Where "much too" begins, as a logarithm of salt [-]; estimate: two noises beyond "just about right". */
    public static final double MUCH = RIGHT + 2 * NOISE;

    /** Least salt of the raw meat that plans aim at by what was learned [kg/kg]; our limit. */
    public static final double LEAST = 0.004;

    /** Most salt of the raw meat that plans aim at by what was learned [kg/kg]; our limit, where many say too salty. */
    public static final double MOST = 0.0125;

    /** Points and weights of Gauss and Hermite for an average over a normal distribution, five points [-]. */
    private static final double[] PLACES = {-2.8569700138728, -1.3556261799743, 0, 1.3556261799743, 2.8569700138728};

    private static final double[] WEIGHTS = {
        0.011257411327721, 0.22207592200561, 0.53333333333333, 0.22207592200561, 0.011257411327721
    };

    private SaltTaste() {}

    /** What a taster says of the salt. */
    public enum Rating {
        /** Much too weak. */
        MUCH_TOO_WEAK("much too weak"),
        /** Slightly too weak. */
        SLIGHTLY_TOO_WEAK("slightly too weak"),
        /** Just about right. */
        JUST_RIGHT("just about right"),
        /** Slightly too strong. */
        SLIGHTLY_TOO_STRONG("slightly too strong"),
        /** Much too strong. */
        MUCH_TOO_STRONG("much too strong");

        private final String words;

        Rating(String words) {
            this.words = words;
        }

        /** Returns the words on the sheet. */
        public String words() {
            return words;
        }
    }

    /**
     * A cook that was tasted.
     *
     * @param logSalt middle of the logarithm of the predicted salt of the raw salted meat in kg/kg [-]
     * @param spread standard deviation of that logarithm [-]
     * @param ratings what the tasters said
     */
    public record Tasting(double logSalt, double spread, List<Rating> ratings) {
        /** Copies the list and checks the values. */
        public Tasting {
            ratings = List.copyOf(ratings);
            Checks.requireInRange("logarithm of the salt", logSalt, Math.log(1e-4), Math.log(0.1), "-");
            Checks.requireInRange("spread of the salt", spread, 0, 2, "-");
        }
    }

    /**
     * Returns the probability of a rating.
     *
     * @param rating the rating
     * @param apart logarithm of the salt less that of the ideal [-]
     * @return probability [-]
     */
    public static double probability(Rating rating, double apart) {
        double below = switch (rating) {
            case MUCH_TOO_WEAK -> Double.NEGATIVE_INFINITY;
            case SLIGHTLY_TOO_WEAK -> -MUCH;
            case JUST_RIGHT -> -RIGHT;
            case SLIGHTLY_TOO_STRONG -> RIGHT;
            case MUCH_TOO_STRONG -> MUCH;
        };
        double above = switch (rating) {
            case MUCH_TOO_WEAK -> -MUCH;
            case SLIGHTLY_TOO_WEAK -> -RIGHT;
            case JUST_RIGHT -> RIGHT;
            case SLIGHTLY_TOO_STRONG -> MUCH;
            case MUCH_TOO_STRONG -> Double.POSITIVE_INFINITY;
        };
        return NormalDistribution.cumulative((above - apart) / NOISE)
                - NormalDistribution.cumulative((below - apart) / NOISE);
    }

    /**
     * Learns.
     *
     * @param tastings cooks that were tasted, with at least one rating in all
     * @return the salt of the raw salted meat that suits this table [kg/kg], not yet limited; its count is that of the ratings
     */
    public static LearnedValue learn(List<Tasting> tastings) {
        int ratings = tastings.stream().mapToInt(t -> t.ratings().size()).sum();
        Checks.require(ratings > 0, "learning the taste for salt needs a rating, got none.");
        double middle = Math.log(Seasoning.load().targetRaw().typical());
        double deviation = Math.log(Seasoning.load().targetRaw().high()
                        / Seasoning.load().targetRaw().low())
                / (2 * NormalDistribution.quantile(0.95));
        GridPosterior posterior = GridPosterior.of(middle - 1.2, middle + 1.2, 121, ideal -> {
            double apart = (ideal - middle) / deviation;
            double log = -0.5 * apart * apart;
            for (Tasting tasting : tastings) {
                log += logLikelihood(tasting, ideal);
            }
            return log;
        });
        LearnedValue log = posterior.learned(ratings);
        return new LearnedValue(Math.exp(log.value()), Math.exp(log.low()), Math.exp(log.high()), ratings);
    }

    private static double logLikelihood(Tasting tasting, double ideal) {
        double sum = 0;
        for (int q = 0; q < PLACES.length; q++) {
            double apart = tasting.logSalt() + PLACES[q] * tasting.spread() - ideal;
            double product = WEIGHTS[q];
            for (Rating rating : tasting.ratings()) {
                product *= Math.max(1e-12, probability(rating, apart));
            }
            sum += product;
        }
        return Math.log(sum);
    }

    /**
     * Returns what plans aim at.
     *
     * @param ideal what was learned [kg/kg]
     * @return the same within {@link #LEAST} and {@link #MOST} [kg/kg]
     */
    public static double limited(double ideal) {
        return Math.max(LEAST, Math.min(MOST, ideal));
    }
}
