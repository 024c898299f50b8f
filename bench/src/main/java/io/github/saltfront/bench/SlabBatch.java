package io.github.saltfront.bench;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.BatchSampler;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.StageInput;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Solves all slabs in blocks of members that are advanced side by side, and keeps a sample a minute. */
final class SlabBatch {
    static final int CELLS = 60;
    static final int MINUTES = 60;
    static final double OUTER_CELL = 1.0 / 240;

    /** Core, surface, mean. */
    static final int QUANTITIES = 3;

    private final LayerGrid grid;
    private final SolverSettings settings;
    private final int lanes;
    private final int[] order;
    private final List<List<Member>> blocks = new ArrayList<>();
    private final List<List<StageInput>> stages = new ArrayList<>();
    private final double[] values;
    private long steps;
    private long rejected;

    SlabBatch(List<Slab> slabs, SlabCase kind, SolverSettings settings, int cells, int lanes) {
        this.settings = settings;
        this.lanes = lanes;
        grid = grid(cells);
        HeatProperties heat = kind.heat();
        order = bySpeed(slabs);
        for (int first = 0; first < slabs.size(); first += lanes) {
            List<Slab> part = Arrays.stream(order, first, Math.min(first + lanes, slabs.size()))
                    .mapToObj(slabs::get)
                    .toList();
            blocks.add(part.stream().map(slab -> kind.member(slab, heat)).toList());
            stages.add(part.stream()
                    .map(slab -> StageInput.of(kind.face(slab), 60.0 * MINUTES))
                    .toList());
        }
        values = new double[QUANTITIES * MINUTES * slabs.size()];
    }

    static LayerGrid grid(int cells) {
        return LayerGrid.symmetric(0, cells, OUTER_CELL * CELLS / cells);
    }

    /** Slabs that need about as many steps side by side: those that warm equally fast, since a block waits for its slowest. */
    private static int[] bySpeed(List<Slab> slabs) {
        return IntStream.range(0, slabs.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> speed(slabs.get(i))))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static double speed(Slab slab) {
        return slab.coefficient() * (slab.medium() - slab.start()) / slab.extent();
    }

    /** Solves all slabs; solvers are made anew each time, as a caller would have to. */
    void run() {
        steps = 0;
        rejected = 0;
        for (int b = 0; b < blocks.size(); b++) {
            List<Member> members = blocks.get(b);
            LayerSolver solver = new LayerSolver(grid, members, settings);
            BatchSampler sampler = new BatchSampler(members.size(), 60, MINUTES);
            solver.run(stages.get(b), sampler);
            for (int l = 0; l < members.size(); l++) {
                keep(sampler, l, order[b * lanes + l]);
                steps += solver.steps(l);
                rejected += solver.rejectedSteps(l);
            }
        }
    }

    private void keep(BatchSampler sampler, int lane, int slab) {
        for (int minute = 0; minute < MINUTES; minute++) {
            int place = QUANTITIES * (slab * MINUTES + minute);
            values[place] = sampler.core(lane, minute);
            values[place + 1] = sampler.surface(lane, minute);
            values[place + 2] = sampler.mean(lane, minute);
        }
    }

    /** Temperatures [K] by slab, minute and quantity. */
    double[] values() {
        return values.clone();
    }

    double stepsPerSlab() {
        return (double) steps * QUANTITIES * MINUTES / values.length;
    }

    double rejectedPerSlab() {
        return (double) rejected * QUANTITIES * MINUTES / values.length;
    }
}
