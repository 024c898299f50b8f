package io.github.saltfront.verification;

import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.StepSink;

/** Finds the highest core temperature of a stage and its time from the dense output. */
final class PeakFinder implements StepSink {
    private static final int SAMPLES = 200;
    private double height = Double.NEGATIVE_INFINITY;
    private double time;

    @Override
    public void accept(LayerSolver solver, int member, double start, double end) {
        for (int i = 0; i <= SAMPLES; i++) {
            double theta = (double) i / SAMPLES;
            double t = solver.coreTemperature(member, theta);
            if (t > height) {
                height = t;
                time = start + theta * (end - start);
            }
        }
    }

    double height() {
        return height;
    }

    double time() {
        return time;
    }
}
