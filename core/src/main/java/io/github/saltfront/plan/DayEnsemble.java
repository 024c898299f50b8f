package io.github.saltfront.plan;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.quality.Band;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.stream.IntStream;

/**
 * Carries an ensemble of pieces through a day: every member has its own luck ({@link Draw}) in thickness, properties and
 * media. Members run side by side in blocks; blocks may run on several threads without any effect on the numbers.
 */
public final class DayEnsemble {
    /** Members advanced side by side; a block's arrays then fit into the second-level cache. */
    private static final int BLOCK = 25;

    /** Fewest members of a block: small ensembles are shared out as well, at any number of processors in the same way. */
    private static final int LEAST_BLOCK = 10;

    /**
     * Layers of the grid. Against 80 layers no figure of the three plans of the README moves by more than 2.5 %, most by less than
     * 1 %, far below the spread of the ensemble. Worst seen: a piece that dries in the oven for a day, 0.13 K.
     */
    public static final int LAYERS = 32;

    /** Spread of a thickness measured with a ruler, 5th to 95th percentile [-]; salt reference folder, thickness error. */
    static final Band THICKNESS = new Band(0.90, 1, 1.10);

    /** Spread of the conductivity of lean meat about the Levy model [-] (Pham, Willix 1989: within 10 %). */
    static final Band CONDUCTIVITY = new Band(0.93, 1, 1.07);

    /** Spread of the start temperature, half width of the 90 % band [K]; estimate: a home refrigerator. */
    private static final double START_SPREAD = 2;

    /** Partition of salt between the water of meat and brine [-]; judgement of the salt reference, no measurement. */
    static final Band PARTITION = new Band(0.85, 0.95, 1.05);

    /** Cap on the diffusion coefficient of salt at 5 degrees Celsius: 0.85 of that in free water [m2/s]. */
    private static final double DIFFUSIVITY_CAP = 7.5e-10;

    private final MeatModel meat;
    private final Shape shape;
    private final double startTemperature;
    private final List<Draw> draws;
    private final SolverSettings settings;
    private final HeatProperties heat;
    private final int layers;

    /**
     * Creates an ensemble.
     *
     * @param meat the meat
     * @param shape stated shape of a piece
     * @param startTemperature stated start temperature [K]
     * @param draws luck of each member
     * @param settings tolerances and kinetics
     */
    public DayEnsemble(
            MeatModel meat, Shape shape, double startTemperature, List<Draw> draws, SolverSettings settings) {
        this(meat, shape, startTemperature, draws, settings, LAYERS);
    }

    /**
     * Creates an ensemble of a resolution of its own.
     *
     * @param meat the meat
     * @param shape stated shape of a piece
     * @param startTemperature stated start temperature [K]
     * @param draws luck of each member
     * @param settings tolerances and kinetics
     * @param layers layers of the grid, even
     */
    public DayEnsemble(
            MeatModel meat,
            Shape shape,
            double startTemperature,
            List<Draw> draws,
            SolverSettings settings,
            int layers) {
        this.layers = layers;
        this.meat = meat;
        this.shape = shape;
        this.startTemperature = startTemperature;
        this.draws = List.copyOf(draws);
        this.settings = settings;
        heat = MeatHeat.of(meat.composition());
    }

    /** What one stage is for a member of given luck. */
    @FunctionalInterface
    public interface StageFor {
        /**
         * Returns the stage.
         *
         * @param draw luck of the member
         * @return the stage
         */
        Stage stage(Draw draw);
    }

    /** Returns the number of members. */
    public int size() {
        return draws.size();
    }

    /**
     * Runs the stages for all members.
     *
     * @param stages the stages in order
     * @param executor where to run blocks of members; {@code Runnable::run} for the calling thread
     * @return what became of each member, in order
     */
    public List<MemberDay> run(List<StageFor> stages, Executor executor) {
        List<MemberDay> days = draws.stream().map(draw -> new MemberDay()).toList();
        run(stages, days, executor);
        return days;
    }

    /**
     * Runs the stages for all members and records their mean salt.
     *
     * @param stages the stages in order
     * @param executor where to run blocks of members; {@code Runnable::run} for the calling thread
     * @return mean salt of each member, in order
     */
    public List<SaltCurve> saltCurves(List<StageFor> stages, Executor executor) {
        List<SaltCurve> curves = draws.stream().map(draw -> new SaltCurve()).toList();
        run(stages, curves, executor);
        return curves;
    }

    private void run(List<StageFor> stages, List<? extends DayRecorder> recorders, Executor executor) {
        run(
                member -> stages.stream()
                        .map(stage -> stage.stage(draws.get(member)))
                        .toList(),
                recorders,
                executor);
    }

