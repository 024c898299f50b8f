package io.github.saltfront.live;

import io.github.saltfront.units.Checks;

/**
 * How well each particle explains the readings of one probe in the meat. The difference between reading and particle is white
 * noise and a drifting error of the model, an Ornstein-Uhlenbeck process; a Kalman filter of that one state gives the likelihood
 * exactly (Kennedy, O'Hagan 2001 for the idea of a model discrepancy). Readings are taken together in bins of equal length.
 *
 * <p>Not thread-safe.
 *
 * @see "kennedy2001"
 */
final class ProbeFilter {
    /** Noise that a bin keeps however many readings it holds [K]; estimate. */
    private static final double BIN_NOISE = 0.2;

    /** Noise of one reading, with the step of the display [K]; estimate. */
    private static final double READING_NOISE = 0.4;

    /** Innovation in standard deviations of the whole swarm beyond which the model is not believed. */
    private static final double SHOCK = 4;

    private final Swarm swarm;
    private final double bin;
    private final double correlation;
    private final double stationary;
    private final double[] error;
    private final double[] place;
    private final double[] committed;
    private final double[] committedMean;
    private final double[] current;
    private final double[] currentMean;
    private double committedVariance;
    private double currentVariance;
    private double committedTime = Double.NaN;
    private long openBin = Long.MIN_VALUE;
    private double openTime;
    private double openSum;
    private int openCount;
    private double[] openWeights = new double[0];
    private boolean openShock;
    private boolean stale;
    private int shocks;

    /**
     * Creates a filter that has seen nothing.
     *
     * @param doubt factor on the drifting error of the model [-], 1 unless the readings lie outside of what it can do
     */
    ProbeFilter(Swarm swarm, int errorDimension, int placeDimension, double bin, double correlation, double doubt) {
        this.swarm = swarm;
        this.bin = Checks.requirePositive("length of a bin", bin, "s");
        this.correlation = Checks.requirePositive("correlation time", correlation, "s");
        stationary = Math.pow(swarm.curves().discrepancy() * doubt, 2);
        committedVariance = stationary;
        currentVariance = stationary;
        int n = swarm.count();
        error = new double[n];
        place = new double[n];
        committed = new double[n];
        committedMean = new double[n];
        current = new double[n];
        currentMean = new double[n];
        for (int p = 0; p < n; p++) {
            error[p] = LuckSpace.probeError(swarm.variate(errorDimension, p));
        }
        setPlace(placeDimension);
    }

    /** Takes the places of a new spot. */
    void setPlace(int dimension) {
        commit();
        for (int p = 0; p < place.length; p++) {
            place[p] = LuckSpace.place(swarm.variate(dimension, p));
        }
    }

    /**
     * Adds a reading later than those before.
     *
     * @param weights weights of the particles before it, for the check whether the swarm explains it at all
     */
    void add(double time, double temperature, double[] weights) {
        long number = (long) Math.floor(time / bin);
        if (number != openBin) {
            commit();
            openBin = number;
        }
        openTime = (openTime * openCount + time) / (openCount + 1);
        openSum += temperature;
        openCount++;
        openWeights = weights;
        stale = true;
    }

    /** Takes the open bin into account; put off until somebody asks, so that a bin of many readings costs one pass. */
    private void update() {
        if (!stale) {
            return;
        }
        stale = false;
        double[] weights = openWeights;
        double reading = openSum / openCount;
        double noise = BIN_NOISE * BIN_NOISE + READING_NOISE * READING_NOISE / openCount;
        double decay = decay(openTime);
        double variance = predictedVariance(decay);
        double mean = 0;
        double square = 0;
        for (int p = 0; p < current.length; p++) {
            double expected = expected(p, openTime) + decay * committedMean[p];
            current[p] = expected;
            mean += weights[p] * expected;
            square += weights[p] * expected * expected;
        }
        double swarmVariance = Math.max(0, square - mean * mean);
        double innovation = reading - mean;
        boolean shock = innovation * innovation > SHOCK * SHOCK * (swarmVariance + variance + noise);
        openShock = shock;
        if (shock) {
            variance += innovation * innovation;
        }
        double total = variance + noise;
        double gain = variance / total;
        for (int p = 0; p < current.length; p++) {
            double off = reading - current[p];
            currentMean[p] = decay * committedMean[p] + gain * off;
            current[p] = committed[p] - 0.5 * off * off / total;
        }
        currentVariance = variance * (1 - gain);
    }

    private double decay(double time) {
        return Double.isNaN(committedTime) ? 1 : Math.exp(-Math.abs(time - committedTime) / correlation);
    }

    private double predictedVariance(double decay) {
        return committedVariance * decay * decay + stationary * (1 - decay * decay);
    }

    private void commit() {
        if (openCount == 0) {
            return;
        }
        update();
        shocks += openShock ? 1 : 0;
        openShock = false;
        System.arraycopy(current, 0, committed, 0, current.length);
        System.arraycopy(currentMean, 0, committedMean, 0, current.length);
        committedVariance = currentVariance;
        committedTime = openTime;
        openCount = 0;
        openSum = 0;
        openTime = 0;
    }

    /** Reading that a particle expects, without the drifting error [K]. */
    double expected(int particle, double time) {
        return swarm.temperature(particle, time, place[particle]) + error[particle];
    }

    /** Reading that a particle expects with the drifting error it has now [K]. */
    double forecast(int particle, double time) {
        return expected(particle, time) + driftAhead(particle, time);
    }

    /** Mean of the drifting error of a particle at a later time [K]. */
    double driftAhead(int particle, double time) {
        return openCount == 0 && Double.isNaN(committedTime) ? 0 : decayAhead(time) * mean(particle);
    }

    /** Share of the drifting error that is left at a later time [-]. */
    double decayAhead(double time) {
        return Math.exp(-Math.max(0, time - lastTime()) / correlation);
    }

    /** Variance of the drifting error at a later time [K2]. */
    double varianceAhead(double time) {
        update();
        double decay = decayAhead(time);
        double now = openCount > 0 ? currentVariance : committedVariance;
        return now * decay * decay + stationary * (1 - decay * decay);
    }

    private double mean(int particle) {
        update();
        return openCount > 0 ? currentMean[particle] : committedMean[particle];
    }

    private double lastTime() {
        return openCount > 0 ? openTime : Double.isNaN(committedTime) ? 0 : committedTime;
    }

    /** Logarithm of the likelihood of a particle, but for a constant. */
    double logLikelihood(int particle) {
        update();
        return openCount > 0 ? current[particle] : committed[particle];
    }

    /** How much warmer the tip is than the coldest spot for a particle [K]. */
    double aboveCore(int particle, double time) {
        return swarm.temperature(particle, time, place[particle]) - swarm.core(particle, time);
    }

    /** How often the swarm could not explain a bin. */
    int shocks() {
        update();
        return shocks + (openCount > 0 && openShock ? 1 : 0);
    }

    /** Mean and standard deviation of the expected reading over the swarm. */
    double[] band(double time, double[] weights) {
        double mean = 0;
        double square = 0;
        for (int p = 0; p < place.length; p++) {
            double expected = forecast(p, time);
            mean += weights[p] * expected;
            square += weights[p] * expected * expected;
        }
        double variance = Math.max(0, square - mean * mean) + varianceAhead(time) + READING_NOISE * READING_NOISE;
        return new double[] {mean, Math.sqrt(variance)};
    }
}
