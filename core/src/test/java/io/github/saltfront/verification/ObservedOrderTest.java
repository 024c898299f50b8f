package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Errors fall with grid and step as the method promises. */
class ObservedOrderTest {
    /** Smallest order accepted: what is promised, less the scatter of two halvings. */
    private static final double SCATTER = 0.15;

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.6, 1, 2})
    void splittingEveryLayerInTwoQuartersTheError(double exponent) {
        Resolution coarse = new Resolution(40, 1.0 / 120, 1e-6, 1e-8);
        double[] a = state(coarse, exponent);
        double[] b = state(coarse.finer(), exponent);
        double[] c = state(coarse.finer().finer(), exponent);
        for (int i = 0; i < 3; i++) {
            double order = Math.log((a[i] - b[i]) / (b[i] - c[i])) / Math.log(2);
            assertThat(order).isGreaterThan(2 - SCATTER);
        }
    }

    private static double[] state(Resolution resolution, double exponent) {
        LayerSolver solver = ConstantPiece.solver(resolution, exponent);
        solver.run(List.of(StageInput.of(ConstantPiece.medium(5, 1), ConstantPiece.seconds(0.2))), StepSink.NONE);
        return new double[] {solver.coreTemperature(0), solver.meanTemperature(0), solver.faceTemperature(0, 0)};
    }

    /**
     * Fixed steps (a tolerance that accepts all) on a history without a jump. The method has order three for linear
     * problems of moderate stiffness; stiff components may lower it to two, which is what is asked for.
     */
    @Test
    void halvingFixedStepsLowersTheErrorWithOrderTwoOrBetter() {
        double exact =
                run(SolverSettings.DEFAULT.withTolerances(1e-7, 1e-10), 7200).coreTemperature(0);
        double[] error = new double[4];
        for (int i = 0; i < 4; i++) {
            LayerSolver solver = run(SolverSettings.DEFAULT.withTolerances(10, 1), 200.0 / (1 << i));
            error[i] = Math.abs(solver.coreTemperature(0) - exact);
        }
        assertThat(Math.log(error[1] / error[3]) / Math.log(4)).isGreaterThan(2 - SCATTER);
    }

    /** With an error per step of order three, error goes with the tolerance to the power 2/3 to 1; largest over all layers. */
    @Test
    void errorFollowsTheTolerance() {
        double[] exact = profile(1e-7);
        double[] tolerance = {0.05, 0.005, 0.0005, 0.00005};
        double[] error = new double[4];
        for (int i = 0; i < 4; i++) {
            double[] run = profile(tolerance[i]);
            for (int c = 0; c < run.length; c++) {
                error[i] = Math.max(error[i], Math.abs(run[c] - exact[c]));
            }
            assertThat(error[i]).isLessThan(10 * tolerance[i]);
        }
        assertThat(Math.log10(error[0] / error[3]) / 3).isGreaterThan(2.0 / 3 - SCATTER);
    }

    private static double[] profile(double tolerance) {
        LayerSolver solver = run(SolverSettings.DEFAULT.withTolerances(tolerance, 1), 7200);
        double[] kelvin = new double[solver.grid().cells()];
        for (int c = 0; c < kelvin.length; c++) {
            kelvin[c] = solver.cellTemperature(0, c);
        }
        return kelvin;
    }

    private static LayerSolver run(SolverSettings settings, double longest) {
        SolverSettings limited = new SolverSettings(
                settings.temperatureTolerance(),
                settings.saltTolerance(),
                longest,
                settings.killRates(),
                settings.denaturation());
        LayerSolver solver = VariablePiece.solver(Resolution.BASE.grid(0), limited);
        TimeProfile warming = new TimeProfile.Approach(Temperature.fromCelsius(5), Temperature.fromCelsius(95), 1500);
        solver.run(List.of(StageInput.of(FaceCondition.convection(warming, 60), 4000)), StepSink.NONE);
        return solver;
    }
}
