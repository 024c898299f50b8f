package io.github.saltfront.bench;

import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SolidPiece;
import io.github.saltfront.transport.SolidSink;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Temperature;

/** A roast of the shape of an ellipsoid, 220 x 150 x 120 mm, for 4 h in an oven of 120 degrees Celsius. */
final class SolidRoast {
    private static final int CELLS = 100_000;
    private static final FaceCondition OVEN = new FaceCondition(
            TimeProfile.constant(Temperature.fromCelsius(120)), TimeProfile.constant(20), 0.9, 0.3, 2500, 101_325);

    private String summary = "";

    void run() {
        SolidGrid grid = SolidGrid.ellipsoid(0.22, 0.15, 0.12, CELLS, 1);
        SolidPiece piece = new SolidPiece(
                new InitialState(Temperature.fromCelsius(5), SlabCase.MEAT.waterPerSolids(), 0),
                MeatHeat.of(SlabCase.MEAT),
                new SaltProperties(3e-10, 25_000, 1, 1, 0),
                true);
        SolidSolver solver = new SolidSolver(grid, piece, SolverSettings.DEFAULT);
        solver.run(StageInput.of(OVEN, 4 * 3600), SolidSink.NONE);
        summary = grid.cells() + " cells solved, standing for " + grid.copies() + " times as many, " + solver.steps()
                + " steps, core " + Math.round(Temperature.toCelsius(solver.coreTemperature()) * 10) / 10.0 + " C";
    }

    String summary() {
        return summary;
    }
}
