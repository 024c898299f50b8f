package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Kinds of kill, where the least is taken, and frozen pieces; composition invented, near that of lean meat. */
class SolidKillTest {
    private static final Composition LEAN = Composition.ofPrinted(0.75, 0.22, 0.02, 0, 0.01);
    private static final HeatProperties MEAT = MeatHeat.of(LEAN);
    private static final SaltProperties SALT = new SaltProperties(1e-9, 25000, 0.95, 1, 0);
    private static final DoubleUnaryOperator FIRST =
            kelvin -> Math.pow(10, (kelvin - Temperature.fromCelsius(60)) / 6) / 300;

    /** Nothing below 58 degrees Celsius, as in official tables. */
    private static final DoubleUnaryOperator SECOND =
            kelvin -> kelvin < Temperature.fromCelsius(58) ? 0 : 1e-3 * (kelvin - Temperature.fromCelsius(57));

    private static final SolverSettings TWO_KINDS =
            SolverSettings.DEFAULT.withKinetics(List.of(FIRST, SECOND), Denaturation.NONE);

    private static InitialState start(double celsius) {
        return new InitialState(Temperature.fromCelsius(celsius), LEAN.waterPerSolids(), 0.01);
    }

    private static SolidSolver plate(double celsius, int cells, SolverSettings settings) {
        SolidPiece piece = new SolidPiece(start(celsius), MEAT, SALT, true);
        return new SolidSolver(SolidGrid.box(0.4, 0.4, 0.03, cells, 1), piece, settings);
    }

    private static LayerSolver slab(double celsius, SolverSettings settings) {
        Member member = new Member(0.015, 1, start(celsius), MEAT, SALT, true);
        return new LayerSolver(LayerGrid.symmetric(0, 40, 0.005), List.of(member), settings);
    }

    @Test
    void bothKindsOfKillAreThoseOfASlab() {
        LayerSolver slab = slab(4, TWO_KINDS);
        SolidSolver coarse = plate(4, 1200, TWO_KINDS);
        SolidSolver plate = plate(4, 9600, TWO_KINDS);
        StageInput bath = StageInput.of(FaceCondition.convection(Temperature.fromCelsius(65), 300), 3000);
        slab.run(List.of(bath), StepSink.NONE);
        coarse.run(bath, SolidSink.NONE);
        plate.run(bath, SolidSink.NONE);
        for (int kind = 0; kind < 2; kind++) {
            // half the cell size: the difference bounds the error of the finer; 1 % for the layers and the steps
            double core = Math.abs(coarse.coreKill(kind) / plate.coreKill(kind) - 1) + 0.01;
            double least = Math.abs(coarse.leastKill(kind) / plate.leastKill(kind) - 1) + 0.01;
            assertThat(plate.coreKill(kind) / slab.coreKill(0, kind)).isCloseTo(1, within(core));
            assertThat(plate.leastKill(kind) / slab.leastKill(0, kind)).isCloseTo(1, within(least));
            assertThat(Math.max(core, least)).isLessThan(0.2);
        }
        assertThat(plate.coreKill(1)).isNotCloseTo(plate.coreKill(0), within(0.01));
    }

    /** A wet surface in dry air stays colder than the middle of a piece that is hot all through: the least kill is there. */
    @Test
    void leastKillIsThatOfTheSurfaceWhereItLagsBehind() {
        SolidSolver solver = new SolidSolver(
                SolidGrid.ellipsoid(0.1, 0.08, 0.06, 3000, 1), new SolidPiece(start(62), MEAT, SALT, true), TWO_KINDS);
        FaceCondition dry = new FaceCondition(
                TimeProfile.constant(Temperature.fromCelsius(75)), TimeProfile.constant(20), 0, 1, 500, 101325);
        solver.run(StageInput.of(dry, 900), SolidSink.NONE);
        assertThat(solver.meanFaceTemperature(0)).isLessThan(solver.coreTemperature() - 5);
        assertThat(solver.leastKill()).isLessThan(0.5 * solver.coreKill());
    }