    /** The whole day of one member. */
    @FunctionalInterface
    public interface DayFor {
        /**
         * Returns the stages of a member.
         *
         * @param member which member
         * @return its stages in order, as many as those of every other member
         */
        List<Stage> stages(int member);
    }

    /** Sees the day of one member as it goes by. */
    public interface DayRecorder {
        /**
         * Sees a stage begin.
         *
         * @param kind kind of the stage
         */
        void beginStage(String kind);

        /**
         * Sees one step, before the state moves on.
         *
         * @param solver the solver, whose dense output covers this step until the call returns
         * @param member place of the member in the solver
         * @param start time at the start of the step since the start of the stage [s]
         * @param end time at its end [s]
         */
        void step(LayerSolver solver, int member, double start, double end);

        /**
         * Sees a stage end.
         *
         * @param solver the solver at the end of the stage
         * @param member place of the member in the solver
         * @param quality protein changes and dryness at the end of the stage
         */
        void endStage(LayerSolver solver, int member, StageQuality quality);
    }

    /**
     * Runs a day of its own for each member.
     *
     * @param days the days
     * @param recorders one for each member; each is called from one thread only
     * @param executor where to run blocks of members; {@code Runnable::run} for the calling thread
     */
    public void run(DayFor days, List<? extends DayRecorder> recorders, Executor executor) {
        List<CompletableFuture<Void>> blocks = new ArrayList<>();
        for (List<Integer> part : parts()) {
            List<List<Stage>> own = part.stream().map(days::stages).toList();
            List<? extends DayRecorder> seen = part.stream().map(recorders::get).toList();
            blocks.add(
                    CompletableFuture.runAsync(() -> new EnsembleBlock(this, part, own, seen).run(own, 0), executor));
        }
        blocks.forEach(CompletableFuture::join);
    }

    /** Members that are carried on side by side; the slowest first, so that whoever is done early has a short part left to take. */
    List<List<Integer>> parts() {
        List<Integer> order = bySlowness();
        List<List<Integer>> parts = new ArrayList<>();
        int most = Math.min(BLOCK, Math.max(LEAST_BLOCK, (order.size() + 3) / 4));
        int count = (order.size() + most - 1) / most;
        // two threads that share an odd number of blocks wait for the last one
        count += count > 1 ? count % 2 : 0;
        int length = (order.size() + count - 1) / count;
        for (int last = order.size(); last > 0; last -= length) {
            parts.add(order.subList(Math.max(0, last - length), last));
        }
        return parts;
    }

    List<Draw> draws() {
        return draws;
    }

    Shape shape() {
        return shape;
    }

    double startTemperature() {
        return startTemperature;
    }

    SolverSettings settings() {
        return settings;
    }

    int layers() {
        return layers;
    }

    /** Members that will take long side by side, since a block runs until its slowest member is done. */
    private List<Integer> bySlowness() {
        return IntStream.range(0, draws.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> slowness(draws.get(i))))
                .toList();
    }

    private static double slowness(Draw draw) {
        return 2 * draw.normal(Uncertainty.THICKNESS)
                - draw.normal(Uncertainty.SETTING)
                - draw.normal(Uncertainty.CONVECTION)
                + draw.normal(Uncertainty.WETNESS);
    }

    /**
     * Returns the member of a given luck.
     *
     * @param draw luck
     * @param twoFaced whether the grid has two faces
     * @return the member
     */
    public Member member(Draw draw, boolean twoFaced) {
        double thickness = draw.logarithmic(Uncertainty.THICKNESS, THICKNESS);
        double extent = (twoFaced ? 2 : 1) * shape.halfThickness() * thickness;
        double start = startTemperature + draw.normal(Uncertainty.START) / Draw.NINETY_FIVE * START_SPREAD;
        Composition composition = meat.composition();
        double water = composition.waterPerSolids();
        double salt = meat.nativeSalt() / (1 - composition.water());
        double diffusivity = Math.min(
                DIFFUSIVITY_CAP,
                meat.diffusivity().medianAt5C()
                        * Math.pow(
                                meat.diffusivity().geometricStandardDeviation(), draw.normal(Uncertainty.DIFFUSIVITY)));
        SaltProperties motion = new SaltProperties(
                diffusivity,
                draw.uniform(Uncertainty.ACTIVATION, meat.diffusivity().activationEnergy()),
                draw.linear(Uncertainty.PARTITION, PARTITION),
                1,
                meat.hasSkin() ? SkinBarrier.RESISTANCE : 0);
        return new Member(
                extent,
                1,
                new InitialState(start, water, salt),
                heat.withConductivityFactor(draw.logarithmic(Uncertainty.CONDUCTIVITY, CONDUCTIVITY)),
                motion,
                false,
                Math.max(0, draw.linear(Uncertainty.JUICE, meat.juiceFactor())));
    }
}
