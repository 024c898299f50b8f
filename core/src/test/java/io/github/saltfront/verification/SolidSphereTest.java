package io.github.saltfront.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.SolidSink;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.StageInput;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * A sphere as an ellipsoid of equal axes against the exact series (Carslaw, Jaeger 1959, chapter 9; rows SER of the table). The
 * bound is the difference of two grids as in {@link SolidProductTest}, the largest over all times of a Biot number, since the
 * error of the surface changes its sign in time and the difference with it.
 */
class SolidSphereTest {
    private static final double RADIUS = 0.04;
    private static final double CONDUCTIVITY = 0.5;
    private static final double DIFFUSIVITY = 1.25e-7;

    private static SolidSolver sphere(int cells) {
        SolidGrid grid = SolidGrid.ellipsoid(2 * RADIUS, 2 * RADIUS, 2 * RADIUS, cells, 1);
        return SolidCases.solver(grid, CONDUCTIVITY, DIFFUSIVITY);
    }

    private static Map<String, List<CsvTable.Row>> rowsByBiot() {
        Map<String, List<CsvTable.Row>> groups = new LinkedHashMap<>();
        for (CsvTable.Row row :
                CsvTable.load(SolidSphereTest.class, "analytic_checks.csv").rows()) {
            if (row.text("group").equals("SER") && row.text("geometry").startsWith("sphere")) {
                groups.computeIfAbsent(row.text("inputs").replaceAll(";.*", ""), key -> new ArrayList<>())
                        .add(row);
            }
        }
        return groups;
    }

    @TestFactory
    Stream<DynamicTest> sphereCoolsLikeTheSeries() {
        return rowsByBiot().entrySet().stream()
                .map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> check(entry.getValue())));
    }

    private static void check(List<CsvTable.Row> rows) {
        SolidSolver coarse = sphere(1600);
        SolidSolver fine = sphere(12800);
        double now = 0;
        double[] finer = new double[rows.size()];
        Map<String, Double> bound = new HashMap<>();
        for (int r = 0; r < rows.size(); r++) {
            CsvTable.Row row = rows.get(r);
            Map<String, Double> in = SolidCases.inputs(row.text("inputs"));
            double time = in.get("Fo") * RADIUS * RADIUS / DIFFUSIVITY;
            if (time > now) {
                double coefficient = in.get("Bi") * CONDUCTIVITY / RADIUS;
                StageInput stage = StageInput.of(SolidCases.cold(coefficient), time - now);
                coarse.run(stage, SolidSink.NONE);
                fine.run(stage, SolidSink.NONE);
                now = time;
            }
            String quantity = row.text("quantity");
            finer[r] = value(fine, quantity);
            double difference = Math.abs(finer[r] - value(coarse, quantity)) + SolidCases.TIME_ERROR;
            bound.merge(quantity, difference, Math::max);
        }
        for (int r = 0; r < rows.size(); r++) {
            double limit = bound.getOrDefault(rows.get(r).text("quantity"), 0.0);
            assertThat(finer[r])
                    .as(rows.get(r).text("id"))
                    .isCloseTo(rows.get(r).number("value"), within(limit));
            assertThat(limit).isLessThan(0.05);
        }
        assertThat(fine.balanceError().energy()).isLessThan(1e-9);
    }

    private static double value(SolidSolver solver, String quantity) {
        return SolidCases.theta(
                switch (quantity) {
                    case "theta_centre" -> solver.coreTemperature();
                    case "theta_mean" -> solver.meanTemperature();
                    case "theta_surface" -> solver.meanFaceTemperature(0);
                    default -> throw new AssertionError(quantity);
                });
    }

    // first root of 1 - z cot z = 5 and series at Fo = 0.3, as in row group SER
    @Test
    void errorFallsWithTheSquareOfTheCellSize() {
        double exact = rowsByBiot().get("Bi=5").stream()
                .filter(row -> row.text("inputs").endsWith("Fo=0.3")
                        && row.text("quantity").equals("theta_centre"))
                .findFirst()
                .orElseThrow()
                .number("value");
        double[] error = new double[2];
        for (int i = 0; i < 2; i++) {
            SolidSolver solver = sphere(i == 0 ? 2000 : 16000);
            StageInput stage =
                    StageInput.of(SolidCases.cold(5 * CONDUCTIVITY / RADIUS), 0.3 * RADIUS * RADIUS / DIFFUSIVITY);
            solver.run(stage, SolidSink.NONE);
            error[i] = Math.abs(SolidCases.theta(solver.coreTemperature()) - exact);
        }
        double order = Math.log(error[0] / error[1]) / Math.log(2);
        assertThat(order).isBetween(1.8, 2.5);
    }
}
