package io.github.saltfront.live;

import io.github.saltfront.plan.CookStages;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.quality.Band;
import java.util.List;

/**
 * What is uncertain in a live cook, as standard normal variates: the luck of the plan's ensemble that heat feels, the pace of the
 * piece, and for each probe its error and its distance from the coldest spot.
 */
final class LuckSpace {
    /** Luck that needs a simulation. */
    static final List<Uncertainty> SIMULATED = List.of(
            Uncertainty.THICKNESS,
            Uncertainty.SETTING,
            Uncertainty.CONVECTION,
            Uncertainty.EMISSIVITY,
            Uncertainty.WETNESS,
            Uncertainty.HUMIDITY,
            Uncertainty.START,
            Uncertainty.JUICE,
            Uncertainty.CONDUCTIVITY,
            Uncertainty.REST);

    /** Place of the pace among the variates. */
    static final int PACE = SIMULATED.size();

    /** Variates without those of probes. */
    static final int OWN = PACE + 1;

    /**
     * Spread of the pace, the factor on all times [-]: heat capacity per volume 3 %, and what is left of the shape after the
     * lag found in three dimensions 2.5 %, as standard deviations; estimate.
     */
    private static final double PACE_SPREAD = 0.04;

    /** Error of a kitchen thermometer that was not checked, 5th to 95th percentile [K]; estimate, as in a plan. */
    private static final Band PROBE_ERROR = CookStages.PROBE;

    /** Distance of a tip from the coldest spot as a share of the half thickness: median, and its logarithmic spread; estimate. */
    private static final double DISTANCE = 0.15;

    private static final double DISTANCE_SPREAD = 0.8;
    private static final double FARTHEST = 0.9;

    private LuckSpace() {}

    static Draw draw(double[] variates) {
        double[] all = new double[Uncertainty.values().length];
        for (int d = 0; d < SIMULATED.size(); d++) {
            // far tails come from a proposal, not from the prior; the bands are made for some three standard deviations
            all[SIMULATED.get(d).ordinal()] = Math.max(-3.5, Math.min(3.5, variates[d]));
        }
        return Draw.of(all);
    }

    static double pace(double variate, double center) {
        return center * Math.exp(PACE_SPREAD * variate);
    }

    static double probeError(double variate) {
        return variate / Draw.NINETY_FIVE * PROBE_ERROR.high();
    }

    static double place(double variate) {
        return Math.min(FARTHEST, DISTANCE * Math.exp(DISTANCE_SPREAD * variate));
    }
}
