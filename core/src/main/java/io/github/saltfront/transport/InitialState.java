package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/**
 * Uniform state of a piece before its first stage.
 *
 * @param temperature temperature [K]
 * @param water water per dry solids [kg/kg]
 * @param salt salt per dry solids [kg/kg]
 */
public record InitialState(double temperature, double water, double salt) {
    /** Checks the values. */
    public InitialState {
        Checks.requireInRange("start temperature", temperature, 230, 400, "K");
        Checks.requireInRange("water per dry solids", water, 0.01, 100, "kg/kg");
        Checks.requireInRange("salt per dry solids", salt, 0, 1, "kg/kg");
    }
}
