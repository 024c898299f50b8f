package io.github.saltfront.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import io.github.saltfront.matter.Composition;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Temperature;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

class BatchSamplerTest {
    private static final double HOUR = 3600;
    private static final LayerGrid GRID = LayerGrid.symmetric(0, 40, 1.0 / 160);
    private static final Composition MEAT = new Composition(0.74, 0.215, 0.03, 0.005, 0.01);
    private static final FaceCondition OVEN = new FaceCondition(
            TimeProfile.constant(Temperature.fromCelsius(150)), TimeProfile.constant(20), 0.9, 0.4, 3000, 101_325);
    private static final FaceCondition BATH = FaceCondition.convection(Temperature.fromCelsius(60), 200);

    private static Member member(double extent) {
        return new Member(
                extent,
                1,
                new InitialState(Temperature.fromCelsius(5), MEAT.waterPerSolids(), 0),
                MeatHeat.of(MEAT),
                new SaltProperties(3e-10, 25_000, 1, 1, 0),
                true);
    }

    private static LayerSolver solver() {
        return new LayerSolver(GRID, List.of(member(0.012), member(0.03)), SolverSettings.DEFAULT);
    }

    private static List<StageInput> stages(double duration) {
        return List.of(StageInput.of(OVEN, duration), StageInput.of(BATH, duration));
    }

    @Test
    void lastSampleIsTheEndOfTheStage() {
        LayerSolver solver = solver();
        BatchSampler sampler = new BatchSampler(2, 60, 60);
        solver.run(stages(HOUR), sampler);
        for (int member = 0; member < 2; member++) {
            assertThat(sampler.filled(member)).isEqualTo(60);
            assertThat(sampler.core(member, 59)).isCloseTo(solver.coreTemperature(member), within(1e-9));
            // a sample within a step takes the conductance of the last evaluation, the solver that of the end: the face
            // differs by less than a thousandth of the tolerance of the step
            assertThat(sampler.surface(member, 59))
                    .isCloseTo(
                            solver.faceTemperature(0, member),
                            within(1e-3 * SolverSettings.DEFAULT.temperatureTolerance()));
        }
    }

    /** Within a step a sample errs by no more than the steps themselves, here bounded by ten tolerances. */
    @Test
    void sampleWithinAStepIsWhereAStageOfThatLengthEnds() {
        BatchSampler sampler = new BatchSampler(2, 60, 60);
        solver().run(stages(HOUR), sampler);
        for (int minutes : new int[] {3, 17, 41}) {
            LayerSolver shorter = solver();
            shorter.run(stages(60.0 * minutes), StepSink.NONE);
            double bound = 10 * SolverSettings.DEFAULT.temperatureTolerance();
            for (int member = 0; member < 2; member++) {
                assertThat(sampler.core(member, minutes - 1)).isCloseTo(shorter.coreTemperature(member), within(bound));
                assertThat(sampler.mean(member, minutes - 1)).isCloseTo(shorter.meanTemperature(member), within(bound));
                assertThat(sampler.surface(member, minutes - 1))
                        .isCloseTo(shorter.faceTemperature(0, member), within(bound));
            }
        }
    }

    @Test
    void missingSampleIsToldByNumber() {
        BatchSampler sampler = new BatchSampler(2, 60, 60);
        solver().run(stages(300), sampler);
        assertThat(sampler.filled(1)).isEqualTo(5);
        assertThatThrownBy(() -> sampler.core(1, 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has 5 sample(s), asked for number 5");
    }

    /** Design rule of the kernel: what a step needs is allocated when the solver is made. */
    @Test
    void stepsAllocateNothing() {
        allocatedBySteps();
        assertThat(allocatedBySteps()).isZero();
    }

    private static long allocatedBySteps() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        BatchSampler sampler = new BatchSampler(2, 60, 60);
        long[] span = {-1, 0};
        StepSink sink = (solver, member, start, end) -> {
            sampler.accept(solver, member, start, end);
            span[1] = threads.getThreadAllocatedBytes(id);
            span[0] = span[0] < 0 ? span[1] : span[0];
        };
        solver().run(stages(HOUR), sink);
        return span[1] - span[0];
    }
}
