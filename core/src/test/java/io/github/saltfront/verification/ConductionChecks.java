package io.github.saltfront.verification;

import static io.github.saltfront.verification.ConstantPiece.fourier;
import static io.github.saltfront.verification.ConstantPiece.kelvin;
import static io.github.saltfront.verification.ConstantPiece.medium;
import static io.github.saltfront.verification.ConstantPiece.seconds;
import static io.github.saltfront.verification.ConstantPiece.u;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.transport.TimeProfile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Exact solutions of conduction with constant properties: temperatures as shares U of the whole rise, times as Fourier numbers. */
final class ConductionChecks {
    /** The rows were printed with eight significant digits, trailing zeros dropped. */
    private static final int DIGITS = 8;

    private ConductionChecks() {}

    /** Carslaw and Jaeger 1959, chapters 3, 7, 9: convection from time zero. */
    static List<Check> series() {
        return perHistory("SER", row -> resolution -> {
            LayerSolver solver = ConstantPiece.solver(resolution, References.exponent(row));
            heat(solver, row);
            return quantity(solver, row.text("quantity"));
        });
    }

    /** The same at places inside. */
    static List<Check> inside() {
        List<Check> checks = new ArrayList<>();
        for (CsvTable.Row row : References.group("SERX")) {
            checks.addAll(single(row, DIGITS, resolution -> {
                LayerSolver solver = ConstantPiece.solver(resolution, References.exponent(row));
                heat(solver, row);
                return 1 - u(ConstantPiece.local(solver, References.input(row, "x/L")));
            }));
        }
        return checks;
    }

    /** Time at which the middle reaches a target, relative to the time. */
    static List<Check> times() {
        List<Check> checks = new ArrayList<>();
        for (CsvTable.Row row : References.group("FOT")) {
            double exact = row.number("value");
            double target = 1 - References.input(row, "target theta_centre");
            List<Check> one = Check.compare(
                    "FOT",
                    List.of(row.text("id")),
                    new double[] {1},
                    new double[] {Check.rounding(exact, DIGITS) / exact + eventError(row) / exact},
                    resolution -> {
                        LayerSolver solver = ConstantPiece.solver(resolution, References.exponent(row));
                        StageInput stage = StageInput.of(medium(References.input(row, "Bi"), 1), seconds(10 * exact))
                                .until(new StopRule(StopRule.Kind.CORE_ABOVE, kelvin(target)));
                        solver.run(List.of(stage), StepSink.NONE);
                        return new double[] {fourier(solver.stageTime(0)) / exact};
                    });
            checks.addAll(one);
        }
        return checks;
    }

    /**
     * The solver stops within 1e-4 K after a core target. A middle that is left to itself moves at most as slowly as the first
     * mode, theta' = -lambda^2 theta, and at these targets no slower than half of that.
     */
    private static double eventError(CsvTable.Row row) {
        double biot = References.input(row, "Bi");
        double theta = References.input(row, "target theta_centre");
        // lambda^2 is above Bi (m + 1) / (1 + Bi / 2) (m = 0: between Bi / (1 + Bi/2) and Bi), a lower bound for all
        // shapes
        double lambdaSquare = Math.min(biot, 1e9) / (1 + Math.min(biot, 1e9) / 2);
        return 1e-4 / ConstantPiece.RISE / (0.5 * lambdaSquare * theta);
    }

    /** A medium that warms up exponentially, by Duhamel's theorem. */
    static List<Check> warmingMedium() {
        return perHistory("LAG", row -> resolution -> {
            LayerSolver solver = ConstantPiece.solver(resolution, References.exponent(row));
            TimeProfile warming =
                    new TimeProfile.Approach(kelvin(0), kelvin(1), seconds(1 / References.input(row, "s")));
            FaceCondition face =
                    FaceCondition.convection(warming, ConstantPiece.coefficient(References.input(row, "Bi")));
            solver.run(List.of(StageInput.of(face, seconds(References.input(row, "Fo")))), StepSink.NONE);
            return quantity(solver, row.text("quantity"));
        });
    }

    /** Heat, then rest in a cooler medium with another coefficient: carry-over. */
    static List<Check> rest() {
        List<Check> checks = new ArrayList<>();
        for (CsvTable.Row row : References.group("REST")) {
            String quantity = row.text("quantity");
            // peak times are printed with five decimals and said to be good to 1e-5
            double rounding = quantity.endsWith("at peak") ? 1e-5 : 5e-8;
            checks.addAll(Check.compare(
                    quantity.contains("Fo ") ? "REST time" : "REST",
                    List.of(row.text("id")),
                    new double[] {row.number("value")},
                    new double[] {rounding + restEventError(row)},
                    resolution -> new double[] {restValue(row, resolution)}));
        }
        return checks;
    }

    /** The core stops within 1e-4 K = 1e-6 of the rise; the rise is faster than 0.3 of the whole a unit of Fo in these rows. */
    private static double restEventError(CsvTable.Row row) {
        return row.text("quantity").contains("Fo ") ? 1e-6 / 0.3 : 1e-6;
    }

