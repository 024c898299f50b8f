package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.FrozenState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.transport.TimeProfile;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * The same slab by another method: nodes at the face and the middle (not in the layers), half cells at both ends, temperatures
 * instead of enthalpies, and an explicit integrator of order eight with a tolerance of 1e-8 (Hipparchus). The result is
 * extrapolated from n and 2n nodes; a third of their difference bounds its error, and the layer solver has the bound of
 * {@link Check}.
 */
class IndependentIntegratorTest {
    private static final double L = VariablePiece.EXTENT;
    private static final double WATER = VariablePiece.WATER;
    private static final double DENSITY = VariablePiece.DRY_DENSITY;
    private static final double MEDIUM = Temperature.fromCelsius(180);
    private static final double H = 25;
    private static final double EMISSIVITY = 0.8;
    private static final double WET = 0.2;
    private static final double VAPOR = 3000;
    private static final double PRESSURE = 101_325;

    private static double capacity(double t) {
        return (2000 + WATER * 4176) + (1.2 - WATER * 0.09) * t + (-1.3e-3 + WATER * 5.5e-3) * t * t;
    }

    private static double conductivity(double t) {
        return 0.46 + 1.3e-3 * t - 5e-6 * t * t;
    }

    /** Hyland and Wexler 1983 over water, another equation than that of the program; they agree within 4e-5. */
    private static double saturation(double celsius) {
        double k = Temperature.fromCelsius(celsius);
        return Math.exp(-5.8002206e3 / k
                + 1.3914993
                - 4.8640239e-2 * k
                + 4.1764768e-5 * k * k
                - 1.4452093e-8 * k * k * k
                + 6.5459673 * Math.log(k));
    }

    /** Water activity of the unsalted surface at the water of the piece, which is fixed: Oswin with w0 = 0.17 kg/kg. */
    private static double activity() {
        double ratio = Math.pow(WATER / 0.17, 2);
        return ratio / (1 + ratio);
    }

    private static double flux(double surface, DoubleUnaryOperator latent) {
        double kelvin = Temperature.fromCelsius(surface);
        double evaporation = WET
                * H
                * 0.621945
                / (1006 * 0.88)
                * Math.log((PRESSURE - VAPOR) / (PRESSURE - activity() * saturation(surface)));
        return H * (MEDIUM - kelvin)
                + EMISSIVITY * 5.670374419e-8 * (Math.pow(MEDIUM, 4) - Math.pow(kelvin, 4))
                - evaporation * latent.applyAsDouble(surface);
    }

    /** Face, middle and time derivative of node temperatures in degrees Celsius by the method of lines; node n is the face. */
    private static double[] lines(int n, double duration, DoubleUnaryOperator latent) {
        double dx = L / n;
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return n + 1;
            }

