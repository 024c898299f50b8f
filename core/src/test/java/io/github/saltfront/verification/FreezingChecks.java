package io.github.saltfront.verification;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;

/**
 * Freezing with a sharp front, of which the solver sees a smeared one: the latent heat is spread over a narrow interval below
 * the freezing point. The error of the smearing is estimated by halving the interval and enters the bound like that of grid
 * and tolerance.
 */
final class FreezingChecks {
    /** Widths of the interval in which the latent heat is released, relative to that from freezing point to surface [-]. */
    static final double WIDTH = 0.02;

    private static final int CELLS = 100;
    private static final double OUTER = 1.0 / 200;
    private static final double SAFETY = 2;

    private FreezingChecks() {}

    /** Conduction with change of phase; J/kg, W/(m.K), degrees Celsius. */
    record Phases(
            double density,
            double frozenConductivity,
            double conductivity,
            double frozenCapacity,
            double capacity,
            double latent,
            double freezing,
            double surface,
            double start) {
        double frozenDiffusivity() {
            return frozenConductivity / density / frozenCapacity;
        }
    }

    /** Carslaw and Jaeger 1959, chapter 11: one-phase Stefan and two-phase Neumann similarity solutions. */
    static List<Check> similarity() {
        List<Check> checks = new ArrayList<>();
        for (CsvTable.Row row : References.group("STEF")) {
            Phases phases = phases(row);
            String inputs = row.text("inputs");
            double time = inputs.contains(";t=") ? References.input(row, "t") : 3600;
            double place = inputs.contains(";x=") ? References.input(row, "x") : 0;
            String quantity = row.text("quantity");
            String group = quantity.equals("T") ? "STEF temperature" : "STEF front";
            double value = row.number("value");
            // temperatures in units of the whole fall, fronts relative to their depth
            double scale = quantity.equals("T") ? phases.start() - phases.surface() : value;
            double factor = quantity.startsWith("lambda") ? 1 / (2 * Math.sqrt(phases.frozenDiffusivity() * time)) : 1;
            Run run = (cells, width, tolerance) -> {
                LayerSolver solver = freeze(phases, time, cells, width, tolerance);
                double thickness = thickness(phases, time);
                return quantity.equals("T")
                        ? Temperature.toCelsius(ConstantPiece.local(solver, 1 - place / thickness))
                        : front(solver, phases, width) * thickness * factor;
            };
            checks.add(compare(group, row, value, scale, halfLayer(row, phases, time, place), run));
        }
        return checks;
    }

    /**
     * The front moves on when a layer is frozen through, so that it is known to half a layer; a temperature above it, nearly on
     * a straight line from surface to front, follows by its share.
     */
    private static double halfLayer(CsvTable.Row row, Phases p, double time, double place) {
        double thickness = thickness(p, time);
        if (row.text("quantity").startsWith("lambda")) {
            double unit = 2 * Math.sqrt(p.frozenDiffusivity() * time);
            return 0.5 * layer(row.number("value") * unit / thickness) * thickness / unit;
        }
        if (row.text("quantity").startsWith("front")) {
            return 0.5 * layer(row.number("value") / thickness) * thickness;
        }
        double front = place * (p.freezing() - p.surface()) / (row.number("value") - p.surface());
        double half = 0.5 * layer(front / thickness) * thickness;
        return (p.freezing() - p.surface()) * place * half / (front * front);
    }

    /** Thickness of the layer at a depth, relative to that of the slab. */
    private static double layer(double depth) {
        LayerGrid grid = LayerGrid.symmetric(0, CELLS, OUTER);
        int i = CELLS - 1;
        while (grid.edge(i) > 1 - depth) {
            i--;
        }
        return grid.edge(i + 1) - grid.edge(i);
    }

    private interface Run {
        double value(int cells, double width, double tolerance);
    }

