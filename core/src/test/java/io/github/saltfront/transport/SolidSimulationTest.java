package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.History.Series;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Histories of the two solvers side by side; the composition is invented, near that of lean meat. */
class SolidSimulationTest {
    private static final Composition LEAN = Composition.ofPrinted(0.75, 0.22, 0.02, 0, 0.01);
    private static final DoubleUnaryOperator KILL =
            kelvin -> Math.pow(10, (kelvin - Temperature.fromCelsius(60)) / 6) / 300;
    private static final DoubleUnaryOperator SLOWER = kelvin -> 0.1 * KILL.applyAsDouble(kelvin);
    private static final SolverSettings SETTINGS =
            SolverSettings.DEFAULT.withKinetics(List.of(KILL, SLOWER), Denaturation.NONE);
    private static final SimulationOutput EVERY_MINUTE = new SimulationOutput(60, true, 0);

    private static Piece piece(Shape shape) {
        return new Piece(
                shape,
                new InitialState(Temperature.fromCelsius(4), LEAN.waterPerSolids(), 0.01),
                MeatHeat.of(LEAN),
                new SaltProperties(1e-9, 25000, 0.95, 1, 0),
                true,
                1);
    }

    private static List<Stage> day() {
        FaceCondition cold = FaceCondition.convection(Temperature.fromCelsius(4), 50);
        FaceCondition oven = FaceCondition.convection(Temperature.fromCelsius(150), 25);
        FaceCondition bench = FaceCondition.convection(Temperature.fromCelsius(20), 8);
        SaltExchange brine = SaltExchange.Bath.of(0.06, 2, SaltSource.Swelling.NONE);
        StopRule done = new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(60));
        return List.of(
                new Stage("soak", List.of(cold), brine, 3 * 3600, StopRule.NEVER),
                new Stage("heat", List.of(oven), SaltExchange.NONE, 4 * 3600, done),
                new Stage("rest", List.of(bench), SaltExchange.NONE, 900, StopRule.NEVER));
    }

    /** A sphere is exact in layers, so that the two histories must agree within the stated error of both grids. */
    @Test
    void historyOfASphereIsThatOfTheLayers() {
        Piece ball = piece(new Shape.Sphere(0.06));
        History layers = Simulation.run(ball, day(), SETTINGS, EVERY_MINUTE);
        History solid = SolidSimulation.run(ball, day(), SETTINGS, EVERY_MINUTE, 12000);
        double error =
                layers.diagnostics().discretizationError() + solid.diagnostics().discretizationError();
        assertThat(error).isLessThan(0.2);
        double heated = layers.stages().get(1).end();
        assertThat(solid.stages().get(1).end()).isCloseTo(heated, within(0.01 * heated));
        double fiveMinutesBefore = 60 * Math.floor(heated / 60) - 300;
        for (Series series : List.of(Series.CORE_TEMPERATURE, Series.MEAN_TEMPERATURE, Series.SURFACE_TEMPERATURE)) {
            // the surface of a coarse grid lags by more than the middle, of which the error is known
            double bound = series == Series.CORE_TEMPERATURE ? 2 * error : 1;
            assertThat(solid.at(series, fiveMinutesBefore))
                    .as(series.name())
                    .isCloseTo(layers.at(series, fiveMinutesBefore), within(bound));
        }
        for (Series series : List.of(Series.CORE_KILL, Series.LEAST_KILL, Series.LEAST_SECOND_KILL, Series.MEAN_SALT)) {
            double ratio = solid.value(series, solid.size() - 1) / layers.value(series, layers.size() - 1);
            assertThat(ratio).as(series.name()).isCloseTo(1, within(0.08));
        }
        assertThat(solid.diagnostics().balance().largest()).isLessThan(1e-9);
    }

    @Test
    void historyIsMonotonousWhereItMustBeAndEndsAtTheEnd() {
        History history =
                SolidSimulation.run(piece(new Shape.Box(0.12, 0.08, 0.03)), day(), SETTINGS, EVERY_MINUTE, 4000);
        double[] kill = history.series(Series.LEAST_KILL);
        for (int i = 1; i < kill.length; i++) {
            assertThat(kill[i]).isGreaterThanOrEqualTo(kill[i - 1]);
            assertThat(kill[i]).isLessThanOrEqualTo(history.value(Series.CORE_KILL, i) * (1 + 1e-12));
            assertThat(history.value(Series.LEAST_SECOND_KILL, i))
                    .isCloseTo(0.1 * kill[i], within(1e-9 + 1e-6 * kill[i]));
        }
        assertThat(history.value(Series.TIME, history.size() - 1))
                .isCloseTo(history.stages().get(2).end(), within(1e-6));
        double[] depths = history.depths();
        assertThat(depths.length).isGreaterThan(4);
        assertThat(history.temperatures(history.size() - 1)).hasSameSizeAs(depths);
        assertThat(depths[0]).isLessThan(0.002);
        assertThat(depths[depths.length - 1]).isBetween(0.012, 0.015);
    }

    @Test
    void automaticGridStatesItsError() {
        History history = SolidSimulation.run(
                piece(new Shape.Ellipsoid(0.1, 0.08, 0.05)), day().subList(1, 3), SETTINGS, SimulationOutput.every(60));
        assertThat(history.diagnostics().solver()).isEqualTo(Diagnostics.Solver.SOLID);
        assertThat(history.diagnostics().discretizationError()).isBetween(1e-6, 2 * SolidSimulation.TARGET_ERROR);
    }

    @Test
    void iceInACurvedPieceIsRefused() {
        Piece ball = piece(new Shape.Sphere(0.06));
        FaceCondition freezer = FaceCondition.convection(Temperature.fromCelsius(-18), 15);
        Stage freezing = new Stage("hold", List.of(freezer), SaltExchange.NONE, 3600, StopRule.NEVER);
        assertThatThrownBy(() -> SolidSimulation.run(ball, List.of(freezing), SETTINGS, SimulationOutput.every(60)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("only a box");
    }

    @Test
    void slabsAreRefusedWithAWayOut() {
        assertThatThrownBy(() ->
                        SolidSimulation.run(piece(new Shape.Slab(0.03)), day(), SETTINGS, SimulationOutput.every(60)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a slab has no sides")
                .hasMessageContaining("1d");
    }
}
