package io.github.saltfront.bench;

import io.github.saltfront.transport.SolverSettings;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Measures the solvers and the two Python programs in one run, checks that all are right to 0.05 K, and prints the tables of
 * docs/performance.md.
 *
 * <p>Arguments: the folder bench/compare, a folder for files between the programs, and optionally the number of repeats.
 */
public final class Comparison {
    static final int SLABS = 1000;

    /** Largest error of any sample [K]. */
    static final double ALLOWED = 0.05;

    /** Members that are advanced side by side: enough for vectors, few enough for the second-level cache. */
    static final int LANES = 94;

    /** Tolerance of a step with which the worst sample of the worst slab errs by less than the allowed error [K]. */
    private static final double TOLERANCE = 0.04;

    /** Tolerance of the run that stands for the exact solution of the layered equations [K]. */
    private static final double TIGHT = 1e-5;

    private static final double WARM_SECONDS = 6;

    /** Tolerance of a step of the NumPy program [K] with which its worst sample errs by less than the allowed error. */
    private static final String NUMPY_TOLERANCE = "0.05";

    /** The SciPy program solves one slab of so many, one after the other. */
    private static final int SCIPY_STRIDE = 25;

    private static final int SCIPY_REPEATS = 3;

    private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    private final List<String> misses = new ArrayList<>();

    private Comparison() {}

    /**
     * Runs everything; the exit status is 1 if a result is wrong.
     *
     * @param arguments see above
     * @throws IOException if a file cannot be written or read, or the NumPy program fails
     * @throws InterruptedException if interrupted while it runs
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int repeats = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 15;
        Comparison comparison = new Comparison();
        comparison.slabs(Path.of(arguments[0]), new CompareFiles(Path.of(arguments[1])), repeats);
        comparison.single();
        comparison.solid();
        comparison.misses.forEach(miss -> comparison.out.println("WRONG: " + miss));
        System.exit(comparison.misses.isEmpty() ? 0 : 1);
    }

    private void print(String format, Object... values) {
        out.println(String.format(Locale.ROOT, format, values));
    }

    private static SolverSettings settings(double tolerance) {
        return SolverSettings.DEFAULT.withTolerances(tolerance, SolverSettings.DEFAULT.saltTolerance());
    }

    private void slabs(Path programs, CompareFiles files, int repeats) throws IOException, InterruptedException {
        List<Slab> slabs = Slab.sample(SLABS);
        files.write(slabs);
        Map<SlabCase, Timing> numpy =
                PythonRun.run(programs.resolve("slabs.py"), files.folder(), repeats, NUMPY_TOLERANCE);
        Map<SlabCase, Timing> scipy = PythonRun.run(
                programs.resolve("slabs_scipy.py"),
                files.folder(),
                Math.min(repeats, SCIPY_REPEATS),
                Integer.toString(SCIPY_STRIDE));
        print(
                "1000 slabs, 60 layers, 1 h, core, surface and mean each minute; one thread, ms a slab: median (least to most)");
        print("");
        print("| case | program | wall | CPU | steps | error of core, surface, mean [K] |");
        print("|---|---|---|---|---|---|");
        List<String> ratios = new ArrayList<>();
        for (SlabCase kind : SlabCase.values()) {
            SlabBatch exact = new SlabBatch(slabs, kind, settings(TIGHT), SlabBatch.CELLS, LANES);
            exact.run();
            SlabBatch batch = new SlabBatch(slabs, kind, settings(TOLERANCE), SlabBatch.CELLS, LANES);
            Timing java = Timing.of(batch::run, WARM_SECONDS, repeats);
            row(kind, "Saltfront", java, batch.stepsPerSlab(), batch.values(), exact.values());
            Timing other = printed(numpy, "NumPy", kind);
            row(kind, "NumPy", other, Double.NaN, files.values("numpy", kind), exact.values());
            Timing plain = printed(scipy, "SciPy", kind);
            row(kind, "SciPy", plain, Double.NaN, files.values("scipy", kind), everyStride(exact.values()));
            ratios.add(String.format(
                    Locale.ROOT,
                    "| %s | %.0f | %.0f | %.1f | %.1f | %.2f |",
                    kind.title,
                    plain.medianWall() / java.medianWall(),
                    plain.medianCpu() / java.medianCpu(),
                    other.medianWall() / java.medianWall(),
                    other.medianCpu() / java.medianCpu(),
                    new StepAllocation(slabs.subList(0, LANES), kind).bytesPerStep()));
        }
        print("");
        print(
                "| case | SciPy over Saltfront, wall | CPU | NumPy over Saltfront, wall | CPU | bytes allocated a step |");
        print("|---|---|---|---|---|---|");
        ratios.forEach(line -> print("%s", line));
    }

    private static Timing printed(Map<SlabCase, Timing> times, String program, SlabCase kind) throws IOException {
        Timing timing = times.get(kind);
        if (timing == null) {
            throw new IOException("the " + program + " program printed no times of " + kind + ".");
        }
        return timing;
    }

    /** The samples of the slabs that the SciPy program solves. */
    private static double[] everyStride(double[] values) {
        int length = values.length / SLABS;
        int chosen = (SLABS + SCIPY_STRIDE - 1) / SCIPY_STRIDE;
        double[] part = new double[chosen * length];
        for (int i = 0; i < chosen; i++) {
            System.arraycopy(values, i * SCIPY_STRIDE * length, part, i * length, length);
        }
        return part;
    }

