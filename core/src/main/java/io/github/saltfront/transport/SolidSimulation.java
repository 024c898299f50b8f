package io.github.saltfront.transport;

import io.github.saltfront.shape.Shape;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;

/**
 * Carries one piece through its stages with the three-dimensional solver and records the same history as {@link Simulation}.
 * Surface temperatures are those of the middles of the faces; the least kill is that of the worst place of the surface and of
 * all nodes inside; a field is that of the thickness axis. Where any stage has two faces, the first is the upper, the second
 * the lower half of the whole surface, sides included.
 *
 * <p>Water does not travel, see {@link SolidPiece}: the surface does not dry, and a bath does not swell the piece.
 */
public final class SolidSimulation {
    /** Error of the core temperature that automatic grids aim at [K]: half of what a kitchen thermometer shows. */
    public static final double TARGET_ERROR = 0.05;

    /** Most cells of an automatic grid. */
    public static final int MOST_CELLS = 100_000;

    private static final int FIRST_CELLS = 2000;

    /** Cells halved along each axis. */
    private static final int FINER = 8;

    /** A margin for grids whose error does not fall quite with the square of the cell size [-]. */
    private static final double MARGIN = 1.2;

    private final Piece piece;
    private final List<Stage> stages;
    private final SolverSettings settings;
    private final SimulationOutput output;
    private final int faces;

    private SolidSimulation(Piece piece, List<Stage> stages, SolverSettings settings, SimulationOutput output) {
        this.piece = piece;
        this.stages = List.copyOf(stages);
        this.settings = settings;
        this.output = output;
        faces = stages.stream().allMatch(Stage::isSymmetric) ? 1 : 2;
    }

    /**
     * Runs the stages on an automatic grid: two grids, the second with half the cell size, estimate the error of the core
     * temperature as a third of their largest difference (order two). If it is above {@link #TARGET_ERROR} a third grid is made
     * as fine as needed, up to {@link #MOST_CELLS}. The error that remains is part of the diagnostics.
     *
     * @param piece the piece, of finite shape
     * @param stages its stages, at least one
     * @param settings tolerances and kinetics
     * @param output what to record; its layers are not used
     * @return the history
     * @throws IllegalArgumentException if the shape is a slab or a long cylinder, or if a piece that is no box may hold ice
     * @throws io.github.saltfront.numerics.ConvergenceException if the solver does not converge
     */
    public static History run(Piece piece, List<Stage> stages, SolverSettings settings, SimulationOutput output) {
        return run(piece, stages, settings, output, 0);
    }

    /**
     * Runs the stages on a grid of a given number of cells, and on one of an eighth of it to estimate the error.
     *
     * @param piece the piece, of finite shape
     * @param stages its stages, at least one
     * @param settings tolerances and kinetics
     * @param output what to record; its layers are not used
     * @param cells cells of the computed part, at least 4000; 0 to choose them
     * @return the history
     * @throws IllegalArgumentException if the shape is a slab or a long cylinder
     * @throws io.github.saltfront.numerics.ConvergenceException if the solver does not converge
     */
    public static History run(
            Piece piece, List<Stage> stages, SolverSettings settings, SimulationOutput output, int cells) {
        Checks.require(!stages.isEmpty(), "a simulation needs at least one stage, got none.");
        requireNoIceInCutCells(piece, stages);
        SolidSimulation simulation = new SolidSimulation(piece, stages, settings, output);
        if (cells > 0) {
            Checks.requireInRange("number of cells", cells, 4000, 5_000_000, "-");
            return withError(simulation.record(cells / FINER), simulation.record(cells));
        }
        History coarse = simulation.record(FIRST_CELLS);
        History fine = withError(coarse, simulation.record(FIRST_CELLS * FINER));
        double excess = MARGIN * fine.diagnostics().discretizationError() / TARGET_ERROR;
        if (excess <= MARGIN) {
            return fine;
        }
        double wanted = FIRST_CELLS * FINER * Math.max(2, Math.pow(excess, 1.5));
        return withError(fine, simulation.record((int) Math.min(MOST_CELLS, wanted)));
    }

