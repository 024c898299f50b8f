package io.github.saltfront.live;

import io.github.saltfront.numerics.Cholesky;
import io.github.saltfront.numerics.LatinHypercube;
import io.github.saltfront.numerics.NormalDistribution;
import io.github.saltfront.plan.Draw;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Executor;

/**
 * Particles: simulated curves, each held with several hands that differ in what needs no simulation (pace, error and place of the
 * probes). Once an event has happened the pace belongs to the curve, since the event comes at a time of the clock.
 *
 * <p>A swarm is drawn from the prior or from a proposal, a normal distribution fitted to the weighted particles of an earlier
 * swarm and mixed with the prior so that no part of it is left out (population Monte Carlo; Cappe et al. 2004). The logarithm of
 * prior over proposal stays with each particle. Only dimensions for further probes are added later.
 *
 * @see "cappe2004; compared with the ensemble smoother of emerick2013 in decision 0009"
 */
final class Swarm {
    /** Share of a proposal that is the prior. */
    private static final double DEFENSE = 0.1;

    /** Factor on the covariance of a proposal, so that its tails are not too thin. */
    private static final double WIDENING = 1.3;

    private final Curves curves;
    private final int hands;
    private final boolean plain;
    private final double paceCenter;
    private final List<double[]> variates;
    private final double[] logRatio;
    private final double[] pace;
    private final SplittableRandom random;

    private Swarm(
            Curves curves,
            int hands,
            boolean plain,
            double paceCenter,
            List<double[]> variates,
            double[] logRatio,
            SplittableRandom random) {
        this.curves = curves;
        this.hands = hands;
        this.plain = plain;
        this.paceCenter = paceCenter;
        this.variates = new ArrayList<>(variates);
        this.logRatio = logRatio;
        this.random = random;
        pace = new double[logRatio.length];
        double[] z = variates.get(LuckSpace.PACE);
        for (int p = 0; p < pace.length; p++) {
            pace[p] = LuckSpace.pace(z[p], paceCenter);
        }
    }

    /** What a swarm is simulated in. */
    record Scene(LiveSetup setup, Course course, SolidLag lag, double until, int members, int hands) {
        Swarm simulate(List<double[]> variates, double[] logRatio, SplittableRandom random, Executor executor) {
            boolean plain = course.isPlain();
            double center = lag.timeFactor();
            List<Draw> draws = new ArrayList<>();
            double[] paces = new double[members];
            for (int m = 0; m < members; m++) {
                double[] own = new double[LuckSpace.OWN];
                for (int d = 0; d < LuckSpace.OWN; d++) {
                    own[d] = variates.get(d)[m * hands];
                }
                draws.add(LuckSpace.draw(own));
                paces[m] = plain ? 1 : LuckSpace.pace(own[LuckSpace.PACE], center);
            }
            Curves curves = Curves.simulate(setup, course, lag, draws, paces, until, executor);
            return new Swarm(curves, hands, plain, center, variates, logRatio, random);
        }

        int particles() {
            return members * hands;
        }

        int simulatedDimensions() {
            return course.isPlain() ? LuckSpace.PACE : LuckSpace.OWN;
        }
    }

    static Swarm prior(Scene scene, long seed, Executor executor) {
        SplittableRandom random = new SplittableRandom(seed);
        LatinHypercube cube = new LatinHypercube(scene.members, LuckSpace.OWN, seed);
        List<double[]> variates = new ArrayList<>();
        for (int d = 0; d < LuckSpace.OWN; d++) {
            double[] row = new double[scene.particles()];
            for (int p = 0; p < row.length; p++) {
                row[p] = d < scene.simulatedDimensions()
                        ? p % scene.hands == 0 ? NormalDistribution.quantile(cube.get(p / scene.hands, d)) : row[p - 1]
                        : random.nextGaussian();
            }
            variates.add(row);
        }
        return scene.simulate(variates, new double[scene.particles()], random, executor);
    }

