package io.github.saltfront.learn;

import io.github.saltfront.plan.Draw;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * The mean of a normal distribution of known spread, learned from single values (conjugate update).
 * <pre>1/v = 1/s0^2 + n/s^2,  m = v (m0/s0^2 + sum(x)/s^2)</pre>
 *
 * @param priorMean m0, mean before anything was seen
 * @param priorDeviation s0, standard deviation before, above 0
 * @param spread s, standard deviation of a single value about the mean, above 0
 * @see "gelman2013, section 2.5"
 */
public record NormalLearning(double priorMean, double priorDeviation, double spread) {
    /** Half width of the 90 % band of a refrigerator that is only stated [K]; the band of the plans, an estimate. */
    private static final double REFRIGERATOR_BAND = 2;

    /** Standard deviation of a reading against the mean of the refrigerator [K]: door, shelf and cycle; estimate. */
    private static final double REFRIGERATOR_SPREAD = 1;

    /** Half width of the 90 % band of a butcher's usual thickness about that of the catalog, as a logarithm [-]; estimate. */
    private static final double THICKNESS_BAND = Math.log(1.25);

    /** Standard deviation of single pieces and of the ruler, as a logarithm [-]; the plans' band of 10 % with as much again. */
    private static final double THICKNESS_SPREAD = Math.sqrt(2) * Math.log(1.1) / Draw.NINETY_FIVE;

    /** Checks the values. */
    public NormalLearning {
        Checks.requireFinite("mean before", priorMean);
        Checks.requirePositive("standard deviation before", priorDeviation, "same unit");
        Checks.requirePositive("standard deviation of a value", spread, "same unit");
    }

    /**
     * Returns what is known before about a refrigerator.
     *
     * @param stated temperature it is set to or said to have [K]
     * @return for readings of a thermometer in it [K]
     */
    public static NormalLearning refrigerator(double stated) {
        return new NormalLearning(stated, REFRIGERATOR_BAND / Draw.NINETY_FIVE, REFRIGERATOR_SPREAD);
    }

    /** Returns what is known before about the thickness a butcher cuts against that of the catalog, as a logarithm. */
    public static NormalLearning thickness() {
        return new NormalLearning(0, THICKNESS_BAND / Draw.NINETY_FIVE, THICKNESS_SPREAD);
    }

    /**
     * Learns.
     *
     * @param values single values, at least one
     * @return the mean with its 90 % interval
     */
    public LearnedValue learn(List<Double> values) {
        Checks.require(!values.isEmpty(), "learning needs a value, got none.");
        double precision = 1 / (priorDeviation * priorDeviation);
        double weighted = priorMean * precision;
        for (double value : values) {
            precision += 1 / (spread * spread);
            weighted += Checks.requireFinite("value", value) / (spread * spread);
        }
        double mean = weighted / precision;
        double half = Draw.NINETY_FIVE / Math.sqrt(precision);
        return new LearnedValue(mean, mean - half, mean + half, values.size());
    }
}
