package io.github.saltfront.plan;

import io.github.saltfront.matter.Composition;
import io.github.saltfront.quality.Band;
import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.transport.FaceCondition;
import io.github.saltfront.transport.HeatProperties;
import io.github.saltfront.transport.InitialState;
import io.github.saltfront.transport.LayerSolver;
import io.github.saltfront.transport.MeatHeat;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.SaltProperties;
import io.github.saltfront.transport.SaltSource;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StageInput;
import io.github.saltfront.units.PhysicalConstants;
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

    /** Layers of the grid: the core errs by some hundredths of a kelvin, far below the spread of the ensemble. */
    private static final int LAYERS = 40;

    /** Thickness of the outermost layer [m]. */
    private static final double OUTER_LAYER = 1.5e-4;

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
        List<Integer> order = bySlowness();
        List<CompletableFuture<List<MemberDay>>> blocks = new ArrayList<>();
        for (int first = 0; first < order.size(); first += BLOCK) {
            List<Draw> part = order.subList(first, Math.min(first + BLOCK, order.size())).stream()
                    .map(draws::get)
                    .toList();
            blocks.add(CompletableFuture.supplyAsync(() -> runBlock(part, stages), executor));
        }
        MemberDay[] all = new MemberDay[draws.size()];
        int place = 0;
        for (CompletableFuture<List<MemberDay>> block : blocks) {
            for (MemberDay day : block.join()) {
                all[order.get(place++)] = day;
            }
        }
        return List.of(all);
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

    private List<MemberDay> runBlock(List<Draw> part, List<StageFor> stages) {
        List<List<Stage>> perStage = new ArrayList<>();
        boolean twoFaced = false;
        for (StageFor stage : stages) {
            List<Stage> row = part.stream().map(stage::stage).toList();
            perStage.add(row);
            twoFaced |= row.stream().anyMatch(s -> !s.isSymmetric());
        }
        LayerGrid grid = grid(twoFaced);
        boolean faces = twoFaced;
        List<Member> members = part.stream().map(draw -> member(draw, faces)).toList();
        LayerSolver solver = new LayerSolver(grid, members, settings);
        List<MemberDay> days = new ArrayList<>();
        for (int i = 0; i < part.size(); i++) {
            days.add(new MemberDay());
        }
        List<StageInput> before = List.of();
        for (List<Stage> row : perStage) {
            List<StageInput> inputs = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                List<SaltSource> sources = before.isEmpty()
                        ? List.of(SaltSource.NONE, SaltSource.NONE)
                        : before.get(i).sources();
                inputs.add(input(row.get(i), solver, i, sources));
                if (!twoFaced) {
                    solver.setConductanceFactor(i, shape.conductanceFactor(biot(row.get(0))));
                }
                days.get(i).beginStage(row.get(i).kind());
            }
            before = inputs;
            solver.run(inputs, (s, member, start, end) -> days.get(member).step(s, member, start, end));
            for (int i = 0; i < row.size(); i++) {
                StageQuality quality = StageQuality.of(
                        solver, i, members.get(i).extent(), settings.denaturation() instanceof KajitaniJuice);
                days.get(i).endStage(solver, i, quality);
            }
        }
        return days;
    }

    private LayerGrid grid(boolean twoFaced) {
        double extent = shape.halfThickness();
        double even = 1.0 / LAYERS;
        if (twoFaced) {
            double outer = Math.min(even, Math.max(even / 8, OUTER_LAYER / (2 * extent)));
            return LayerGrid.twoFaced(LAYERS, outer);
        }
        double outer = Math.min(even, Math.max(even / 8, OUTER_LAYER / extent));
        return LayerGrid.symmetric(shape.exponent(), LAYERS, outer);
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

    private static StageInput input(Stage stage, LayerSolver solver, int member, List<SaltSource> before) {
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
            sources.add(stage.salt().perFace(meatPerArea, before.get(face), solver.reservoirStrength(face, member)));
        }
        return new StageInput(faces, sources, stage.duration(), stage.stop());
    }

    private double biot(Stage stage) {
        FaceCondition face = stage.faces().get(0);
        double between = 0.5 * (face.mediumTemperature().at(0) + startTemperature);
        double radiant = 4 * face.emissivity() * PhysicalConstants.STEFAN_BOLTZMANN * Math.pow(between, 3);
        double conductivity = 0.48;
        return Math.max(1e-6, (face.coefficient().at(0) + radiant) * shape.halfThickness() / conductivity);
    }
}