            @Override
            public double[] computeDerivatives(double time, double[] t) {
                double[] rate = new double[n + 1];
                double below = 0;
                for (int i = 0; i <= n; i++) {
                    double above = i == n
                            ? flux(t[n], latent)
                            : 0.5 * (conductivity(t[i]) + conductivity(t[i + 1])) * (t[i + 1] - t[i]) / dx;
                    double width = i == 0 || i == n ? dx / 2 : dx;
                    rate[i] = (above - below) / (DENSITY * width * capacity(t[i]));
                    below = above;
                }
                return rate;
            }
        };
        double[] start = new double[n + 1];
        java.util.Arrays.fill(start, 5);
        double[] end = new DormandPrince853Integrator(1e-6, 10, 1e-8, 1e-10)
                .integrate(equation, new ODEState(0, start), duration)
                .getPrimaryState();
        return new double[] {end[0], end[n]};
    }

    @Test
    void ovenHeatWithVaryingPropertiesRadiationAndEvaporation() {
        double duration = 1500;
        DoubleUnaryOperator latent = t -> 2.501e6 - 2326 * t;
        // steam tables give 0.4 % less than this straight line at 100 degrees Celsius; either form is admitted
        DoubleUnaryOperator tables = t -> 2.501e6 - 2326 * t - 1.15 * t * t;
        double[] coarse = lines(25, duration, latent);
        double[] fine = lines(50, duration, latent);
        double[] other = lines(50, duration, tables);
        FaceCondition oven = Days.air(TimeProfile.constant(MEDIUM), H, EMISSIVITY, WET, VAPOR);
        double[] expected = new double[2];
        double[] rounding = new double[2];
        for (int i = 0; i < 2; i++) {
            expected[i] = fine[i] + (fine[i] - coarse[i]) / 3;
            rounding[i] = Math.abs(fine[i] - coarse[i]) / 3 + Math.abs(other[i] - fine[i]);
        }
        List<Check> checks = Check.compare("lines", List.of("core", "face"), expected, rounding, resolution -> {
            LayerSolver solver = VariablePiece.solver(resolution.grid(0), resolution.settings());
            solver.run(List.of(StageInput.of(oven, duration)), StepSink.NONE);
            return new double[] {
                Temperature.toCelsius(solver.coreTemperature(0)), Temperature.toCelsius(solver.faceTemperature(0, 0))
            };
        });
        assertThat(checks).allMatch(Check::holds);
        assertThat(checks).allMatch(c -> c.bound() < 0.3);
    }

    /** Salt of each node per water, then of the bath; the bath warms the piece meanwhile. */
    @Test
    void soakInAFiniteBathThatWarmsThePiece() {
        double duration = 4 * 3600;
        double bathWater = 10;
        double strength = 0.08;
        double[] coarse = soak(25, duration, bathWater, strength);
        double[] fine = soak(50, duration, bathWater, strength);
        double[] expected = new double[2];
        double[] rounding = new double[2];
        for (int i = 0; i < 2; i++) {
            expected[i] = fine[i] + (fine[i] - coarse[i]) / 3;
            rounding[i] = Math.abs(fine[i] - coarse[i]) / 3;
        }
        List<Check> checks = Check.compare("lines", List.of("mean", "bath"), expected, rounding, resolution -> {
            LayerSolver solver = new LayerSolver(
                    resolution.grid(0),
                    List.of(VariablePiece.member(L, 5, 0, true, FrozenState.NONE)),
                    resolution.settings());
            SaltSource bath = new SaltSource.Bath(strength * bathWater, bathWater, SaltSource.Swelling.NONE);
            solver.run(
                    List.of(new StageInput(
                            List.of(FaceCondition.convection(Temperature.fromCelsius(20), 200)),
                            List.of(bath),
                            duration,
                            StopRule.NEVER)),
                    StepSink.NONE);
            double mean = solver.meanSalt(0) / (1 - solver.meanSalt(0)) * (1 + WATER) / WATER;
            return new double[] {mean, solver.reservoirStrength(0, 0)};
        });
        assertThat(checks).allMatch(Check::holds);
        assertThat(checks).allMatch(c -> c.bound() < 2e-4);
        // the bath has lost what the meat has gained
        assertThat(expected[0] * DENSITY * L * WATER).isCloseTo((strength - expected[1]) * bathWater, within(1e-4));
    }

    private static double[] soak(int n, double duration, double bathWater, double strength) {
        double dx = L / n;
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2 * n + 2;
            }

            @Override
            public double[] computeDerivatives(double time, double[] y) {
                // y: temperatures 0..n, salt per water of nodes 0..n, where node n is the face and one with the bath
                double[] rate = new double[2 * n + 2];
                double heatBelow = 0;
                double saltBelow = 0;
                for (int i = 0; i <= n; i++) {
                    double heat = i == n
                            ? 200 * (20 - y[n])
                            : 0.5 * (conductivity(y[i]) + conductivity(y[i + 1])) * (y[i + 1] - y[i]) / dx;
                    double width = i == 0 || i == n ? dx / 2 : dx;
                    rate[i] = (heat - heatBelow) / (DENSITY * width * capacity(y[i]));
                    heatBelow = heat;
                    double salt = i == n
                            ? 0
                            : 0.5
                                    * (diffusivity(y[i]) + diffusivity(y[i + 1]))
                                    * DENSITY
                                    * WATER
                                    * (y[n + 2 + i] - y[n + 1 + i])
                                    / dx;
                    double held = DENSITY * WATER * width + (i == n ? bathWater : 0);
                    rate[n + 1 + i] = (salt - saltBelow) / held;
                    saltBelow = salt;
                }
                return rate;
            }
        };
        double[] start = new double[2 * n + 2];
        java.util.Arrays.fill(start, 0, n + 1, 5);
        // the half cell at the face is filled by the bath at once
        start[2 * n + 1] = strength * bathWater / (bathWater + DENSITY * WATER * dx / 2);
        double[] y = new DormandPrince853Integrator(1e-6, 100, 1e-9, 1e-10)
                .integrate(equation, new ODEState(0, start), duration)
                .getPrimaryState();
        double mean = 0;
        for (int i = 0; i <= n; i++) {
            mean += y[n + 1 + i] * (i == 0 || i == n ? 0.5 : 1) / n;
        }
        return new double[] {mean, y[2 * n + 1]};
    }

    private static double diffusivity(double celsius) {
        double kelvin = Temperature.fromCelsius(celsius);
        return 3e-10 * Math.exp(-25_000 / 8.31446261815324 * (1 / kelvin - 1 / Temperature.fromCelsius(5)));
    }
}