    private void row(SlabCase kind, String program, Timing timing, double steps, double[] values, double[] exact) {
        double scale = 1000.0 / SLABS;
        double[] error = errors(values, exact);
        print(
                "| %s | %s | %.4f (%.4f to %.4f) | %.4f (%.4f to %.4f) | %s | %.3f, %.3f, %.3f |",
                kind.title,
                program,
                scale * timing.medianWall(),
                scale * timing.leastWall(),
                scale * timing.mostWall(),
                scale * timing.medianCpu(),
                scale * timing.leastCpu(),
                scale * timing.mostCpu(),
                Double.isNaN(steps) ? "common" : String.format(Locale.ROOT, "%.1f", steps),
                error[0],
                error[1],
                error[2]);
        for (double e : error) {
            if (!(e <= ALLOWED)) {
                misses.add(program + ", " + kind.title + ": a sample is off by " + e + " K, allowed are " + ALLOWED);
            }
        }
    }

    private static double[] errors(double[] values, double[] exact) {
        double[] largest = new double[SlabBatch.QUANTITIES];
        for (int i = 0; i < exact.length; i++) {
            int q = i % SlabBatch.QUANTITIES;
            double difference = Math.abs(values[i] - exact[i]);
            // a NaN must not hide
            largest[q] = difference <= largest[q] ? largest[q] : difference;
        }
        return largest;
    }

    private void single() {
        SingleSlab slab = new SingleSlab();
        Timing timing = Timing.of(slab::run, WARM_SECONDS, 31);
        print("");
        print("One simulation of a slab with its error estimate, %s:", slab.summary());
        print(
                "wall %.2f ms (%.2f to %.2f), CPU %.2f ms",
                1000 * timing.medianWall(),
                1000 * timing.leastWall(),
                1000 * timing.mostWall(),
                1000 * timing.medianCpu());
    }

    private void solid() {
        SolidRoast roast = new SolidRoast();
        Timing timing = Timing.of(roast::run, 0, 3);
        print("");
        print("Ellipsoid in three dimensions, 4 h in an oven, %s:", roast.summary());
        print(
                "wall %.2f s (%.2f to %.2f), CPU of the thread %.2f s",
                timing.medianWall(), timing.leastWall(), timing.mostWall(), timing.medianCpu());
    }
}
