package io.github.saltfront.learn;

import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.KitchenForecast;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executor;

/**
 * How the times of one cook depend on the true temperature of the oven and on its heat transfer, by the model of the plans, and
 * how far everything else moves them. Both are counted in standard normal variates of the catalog's bands.
 *
 * @param settings points of the first, rising, one step apart [-]
 * @param convections points of the second, rising, one step apart [-]
 * @param logTimes logarithm of the times in s, mark by mark, then first by first, then second by second [-]
 * @param covariance covariance of the logarithms by everything else, row by row [-]
 */
public record TimingResponse(
        List<Double> settings, List<Double> convections, List<Double> logTimes, List<Double> covariance) {
    /** Farthest true temperature and heat transfer that are looked at [-]. */
    private static final int FARTHEST = 5;

    /** Pieces from which the effect of everything else is read. */
    private static final int OTHERS = 60;

    /** Standard deviation of what no draw holds: reading the clock, and laying it in a bit sooner or later [-]; estimate. */
    private static final double CLOCK = 0.02;

    /** Copies the lists and checks their lengths. */
    public TimingResponse {
        settings = List.copyOf(settings);
        convections = List.copyOf(convections);
        logTimes = List.copyOf(logTimes);
        covariance = List.copyOf(covariance);
        int plane = settings.size() * convections.size();
        Checks.require(
                settings.size() >= 2 && convections.size() >= 2 && logTimes.size() % plane == 0 && !logTimes.isEmpty(),
                "a response needs a plane of logarithms for each mark, got " + logTimes.size() + " on " + plane + ".");
        int marks = logTimes.size() / plane;
        Checks.require(
                covariance.size() == marks * marks,
                "a response of " + marks + " marks needs a covariance of as many rows, got " + covariance.size()
                        + " values.");
        logTimes.forEach(value -> Checks.requireFinite("logarithm of a time", value));
        covariance.forEach(value -> Checks.requireFinite("covariance", value));
    }

    /**
     * Computes the response of a cook.
     *
     * @param request the request it was cooked by, without anything learned
     * @param readings rising readings of the thermometer whose times were noted [K]
     * @param timeFactor what the plan's check in three dimensions stretches times by [-]
     * @param executor where to run parts of the ensemble; has no effect on the numbers
     * @param seed seed of everything else
     * @return the response
     * @throws IllegalArgumentException if a reading is not reached in a day at the coldest setting looked at
     */
    public static TimingResponse of(
            Request request, List<Double> readings, double timeFactor, Executor executor, long seed) {
        List<Double> settings = axis(-FARTHEST, FARTHEST);
        List<Double> convections = axis(-FARTHEST, FARTHEST);
        List<Draw> draws = new ArrayList<>();
        for (double setting : settings) {
            for (double convection : convections) {
                draws.add(Draw.MEDIAN.with(Uncertainty.SETTING, setting).with(Uncertainty.CONVECTION, convection));
            }
        }
        double[][] times = KitchenForecast.timesTo(request, readings, draws, executor);
        List<Double> logs = new ArrayList<>();
        for (int mark = 0; mark < readings.size(); mark++) {
            for (double[] row : times) {
                logs.add(logTime(row[mark], timeFactor));
            }
        }
        List<Draw> others = Draw.ensemble(OTHERS, seed).stream()
                .map(draw -> draw.with(Uncertainty.SETTING, 0).with(Uncertainty.CONVECTION, 0))
                .toList();
        double[][] spread = KitchenForecast.timesTo(request, readings, others, executor);
        return new TimingResponse(settings, convections, logs, covariance(spread));
    }

    private static double logTime(double time, double factor) {
        Checks.require(
                time > 0,
                "the readings of this cook are not reached in a day in an oven as weak as the notebook looks at; give the"
                        + " reading at which it was taken out.");
        return Math.log(factor * time);
    }

    private static List<Double> axis(int low, int high) {
        List<Double> points = new ArrayList<>();
        for (int i = low; i <= high; i++) {
            points.add((double) i);
        }
        return points;
    }

    private static List<Double> covariance(double[][] times) {
        int marks = times[0].length;
        double[][] logs = Arrays.stream(times)
                .map(row -> Arrays.stream(row).map(Math::log).toArray())
                .toArray(double[][]::new);
        double[] mean = new double[marks];
        for (double[] row : logs) {
            for (int k = 0; k < marks; k++) {
                mean[k] += row[k] / logs.length;
            }
        }
        List<Double> result = new ArrayList<>();
        for (int a = 0; a < marks; a++) {
            for (int b = 0; b < marks; b++) {
                double sum = 0;
                for (double[] row : logs) {
                    sum += (row[a] - mean[a]) * (row[b] - mean[b]);
                }
                result.add(sum / (logs.length - 1) + (a == b ? CLOCK * CLOCK : 0));
            }
        }
        return result;
    }

    /** Returns the number of marks. */
    public int marks() {
        return logTimes.size() / (settings.size() * convections.size());
    }

    /**
     * Returns the logarithm of a time, by straight lines between points.
     *
     * @param mark which mark, from 0
     * @param setting true temperature [-]
     * @param convection heat transfer [-]
     * @return logarithm of the time in s [-]
     */
    double logTime(int mark, double setting, double convection) {
        int i = below(settings, setting);
        int j = below(convections, convection);
        double a = setting - settings.get(i);
        double b = convection - convections.get(j);
        return (1 - a) * ((1 - b) * node(mark, i, j) + b * node(mark, i, j + 1))
                + a * ((1 - b) * node(mark, i + 1, j) + b * node(mark, i + 1, j + 1));
    }

    private static int below(List<Double> axis, double place) {
        int index = (int) Math.floor(place - axis.get(0));
        return Math.max(0, Math.min(axis.size() - 2, index));
    }

    private double node(int mark, int i, int j) {
        return logTimes.get((mark * settings.size() + i) * convections.size() + j);
    }
}
