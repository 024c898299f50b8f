package io.github.saltfront.plan;

import io.github.saltfront.transport.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

/**
 * The days of an ensemble up to where a reading ends the heat, kept so that later readings can be tried from there: days that
 * differ in the reading alone are the same up to the lower one. Each try goes on from the same place, whatever was tried before.
 */
final class HeatedDays {
    private final DayEnsemble ensemble;
    private final int heat;
    private final List<EnsembleBlock> blocks;
    private final List<MemberDay> days;

    private HeatedDays(DayEnsemble ensemble, int heat, List<EnsembleBlock> blocks, List<MemberDay> days) {
        this.ensemble = ensemble;
        this.heat = heat;
        this.blocks = List.copyOf(blocks);
        this.days = List.copyOf(days);
    }

    /**
     * Runs an ensemble up to the end of the stage that a reading ends.
     *
     * @param ensemble the ensemble
     * @param stages the stages of its day
     * @param executor where to run blocks of members; has no effect on the numbers
     * @return the days so far
     */
    static HeatedDays of(DayEnsemble ensemble, List<DayEnsemble.StageFor> stages, Executor executor) {
        List<MemberDay> days =
                ensemble.draws().stream().map(draw -> new MemberDay()).toList();
        List<CompletableFuture<EnsembleBlock>> running = new ArrayList<>();
        int heat = indexOfHeat(stages);
        for (List<Integer> part : ensemble.parts()) {
            List<List<Stage>> own = stages(ensemble, part, stages);
            List<MemberDay> seen = part.stream().map(days::get).toList();
            running.add(CompletableFuture.supplyAsync(
                    () -> {
                        EnsembleBlock block = new EnsembleBlock(ensemble, part, own, seen);
                        for (int stage = 0; stage < heat; stage++) {
                            block.begin(own, stage);
                            block.end();
                        }
                        block.begin(own, heat);
                        return block;
                    },
                    executor));
        }
        return new HeatedDays(
                ensemble, heat, running.stream().map(PullSearch::join).toList(), days);
    }

    /**
     * Goes on to a later reading and to the end of the day.
     *
     * @param stages the same stages with a reading that is not lower
     * @param executor where to run blocks of members; has no effect on the numbers
     * @return what became of each member, in order
     */
    List<MemberDay> after(List<DayEnsemble.StageFor> stages, Executor executor) {
        List<MemberDay> all = days.stream().map(MemberDay::copy).toList();
        List<CompletableFuture<Void>> running = new ArrayList<>();
        for (EnsembleBlock block : blocks) {
            List<List<Stage>> own = stages(ensemble, block.part(), stages);
            List<MemberDay> seen = block.part().stream().map(all::get).toList();
            running.add(CompletableFuture.runAsync(
                    () -> {
                        EnsembleBlock further = block.copy(seen);
                        further.goOn(own, heat);
                        further.end();
                        further.run(own, heat + 1);
                    },
                    executor));
        }
        running.forEach(PullSearch::join);
        return all;
    }

    private static int indexOfHeat(List<DayEnsemble.StageFor> stages) {
        int index = 0;
        while (!stages.get(index).stage(Draw.MEDIAN).kind().equals(CookStages.HEAT)) {
            index++;
        }
        return index;
    }

    private static List<List<Stage>> stages(
            DayEnsemble ensemble, List<Integer> part, List<DayEnsemble.StageFor> stages) {
        return part.stream()
                .map(i -> stages.stream()
                        .map(stage -> stage.stage(ensemble.draws().get(i)))
                        .toList())
                .toList();
    }
}
