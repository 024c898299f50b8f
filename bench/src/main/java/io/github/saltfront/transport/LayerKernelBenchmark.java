package io.github.saltfront.transport;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Temperature;
import java.util.Arrays;
import java.util.Collections;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of the kernels of the layer solver for all lanes of a block of 60 layers; divide by the lanes for one member. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@SuppressWarnings("NullAway.Init")
public class LayerKernelBenchmark {
    private static final int CELLS = 60;
    private static final Composition MEAT = new Composition(0.74, 0.215, 0.03, 0.005, 0.01);

    /** Members side by side. */
    @Param({"1", "16", "94"})
    public int lanes;

    private LaneBlock block;
    private LayerStepper stepper;
    private double[] step;
    private double[] rate;
    private double[][] slope;
    private double[][] flow;
    private double[][] change;
    private final SurfaceBalance surface = new SurfaceBalance();
    private final FaceCondition oven = new FaceCondition(
            TimeProfile.constant(Temperature.fromCelsius(120)), TimeProfile.constant(20), 0.9, 0.5, 2500, 101_325);

    /** Brings a block into the middle of a roast. */
    @Setup
    public void setUp() {
        Member member = new Member(
                0.015,
                1,
                new InitialState(Temperature.fromCelsius(5), MEAT.waterPerSolids(), 0),
                MeatHeat.of(MEAT),
                new SaltProperties(3e-10, 25_000, 1, 0, 0),
                true);
        block = new LaneBlock(LayerGrid.symmetric(0, CELLS, 1.0 / 240), Collections.nCopies(lanes, member), 0, 0);
        stepper = new LayerStepper(block);
        stepper.heat.takeComposition(block.water, block.slotSalt);
        stepper.heat.computeTemperatures(
                block.enthalpy, block.water, block.slotSalt, block.temperature, block.capacity);
        stepper.begin(Collections.nCopies(lanes, StageInput.of(oven, 3600)));
        step = new double[lanes];
        rate = new double[lanes];
        Arrays.fill(step, 2);
        Arrays.fill(rate, 1);
        boolean[] all = new boolean[lanes];
        Arrays.fill(all, true);
        for (int i = 0; i < 300; i++) {
            stepper.attempt(step, SolverSettings.DEFAULT);
            stepper.commit(all);
        }
        slope = Rows.of(1, lanes);
        flow = Rows.of(1, lanes);
        change = Rows.of(1, lanes);
    }

    /** Temperatures from enthalpies. */
    @Benchmark
    public Object invertProperties() {
        stepper.heat.computeStageTemperatures(1, stepper.stageHeat);
        return stepper.heat.temperature;
    }

    /** Flows, elimination and substitution of one stage. */
    @Benchmark
    public Object solveStage() {
        stepper.heat.solve(1, flow, false, new double[0][], stepper.stageHeat, change);
        return change;
    }

    /** Factors of one step. */
    @Benchmark
    public Object factor() {
        stepper.heat.factor(rate, slope);
        return slope;
    }

    /** One face with radiation and evaporation of one member. */
    @Benchmark
    public double balanceSurface() {
        surface.solve(oven, 0, 50, 800, 0.99, 52);
        return surface.flux;
    }

    /** One attempted step with radiation and evaporation. */
    @Benchmark
    public Object attemptStep() {
        stepper.attempt(step, SolverSettings.DEFAULT);
        return stepper.error;
    }
}
