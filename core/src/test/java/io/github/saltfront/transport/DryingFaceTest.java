package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A face that dries in an oven: the water that is left decides how warm it stays, and juice comes from within. Neither must cost
 * steps or accuracy. Invented meat; every figure is compared with one of the same equations.
 */
class DryingFaceTest {
    private static final double HOUR = 3600;

    private static FaceCondition oven(double celsius, double coefficient) {
        return new FaceCondition(
                TimeProfile.constant(Temperature.fromCelsius(celsius)),
                TimeProfile.constant(coefficient),
                0.9,
                1,
                1500,
                101_325,
                Double.POSITIVE_INFINITY);
    }

    private static LayerSolver solver(double temperatureTolerance, double saltTolerance) {
        return new LayerSolver(
                LayerGrid.symmetric(0, 32, 0.01),
                List.of(SaltedMeat.member(0.015)),
                SaltedMeat.settings(temperatureTolerance, saltTolerance));
    }

    /** Meat of 30 mm, salted, an hour in a fan oven at 175 degrees Celsius, then ten minutes on the bench. */
    private static LayerSolver roasted(double temperatureTolerance, double saltTolerance) {
        LayerSolver solver = solver(temperatureTolerance, saltTolerance);
        solver.run(List.of(StageInput.of(oven(175, 25), HOUR)), StepSink.NONE);
        solver.run(List.of(StageInput.of(oven(22, 6), HOUR / 6)), StepSink.NONE);
        return solver;
    }

    @Test
    void anHourInTheOvenTakesNoMoreThanAHundredAndSixtySteps() {
        LayerSolver solver = roasted(0.05, 1e-4);
        assertThat(solver.steps(0) + solver.rejectedSteps(0)).isLessThan(160);
    }

    @Test
    void usualTolerancesAreAsGoodAsMuchFinerOnes() {
        LayerSolver usual = roasted(0.1, 1e-4);
        LayerSolver fine = roasted(0.001, 1e-6);
        assertThat(usual.coreTemperature(0)).isCloseTo(fine.coreTemperature(0), within(0.1));
        assertThat(usual.faceTemperature(0, 0)).isCloseTo(fine.faceTemperature(0, 0), within(0.2));
        assertThat(usual.massLoss(0)).isCloseTo(fine.massLoss(0), within(0.002));
        assertThat(usual.evaporatedShare(0)).isCloseTo(fine.evaporatedShare(0), within(0.001));
        assertThat(usual.meanSalt(0)).isCloseTo(fine.meanSalt(0), within(2e-5));
    }

    @Test
    void nothingIsLost() {
        BalanceError error = roasted(0.1, 1e-4).balanceError(0);
        assertThat(error.energy()).isLessThan(1e-12);
        assertThat(error.salt()).isLessThan(1e-12);
        assertThat(error.water()).isLessThan(1e-12);
    }

    @ParameterizedTest(name = "cell {0} C, water {1}, salt {2}")
    @CsvSource({"40, 2.5, 0.02", "70, 0.4, 0.05", "75, 0.15, 0.05", "85, 0.05, 0", "95, 0.2, 0.3"})
    void derivativesByTheWaterAreThoseOfTheBalance(double cell, double water, double salt) {
        double small = 1e-5 * water;
        SurfaceBalance low = balance(cell, SurfaceBalance.waterActivity(water - small, salt));
        SurfaceBalance high = balance(cell, SurfaceBalance.waterActivity(water + small, salt));
        SurfaceBalance here = balance(cell, SurfaceBalance.waterActivity(water, salt));
        double byWater = SurfaceBalance.activityByWater(water, salt);
        double evaporation = (high.evaporation - low.evaporation) / (2 * small);
        double flux = (high.flux - low.flux) / (2 * small);
        assertThat(here.evaporationByActivity * byWater)
                .isCloseTo(evaporation, within(3e-3 * Math.abs(evaporation) + 1e-9));
        // the latent heat is taken at the temperature of the face, whose change it does not follow
        assertThat(here.fluxByActivity * byWater).isCloseTo(flux, within(0.01 * Math.abs(flux) + 1e-3));
    }

    private static SurfaceBalance balance(double cell, double activity) {
        SurfaceBalance balance = new SurfaceBalance();
        balance.solve(oven(175, 25), 0, cell, 3000, activity);
        return balance;
    }

    @Test
    void goingOnToALaterReadingIsWhatGoingThereAtOnceIs() {
        LayerSolver stepwise = solver(0.02, 1e-5);
        stepwise.run(List.of(input(45)), StepSink.NONE);
        LayerSolver copy = stepwise.copy();
        stepwise.goOn(List.of(new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(60))), StepSink.NONE);
        copy.goOn(List.of(new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(60))), StepSink.NONE);
        LayerSolver atOnce = solver(0.02, 1e-5);
        atOnce.run(List.of(input(60)), StepSink.NONE);

        assertThat(copy.stageTime(0)).isCloseTo(stepwise.stageTime(0), within(1e-4));
        assertThat(copy.massLoss(0)).isCloseTo(stepwise.massLoss(0), within(1e-8));
        assertThat(copy.balanceError(0).water()).isLessThan(1e-12);
        assertThat(stepwise.wasStopped(0)).isTrue();
        assertThat(stepwise.stageTime(0)).isCloseTo(atOnce.stageTime(0), within(0.002 * atOnce.stageTime(0)));
        assertThat(stepwise.massLoss(0)).isCloseTo(atOnce.massLoss(0), within(0.001));
        assertThat(stepwise.faceTemperature(0, 0)).isCloseTo(atOnce.faceTemperature(0, 0), within(0.1));
    }

    @Test
    void aCopyLeavesTheOriginalAlone() {
        LayerSolver solver = solver(0.05, 1e-4);
        solver.run(List.of(input(45)), StepSink.NONE);
        double core = solver.coreTemperature(0);
        double loss = solver.massLoss(0);
        solver.copy().run(List.of(StageInput.of(oven(200, 25), HOUR)), StepSink.NONE);
        assertThat(solver.coreTemperature(0)).isEqualTo(core);
        assertThat(solver.massLoss(0)).isEqualTo(loss);
    }

    private static StageInput input(double celsius) {
        return new StageInput(
                List.of(oven(175, 25)),
                List.of(SaltSource.NONE),
                3 * HOUR,
                new StopRule(StopRule.Kind.CORE_ABOVE, Temperature.fromCelsius(celsius)));
    }
}
