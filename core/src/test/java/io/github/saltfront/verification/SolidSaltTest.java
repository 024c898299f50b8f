package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.transport.SolidPiece;
import io.github.saltfront.transport.SolidSink;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Salt in three dimensions: a sphere in a limited stirred bath (Crank 1975, equation 6.30; rows CRU), and conservation. */
class SolidSaltTest {
    private static final double RADIUS = 0.03;
    private static final double DIFFUSIVITY = 2e-9;
    private static final double WATER = 3;
    private static final double DENSITY = 1060;
    private static final double STRENGTH = 0.1;
    private static final double TEMPERATURE = Temperature.fromCelsius(5);
    private static final FaceCondition CELLAR = FaceCondition.convection(TEMPERATURE, 100);

    private static SolidSolver solver(SolidGrid grid) {
        SolidPiece piece = new SolidPiece(
                new InitialState(TEMPERATURE, WATER, 0),
                HeatProperties.constant(DENSITY, 3500, 0.5, WATER),
                new SaltProperties(DIFFUSIVITY, 0, 1, 1, 0),
                true);
        return new SolidSolver(grid, piece, SolverSettings.DEFAULT.withTolerances(0.005, 1e-5));
    }

    private static double meatWater(SolidGrid grid) {
        return DENSITY * WATER / (1 + WATER) * grid.totalVolume();
    }

    /** Salt in the piece over its dry solids [kg/kg]. */
    private static double saltPerDry(SolidSolver solver) {
        return solver.meanSalt() / (1 - solver.meanSalt()) * (1 + WATER);
    }

    @TestFactory
    Stream<DynamicTest> sphereTakesUpSaltAsCrankSays() {
        Map<String, List<CsvTable.Row>> groups = new LinkedHashMap<>();
        for (CsvTable.Row row :
                CsvTable.load(SolidSaltTest.class, "analytic_checks.csv").rows()) {
            if (row.text("group").equals("CRU") && row.text("geometry").startsWith("sphere")) {
                groups.computeIfAbsent(row.text("inputs").replaceAll(";Dt.*", ""), key -> new ArrayList<>())
                        .add(row);
            }
        }
        assertThat(groups).hasSize(5);
        return groups.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> check(entry.getValue())));
    }

    private static void check(List<CsvTable.Row> rows) {
        double alpha = SolidCases.inputs(rows.get(0).text("inputs")).get("alpha");
        double[][] uptake = new double[2][rows.size()];
        for (int i = 0; i < 2; i++) {
            for (int r = 0; r < rows.size(); r++) {
                // a stage fills its bath anew, so each time needs a run of its own
                SolidGrid grid = SolidGrid.ellipsoid(2 * RADIUS, 2 * RADIUS, 2 * RADIUS, i == 0 ? 1000 : 8000, 1);
                SolidSolver solver = solver(grid);
                double water = alpha * meatWater(grid) / grid.faceArea(0);
                SaltSource bath = new SaltSource.Bath(STRENGTH * water, water, SaltSource.Swelling.NONE);
                double time = number(rows.get(r).text("inputs")) * RADIUS * RADIUS / DIFFUSIVITY;
                solver.run(new StageInput(List.of(CELLAR), List.of(bath), time, StopRule.NEVER), SolidSink.NONE);
                double atEquilibrium = STRENGTH * WATER * alpha / (1 + alpha);
                uptake[i][r] = saltPerDry(solver) / atEquilibrium;
                assertThat(solver.balanceError().salt()).isLessThan(1e-9);
            }
        }
        for (int r = 0; r < rows.size(); r++) {
            double bound = Math.abs(uptake[1][r] - uptake[0][r]) + 1e-4;
            assertThat(uptake[1][r])
                    .as(rows.get(r).text("id"))
                    .isCloseTo(rows.get(r).number("value"), within(bound));
        }
    }

    private static double number(String inputs) {
        return Double.parseDouble(inputs.substring(inputs.indexOf("Dt/l^2=") + 7));
    }

    @Test
    void drySaltIsTakenUpEntirelyAndNotMore() {
        SolidGrid grid = SolidGrid.box(0.1, 0.08, 0.03, 3000, 2);
        SolidSolver solver = solver(grid);
        SaltSource dose = new SaltSource.Dose(0.02, 0.36);
        StageInput stage =
                new StageInput(List.of(CELLAR, CELLAR), List.of(dose, SaltSource.NONE), 2 * 86400, StopRule.NEVER);
        solver.run(stage, SolidSink.NONE);
        double dry = DENSITY / (1 + WATER) * grid.totalVolume();
        double taken = saltPerDry(solver) * dry / grid.faceArea(0);
        // what is left is a film of less than the thin share of the dose
        assertThat(taken).isBetween(0.02 * 0.99, 0.02);
        assertThat(solver.balanceError().salt()).isLessThan(1e-9);
        for (int c = 0; c < grid.cells(); c++) {
            assertThat(solver.cellSalt(c)).isGreaterThan(-1e-6);
        }
    }

    @Test
    void saltEvensOutAfterTheSoakWithoutLoss() {
        SolidGrid grid = SolidGrid.cylinder(0.05, 0.1, 2000, 1);
        SolidSolver solver = solver(grid);
        SaltSource bath = new SaltSource.Bath(1, 10, SaltSource.Swelling.NONE);
        solver.run(new StageInput(List.of(CELLAR), List.of(bath), 20000, StopRule.NEVER), SolidSink.NONE);
        double mean = solver.meanSalt();
        double core = solver.coreSalt();
        solver.run(StageInput.of(CELLAR, 20 * 86400), SolidSink.NONE);
        assertThat(solver.meanSalt()).isCloseTo(mean, within(1e-12));
        assertThat(core).isLessThan(0.5 * mean);
        assertThat(solver.coreSalt()).isCloseTo(mean, within(1e-4));
    }
}
