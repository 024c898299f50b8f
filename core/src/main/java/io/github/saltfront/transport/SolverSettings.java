package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;
import java.util.function.DoubleUnaryOperator;

/**
 * Settings of the layered solver.
 *
 * @param temperatureTolerance error of one step that is accepted, root mean square over the cells [K]
 * @param saltTolerance the same for salt per dry solids [kg/kg]; ten times as much for water
 * @param longestStep longest step [s]
 * @param killRate kill a second at a temperature in K, in any unit: share of a required hold or log reductions
 * @param denaturation protein changes and juice
 */
public record SolverSettings(
        double temperatureTolerance,
        double saltTolerance,
        double longestStep,
        DoubleUnaryOperator killRate,
        Denaturation denaturation) {

    /** No kill is computed. */
    public static final DoubleUnaryOperator NO_KILL = kelvin -> 0;

    /** Tolerances an order below the 0.05 K a cook's thermometer can show; a step of at most 2 h. */
    public static final SolverSettings DEFAULT = new SolverSettings(0.005, 2e-5, 7200, NO_KILL, Denaturation.NONE);

    /** Checks the values. */
    public SolverSettings {
        Checks.requireInRange("temperature tolerance", temperatureTolerance, 1e-9, 10, "K");
        Checks.requireInRange("salt tolerance", saltTolerance, 1e-12, 1, "kg/kg");
        Checks.requireInRange("longest step", longestStep, 1e-3, 1e7, "s");
    }

    /**
     * Returns the settings with other tolerances.
     *
     * @param temperature temperature tolerance [K]
     * @param salt salt tolerance [kg/kg]
     * @return the settings
     */
    public SolverSettings withTolerances(double temperature, double salt) {
        return new SolverSettings(temperature, salt, longestStep, killRate, denaturation);
    }

    /**
     * Returns the settings with kill and denaturation.
     *
     * @param rate kill a second at a temperature in K
     * @param model protein changes and juice
     * @return the settings
     */
    public SolverSettings withKinetics(DoubleUnaryOperator rate, Denaturation model) {
        return new SolverSettings(temperatureTolerance, saltTolerance, longestStep, rate, model);
    }
}
