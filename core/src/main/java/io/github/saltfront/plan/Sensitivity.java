package io.github.saltfront.plan;

import io.github.saltfront.numerics.DenseSolve;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much one uncertain thing moves a result: the slope of a linear regression of the result on the luck of all members, times
 * what takes the thing from its median to its 95th percentile.
 *
 * @param result which result
 * @param input what is uncertain
 * @param effect change of the result when the input goes from its median to its 95th percentile, in the unit of the result
 * @param share share of the variance of the result that the input alone explains [-]
 */
public record Sensitivity(Result result, Uncertainty input, double effect, double share) {
    /** Least share of the variance that is worth telling [-]. */
    private static final double LEAST_SHARE = 0.03;

    /** What is looked at. */
    public enum Result {
        /** Time in the appliance [s]. */
        TIME_TO_PULL,
        /** Mean salt when served [kg/kg]. */
        MEAN_SALT,
        /** Weight lost from raw to served [kg/kg]. */
        MASS_LOSS
    }

    /**
     * Ranks what matters to a result.
     *
     * @param result which result
     * @param draws luck of the members
     * @param values result of each member; not modified
     * @return what explains a share worth telling, most first
     */
    static List<Sensitivity> ranked(Result result, List<Draw> draws, double[] values) {
        int n = Uncertainty.values().length;
        double[] mean = new double[n + 1];
        for (int i = 0; i < values.length; i++) {
            for (Uncertainty u : Uncertainty.values()) {
                mean[u.ordinal()] += draws.get(i).normal(u) / values.length;
            }
            mean[n] += values[i] / values.length;
        }
        double[][] products = new double[n][n];
        double[] right = new double[n];
        double variance = 0;
        double[] centered = new double[n];
        for (int i = 0; i < values.length; i++) {
            for (Uncertainty u : Uncertainty.values()) {
                centered[u.ordinal()] = draws.get(i).normal(u) - mean[u.ordinal()];
            }
            double value = values[i] - mean[n];
            variance += value * value;
            for (int a = 0; a < n; a++) {
                right[a] += centered[a] * value;
                for (int b = 0; b < n; b++) {
                    products[a][b] += centered[a] * centered[b];
                }
            }
        }
        if (!(variance > 0)) {
            return List.of();
        }
        double[] slopes = DenseSolve.solve(products, right);
        List<Sensitivity> all = new ArrayList<>();
        for (Uncertainty u : Uncertainty.values()) {
            int a = u.ordinal();
            double share = slopes[a] * slopes[a] * products[a][a] / variance;
            if (share >= LEAST_SHARE) {
                all.add(new Sensitivity(result, u, Draw.NINETY_FIVE * slopes[a], Math.min(1, share)));
            }
        }
        all.sort(Comparator.comparingDouble(Sensitivity::share).reversed());
        return List.copyOf(all);
    }

    static List<Sensitivity> of(List<Draw> draws, List<MemberDay> days, double timeFactor) {
        int n = days.size();
        double[] time = new double[n];
        double[] salt = new double[n];
        double[] loss = new double[n];
        for (int i = 0; i < n; i++) {
            MemberDay.StageEnd heat = days.get(i).end(CookStages.HEAT);
            MemberDay.StageEnd served = days.get(i).end(CookStages.REST);
            time[i] = timeFactor * (heat.end() - heat.start());
            salt[i] = served.meanSalt();
            loss[i] = served.massLoss();
        }
        List<Sensitivity> all = new ArrayList<>(ranked(Result.TIME_TO_PULL, draws, time));
        all.addAll(ranked(Result.MEAN_SALT, draws, salt));
        all.addAll(ranked(Result.MASS_LOSS, draws, loss));
        return List.copyOf(all);
    }
}
