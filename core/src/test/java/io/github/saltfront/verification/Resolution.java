package io.github.saltfront.verification;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.SolverSettings;

/**
 * Grid and tolerance of one run. A checked value is the one of {@link #BASE}; two more runs, one on a grid with each layer
 * split in two and one with a tighter tolerance, give an estimate of its error.
 *
 * @param cells number of layers
 * @param outerCell thickness of the outermost layer, relative to the extent [-]
 * @param temperature temperature tolerance [K]
 * @param salt salt tolerance [kg/kg]
 */
record Resolution(int cells, double outerCell, double temperature, double salt) {
    static final Resolution BASE = new Resolution(60, 1.0 / 240, 0.005, 2e-5);

    /** Tolerance of the tighter run over that of the base; with order three it has steps a third as long. */
    private static final double TIGHTER = 1.0 / 27;

    /** Splits every layer in two with the same law of growth, so that both grids belong to one family. */
    Resolution finer() {
        LayerGrid grid = LayerGrid.symmetric(0, cells, outerCell);
        double last = grid.edge(cells) - grid.edge(cells - 1);
        double before = grid.edge(cells - 1) - grid.edge(cells - 2);
        return new Resolution(2 * cells, outerCell / (1 + Math.sqrt(before / last)), temperature, salt);
    }

    Resolution tighter() {
        return new Resolution(cells, outerCell, temperature * TIGHTER, salt * TIGHTER);
    }

    LayerGrid grid(double exponent) {
        return LayerGrid.symmetric(exponent, cells, outerCell);
    }

    SolverSettings settings() {
        return SolverSettings.DEFAULT.withTolerances(temperature, salt);
    }
}
