package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.units.Temperature;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An event in the last thousandth before the end of a stage or a change of the medium: a step must end there and not go round. */
class EventNearBreakTest {
    private static final Composition LEAN = Composition.ofPrinted(0.75, 0.22, 0.02, 0, 0.01);
    private static final InitialState COLD = new InitialState(Temperature.fromCelsius(4), LEAN.waterPerSolids(), 0.01);
    private static final SaltProperties SALT = new SaltProperties(1e-9, 25000, 0.95, 1, 0);
    private static final FaceCondition BATH = FaceCondition.convection(Temperature.fromCelsius(80), 300);
    private static final StopRule DONE = new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(60));

    /** Shares of the time to the event by which the stage is longer than it. */
    private static final double[] BEYOND = {3e-5, 6e-5, 1e-4, 1.5e-4, 3e-4, 6e-4};

    private static LayerSolver slab(double duration) {
        LayerSolver solver = new LayerSolver(
                LayerGrid.symmetric(0, 32, 0.005),
                List.of(new Member(0.015, 1, COLD, MeatHeat.of(LEAN), SALT, true)),
                SolverSettings.DEFAULT.withTolerances(0.2, 1e-3));
        solver.run(List.of(StageInput.of(BATH, duration).until(DONE)), StepSink.NONE);
        return solver;
    }

    private static SolidSolver box(double duration) {
        SolidSolver solver = new SolidSolver(
                SolidGrid.box(0.1, 0.08, 0.03, 600, 1),
                new SolidPiece(COLD, MeatHeat.of(LEAN), SALT, true),
                SolverSettings.DEFAULT.withTolerances(0.2, 1e-3));
        solver.run(StageInput.of(BATH, duration).until(DONE), SolidSink.NONE);
        return solver;
    }

    @Test
    void layersStopAtAnEventJustBeforeTheEnd() {
        double time = slab(7200).stageTime(0);
        int stopped = 0;
        for (double share : BEYOND) {
            LayerSolver solver = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> slab(time * (1 + share)));
            assertThat(solver.stageTime(0)).isCloseTo(time, within(0.002 * time));
            assertThat(solver.coreTemperature(0)).isCloseTo(DONE.threshold(), within(0.02));
            stopped += solver.wasStopped(0) ? 1 : 0;
        }
        assertThat(stopped).as("stages ended by the event").isPositive();
    }

    @Test
    void solidsStopAtAnEventJustBeforeTheEnd() {
        double time = box(7200).stageTime();
        int stopped = 0;
        for (double share : BEYOND) {
            SolidSolver solver = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> box(time * (1 + share)));
            assertThat(solver.stageTime()).isCloseTo(time, within(0.002 * time));
            assertThat(solver.coreTemperature()).isCloseTo(DONE.threshold(), within(0.02));
            stopped += solver.wasStopped() ? 1 : 0;
        }
        assertThat(stopped).as("stages ended by the event").isPositive();
    }
}
