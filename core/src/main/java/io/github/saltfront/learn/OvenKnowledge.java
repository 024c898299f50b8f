package io.github.saltfront.learn;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.ApplianceTuning;
import io.github.saltfront.numerics.Cholesky;
import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * What was learned about an oven, or another appliance: its true temperature against the dial and its heat transfer coefficient,
 * together on a grid, since a short time speaks for either.
 * <pre>p(o, c | t) ~ exp[-(o^2 + c^2)/2] prod exp[-(ln t - m(o, c))^T S^-1 (ln t - m(o, c))/2]</pre>
 * with o and c in standard normal variates of the catalog's bands, m the model's logarithm of the times and S what everything else
 * does to them. A thermometer that was laid into the oven speaks for o alone.
 *
 * @param offset true temperature less that of the dial [K]
 * @param coefficient heat transfer coefficient over the catalog's [-]
 * @param tuning the same for plans, within {@link #LARGEST_OFFSET}
 * @param cooks cooks behind it [-]
 */
public record OvenKnowledge(LearnedValue offset, LearnedValue coefficient, ApplianceTuning tuning, int cooks) {
    /** Largest offset that plans use [K]; an oven that is off by more wants a repair and not a correction; our limit. */
    public static final double LARGEST_OFFSET = 25;

    /** Standard deviation of an oven thermometer against the mean of the oven [K]: cycling and place; estimate. */
    private static final double READING_SPREAD = 4;

    /** The same in a stirred bath, fat or steam [K]; estimate. */
    private static final double STIRRED_SPREAD = 0.5;

    /** Least spread of the true temperature that plans keep, half width of the 90 % band [K]: thermostats cycle; estimate. */
    private static final double LEAST_BAND = 3;

    /** Least share of the catalog's spread of the coefficient that plans keep [-]: loads and trays differ; estimate. */
    private static final double LEAST_CONVECTION = 0.3;

    private static final double FARTHEST = 5;
    private static final int POINTS = 61;

    /**
     * Learns.
     *
     * @param appliance the appliance as in the catalog
     * @param timed cooks whose times were noted
     * @param readings true temperature less that of the dial by a thermometer in it, one for each cook that has one [K]
     * @param cooks number of different cooks [-], at least 1
     * @return what was learned
     */
    public static OvenKnowledge learn(Appliance appliance, List<TimedCook> timed, List<Double> readings, int cooks) {
        Checks.require(!timed.isEmpty() || !readings.isEmpty(), "learning an oven needs a cook, got none.");
        double unit = appliance.setPointError() / Draw.NINETY_FIVE;
        double[] logs = new double[POINTS * POINTS];
        List<Cholesky> factors = timed.stream().map(TimedCook::factor).toList();
        for (int i = 0; i < POINTS; i++) {
            for (int j = 0; j < POINTS; j++) {
                double o = at(i);
                double c = at(j);
                double log = -0.5 * (o * o + c * c);
                for (int k = 0; k < timed.size(); k++) {
                    log += timed.get(k).logLikelihood(factors.get(k), o, c);
                }
                for (double reading : readings) {
                    double apart = (reading - o * unit) / readingSpread(appliance);
                    log -= 0.5 * apart * apart;
                }
                logs[i * POINTS + j] = log;
            }
        }
        return of(appliance, GridPosterior.normalized(logs), cooks);
    }

    private static double readingSpread(Appliance appliance) {
        return switch (appliance.medium()) {
            case AIR, RADIANT, METAL_CONTACT -> READING_SPREAD;
            case OIL, LIQUID, STEAM -> STIRRED_SPREAD;
        };
    }

    private static double at(int index) {
        return FARTHEST * (2.0 * index / (POINTS - 1) - 1);
    }

    private static OvenKnowledge of(Appliance appliance, double[] weights, int cooks) {
        double[] first = new double[POINTS];
        double[] second = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            for (int j = 0; j < POINTS; j++) {
                first[i] += weights[i * POINTS + j];
                second[j] += weights[i * POINTS + j];
            }
        }
        GridPosterior setting = marginal(first);
        GridPosterior convection = marginal(second);
        double product = 0;
        for (int i = 0; i < POINTS; i++) {
            for (int j = 0; j < POINTS; j++) {
                product += weights[i * POINTS + j] * (at(i) - setting.mean()) * (at(j) - convection.mean());
            }
        }
        double unit = appliance.setPointError() / Draw.NINETY_FIVE;
        LearnedValue offset = setting.learned(cooks);
        LearnedValue place = convection.learned(cooks);
        return new OvenKnowledge(
                offset.times(unit),
                new LearnedValue(
                        factor(appliance, place.value()),
                        factor(appliance, place.low()),
                        factor(appliance, place.high()),
                        cooks),
                tuning(appliance, setting, convection, product),
                cooks);
    }

    private static GridPosterior marginal(double[] weights) {
        double step = 2 * FARTHEST / (POINTS - 1);
        List<Double> logs = new ArrayList<>();
        for (double weight : weights) {
            logs.add(Math.log(Math.max(weight, 1e-300)));
        }
        return GridPosterior.of(-FARTHEST, FARTHEST, POINTS, x -> logs.get((int) Math.rint((x + FARTHEST) / step)));
    }

    private static double factor(Appliance appliance, double place) {
        return Draw.MEDIAN
                        .with(Uncertainty.CONVECTION, place)
                        .logarithmic(Uncertainty.CONVECTION, appliance.convection())
                / appliance.convection().typical();
    }

    private static ApplianceTuning tuning(
            Appliance appliance, GridPosterior setting, GridPosterior convection, double product) {
        double unit = appliance.setPointError() / Draw.NINETY_FIVE;
        double farthest = LARGEST_OFFSET / unit;
        double correlation = product / (setting.deviation() * convection.deviation());
        return new ApplianceTuning(
                Math.max(-farthest, Math.min(farthest, setting.mean())),
                convection.mean(),
                Math.min(1, Math.max(setting.deviation(), LEAST_BAND / appliance.setPointError())),
                Math.min(1, Math.max(convection.deviation(), LEAST_CONVECTION)),
                Math.max(-0.99, Math.min(0.99, correlation)));
    }
}