    /**
     * Draws a swarm from a proposal fitted to this one.
     *
     * @param weights weights of the particles, sum 1
     */
    Swarm proposed(Scene scene, double[] weights, Executor executor) {
        int n = variates.size();
        SplittableRandom fresh = random.split();
        double[] mean = mean(weights);
        Cholesky factor = Cholesky.of(covariance(weights, mean));
        List<double[]> drawn = new ArrayList<>();
        for (int d = 0; d < n; d++) {
            drawn.add(new double[scene.particles()]);
        }
        double[] ratio = new double[scene.particles()];
        double[] x = new double[n];
        boolean fromPrior = false;
        for (int p = 0; p < scene.particles(); p++) {
            boolean first = p % scene.hands == 0;
            fromPrior = first ? fresh.nextDouble() < DEFENSE : fromPrior;
            for (int d = first ? 0 : scene.simulatedDimensions(); d < n; d++) {
                x[d] = fresh.nextGaussian();
            }
            double[] z = fromPrior ? x.clone() : factor.times(x);
            for (int d = 0; d < n; d++) {
                z[d] += fromPrior ? 0 : mean[d];
                drawn.get(d)[p] = z[d];
            }
            ratio[p] = logRatio(z, mean, factor);
        }
        return scene.simulate(drawn, ratio, fresh, executor);
    }

    private static double logRatio(double[] z, double[] mean, Cholesky factor) {
        double prior = 0;
        double[] off = new double[z.length];
        for (int d = 0; d < z.length; d++) {
            prior += z[d] * z[d];
            off[d] = z[d] - mean[d];
        }
        double fitted = factor.logDeterminant();
        for (double y : factor.solveLower(off)) {
            fitted += y * y;
        }
        // log of q / prior for each part of the mixture
        double narrow = 0.5 * (prior - fitted) + Math.log(1 - DEFENSE);
        double high = Math.max(narrow, Math.log(DEFENSE));
        return -(high + Math.log(Math.exp(narrow - high) + Math.exp(Math.log(DEFENSE) - high)));
    }

    private double[] mean(double[] weights) {
        double[] mean = new double[variates.size()];
        for (int d = 0; d < mean.length; d++) {
            double[] row = variates.get(d);
            for (int p = 0; p < weights.length; p++) {
                mean[d] += weights[p] * row[p];
            }
        }
        return mean;
    }

    private double[][] covariance(double[] weights, double[] mean) {
        int n = mean.length;
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double[] a = variates.get(i);
                double[] b = variates.get(j);
                double sum = 0;
                for (int p = 0; p < weights.length; p++) {
                    sum += weights[p] * (a[p] - mean[i]) * (b[p] - mean[j]);
                }
                covariance[i][j] = WIDENING * sum + (i == j ? 0.02 : 0);
                covariance[j][i] = covariance[i][j];
            }
        }
        return covariance;
    }

    /** A swarm with the same curves, to which dimensions are added apart. */
    Swarm copy(long seed) {
        return new Swarm(
                curves,
                hands,
                plain,
                paceCenter,
                variates.subList(0, LuckSpace.OWN),
                logRatio,
                new SplittableRandom(seed));
    }

    /** Adds a dimension drawn from the prior and returns its number. */
    int addDimension() {
        double[] row = new double[count()];
        for (int p = 0; p < row.length; p++) {
            row[p] = random.nextGaussian();
        }
        variates.add(row);
        return variates.size() - 1;
    }

    int dimensions() {
        return variates.size();
    }

    double variate(int dimension, int particle) {
        return variates.get(dimension)[particle];
    }

    /** Logarithm of prior over proposal of a particle. */
    double logRatio(int particle) {
        return logRatio[particle];
    }

    int count() {
        return logRatio.length;
    }

    int hands() {
        return hands;
    }

    int curve(int particle) {
        return particle / hands;
    }

    Curves curves() {
        return curves;
    }

    double pace(int particle) {
        return pace[particle];
    }

    double paceCenter() {
        return paceCenter;
    }

    private double curveTime(int particle, double time) {
        return plain ? time / pace[particle] : time;
    }

    double core(int particle, double time) {
        return curves.core(particle / hands, curveTime(particle, time));
    }

    double temperature(int particle, double time, double place) {
        return curves.temperature(particle / hands, curveTime(particle, time), place);
    }

    double kill(int particle, double time) {
        return curves.kill(particle / hands, curveTime(particle, time));
    }

    double loss(int particle, double time) {
        return curves.loss(particle / hands, curveTime(particle, time));
    }

    PullLevels levels(int particle) {
        return curves.levels(particle / hands);
    }
}
