package io.github.saltfront.learn;

import io.github.saltfront.numerics.Cholesky;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * A cook whose times were noted, beside what the model says of them.
 *
 * @param response what the model says
 * @param times time to each mark since the start of the heat [s]
 */
public record TimedCook(TimingResponse response, List<Double> times) {
    /** Copies the list and checks it. */
    public TimedCook {
        times = List.copyOf(times);
        Checks.require(
                times.size() == response.marks(),
                "a timed cook needs a time for each of " + response.marks() + " marks, got " + times.size() + ".");
        times.forEach(time -> Checks.requirePositive("time to a reading", time, "s"));
    }

    /** Factor of the covariance; found once for all places of a grid. */
    Cholesky factor() {
        int n = times.size();
        double[][] covariance = new double[n][n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                covariance[a][b] = response.covariance().get(a * n + b);
            }
        }
        return Cholesky.of(covariance);
    }

    /** Logarithm of the likelihood at a true temperature and heat transfer [-], up to a constant. */
    double logLikelihood(Cholesky factor, double setting, double convection) {
        double[] apart = new double[times.size()];
        for (int k = 0; k < apart.length; k++) {
            apart[k] = Math.log(times.get(k)) - response.logTime(k, setting, convection);
        }
        double sum = 0;
        for (double value : factor.solveLower(apart)) {
            sum += value * value;
        }
        return -0.5 * sum;
    }
}
