package io.github.saltfront.verification;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import io.github.saltfront.transport.StopRule;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;

/** Exact solutions of diffusion of salt (Crank 1975), as shares of the final uptake or of the strength of the brine. */
final class SaltChecks {
    private static final double WATER = 3;
    private static final double EXTENT = 0.015;
    private static final double DENSITY = 1060;
    private static final double DIFFUSIVITY = 3e-10;
    private static final double STRENGTH = 0.06;
    private static final double COLD = Temperature.fromCelsius(5);
    private static final CsvTable CRANK = CsvTable.load(SaltChecks.class, "crank_check.csv");

    /** Stands for an infinite bath: the bath loses 1e-6 of its strength to the meat. */
    private static final double INFINITE = 1e6;

    /** The second table has five decimals. */
    private static final double FIVE_DECIMALS = 5e-6;

    private SaltChecks() {}

    /** Limited stirred bath: Crank 1975, sections 4.3.5, 5.3.3, 6.3.3; alpha is bath over meat water here. */
    static List<Check> limitedBath() {
        List<Check> checks = new ArrayList<>();
        for (CsvTable.Row row : References.group("CRU")) {
            double alpha = References.input(row, "alpha");
            double fourier = References.number(row.text("inputs").replaceAll("Dt/[la]\\^2", "Fo"), "Fo");
            checks.addAll(ConductionChecks.single(row, 8, resolution -> {
                LayerSolver solver = soak(resolution, References.exponent(row), alpha, fourier);
                return uptake(solver) * (1 + 1 / alpha);
            }));
        }
        return checks;
    }

    /** Bath of constant strength. */
    static List<Check> infiniteBath() {
        List<Check> checks = new ArrayList<>();
        for (CsvTable.Row row : References.group("DIF")) {
            double m = References.exponent(row);
            String inputs = row.text("inputs").replaceAll("Dt/[la]\\^2", "Fo");
            if (row.text("quantity").startsWith("Dt")) {
                checks.add(halfUptakeTime(row));
            } else {
                boolean middle = row.text("quantity").startsWith("(C");
                checks.addAll(Check.compare(
                        "DIF",
                        List.of(row.text("id")),
                        new double[] {row.number("value")},
                        new double[] {Check.rounding(row.number("value"), 8) + 1 / INFINITE},
                        resolution -> {
                            LayerSolver solver = soak(resolution, m, INFINITE, References.number(inputs, "Fo"));
                            return new double[] {middle ? middle(solver) : uptake(solver)};
                        }));
            }
        }
        return checks;
    }

    private static Check halfUptakeTime(CsvTable.Row row) {
        double salt = 0.5 * STRENGTH * WATER / (1 + WATER);
        return Check.compare(
                        row.text("group"),
                        List.of(row.text("id")),
                        new double[] {row.number("value")},
                        // the rule is met within 1e-8 kg/kg; the uptake rises by about 1.27 a unit of Fo at one half
                        new double[] {Check.rounding(row.number("value"), 8) + 1e-8 / salt},
                        resolution -> {
                            LayerSolver solver = solver(resolution, 0);
                            StageInput stage = new StageInput(
                                    List.of(FaceCondition.convection(COLD, 100)),
                                    List.of(bath(0, INFINITE)),
                                    seconds(1),
                                    new StopRule(StopRule.Kind.MEAN_SALT_ABOVE, salt / (1 + salt)));
                            solver.run(List.of(stage), StepSink.NONE);
                            return new double[] {solver.stageTime(0) / seconds(1)};
                        })
                .get(0);
    }

    /** The second table: mean and middle of all shapes, limited baths, and salt laid on the surface at once. */
    static List<Check> crankTable() {
        List<Check> checks = new ArrayList<>();
        String[] shapes = {"slab", "cylinder", "sphere"};
        for (int m = 0; m < 3; m++) {
            int exponent = m;
            checks.addAll(column(shapes[m] + "_mean_fraction", (r, fo) -> uptake(soak(r, exponent, INFINITE, fo))));
            checks.addAll(column(shapes[m] + "_centre", (r, fo) -> middle(soak(r, exponent, INFINITE, fo))));
        }
        for (String alpha : List.of("0.5", "1", "2", "5", "10")) {
            double ratio = Double.parseDouble(alpha);
            checks.addAll(column(
                    "slab_mean_limited_alpha" + alpha, (r, fo) -> uptake(soak(r, 0, ratio, fo)) * (1 + 1 / ratio)));
        }
        return checks;
    }

