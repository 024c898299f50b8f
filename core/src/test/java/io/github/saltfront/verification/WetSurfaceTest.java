package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Temperature;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A fully wet body that takes no more heat settles where convection and radiation pay for evaporation.
 *
 * <p>Rows: computed for the project from the same balance (Stefan flow, Chilton-Colburn analogy, walls as warm as the air), but
 * with Le^(2/3) = 0.876 where the solver has 0.88, and with latent heats from steam tables (Wagner and Pruss 1993) where the
 * solver may have the straight line of the psychrometric chapter. Bounds: half a unit of the printed digit, plus the mass coefficient 0.5 % lower and
 * the latent heat up to 0.3 % higher (below 80 degrees Celsius), which together act on the surface as 0.8 % of the vapor pressure
 * difference: by Clausius-Clapeyron at most 0.8 % R T^2 / (L M) = 0.18 K at 80 degrees Celsius; and 0.3 % of the rate.
 */
class WetSurfaceTest {
    private static final double KELVIN_BOUND = 0.05 + 0.18;

    @ParameterizedTest(name = "{0} C, W {1}")
    @CsvSource({
        "120, 0.0073, 36.1, 1.25, 48.6, 1.66, 44.7, 2.18, 40.1, 4.08",
        "120, 0.05, 48.5, 1.08, 55.9, 1.53, 53.4, 1.98, 50.6, 3.62",
        "120, 0.2, 66.8, 0.82, 69.7, 1.26, 68.6, 1.60, 67.5, 2.84",
        "150, 0.0073, 40.2, 1.64, 55.4, 2.45, 50.7, 3.13, 45.1, 5.62",
        "150, 0.05, 50.9, 1.50, 61.0, 2.34, 57.7, 2.97, 53.9, 5.24",
        "150, 0.2, 67.8, 1.27, 72.4, 2.13, 70.8, 2.65, 69.1, 4.56",
        "163, 0.0073, 41.7, 1.82, 58.0, 2.84, 53.1, 3.59, 47.1, 6.34",
        "163, 0.05, 51.9, 1.68, 63.1, 2.75, 59.4, 3.45, 55.3, 5.99",
        "163, 0.2, 68.3, 1.46, 73.6, 2.55, 71.7, 3.15, 69.7, 5.36",
        "180, 0.0073, 43.6, 2.05, 61.3, 3.40, 56.1, 4.25, 49.6, 7.34",
        "180, 0.05, 53.1, 1.92, 65.8, 3.32, 61.7, 4.12, 57.0, 7.03",
        "180, 0.2, 68.8, 1.71, 75.2, 3.15, 73.0, 3.85, 70.6, 6.44",
        "200, 0.0073, 45.7, 2.32, 65.0, 4.15, 59.4, 5.10, 52.3, 8.60",
        "200, 0.05, 54.5, 2.21, 68.8, 4.08, 64.3, 4.99, 59.0, 8.33",
        "200, 0.2, 69.5, 2.01, 77.1, 3.93, 74.5, 4.76, 71.7, 7.80",
        "230, 0.0073, 48.4, 2.74, 70.0, 5.44, 64.0, 6.55, 56.2, 10.67",
        "230, 0.05, 56.3, 2.64, 73.0, 5.39, 68.0, 6.47, 61.9, 10.45",
        "230, 0.2, 70.4, 2.46, 79.8, 5.27, 76.7, 6.28, 73.2, 10.00",
    })
    void settlesAtTheComputedTemperatureAndRate(
            double airC,
            double ratio,
            double t1,
            double m1,
            double t2,
            double m2,
            double t3,
            double m3,
            double t4,
            double m4) {
        check(airC, ratio, 0, 10, t1, m1);
        check(airC, ratio, 0.9, 6, t2, m2);
        check(airC, ratio, 0.9, 10, t3, m3);
        check(airC, ratio, 0.9, 25, t4, m4);
    }

    private static void check(double airC, double ratio, double emissivity, double h, double celsius, double rate) {
        // much water a dry solid, so that the activity of the surface is one; thin and well conducting
        double extent = 0.002;
        double density = 1000;
        Member member = new Member(
                extent,
                1,
                new InitialState(Temperature.fromCelsius(40), 100, 0),
                HeatProperties.constant(density, 4000, 50, 100),
                new SaltProperties(3e-10, 0, 1, 0, 0),
                true);
        LayerSolver solver =
                new LayerSolver(LayerGrid.symmetric(0, 8, 1.0 / 8), List.of(member), SolverSettings.DEFAULT);
        double vapor = Days.PRESSURE * ratio / (0.621945 + ratio);
        StageInput stage = StageInput.of(
                Days.air(TimeProfile.constant(Temperature.fromCelsius(airC)), h, emissivity, 1, vapor), 7200);
        solver.run(List.of(stage), StepSink.NONE);
        double before = solver.evaporatedShare(0);
        solver.run(List.of(stage), StepSink.NONE);
        double perHour = (solver.evaporatedShare(0) - before) * density * extent / 2;
        assertThat(Temperature.toCelsius(solver.faceTemperature(0, 0))).isCloseTo(celsius, within(KELVIN_BOUND));
        // a surface 0.18 K warmer takes less by convection and radiation, 0.18 of the fall of at least 40 K
        assertThat(perHour).isCloseTo(rate, within(0.005 + rate * (0.003 + 0.18 / 40)));
    }
}
