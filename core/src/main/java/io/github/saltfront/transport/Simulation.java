package io.github.saltfront.transport;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;
import java.util.ArrayList;
import java.util.List;

/**
 * Carries one piece through its stages with the layer solver and records the history. Pieces that meet the same medium all
 * around use a symmetric grid with the area exponent of their shape; a stage with two different faces makes the piece a slab
 * of its thickness with two faces, and its edges are left out.
 */
public final class Simulation {
    /** Error of the core temperature that automatic layers aim at [K]: a fifth of what a good thermometer resolves. */
    public static final double TARGET_ERROR = 0.02;

    private static final int FIRST_LAYERS = 40;
    private static final int MOST_LAYERS = 320;

    /** Thickness of the outermost layer [m]: a tenth of a millimeter holds the salt front of a minute. */
    private static final double OUTER_LAYER = 1e-4;

    private final Piece piece;
    private final List<Stage> stages;
    private final SolverSettings settings;
    private final SimulationOutput output;
    private final boolean twoFaced;

    private Simulation(Piece piece, List<Stage> stages, SolverSettings settings, SimulationOutput output) {
        this.piece = piece;
        this.stages = List.copyOf(stages);
        this.settings = settings;
        this.output = output;
        twoFaced = stages.stream().anyMatch(stage -> !stage.isSymmetric());
    }

    /**
     * Runs the stages.
     *
     * @param piece the piece
     * @param stages its stages, at least one
     * @param settings tolerances and kinetics
     * @param output what to record
     * @return the history
     * @throws io.github.saltfront.numerics.ConvergenceException if the solver does not converge
     */
    public static History run(Piece piece, List<Stage> stages, SolverSettings settings, SimulationOutput output) {
        Checks.require(!stages.isEmpty(), "a simulation needs at least one stage, got none.");
        Simulation simulation = new Simulation(piece, stages, settings, output);
        if (output.layers() > 0) {
            return simulation.withError(output.layers());
        }
        int layers = FIRST_LAYERS;
        History history = simulation.withError(layers);
        while (history.diagnostics().discretizationError() > TARGET_ERROR && layers < MOST_LAYERS) {
            layers *= 2;
            history = simulation.withError(layers);
        }
        return history;
    }

    /**
     * Returns the grid used for a piece.
     *
     * @param piece the piece
     * @param twoFaced whether the faces differ in any stage
     * @param layers number of layers, even
     * @return the grid
     */
    public static LayerGrid grid(Piece piece, boolean twoFaced, int layers) {
        double extent = piece.shape().halfThickness() * (twoFaced ? 2 : 1);
        int perFace = twoFaced ? layers / 2 : layers;
        double even = 1.0 / layers;
        double outer = Math.min(even, Math.max(even / 8, OUTER_LAYER * FIRST_LAYERS / perFace / extent));
        return twoFaced
                ? LayerGrid.twoFaced(layers, outer)
                : LayerGrid.symmetric(piece.shape().exponent(), layers, outer);
    }

    /** Runs with the given layers and with half as many; a method of order two then errs by a third of the difference. */
    private History withError(int layers) {
        History fine = record(layers);
        History coarse = record(Math.max(8, layers / 2));
        return fine.with(fine.diagnostics().withError(fine.largestDifference(coarse) / 3));
    }

    private History record(int layers) {
        int used = layers % 2 == 0 ? layers : layers + 1;
        LayerGrid grid = grid(piece, twoFaced, used);
        LayerSolver solver = new LayerSolver(grid, List.of(piece.member(twoFaced)), settings);
        HistoryReadings readings = new LayerReadings(
                solver,
                grid,
                piece.shape().halfThickness(),
                settings.killRates().size());
        HistoryRecorder recorder = new HistoryRecorder(readings, piece.start().temperature(), output);
        recorder.start(solver.meanSalt(0));
        List<StageRecord> records = new ArrayList<>();
        double begin = 0;
        List<SaltSource> before = List.of(SaltSource.NONE, SaltSource.NONE);
        for (Stage stage : stages) {
            if (!twoFaced) {
                solver.setConductanceFactor(0, piece.shape().conductanceFactor(biot(stage)));
            }
            StageInput input = input(stage, solver, before);
            before = input.sources();
            double from = begin;
            solver.run(List.of(input), (s, member, start, end) -> recorder.step(from + start, from + end));
            double end = begin + solver.stageTime(0);
            records.add(new StageRecord(stage.kind(), begin, end, solver.wasStopped(0), stage.stop()));
            begin = end;
        }
        recorder.finish(begin);
        Diagnostics diagnostics =
                Diagnostics.ofLayers(solver.steps(0), solver.rejectedSteps(0), used, solver.balanceError(0));
        return recorder.history(records, diagnostics);
    }

    private StageInput input(Stage stage, LayerSolver solver, List<SaltSource> before) {
        List<FaceCondition> faces = twoFaced && stage.faces().size() == 1
                ? List.of(stage.faces().get(0), stage.faces().get(0))
                : twoFaced ? stage.faces() : List.of(stage.faces().get(0));
        double meatPerArea = solver.massPerArea(0) / faces.size();
        List<SaltSource> sources = new ArrayList<>();
        for (int face = 0; face < faces.size(); face++) {
            sources.add(stage.salt().perFace(meatPerArea, before.get(face), solver.reservoirStrength(face, 0)));
        }
        return new StageInput(faces, sources, stage.duration(), stage.stop());
    }

    private double biot(Stage stage) {
        FaceCondition face = stage.faces().get(0);
        double medium = face.mediumTemperature().at(stage.duration());
        double between = 0.5 * (medium + piece.start().temperature());
        double radiant = 4 * face.emissivity() * PhysicalConstants.STEFAN_BOLTZMANN * between * between * between;
        double coefficient = face.coefficient().at(0) + radiant;
        return Math.max(
                1e-6, coefficient * piece.shape().halfThickness() / piece.heat().conductivity(0));
    }
}