    private static Check compare(String group, CsvTable.Row row, double expected, double scale, double layer, Run run) {
        double base = run.value(CELLS, WIDTH, 0.02);
        double finer = run.value(2 * CELLS, WIDTH, 0.02);
        double tighter = run.value(CELLS, WIDTH, 0.02 / 27);
        double sharper = run.value(CELLS, WIDTH / 2, 0.02);
        double estimate = SAFETY * (Math.abs(base - finer) + Math.abs(base - tighter) + Math.abs(base - sharper));
        double bound = (estimate + layer + Check.rounding(expected, 6)) / Math.abs(scale);
        return new Check(group, row.text("id"), Math.abs((base - expected) / scale), bound);
    }

    private static Phases phases(CsvTable.Row row) {
        if (row.text("inputs").startsWith("Ste=")) {
            double stefan = References.number(row.text("inputs").replace("c*(Tm-Ts)/Lf=", ""), "Ste");
            return new Phases(1000, 2, 0.5, 2000, 4000, 2000 * 20 / stefan, -1, -21, -1);
        }
        return new Phases(
                References.input(row, "rho"),
                References.number(row.text("inputs").replace(": ", ";"), "k_fr"),
                References.input(row, "k_un"),
                References.input(row, "c_fr"),
                References.input(row, "c_un"),
                References.number(row.text("inputs"), "L"),
                References.input(row, "Tm"),
                References.input(row, "Tsurface"),
                References.input(row, "Tinitial"));
    }

    /**
     * So deep that the middle stays at its start: the front reaches 2 lambda sqrt(alpha t) with lambda below that without
     * sensible heat, and where the unfrozen part is above the freezing point, six of its diffusion lengths more (erfc(3) = 2e-5).
     */
    private static double thickness(Phases p, double time) {
        double frozen = 2 * lambdaBound(p) * Math.sqrt(p.frozenDiffusivity() * time);
        double unfrozen = p.start() > p.freezing()
                ? 6 * Math.sqrt(p.conductivity() / p.density() / p.capacity() * time)
                : 0.5 * frozen;
        return frozen + unfrozen;
    }

    /** Without sensible heat lambda is sqrt(Ste / 2), which sensible heat can only lower. */
    private static double lambdaBound(Phases p) {
        return Math.sqrt(0.5 * p.frozenCapacity() * (p.freezing() - p.surface()) / p.latent());
    }

    private static LayerSolver freeze(Phases p, double time, int cells, double width, double tolerance) {
        double thickness = thickness(p, time);
        LayerSolver solver = solver(p, thickness, 0, cells, OUTER * CELLS / cells, width, tolerance);
        solver.run(
                List.of(StageInput.of(FaceCondition.convection(Temperature.fromCelsius(p.surface()), 1e9), time)),
                StepSink.NONE);
        return solver;
    }

    static LayerSolver solver(
            Phases p, double extent, double exponent, int cells, double outer, double width, double tolerance) {
        double water = 3;
        double wet = 1 + water;
        HeatProperties heat = new HeatProperties(
                p.density() / wet,
                water,
                new double[] {p.capacity() * wet, 0, 0},
                new double[3],
                new double[3],
                new double[] {p.conductivity(), 0, 0},
                new double[2],
                new SmearedIce(p, width * (p.freezing() - p.surface()), wet));
        Member member = new Member(
                extent,
                1,
                new InitialState(Temperature.fromCelsius(p.start()), water, 0),
                heat,
                new SaltProperties(3e-10, 0, 1, 0, 0),
                true);
        Resolution resolution = new Resolution(cells, outer, tolerance, 2e-5);
        return new LayerSolver(resolution.grid(exponent), List.of(member), resolution.settings());
    }

    /** Distance from the face at which half the latent heat is released, relative to the thickness. */
    private static double front(LayerSolver solver, Phases p, double width) {
        double target = Temperature.fromCelsius(p.freezing() - 0.5 * width * (p.freezing() - p.surface()));
        double low = 0;
        double high = 1;
        for (int i = 0; i < 50; i++) {
            double middle = 0.5 * (low + high);
            if (ConstantPiece.local(solver, middle) < target) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return 1 - low;
    }
}
