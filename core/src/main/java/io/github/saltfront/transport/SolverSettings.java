package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Settings of the layered solver.
 *
 * @param temperatureTolerance error of one step that is accepted, root mean square over the cells [K]
 * @param saltTolerance the same for salt per dry solids [kg/kg]; ten times as much for water
 * @param longestStep longest step [s]
 * @param killRates kinds of kill, each a rate a second at a temperature in K, in any unit: share of a required hold or log
 *     reductions; empty for none
 * @param denaturation protein changes and juice
 */
public record SolverSettings(
        double temperatureTolerance,
        double saltTolerance,
        double longestStep,
        List<DoubleUnaryOperator> killRates,
        Denaturation denaturation) {

    /** Tolerances an order below the 0.05 K a cook's thermometer can show; a step of at most 2 h. */
    public static final SolverSettings DEFAULT = new SolverSettings(0.005, 2e-5, 7200, List.of(), Denaturation.NONE);

    /** Checks the values and copies the list. */
    public SolverSettings {
        killRates = List.copyOf(killRates);
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
        return new SolverSettings(temperature, salt, longestStep, killRates, denaturation);
    }

    /**
     * Returns the settings with one kind of kill and denaturation.
     *
     * @param rate kill a second at a temperature in K
     * @param model protein changes and juice
     * @return the settings
     */
    public SolverSettings withKinetics(DoubleUnaryOperator rate, Denaturation model) {
        return withKinetics(List.of(rate), model);
    }

    /**
     * Returns the settings with kinds of kill and denaturation.
     *
     * @param rates kill a second at a temperature in K, one for each kind
     * @param model protein changes and juice
     * @return the settings
     */
    public SolverSettings withKinetics(List<DoubleUnaryOperator> rates, Denaturation model) {
        return new SolverSettings(temperatureTolerance, saltTolerance, longestStep, rates, model);
    }
}
