package io.github.saltfront.plan;

import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.LayerFold;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.transport.StepSink;
import io.github.saltfront.units.PhysicalConstants;
import java.util.ArrayList;
import java.util.List;

/**
 * Members of an ensemble that are carried through their days side by side. Two faces are computed only while they meet different
 * things, and then to the end of the rest. Used by one thread at a time.
 */
final class EnsembleBlock {
    /** Thickness of the outermost layer [m]. */
    private static final double OUTER_LAYER = 1.5e-4;

    private final DayEnsemble ensemble;
    private final List<Integer> part;
    private final List<? extends DayEnsemble.DayRecorder> recorders;
    private final LayerGrid grid;
    private final List<Member> round;

    /** The same members with two faces; none where no stage tells them apart. */
    private final List<Member> flat;

    private LayerSolver solver;

    /**
     * Starts members.
     *
     * @param ensemble the ensemble
     * @param part which of its members
     * @param days their stages, by member
     * @param recorders their recorders
     */
    EnsembleBlock(
            DayEnsemble ensemble,
            List<Integer> part,
            List<List<Stage>> days,
            List<? extends DayEnsemble.DayRecorder> recorders) {
        this.ensemble = ensemble;
        this.part = part;
        this.recorders = recorders;
        boolean folds = days.stream().flatMap(List::stream).anyMatch(s -> !s.isSymmetric());
        grid = grid(folds ? ensemble.layers() / 2 : ensemble.layers());
        round = members(false);
        flat = folds ? members(true) : List.of();
        solver = new LayerSolver(grid, round, ensemble.settings());
    }

    private EnsembleBlock(EnsembleBlock from, List<? extends DayEnsemble.DayRecorder> recorders) {
        ensemble = from.ensemble;
        part = from.part;
        this.recorders = recorders;
        grid = from.grid;
        round = from.round;
        flat = from.flat;
        solver = from.solver.copy();
    }

    /** Returns a block in the same state that goes on by itself and tells other recorders. */
    EnsembleBlock copy(List<? extends DayEnsemble.DayRecorder> others) {
        return new EnsembleBlock(this, others);
    }

    /** Which members these are. */
    List<Integer> part() {
        return part;
    }

    /** Runs all stages from one on. */
    void run(List<List<Stage>> days, int from) {
        for (int stage = from; stage < days.get(0).size(); stage++) {
            begin(days, stage);
            end();
        }
    }

    /** Runs a stage without telling that it has ended. */
    void begin(List<List<Stage>> days, int stage) {
        SolverSettings settings = ensemble.settings();
        boolean wasFlat = solver.grid().isTwoFaced();
        boolean isFlat = isFlat(days, stage, wasFlat);
        if (isFlat && !wasFlat) {
            solver = LayerFold.unfolded(solver, flat, settings);
        } else if (wasFlat && !isFlat) {
            solver = LayerFold.folded(solver, grid, round, settings);
        }
        List<StageInput> inputs = new ArrayList<>();
        double factor =
                isFlat ? 1 : ensemble.shape().conductanceFactor(biot(days.get(0).get(stage)));
        for (int i = 0; i < part.size(); i++) {
            Stage own = days.get(i).get(stage);
            inputs.add(input(own, solver, i));
            if (!isFlat) {
                solver.setConductanceFactor(i, factor);
            }
            recorders.get(i).beginStage(own.kind());
        }
        solver.run(inputs, sink());
    }

    /** Goes on with a stage that was begun, to later stop rules. */
    void goOn(List<List<Stage>> days, int stage) {
        solver.goOn(days.stream().map(day -> day.get(stage).stop()).toList(), sink());
    }

    /** Tells that the stage has ended. */
    void end() {
        boolean changing = ensemble.settings().denaturation() instanceof KajitaniJuice;
        boolean isFlat = solver.grid().isTwoFaced();
        for (int i = 0; i < part.size(); i++) {
            double extent = (isFlat ? flat : round).get(i).extent();
            recorders.get(i).endStage(solver, i, StageQuality.of(solver, i, extent, changing));
        }
    }

    private StepSink sink() {
        return (s, member, start, end) -> recorders.get(member).step(s, member, start, end);
    }

    private static boolean isFlat(List<List<Stage>> days, int stage, boolean wasFlat) {
        boolean rests = days.get(0).get(stage).kind().equals(CookStages.REST);
        return wasFlat && rests || days.stream().anyMatch(day -> !day.get(stage).isSymmetric());
    }

    private List<Member> members(boolean twoFaced) {
        return part.stream()
                .map(i -> ensemble.member(ensemble.draws().get(i), twoFaced))
                .toList();
    }

    private LayerGrid grid(int used) {
        Shape shape = ensemble.shape();
        double even = 1.0 / used;
        double outer = Math.min(even, Math.max(even / 8, OUTER_LAYER / shape.halfThickness()));
        return LayerGrid.symmetric(shape.exponent(), used, outer);
    }

    private static StageInput input(Stage stage, LayerSolver solver, int member) {
        boolean twoFaced = solver.grid().isTwoFaced();
        List<FaceCondition> faces = stage.faces();
        if (twoFaced && faces.size() == 1) {
            faces = List.of(faces.get(0), faces.get(0));
        } else if (!twoFaced && faces.size() == 2) {
            faces = List.of(faces.get(0));
        }
        double meatPerArea = solver.massPerArea(member) / faces.size();
        List<SaltSource> sources = new ArrayList<>();
        for (int face = 0; face < faces.size(); face++) {
            SaltSource before = solver.source(face, member);
            sources.add(stage.salt().perFace(meatPerArea, before, solver.reservoirStrength(face, member)));
        }
        return new StageInput(faces, sources, stage.duration(), stage.stop());
    }

    private double biot(Stage stage) {
        FaceCondition face = stage.faces().get(0);
        double between = 0.5 * (face.mediumTemperature().at(0) + ensemble.startTemperature());
        double radiant = 4 * face.emissivity() * PhysicalConstants.STEFAN_BOLTZMANN * Math.pow(between, 3);
        double conductivity = 0.48;
        return Math.max(
                1e-6, (face.coefficient().at(0) + radiant) * ensemble.shape().halfThickness() / conductivity);
    }
}
