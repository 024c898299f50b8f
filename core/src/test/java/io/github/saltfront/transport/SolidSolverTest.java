package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SolidSolverTest {
    /** Properties that change with temperature as those of lean meat do; invented, for comparisons of solvers only. */
    private static final HeatProperties MEAT = new HeatProperties(
            265,
            3,
            new double[] {2000, 1.2, -1e-3},
            new double[] {4129, -0.09, 5.5e-3},
            new double[] {1000, 0, 0},
            new double[] {0.46, 1.3e-3, -4e-6},
            new double[] {0.05, 1e-4},
            HeatProperties.constant(1000, 3500, 0.5, 3).ice());

    private static final SaltProperties SALT = new SaltProperties(2e-9, 25000, 0.9, 1, 0);
    private static final InitialState START = new InitialState(Temperature.fromCelsius(4), 3, 0.01);
    private static final FaceCondition OVEN = new FaceCondition(
            TimeProfile.constant(Temperature.fromCelsius(150)), TimeProfile.constant(15), 0.9, 0.3, 1500, 101325);
    private static final FaceCondition PAN = FaceCondition.convection(Temperature.fromCelsius(120), 200);
    private static final DoubleUnaryOperator KILL =
            kelvin -> Math.pow(10, (kelvin - Temperature.fromCelsius(60)) / 6) / 300;
    private static final SolverSettings KILLING = SolverSettings.DEFAULT.withKinetics(KILL, Denaturation.NONE);

    private static SolidSolver fixedWater(SolidGrid grid) {
        return new SolidSolver(grid, new SolidPiece(START, MEAT, SALT, true), KILLING);
    }

    @Test
    void middleOfALargePlateIsThatOfASlab() {
        LayerSolver slab = new LayerSolver(
                LayerGrid.symmetric(0, 40, 0.005), List.of(new Member(0.015, 1, START, MEAT, SALT, true)), KILLING);
        SolidSolver plate = fixedWater(SolidGrid.box(0.6, 0.6, 0.03, 30000, 1));
        slab.run(List.of(StageInput.of(OVEN, 2400)), StepSink.NONE);
        plate.run(StageInput.of(OVEN, 2400), SolidSink.NONE);
        assertThat(plate.coreTemperature()).isCloseTo(slab.coreTemperature(0), within(0.1));
        assertThat(plate.faceTemperature(0)).isCloseTo(slab.faceTemperature(0, 0), within(0.1));
        assertThat(plate.coreKill() / slab.coreKill(0)).isCloseTo(1, within(0.05));
    }

    @Test
    void slabWithTwoFacesIsThatOfTheLayerSolver() {
        LayerSolver slab = new LayerSolver(
                LayerGrid.twoFaced(60, 0.004), List.of(new Member(0.03, 1, START, MEAT, SALT, true)), KILLING);
        SolidSolver coarse = fixedWater(SolidGrid.box(0.4, 0.4, 0.03, 5000, 2));
        SolidSolver plate = fixedWater(SolidGrid.box(0.4, 0.4, 0.03, 40000, 2));
        List<SaltSource> none = List.of(SaltSource.NONE, SaltSource.NONE);
        StageInput stage = new StageInput(List.of(OVEN, PAN), none, 900, StopRule.NEVER);
        slab.run(List.of(stage), StepSink.NONE);
        coarse.run(stage, SolidSink.NONE);
        plate.run(stage, SolidSink.NONE);
        // half the cell size: the difference bounds the error; 0.03 K for the 60 layers of the slab and the steps of
        // both
        double core = Math.abs(plate.coreTemperature() - coarse.coreTemperature()) + 0.03;
        assertThat(plate.coreTemperature()).isCloseTo(slab.coreTemperature(0), within(core));
        for (int f = 0; f < 2; f++) {
            double bound = Math.abs(plate.faceTemperature(f) - coarse.faceTemperature(f)) + 0.03;
            assertThat(plate.faceTemperature(f)).isCloseTo(slab.faceTemperature(f, 0), within(bound));
            assertThat(bound).isLessThan(2);
        }
        assertThat(core).isLessThan(1);
        assertThat(plate.balanceError().largest()).isLessThan(1e-9);
    }

    @Test
    void ellipsoidDoesNotCareWhichAxisIsWhich() {
        double[] core = new double[3];
        double[] mean = new double[3];
        double[][] axes = {{0.16, 0.12, 0.08}, {0.08, 0.16, 0.12}, {0.12, 0.08, 0.16}};
        for (int i = 0; i < 3; i++) {
            SolidSolver solver = fixedWater(SolidGrid.ellipsoid(axes[i][0], axes[i][1], axes[i][2], 5000, 1));
            solver.run(StageInput.of(OVEN, 3600), SolidSink.NONE);
            core[i] = solver.coreTemperature();
            mean[i] = solver.meanTemperature();
        }
        // the grids are permutations of each other; what remains is the linear solver's share of the tolerance
        for (int i = 1; i < 3; i++) {
            assertThat(core[i]).isCloseTo(core[0], within(0.005));
            assertThat(mean[i]).isCloseTo(mean[0], within(0.005));
        }
    }

    @Test
    void twoEqualFacesAreOneFace() {
        List<SaltSource> none = List.of(SaltSource.NONE, SaltSource.NONE);
        SolidSolver one = fixedWater(SolidGrid.cylinder(0.08, 0.12, 4000, 1));
        SolidSolver two = fixedWater(SolidGrid.cylinder(0.08, 0.12, 8000, 2));
        one.run(StageInput.of(OVEN, 3000), SolidSink.NONE);
        two.run(new StageInput(List.of(OVEN, OVEN), none, 3000, StopRule.NEVER), SolidSink.NONE);
        assertThat(two.coreTemperature()).isCloseTo(one.coreTemperature(), within(0.01));
        assertThat(two.leastKill() / one.leastKill()).isCloseTo(1, within(0.01));
        assertThat(two.evaporatedShare()).isCloseTo(one.evaporatedShare(), within(1e-5));
        assertThat(two.faceTemperature(1)).isCloseTo(two.faceTemperature(0), within(0.01));
    }

    @Test
    void stopRuleEndsTheStageAtTheThreshold() {
        SolidSolver solver = fixedWater(SolidGrid.ellipsoid(0.16, 0.12, 0.06, 3000, 1));
        double threshold = Temperature.fromCelsius(55);
        solver.run(StageInput.of(OVEN, 1e5).until(new StopRule(StopRule.Kind.CORE_ABOVE, threshold)), SolidSink.NONE);
        assertThat(solver.wasStopped()).isTrue();
        assertThat(solver.coreTemperature()).isCloseTo(threshold, within(1e-4));
        assertThat(solver.leastKill()).isLessThanOrEqualTo(solver.coreKill() * (1 + 1e-9));
    }

    @Test
    void denseOutputJoinsTheStepsAndFollowsTheCore() {
        SolidSolver solver = fixedWater(SolidGrid.ellipsoid(0.12, 0.1, 0.06, 2000, 1));
        double[] last = {START.temperature()};
        solver.run(StageInput.of(OVEN, 1800), (s, start, end) -> {
            assertThat(s.coreTemperature(0.0)).isCloseTo(last[0], within(1e-9));
            assertThat(s.coreTemperature(0.5)).isBetween(last[0] - 0.05, s.coreTemperature(1.0) + 0.05);
            last[0] = s.coreTemperature(1.0);
        });
        assertThat(solver.coreTemperature()).isCloseTo(last[0], within(1e-9));
    }

    @Test
    void energyIsConservedThroughChangingMedia() {
        SolidSolver solver = fixedWater(SolidGrid.ellipsoid(0.16, 0.12, 0.06, 3000, 1));
        FaceCondition cycling = new FaceCondition(
                new TimeProfile.Cycling(Temperature.fromCelsius(160), 12, 400),
                new TimeProfile.Alternating(15, 30, 600),
                0.9,
                0.2,
                1500,
                101325);
        solver.run(StageInput.of(cycling, 3600), SolidSink.NONE);
        solver.run(StageInput.of(FaceCondition.convection(Temperature.fromCelsius(20), 8), 1800), SolidSink.NONE);
        assertThat(solver.balanceError().energy()).isLessThan(1e-9);
    }

    /** One reaction and juice in proportion to it; invented. */
    private static final Denaturation JUICY = new Denaturation() {
        @Override
        public int reactions() {
            return 1;
        }

        @Override
        public double rate(int reaction, double kelvin) {
            return 1e-3 * Math.exp((kelvin - Temperature.fromCelsius(60)) / 5);
        }

        @Override
        public double expelled(double[] extents, double salt) {
            return 0.25 * extents[0];
        }
    };

    @Test
    void juiceLeavesAsInTheSlabAndBalancesClose() {
        SolverSettings settings =
                SolverSettings.DEFAULT.withKinetics(KILL, JUICY).withTolerances(0.005, 2e-5);
        FaceCondition bath = FaceCondition.convection(Temperature.fromCelsius(70), 500);
        LayerSolver slab = new LayerSolver(
                LayerGrid.symmetric(0, 60, 0.005), List.of(new Member(0.015, 1, START, MEAT, SALT, false)), settings);
        SolidSolver plate = new SolidSolver(
                SolidGrid.box(1.8, 1.8, 0.03, 30000, 1), new SolidPiece(START, MEAT, SALT, false), settings);
        slab.run(List.of(StageInput.of(bath, 2400)), StepSink.NONE);
        plate.run(StageInput.of(bath, 2400), SolidSink.NONE);
        assertThat(plate.balanceError().largest()).isLessThan(1e-9);
        // rims of 2 x 0.015 / 0.9 of the plate are heated from more sides and are further on; a cell of the grid the
        // rest
        assertThat(plate.massLoss()).isCloseTo(slab.massLoss(0), within(0.03 * slab.massLoss(0)));
        assertThat(plate.massLoss()).isGreaterThan(0.1);
        assertThat(plate.cellExtent(plate.grid().middleCell(), 0)).isCloseTo(slab.cellExtent(0, 0, 0), within(0.03));
    }

    @Test
    void evaporatedJuiceCountsOnce() {
        SolverSettings settings = SolverSettings.DEFAULT.withKinetics(KILL, JUICY);
        SolidSolver solver = new SolidSolver(
                SolidGrid.ellipsoid(0.12, 0.1, 0.06, 2000, 2), new SolidPiece(START, MEAT, SALT, false), settings);
        List<SaltSource> none = List.of(SaltSource.NONE, SaltSource.NONE);
        solver.run(new StageInput(List.of(OVEN, PAN), none, 1800, StopRule.NEVER), SolidSink.NONE);
        assertThat(solver.balanceError().largest()).isLessThan(1e-9);
        double juice = 0;
        double mass = 0;
        double[] volume = solver.grid().volumes();
        for (int c = 0; c < solver.grid().cells(); c++) {
            juice += volume[c] * (START.water() - solver.cellWater(c));
            mass += volume[c] * (1 + START.water() + START.salt());
        }
        assertThat(solver.massLoss()).isGreaterThan(juice / mass);
        assertThat(solver.massLoss()).isLessThan(juice / mass * 1.02 + solver.evaporatedShare());
    }
}
