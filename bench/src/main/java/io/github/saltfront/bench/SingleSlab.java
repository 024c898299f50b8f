package io.github.saltfront.bench;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.History;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.Piece;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.Simulation;
import io.github.saltfront.transport.SimulationOutput;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Temperature;
import java.util.List;

/** One slab of 30 mm for an hour in a moist oven, with automatic layers. */
final class SingleSlab {
    private static final FaceCondition OVEN = new FaceCondition(
            TimeProfile.constant(Temperature.fromCelsius(120)), TimeProfile.constant(20), 0.9, 0.5, 2500, 101_325);

    private final Piece piece;
    private final List<Stage> stages =
            List.of(new Stage("oven", List.of(OVEN), SaltExchange.NONE, 3600, StopRule.NEVER));
    private String summary = "";

    SingleSlab() {
        Composition meat = SlabCase.MEAT;
        piece = new Piece(
                new Shape.Slab(0.03),
                new InitialState(Temperature.fromCelsius(5), meat.waterPerSolids(), 0),
                MeatHeat.of(meat),
                new SaltProperties(3e-10, 25_000, 1, 1, 0),
                true,
                1);
    }

    void run() {
        History history = Simulation.run(piece, stages, SolverSettings.DEFAULT, SimulationOutput.every(60));
        summary = history.diagnostics().cells() + " layers, "
                + history.diagnostics().steps() + " steps";
    }

    String summary() {
        return summary;
    }
}
