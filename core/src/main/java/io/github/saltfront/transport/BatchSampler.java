package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/**
 * Samples core, surface and mean temperature of every member of a solver at regular times of one stage, from the dense output
 * of the solver. All storage is allocated at the start. Not thread-safe.
 */
public final class BatchSampler implements StepSink {
    private static final int QUANTITIES = 3;

    private final double every;
    private final int samples;
    private final double[] values;
    private final int[] filled;

    /**
     * Creates a sampler for one stage.
     *
     * @param members number of members of the solver
     * @param every time between samples [s]; the first is taken this long after the start of the stage
     * @param samples number of samples of each member
     */
    public BatchSampler(int members, double every, int samples) {
        Checks.require(members > 0, "a sampler needs at least one member, got " + members + ".");
        Checks.require(samples > 0, "a sampler needs at least one sample, got " + samples + ".");
        this.every = Checks.requirePositive("time between samples", every, "s");
        this.samples = samples;
        values = new double[QUANTITIES * members * samples];
        filled = new int[members];
    }

    @Override
    public void accept(LayerSolver solver, int member, double start, double end) {
        int index = filled[member];
        // a sample at the very end of the stage may lie beyond the last step by round-off
        double reached = end * (1 + 1e-9);
        while (index < samples && (index + 1) * every <= reached) {
            double theta = Math.min(1, ((index + 1) * every - start) / (end - start));
            int place = QUANTITIES * (member * samples + index);
            values[place] = solver.coreTemperature(member, theta);
            values[place + 1] = solver.faceTemperature(0, member, theta);
            values[place + 2] = solver.meanTemperature(member, theta);
            index++;
        }
        filled[member] = index;
    }

    /**
     * Returns how many samples of a member have been taken; fewer than asked for if the stage ended early.
     *
     * @param member which member
     * @return samples
     */
    public int filled(int member) {
        return filled[member];
    }

    /**
     * Returns a sample of the temperature in the middle.
     *
     * @param member which member
     * @param sample which sample, 0 for the first
     * @return temperature [K]
     */
    public double core(int member, int sample) {
        return value(member, sample, 0);
    }

    /**
     * Returns a sample of the temperature of the first face.
     *
     * @param member which member
     * @param sample which sample, 0 for the first
     * @return temperature [K]
     */
    public double surface(int member, int sample) {
        return value(member, sample, 1);
    }

    /**
     * Returns a sample of the mean temperature by volume.
     *
     * @param member which member
     * @param sample which sample, 0 for the first
     * @return temperature [K]
     */
    public double mean(int member, int sample) {
        return value(member, sample, 2);
    }

    private double value(int member, int sample, int quantity) {
        if (!(sample >= 0 && sample < filled[member])) {
            throw new IllegalArgumentException(
                    "member " + member + " has " + filled[member] + " sample(s), asked for number " + sample + ".");
        }
        return values[QUANTITIES * (member * samples + sample) + quantity];
    }
}
