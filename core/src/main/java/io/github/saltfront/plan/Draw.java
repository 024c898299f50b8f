package io.github.saltfront.plan;

import io.github.saltfront.catalog.ApplianceTuning;
import io.github.saltfront.numerics.LatinHypercube;
import io.github.saltfront.numerics.NormalDistribution;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * The luck of one member of the ensemble: a standard normal variate for each {@link Uncertainty}. Bands are read as medians
 * with 5th and 95th percentiles. Immutable.
 */
public final class Draw {
    /** 95th percentile of the standard normal distribution [-]. */
    public static final double NINETY_FIVE = NormalDistribution.quantile(0.95);

    /** The median of everything. */
    public static final Draw MEDIAN = new Draw(new double[Uncertainty.values().length]);

    private final double[] variates;

    private Draw(double[] variates) {
        this.variates = variates;
    }

    /**
     * Returns the luck of given variates.
     *
     * @param variates a standard normal variate for each uncertainty, in the order of their declaration [-]; copied
     * @return the luck
     * @throws IllegalArgumentException if there are more or fewer of them, or one is not finite
     */
    public static Draw of(double[] variates) {
        int expected = Uncertainty.values().length;
        Checks.require(
                variates.length == expected,
                "luck needs " + expected + " variates, one for each uncertainty, got " + variates.length + ".");
        for (Uncertainty uncertainty : Uncertainty.values()) {
            Checks.requireFinite("variate of the " + uncertainty.words(), variates[uncertainty.ordinal()]);
        }
        return new Draw(variates.clone());
    }

    /**
     * Draws an ensemble by Latin hypercube sampling.
     *
     * @param count number of members, at least 1
     * @param seed seed
     * @return the members' draws; the same seed gives the same draws
     */
    public static List<Draw> ensemble(int count, long seed) {
        int dimensions = Uncertainty.values().length;
        LatinHypercube cube = new LatinHypercube(count, dimensions, seed);
        List<Draw> draws = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double[] variates = new double[dimensions];
            for (int d = 0; d < dimensions; d++) {
                variates[d] = NormalDistribution.quantile(cube.get(i, d));
            }
            draws.add(new Draw(variates));
        }
        return List.copyOf(draws);
    }

    /**
     * Returns the same luck in an appliance of which something was learned: true temperature and heat transfer are drawn about
     * what was learned, everything else stays.
     *
     * @param tuning what was learned
     * @return the luck
     */
    public Draw tuned(ApplianceTuning tuning) {
        if (tuning.isNone()) {
            return this;
        }
        int setting = Uncertainty.SETTING.ordinal();
        int convection = Uncertainty.CONVECTION.ordinal();
        double[] moved = variates.clone();
        double own = Math.sqrt(1 - tuning.correlation() * tuning.correlation());
        moved[setting] = tuning.meanSetting() + tuning.spreadSetting() * variates[setting];
        moved[convection] = tuning.meanConvection()
                + tuning.spreadConvection() * (tuning.correlation() * variates[setting] + own * variates[convection]);
        return new Draw(moved);
    }

    /**
     * Returns the same luck with one variate replaced.
     *
     * @param of what for
     * @param variate standard normal variate [-]
     * @return the luck
     */
    public Draw with(Uncertainty of, double variate) {
        double[] changed = variates.clone();
        changed[of.ordinal()] = Checks.requireFinite("variate of the " + of.words(), variate);
        return new Draw(changed);
    }

    /**
     * Returns a standard normal variate.
     *
     * @param of what for
     * @return variate [-]
     */
    public double normal(Uncertainty of) {
        return variates[of.ordinal()];
    }

    /**
     * Returns a value of a band, in straight lines on both sides of the median.
     *
     * @param of what for
     * @param band 5th percentile, median and 95th percentile
     * @return the value
     */
    public double linear(Uncertainty of, Band band) {
        double z = normal(of) / NINETY_FIVE;
        return band.typical() + z * (z > 0 ? band.high() - band.typical() : band.typical() - band.low());
    }

    /**
     * Returns a value of a band of positive numbers, lognormal on both sides of the median.
     *
     * @param of what for
     * @param band 5th percentile, median and 95th percentile, all above zero
     * @return the value, above zero
     */
    public double logarithmic(Uncertainty of, Band band) {
        double z = normal(of) / NINETY_FIVE;
        double ratio = z > 0 ? band.high() / band.typical() : band.typical() / band.low();
        return band.typical() * Math.pow(ratio, z);
    }

    /**
     * Returns a value between the ends of a band, every part as likely as the other.
     *
     * @param of what for
     * @param band ends
     * @return the value
     */
    public double uniform(Uncertainty of, Band band) {
        return band.low() + NormalDistribution.cumulative(normal(of)) * (band.high() - band.low());
    }
}