    /** Nodes outside the body may leave the range of the media where these jump; places of the piece must not. */
    @Test
    void placesOfThePieceStayWithinTheMediaWhereTheyJump() {
        SolidGrid grid = SolidGrid.ellipsoid(0.16, 0.12, 0.08, 3500, 2);
        SolidSolver solver = new SolidSolver(grid, new SolidPiece(start(4), MEAT, SALT, true), TWO_KINDS);
        FaceCondition air = FaceCondition.convection(Temperature.fromCelsius(150), 20);
        FaceCondition pan = FaceCondition.convection(Temperature.fromCelsius(177), 1000);
        boolean[] inside = grid.nodesInside();
        double hottest = Temperature.fromCelsius(177) + 1e-6;
        double coldest = Temperature.fromCelsius(4) - 0.5;
        List<SaltSource> none = List.of(SaltSource.NONE, SaltSource.NONE);
        int[] steps = new int[1];
        for (int i = 0; i < 6; i++) {
            solver.run(new StageInput(List.of(air, pan), none, 200, StopRule.NEVER), (running, from, to) -> steps[0]++);
            for (int c = 0; c < grid.cells(); c++) {
                if (inside[c]) {
                    assertThat(solver.cellTemperature(c)).isBetween(coldest, hottest);
                }
            }
            for (int p = 0; p < grid.patches(); p++) {
                assertThat(solver.patchTemperature(p)).isBetween(coldest, hottest);
            }
        }
        // a node outside that jumps with its medium once held the steps down at microseconds: 88 thousand of them
        assertThat(steps[0]).isLessThan(500);
    }

    @Test
    void frozenPlateThawsInMovingAirAsTheSlabDoes() {
        FaceCondition air = FaceCondition.convection(Temperature.fromCelsius(10), 40);
        LayerSolver slab = slab(-18, SolverSettings.DEFAULT);
        SolidSolver coarse = plate(-18, 600, SolverSettings.DEFAULT);
        SolidSolver plate = plate(-18, 4800, SolverSettings.DEFAULT);
        StopRule thawed = new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(1));
        StageInput stage = StageInput.of(air, 2 * 86400).until(thawed);
        slab.run(List.of(stage), StepSink.NONE);
        coarse.run(stage, SolidSink.NONE);
        plate.run(stage, SolidSink.NONE);
        // half the cell size: the difference bounds the error of the finer; 0.2 % for the layers
        double bound = Math.abs(plate.stageTime() - coarse.stageTime()) + 0.002 * slab.stageTime(0);
        assertThat(plate.stageTime()).isCloseTo(slab.stageTime(0), within(bound));
        assertThat(bound).isLessThan(0.05 * slab.stageTime(0));
        assertThat(slab.balanceError(0).energy()).isLessThan(1e-9);
        assertThat(plate.balanceError().energy()).isLessThan(1e-9);
    }

    @Test
    void frozenBoxThawsAndCooksWithoutLossOfEnergy() {
        SolidPiece frozen = new SolidPiece(start(-18), MEAT, SALT, true);
        SolidSolver solver = new SolidSolver(SolidGrid.box(0.12, 0.08, 0.03, 600, 1), frozen, TWO_KINDS);
        solver.run(StageInput.of(FaceCondition.convection(Temperature.fromCelsius(8), 200), 4 * 3600), SolidSink.NONE);
        assertThat(solver.coreTemperature()).isBetween(Temperature.fromCelsius(0), Temperature.fromCelsius(8));
        assertThat(solver.balanceError().energy()).isLessThan(1e-9);
        StopRule done = new StopRule(StopRule.Kind.KILL_ABOVE, 1);
        solver.run(
                StageInput.of(FaceCondition.convection(Temperature.fromCelsius(65), 300), 8 * 3600)
                        .until(done),
                SolidSink.NONE);
        assertThat(solver.wasStopped()).isTrue();
        assertThat(solver.leastKill()).isCloseTo(1, within(1e-3));
        assertThat(solver.balanceError().energy()).isLessThan(1e-9);
    }
}
