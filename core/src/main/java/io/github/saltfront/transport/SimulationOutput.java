package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/**
 * What a simulation records and how finely it computes.
 *
 * @param every time between samples [s]
 * @param field true to record temperature and salt of every layer at every sample
 * @param layers layers of the grid; 0 to choose them so that the estimated error of the core stays below {@link
 *     Simulation#TARGET_ERROR}
 */
public record SimulationOutput(double every, boolean field, int layers) {
    /** Checks the values. */
    public SimulationOutput {
        Checks.requireInRange("time between samples", every, 0.1, 86400, "s");
        Checks.require(
                layers == 0 || (layers >= 8 && layers <= 2000 && layers % 2 == 0),
                "number of layers must be 0 (automatic) or an even number from 8 to 2000, got " + layers + ".");
    }

    /**
     * Returns automatic layers and no field.
     *
     * @param every time between samples [s]
     * @return the output
     */
    public static SimulationOutput every(double every) {
        return new SimulationOutput(every, false, 0);
    }
}
