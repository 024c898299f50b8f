package io.github.saltfront.bench;

import com.sun.management.ThreadMXBean;
import io.github.saltfront.transport.BatchSampler;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import java.lang.management.ManagementFactory;
import java.util.List;

/** Counts what the thread allocates between the first and the last step of a stage, sampling included. */
final class StepAllocation {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final List<Slab> slabs;
    private final SlabCase kind;
    private long first;
    private long last;
    private long steps;

    StepAllocation(List<Slab> slabs, SlabCase kind) {
        this.slabs = slabs;
        this.kind = kind;
    }

    double bytesPerStep() {
        // the first round loads classes
        run();
        run();
        return (double) (last - first) / steps;
    }

    private void run() {
        HeatProperties heat = kind.heat();
        LayerSolver solver = new LayerSolver(
                SlabBatch.grid(SlabBatch.CELLS),
                slabs.stream().map(slab -> kind.member(slab, heat)).toList(),
                SolverSettings.DEFAULT);
        BatchSampler sampler = new BatchSampler(slabs.size(), 60, SlabBatch.MINUTES);
        long id = Thread.currentThread().getId();
        steps = 0;
        StepSink sink = (s, member, start, end) -> {
            sampler.accept(s, member, start, end);
            long allocated = THREADS.getThreadAllocatedBytes(id);
            if (steps == 0) {
                first = allocated;
            }
            last = allocated;
            steps++;
        };
        solver.run(
                slabs.stream()
                        .map(slab -> StageInput.of(kind.face(slab), 60.0 * SlabBatch.MINUTES))
                        .toList(),
                sink);
    }
}