    /**
     * Salt laid on the surface, all of which enters the meat at once: a dose whose film has a saturation of 1e5, so that what
     * remains on the face is below 1e-6 of the dose and the resistance of the film is none.
     */
    static List<Check> surfaceDose() {
        List<Check> checks = new ArrayList<>();
        checks.addAll(column("surface_dose_slab_centre_over_mean", (r, fo) -> {
            LayerSolver solver = doused(r, fo);
            return perWater(solver.coreSalt(0)) / perWater(solver.meanSalt(0));
        }));
        checks.addAll(column("surface_dose_slab_surface_over_mean", (r, fo) -> {
            LayerSolver solver = doused(r, fo);
            return surface(solver) / perWater(solver.meanSalt(0));
        }));
        return checks;
    }

    /** Value at a face without flux, from a parabola through the two outermost nodes. */
    private static double surface(LayerSolver solver) {
        int n = solver.grid().cells();
        double a = 1 - solver.grid().node(n - 1);
        double b = 1 - solver.grid().node(n - 2);
        double near = perWater(solver.cellSalt(0, n - 1));
        double far = perWater(solver.cellSalt(0, n - 2));
        return (b * b * near - a * a * far) / (b * b - a * a);
    }

    private interface Value {
        double at(Resolution resolution, double fourier);
    }

    private static List<Check> column(String name, Value value) {
        List<CsvTable.Row> rows = CRANK.rows();
        double[] fourier =
                rows.stream().mapToDouble(r -> r.number("Fo_Dt_over_L2")).toArray();
        double[] expected = rows.stream().mapToDouble(r -> r.number(name)).toArray();
        List<Check> checks = new ArrayList<>();
        for (int i = 0; i < fourier.length; i++) {
            double fo = fourier[i];
            checks.addAll(Check.compare(
                    name.startsWith("surface_dose") ? "crank dose" : "crank",
                    List.of(name + " at " + fo),
                    new double[] {expected[i]},
                    new double[] {FIVE_DECIMALS + 1 / INFINITE},
                    resolution -> new double[] {value.at(resolution, fo)}));
        }
        return checks;
    }

    static LayerSolver solver(Resolution resolution, double exponent) {
        Member member = new Member(
                EXTENT,
                1,
                new InitialState(COLD, WATER, 0),
                HeatProperties.constant(DENSITY, 3500, 0.5, WATER),
                new SaltProperties(DIFFUSIVITY, 20_000, 1, 0, 0),
                true);
        return new LayerSolver(resolution.grid(exponent), List.of(member), resolution.settings());
    }

    static double seconds(double fourier) {
        return fourier * EXTENT * EXTENT / DIFFUSIVITY;
    }

    private static SaltSource.Bath bath(double exponent, double ratio) {
        double meatWater = DENSITY / (1 + WATER) * WATER * EXTENT / (exponent + 1);
        return new SaltSource.Bath(STRENGTH * ratio * meatWater, ratio * meatWater, SaltSource.Swelling.NONE);
    }

    private static LayerSolver soak(Resolution resolution, double exponent, double ratio, double fourier) {
        LayerSolver solver = solver(resolution, exponent);
        run(solver, bath(exponent, ratio), fourier);
        return solver;
    }

    private static LayerSolver doused(Resolution resolution, double fourier) {
        LayerSolver solver = solver(resolution, 0);
        run(solver, new SaltSource.Dose(0.01 * DENSITY * EXTENT, 1e5), fourier);
        return solver;
    }

    static void run(LayerSolver solver, SaltSource source, double fourier) {
        solver.run(
                List.of(new StageInput(
                        List.of(FaceCondition.convection(COLD, 100)),
                        List.of(source),
                        seconds(fourier),
                        StopRule.NEVER)),
                StepSink.NONE);
    }

    /** Salt per water from salt per wet mass. */
    private static double perWater(double salt) {
        return salt / (1 - salt) * (1 + WATER) / WATER;
    }

    private static double uptake(LayerSolver solver) {
        return perWater(solver.meanSalt(0)) / STRENGTH;
    }

    private static double middle(LayerSolver solver) {
        return perWater(solver.coreSalt(0)) / STRENGTH;
    }
}
