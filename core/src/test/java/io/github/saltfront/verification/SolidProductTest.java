package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.SolidSink;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StopRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Bricks and finite cylinders against products of exact solutions (Newman's rule; Carslaw, Jaeger 1959, section 1.15; rows PROD,
 * EHTD and BOOK of the table). Two grids, the second with half the cell size, bound the error: it is about a third of their
 * difference if the order is two, and must not exceed the whole difference plus the error in time.
 */
class SolidProductTest {
    private static final int COARSE = 1500;
    private static final int FINE = 12000;

    private static List<CsvTable.Row> rows(String group) {
        return CsvTable.load(SolidProductTest.class, "analytic_checks.csv").rows().stream()
                .filter(row -> row.text("group").equals(group))
                .toList();
    }

    private static SolidGrid grid(Map<String, Double> in, int cells) {
        if (in.containsKey("R")) {
            return SolidGrid.cylinder(2 * in.get("R"), 2 * in.get("H"), cells, 1);
        }
        return SolidGrid.box(2 * in.get("c"), 2 * in.get("b"), 2 * in.get("a"), cells, 1);
    }

    @TestFactory
    Stream<DynamicTest> piecesCoolLikeTheProductOfExactSolutions() {
        Map<String, List<CsvTable.Row>> pieces = new LinkedHashMap<>();
        for (CsvTable.Row row : rows("PROD")) {
            String piece = row.text("inputs").replaceAll(";t=.*", "");
            pieces.computeIfAbsent(piece, key -> new ArrayList<>()).add(row);
        }
        return pieces.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> checkPiece(entry.getValue())));
    }

    private static void checkPiece(List<CsvTable.Row> rows) {
        Map<String, Double> in = SolidCases.inputs(rows.get(0).text("inputs"));
        SolidSolver coarse = SolidCases.solver(grid(in, COARSE), in.get("k"), in.get("alpha"));
        SolidSolver fine = SolidCases.solver(grid(in, FINE), in.get("k"), in.get("alpha"));
        double now = 0;
        for (CsvTable.Row row : rows) {
            double time = SolidCases.inputs(row.text("inputs")).get("t");
            if (time > now) {
                StageInput stage = StageInput.of(SolidCases.cold(in.get("h")), time - now);
                coarse.run(stage, SolidSink.NONE);
                fine.run(stage, SolidSink.NONE);
                now = time;
            }
            double finer = value(fine, row.text("quantity"));
            double bound = Math.abs(finer - value(coarse, row.text("quantity"))) + SolidCases.TIME_ERROR;
            assertThat(finer).as(row.text("id")).isCloseTo(row.number("value"), within(bound));
            assertThat(bound).as("bound of " + row.text("id")).isLessThan(0.02);
        }
        assertThat(fine.balanceError().energy()).isLessThan(1e-9);
    }

    private static double value(SolidSolver solver, String quantity) {
        return switch (quantity) {
            case "theta_centre" -> SolidCases.theta(solver.coreTemperature());
            case "theta_mean" -> SolidCases.theta(solver.meanTemperature());
            case "theta_corner" -> corner(solver);
            default -> throw new AssertionError(quantity);
        };
    }

    /** Near the corner the solution is a product of three functions: cell value times the three ratios of surface to cell. */
    private static double corner(SolidSolver solver) {
        int last = solver.grid().cells() - 1;
        double cell = SolidCases.theta(solver.cellTemperature(last));
        double product = cell;
        int sides = 0;
        for (int p = 0; p < solver.grid().patches(); p++) {
            if (solver.grid().patchCell(p) == last) {
                product *= SolidCases.theta(solver.patchTemperature(p)) / cell;
                sides++;
            }
        }
        assertThat(sides).isEqualTo(3);
        return product;
    }

    @Tag("slow")
    @TestFactory
    Stream<DynamicTest> middleReachesATemperatureWhenTheExactSeriesDoes() {
        Map<String, List<CsvTable.Row>> pieces = new LinkedHashMap<>();
        for (CsvTable.Row row : rows("EHTD")) {
            if (row.text("quantity").contains("exact product series")) {
                String piece = row.text("geometry") + " " + row.text("inputs").replaceAll("\\(.*", "");
                pieces.computeIfAbsent(piece, key -> new ArrayList<>()).add(row);
            }
        }
        assertThat(pieces).hasSize(48);
        return pieces.entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> checkTimes(entry.getValue())));
    }

    private static void checkTimes(List<CsvTable.Row> rows) {
        double shortest = 0.02;
        double conductivity = 0.5;
        double diffusivity = 1.25e-7;
        double[] coarse = new double[rows.size()];
        double[] fine = new double[rows.size()];
        for (int i = 0; i < 2; i++) {
            Map<String, Double> in = SolidCases.inputs(rows.get(0).text("inputs"));
            double second = 2 * shortest * in.get("beta1");
            double third = 2 * shortest * in.get("beta2");
            int cells = i == 0 ? 1000 : 8000;
            boolean brick = rows.get(0).text("geometry").contains("brick");
            SolidGrid grid = brick
                    ? SolidGrid.box(third, second, 2 * shortest, cells, 1)
                    : SolidGrid.cylinder(2 * shortest, third, cells, 1);
            SolidSolver solver = SolidCases.solver(grid, conductivity, diffusivity);
            double time = 0;
            for (int r = 0; r < rows.size(); r++) {
                double theta = SolidCases.inputs(rows.get(r).text("inputs")).get("Y");
                double threshold = SolidCases.COLD + theta * (SolidCases.HOT - SolidCases.COLD);
                double coefficient = in.get("Bi") * conductivity / shortest;
                solver.run(
                        StageInput.of(SolidCases.cold(coefficient), 1e6)
                                .until(new StopRule(StopRule.Kind.CORE_BELOW, threshold)),
                        SolidSink.NONE);
                assertThat(solver.wasStopped()).isTrue();
                time += solver.stageTime();
                (i == 0 ? coarse : fine)[r] = time * diffusivity / (shortest * shortest);
            }
        }
        for (int r = 0; r < rows.size(); r++) {
            double exact = rows.get(r).number("value");
            double bound = Math.abs(fine[r] - coarse[r]) + 1e-4 * exact;
            assertThat(fine[r]).as(rows.get(r).text("id")).isCloseTo(exact, within(bound));
            assertThat(bound / exact).isLessThan(0.02);
        }
    }

    // BOOK2637: hot dog of 12 cm x 2 cm, k 0.76, alpha 2e-7, h 600, 5 -> 80 in 100 degrees Celsius (Cengel, Heat and
    // Mass
    // Transfer 5th ed., chapter 4); time by the full product series, recomputed
    @Test
    void hotDogReachesEightyDegreesWhenTheSeriesSays() {
        double theta = (100 - 80) / (100.0 - 5);
        double[] time = new double[2];
        for (int i = 0; i < 2; i++) {
            SolidGrid grid = SolidGrid.cylinder(0.02, 0.12, i == 0 ? 4000 : 32000, 1);
            SolidSolver solver = SolidCases.solver(grid, 0.76, 2e-7);
            double threshold = SolidCases.COLD + theta * 100;
            StopRule rule = new StopRule(StopRule.Kind.CORE_BELOW, threshold);
            solver.run(StageInput.of(SolidCases.cold(600), 1e4).until(rule), SolidSink.NONE);
            time[i] = solver.stageTime();
        }
        assertThat(time[1]).isCloseTo(221.085, within(Math.abs(time[1] - time[0]) + 0.02));
        assertThat(time[1]).isCloseTo(221.085, within(1.0));
    }
}