    private static double restValue(CsvTable.Row row, Resolution resolution) {
        String[] stages = row.text("inputs").split(";");
        LayerSolver solver = ConstantPiece.solver(resolution, References.exponent(row));
        double target = References.number(stages[0], "until centre U");
        StageInput first = StageInput.of(
                        medium(References.number(stages[0], "Bi"), References.number(stages[0], "ambient U")),
                        seconds(100))
                .until(new StopRule(StopRule.Kind.CORE_ABOVE, kelvin(target)));
        solver.run(List.of(first), StepSink.NONE);
        String quantity = row.text("quantity");
        if (quantity.startsWith("Fo at end")) {
            return fourier(solver.stageTime(0));
        }
        if (quantity.startsWith("U_mean")) {
            return u(solver.meanTemperature(0));
        }
        FaceCondition rest = medium(References.number(stages[1], "Bi"), References.number(stages[1], "ambient U"));
        if (quantity.equals("centre U")) {
            solver.run(List.of(StageInput.of(rest, seconds(References.input(row, "Fo2")))), StepSink.NONE);
            return u(solver.coreTemperature(0));
        }
        PeakFinder peak = new PeakFinder();
        solver.run(List.of(StageInput.of(rest, seconds(2))), peak);
        return quantity.startsWith("peak") ? u(peak.height()) : fourier(peak.time());
    }

    /** Semi-infinite solids: a slab so thick that its middle feels less than 1e-16 of the change. */
    static List<Check> semiInfinite() {
        List<Check> checks = new ArrayList<>();
        for (CsvTable.Row row : References.group("SEMI")) {
            if (row.text("quantity").equals("depth")) {
                checks.addAll(soilDepth(row));
                continue;
            }
            double time = References.input(row, "t");
            double alpha = References.input(row, "alpha");
            double thickness = 12 * Math.sqrt(alpha * time);
            double biot = row.text("inputs").contains("h=")
                    ? References.input(row, "h") * thickness / References.input(row, "k")
                    : Double.POSITIVE_INFINITY;
            checks.addAll(single(row, DIGITS, resolution -> {
                LayerSolver solver = ConstantPiece.solver(deep(resolution), 0);
                solver.run(
                        List.of(StageInput.of(medium(biot, 1), seconds(alpha * time / (thickness * thickness)))),
                        StepSink.NONE);
                return u(ConstantPiece.local(solver, 1 - References.input(row, "x") / thickness));
            }));
        }
        return checks;
    }

    private static Resolution deep(Resolution r) {
        return new Resolution(2 * r.cells(), r.outerCell() / 8, r.temperature(), r.salt());
    }

    /** Depth at which soil freezes in 60 days, from 20 to -15 with 0 degrees Celsius sought: U = 20/35. */
    private static List<Check> soilDepth(CsvTable.Row row) {
        double alpha = 0.138e-6;
        double time = 60 * 86400.0;
        double thickness = 12 * Math.sqrt(alpha * time);
        return single(row, 6, resolution -> {
            LayerSolver solver = ConstantPiece.solver(deep(resolution), 0);
            solver.run(
                    List.of(StageInput.of(
                            medium(Double.POSITIVE_INFINITY, 1), seconds(alpha * time / (thickness * thickness)))),
                    StepSink.NONE);
            double low = 0;
            double high = 1;
            for (int i = 0; i < 50; i++) {
                double middle = 0.5 * (low + high);
                if (u(ConstantPiece.local(solver, middle)) > 20.0 / 35) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return (1 - low) * thickness;
        });
    }

    private static void heat(LayerSolver solver, CsvTable.Row row) {
        solver.run(
                List.of(StageInput.of(medium(References.input(row, "Bi"), 1), seconds(References.input(row, "Fo")))),
                StepSink.NONE);
    }

    private static double quantity(LayerSolver solver, String name) {
        double value = switch (name.substring(name.indexOf('_') + 1)) {
            case "centre" -> u(solver.coreTemperature(0));
            case "mean" -> u(solver.meanTemperature(0));
            case "surface" -> u(solver.faceTemperature(0, 0));
            default -> throw new IllegalArgumentException("quantity " + name);
        };
        return name.startsWith("theta") ? 1 - value : value;
    }

    /**
     * Rows of one history (a shape in a medium, at all its times) are one experiment and share their estimate: the error in time
     * swings with the places of the steps, and its estimate with it.
     */
    private static List<Check> perHistory(
            String group, Function<CsvTable.Row, Function<Resolution, Double>> experiment) {
        Map<String, List<CsvTable.Row>> histories = new LinkedHashMap<>();
        for (CsvTable.Row row : References.group(group)) {
            histories
                    .computeIfAbsent(
                            row.text("geometry") + row.text("inputs").replaceAll("Fo=[0-9.]+;?", ""),
                            k -> new ArrayList<>())
                    .add(row);
        }
        List<Check> checks = new ArrayList<>();
        for (List<CsvTable.Row> rows : histories.values()) {
            checks.addAll(Check.compare(
                    group,
                    rows.stream().map(r -> r.text("id")).toList(),
                    rows.stream().mapToDouble(r -> r.number("value")).toArray(),
                    rows.stream()
                            .mapToDouble(r -> Check.rounding(r.number("value"), DIGITS))
                            .toArray(),
                    resolution -> rows.stream()
                            .mapToDouble(r -> experiment.apply(r).apply(resolution))
                            .toArray()));
        }
        return checks;
    }

    static List<Check> single(CsvTable.Row row, int digits, Function<Resolution, Double> experiment) {
        double value = row.number("value");
        return Check.compare(
                row.text("group"),
                List.of(row.text("id")),
                new double[] {value},
                new double[] {Check.rounding(value, digits)},
                resolution -> new double[] {experiment.apply(resolution)});
    }
}
