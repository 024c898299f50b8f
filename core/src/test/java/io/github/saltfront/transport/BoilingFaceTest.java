package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A piece that is turned in a pan: what boils off couples heat and water at the face, which must not cost steps or accuracy. */
class BoilingFaceTest {
    private static final double BOILING = Temperature.fromCelsius(100);
    private static final double TURN = 120;
    private static final int TURNS = 6;

    private static FaceCondition face(double first, double second, double firstCoefficient, double secondCoefficient) {
        return FaceCondition.boiling(
                new TimeProfile.Alternating(Temperature.fromCelsius(first), Temperature.fromCelsius(second), TURN),
                new TimeProfile.Alternating(firstCoefficient, secondCoefficient, TURN),
                101_325,
                BOILING);
    }

    /** Salted meat of 30 mm, turned every two minutes in a pan at 220 degrees Celsius. */
    private static LayerSolver panned(double temperatureTolerance, double saltTolerance, StepSink sink) {
        LayerSolver solver = new LayerSolver(
                LayerGrid.twoFaced(40, 0.005),
                List.of(SaltedMeat.member(0.03)),
                SaltedMeat.settings(temperatureTolerance, saltTolerance));
        StageInput stage = new StageInput(
                List.of(face(220, 40, 300, 10), face(40, 220, 10, 300)),
                List.of(SaltSource.NONE, SaltSource.NONE),
                TURNS * TURN,
                StopRule.NEVER);
        solver.run(List.of(stage), sink);
        return solver;
    }

    @Test
    void aTurnTakesNoMoreThanFortySteps() {
        LayerSolver solver = panned(0.05, 1e-4, (s, member, start, end) -> {});
        assertThat(solver.steps(0) + solver.rejectedSteps(0)).isLessThan(40 * TURNS);
    }

    @Test
    void usualTolerancesAreAsGoodAsMuchFinerOnes() {
        LayerSolver usual = panned(0.05, 1e-4, (s, member, start, end) -> {});
        LayerSolver fine = panned(0.002, 4e-6, (s, member, start, end) -> {});
        assertThat(usual.coreTemperature(0)).isCloseTo(fine.coreTemperature(0), within(0.05));
        assertThat(usual.massLoss(0)).isCloseTo(fine.massLoss(0), within(5e-4));
        assertThat(usual.evaporatedShare(0)).isCloseTo(fine.evaporatedShare(0), within(5e-4));
        assertThat(usual.crust(0)).isCloseTo(fine.crust(0), within(2e-5));
    }

    @Test
    void nothingIsLostAndTheDryFaceHoldsNoLessThanNoWater() {
        LayerSolver solver = panned(0.05, 1e-4, (s, member, start, end) -> {});
        BalanceError error = solver.balanceError(0);
        assertThat(error.energy()).isLessThan(1e-12);
        assertThat(error.salt()).isLessThan(1e-12);
        assertThat(error.water()).isLessThan(1e-12);
        for (int cell = 0; cell < 40; cell++) {
            assertThat(solver.cellWater(0, cell)).isGreaterThan(0);
            assertThat(solver.cellSalt(0, cell)).isGreaterThan(-1e-4);
        }
    }

    /** A face is no hotter than water boils, and the outside of its crust no hotter than the pan. */
    @Test
    void outsideOfTheCrustIsNoHotterThanThePan() {
        double[] hottest = new double[2];
        panned(0.05, 1e-4, (s, member, start, end) -> {
            hottest[0] = Math.max(hottest[0], s.faceTemperature(0, member, 1));
            hottest[1] = Math.max(hottest[1], s.outsideOfLastFace());
        });
        assertThat(hottest[0]).isLessThan(BOILING + 0.1);
        assertThat(hottest[1]).isBetween(Temperature.fromCelsius(120), Temperature.fromCelsius(220.001));
    }
}
