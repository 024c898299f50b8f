package io.github.saltfront.plan;

import io.github.saltfront.shape.Shape;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.transport.SaltExchange;
import io.github.saltfront.transport.SolidPiece;
import io.github.saltfront.transport.SolidSimulation;
import io.github.saltfront.transport.SolidSolver;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Optional;

/**
 * The median member, raw, carried through heat and rest once in three dimensions and once in layers, in the same media and to the
 * same reading. A plan corrects its ensemble by the difference: layers give a finite piece the right surface and the right
 * slowest mode, but not the right lag (decision 0006).
 *
 * @param cells cells of the computed eighth of the piece
 * @param time time to the reading in three dimensions [s]
 * @param layerTime the same in layers [s]
 * @param peak highest core temperature after it is out, in three dimensions [K]
 * @param layerPeak the same in layers [K]
 * @param holdShare share of the required hold at the worst place in three dimensions [-]
 * @param layerHoldShare the same in layers [-]
 * @param timed whether the hold, not a reading, ends the heat, so that a lag costs time and not safety
 */
public record SolidCheck(
        int cells,
        double time,
        double layerTime,
        double peak,
        double layerPeak,
        double holdShare,
        double layerHoldShare,
        boolean timed) {
    private static final Phrases PHRASES = Phrases.of(SolidCheck.class);

    /** Cells asked for: the core then errs by some 0.3 K while it warms fast, a tenth of the spread of an ensemble. */
    static final int CELLS = 2000;

    /**
     * What an ensemble in layers is corrected by.
     *
     * @param timeFactor factor on times in the heat [-]
     * @param peakDifference added to the peak [K]
     * @param holdFactor factor on the share of the hold [-], at most 1
     */
    public record Correction(double timeFactor, double peakDifference, double holdFactor) {
        /** No correction. */
        public static final Correction NONE = new Correction(1, 0, 1);

        /** Returns what a core temperature is lowered by before it is compared with a limit [K], not above 0. */
        public double safeDifference() {
            return Math.min(0, peakDifference);
        }
    }

    /**
     * Returns the correction. Holds are only ever lowered, and where the hold ends the heat times are only ever lengthened: one
     * run of the median must not make a plan bolder.
     */
    public Correction correction() {
        double factor = time / layerTime;
        if (timed) {
            return new Correction(Math.max(1, factor), Math.min(0, peak - layerPeak), 1);
        }
        double hold = layerHoldShare > 0 ? Math.min(1, holdShare / layerHoldShare) : 1;
        return new Correction(factor, peak - layerPeak, hold);
    }

    /**
     * Returns why a plan was not checked in three dimensions.
     *
     * @param request the request
     * @return the reason as the end of a sentence; empty if it was checked, and for slabs, to which a check adds nothing
     */
    public static Optional<String> whyNot(Request request) {
        CookStages stages = new CookStages(request, Planner.rule(request));
        double any = Temperature.fromCelsius(60);
        return SolidGrid.covers(request.food().shape()) ? obstacle(request, median(stages, any)) : Optional.empty();
    }

    private static Optional<String> obstacle(Request request, List<Stage> stages) {
        if (request.food().startTemperature() < Temperature.fromCelsius(0)) {
            return Optional.of(PHRASES.say("the-piece-is-frozen-at"));
        }
        return stages.stream().allMatch(Stage::isSymmetric)
                ? Optional.empty()
                : Optional.of(PHRASES.say("one-face-is-heated-at"));
    }

    private static List<Stage> median(CookStages stages, double pull) {
        return stages.through(pull, SaltExchange.NONE).stream()
                .map(stage -> stage.stage(Draw.MEDIAN))
                .toList();
    }

    /**
     * Runs the check through all stages of heat and the rest.
     *
     * @return the check; empty for slabs and where there is a reason not to, see {@link #whyNot}
     */
    static Optional<SolidCheck> run(Request request, SolverSettings settings, CookStages stages, double pull) {
        Shape shape = request.food().shape();
        List<Stage> day = median(stages, pull);
        if (!SolidGrid.covers(shape) || obstacle(request, day).isPresent()) {
            return Optional.empty();
        }
        DayEnsemble median = new DayEnsemble(
                request.food().meat(), shape, request.food().startTemperature(), List.of(Draw.MEDIAN), settings);
        MemberDay layers = median.run(stages.through(pull, SaltExchange.NONE), Runnable::run)
                .get(0);
        MemberDay.StageEnd heated = layers.end(CookStages.HEAT);

        SolidGrid grid = SolidGrid.of(shape, CELLS, 1);
        SolidSolver solver = new SolidSolver(grid, SolidPiece.of(median.member(Draw.MEDIAN, false)), settings);
        double time = 0;
        double[] peak = {Double.NEGATIVE_INFINITY};
        for (Stage stage : day) {
            solver.run(SolidSimulation.input(stage, solver), (s, start, end) -> {
                peak[0] = Math.max(peak[0], Math.max(s.coreTemperature(0.5), s.coreTemperature(1.0)));
            });
            if (stage.kind().equals(CookStages.HEAT)) {
                requireReached(solver);
                time = solver.stageTime();
                peak[0] = solver.coreTemperature();
            }
        }
        return Optional.of(new SolidCheck(
                grid.cells(),
                time,
                heated.end() - heated.start(),
                peak[0],
                layers.peakCore(heated.end()),
                solver.leastKill(),
                layers.end(CookStages.REST).leastKill(),
                stages.isBath()));
    }

    private static void requireReached(SolidSolver solver) {
        if (!solver.wasStopped()) {
            throw new PlanningException(
                    "appliance", PHRASES.say("at-this-setting-the-middle", Math.round(CookStages.LONGEST_HEAT / 3600)));
        }
    }
}