    /**
     * The slivers that a curved surface cuts off take no part in the error control, and pass the freezing point in no time: their
     * temperatures then go astray. Boxes have none.
     */
    private static void requireNoIceInCutCells(Piece piece, List<Stage> stages) {
        if (piece.shape() instanceof Shape.Box) {
            return;
        }
        double coldest = piece.start().temperature();
        for (Stage stage : stages) {
            for (FaceCondition face : stage.faces()) {
                coldest = Math.min(coldest, face.mediumTemperature().at(0));
            }
        }
        boolean ice = piece.heat()
                .ice()
                .isFrozen(
                        Temperature.toCelsius(coldest),
                        piece.start().water(),
                        piece.start().salt());
        Checks.require(
                !ice,
                "in three dimensions only a box may be frozen or meet a medium below 0 °C; use solver 1d, or a box of the same"
                        + " sides.");
    }

    /** Error of the finer of two runs by Richardson's extrapolation for a method of order two. */
    private static History withError(History coarse, History fine) {
        double ratio = Math.cbrt(
                (double) fine.diagnostics().cells() / coarse.diagnostics().cells());
        double error = fine.largestDifference(coarse) / (ratio * ratio - 1);
        return fine.with(fine.diagnostics().withError(error));
    }

    private History record(int cells) {
        SolidGrid grid = SolidGrid.of(piece.shape(), cells, faces);
        SolidSolver solver = new SolidSolver(grid, SolidPiece.of(piece), settings);
        HistoryReadings readings =
                new SolidReadings(solver, settings.killRates().size());
        HistoryRecorder recorder = new HistoryRecorder(readings, piece.start().temperature(), output);
        recorder.start(solver.meanSalt());
        List<StageRecord> records = new ArrayList<>();
        double begin = 0;
        List<SaltSource> before = List.of(SaltSource.NONE, SaltSource.NONE);
        for (Stage stage : stages) {
            double from = begin;
            StageInput input = input(stage, solver, before);
            before = input.sources();
            solver.run(input, (s, start, end) -> recorder.step(from + start, from + end));
            double end = begin + solver.stageTime();
            records.add(new StageRecord(stage.kind(), begin, end, solver.wasStopped(), stage.stop()));
            begin = end;
        }
        recorder.finish(begin);
        Diagnostics diagnostics = new Diagnostics(
                Diagnostics.Solver.SOLID,
                solver.steps(),
                solver.rejectedSteps(),
                grid.cells(),
                solver.balanceError(),
                0);
        return recorder.history(records, diagnostics);
    }

    /**
     * Returns what a first stage is to a solver, with amounts of salt per area of its grid.
     *
     * @param stage the stage
     * @param solver the solver, with the piece as it is before the stage
     * @return the input
     */
    public static StageInput input(Stage stage, SolidSolver solver) {
        return input(stage, solver, List.of(SaltSource.NONE, SaltSource.NONE));
    }

    private static StageInput input(Stage stage, SolidSolver solver, List<SaltSource> before) {
        int faces = solver.grid().faces();
        List<FaceCondition> conditions = stage.faces();
        if (conditions.size() != faces) {
            Checks.require(stage.isSymmetric(), "stage " + stage.kind() + " has two faces, the grid has one.");
            FaceCondition all = conditions.get(0);
            conditions = faces == 1 ? List.of(all) : List.of(all, all);
        }
        List<SaltSource> sources = new ArrayList<>();
        for (int face = 0; face < faces; face++) {
            double strength = solver.reservoirStrength(face);
            sources.add(stage.salt().perFace(solver.massPerArea(), before.get(face), strength));
        }
        return new StageInput(conditions, sources, stage.duration(), stage.stop());
    }
}
