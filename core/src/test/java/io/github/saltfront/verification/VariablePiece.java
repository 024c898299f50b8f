package io.github.saltfront.verification;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.FrozenState;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.units.Temperature;
import java.util.List;

/** A piece whose properties change with temperature, water and salt, by round numbers near those of lean meat. */
final class VariablePiece {
    static final double WATER = 3;
    static final double DRY_DENSITY = 265;
    static final double EXTENT = 0.015;

    private VariablePiece() {}

    static HeatProperties heat(FrozenState ice) {
        return new HeatProperties(
                DRY_DENSITY,
                WATER,
                new double[] {2000, 1.2, -1.3e-3},
                new double[] {4176, -0.09, 5.5e-3},
                new double[] {1093, 1.9, -3.7e-3},
                new double[] {0.46, 1.3e-3, -5e-6},
                new double[] {0.12, 3e-4},
                ice);
    }

    static Member member(double extent, double startC, double salt, boolean waterFixed, FrozenState ice) {
        return new Member(
                extent,
                1,
                new InitialState(Temperature.fromCelsius(startC), WATER, salt),
                heat(ice),
                new SaltProperties(3e-10, 25_000, 1, 1, 0),
                waterFixed);
    }

    static LayerSolver solver(LayerGrid grid, SolverSettings settings) {
        return new LayerSolver(grid, List.of(member(EXTENT, 5, 0, true, FrozenState.NONE)), settings);
    }
}
