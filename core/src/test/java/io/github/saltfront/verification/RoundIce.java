package io.github.saltfront.verification;

import io.github.saltfront.transport.FrozenState;

/**
 * Ice that forms as in an ideal solution, in the simplest form: freezing point t_f = -1 - 0.3 s (s salt per dry solids in
 * percent), share of frozen water 1 - t_f / t, capacity of the rest constant. Enthalpy is continuous at t_f with the
 * properties of {@link VariablePiece}; figures are round.
 */
final class RoundIce implements FrozenState {
    private static final double LATENT = 334_000;
    private static final double BOUND_WATER = 0.3;
    private static final double FROZEN_CAPACITY = 7500;

    @Override
    public double upperLimit(double water, double salt) {
        return -1 - 30 * Math.max(salt, 0);
    }

    private static double freezable(double water) {
        return Math.max(water - BOUND_WATER, 0.01);
    }

    private double atFreezing(double water, double salt) {
        return liquid(upperLimit(water, salt), water, salt);
    }

    private static double liquid(double t, double w, double s) {
        double c0 = 2000 + w * 4176 + s * 1093;
        double c1 = 1.2 - w * 0.09 + s * 1.9;
        double c2 = -1.3e-3 + w * 5.5e-3 - s * 3.7e-3;
        return t * (c0 + t * (c1 / 2 + t * c2 / 3));
    }

    @Override
    public double enthalpy(double celsius, double water, double salt) {
        double tf = upperLimit(water, salt);
        return atFreezing(water, salt)
                - FROZEN_CAPACITY * (tf - celsius)
                - LATENT * freezable(water) * (1 - tf / celsius);
    }

    @Override
    public double temperature(double enthalpy, double water, double salt) {
        double tf = upperLimit(water, salt);
        double latent = LATENT * freezable(water);
        // with x = tf - t: missing = C x + latent x / (x - tf), a quadratic in x
        double missing = atFreezing(water, salt) - enthalpy;
        double b = latent - FROZEN_CAPACITY * tf - missing;
        double x = (-b + Math.sqrt(b * b - 4 * FROZEN_CAPACITY * missing * tf)) / (2 * FROZEN_CAPACITY);
        return tf - x;
    }

    @Override
    public double heatCapacity(double celsius, double water, double salt) {
        return FROZEN_CAPACITY - LATENT * freezable(water) * upperLimit(water, salt) / (celsius * celsius);
    }

    @Override
    public double conductivity(double celsius, double water, double salt) {
        return 0.45 + 0.9 * (1 - upperLimit(water, salt) / celsius);
    }
}
