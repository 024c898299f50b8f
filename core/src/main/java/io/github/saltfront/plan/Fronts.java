package io.github.saltfront.plan;

import io.github.saltfront.quality.KajitaniJuice;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.transport.History;
import io.github.saltfront.transport.History.Series;
import io.github.saltfront.transport.Member;
import io.github.saltfront.transport.Piece;
import io.github.saltfront.transport.Simulation;
import io.github.saltfront.transport.SimulationOutput;
import io.github.saltfront.transport.SolverSettings;
import io.github.saltfront.transport.Stage;
import io.github.saltfront.transport.StageRecord;
import io.github.saltfront.words.Phrases;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The two fronts of a plan: how salt and heat move from the surface to the middle of the median piece along its day. Samples are
 * closer where something happens: every stage has about as many. Temperatures in K, salt per wet mass in kg/kg.
 *
 * <p>The piece is computed in layers; times of the heat are stretched, and its kill lowered, by what the plan's check in three
 * dimensions found, so that the picture and the plan tell the same time. Where one face is heated at a time the picture is that
 * of a slab all day, stretched to the plan's time. Immutable; arrays are copied out.
 */
public final class Fronts {
    private static final Phrases PHRASES = Phrases.of(Fronts.class);

    /** Samples kept of a stage, at most. */
    private static final int SAMPLES = 120;

    private static final int LAYERS = 40;
    private static final double LEAST_INTERVAL = 2;
    private static final double SIMULATED_SAMPLES = 4000;

    private static final Resolution FULL = new Resolution(LAYERS, 0.02, SIMULATED_SAMPLES, SAMPLES);

    /** As fine as a picture of some 400 points shows. */
    static final Resolution ROUGH = new Resolution(20, 0.1, 1500, 60);

    private final Plan plan;
    private final History history;
    private final List<Span> spans;
    private final int[] kept;
    private final SolidCheck.Correction correction;

    /** Factor on the time in the stage that the thermometer ends, so that it is the plan's [-]. */
    private final double timeFactor;

    /** Time by which the heat starts later than on the clock of the plan [s]. */
    private final double delay;

    /**
     * How finely the day is computed and kept.
     *
     * @param layers layers of the grid
     * @param tolerance tolerance of a step [K]
     * @param simulated samples of the day, at most
     * @param kept samples kept of a stage, at most
     */
    record Resolution(int layers, double tolerance, double simulated, int kept) {}

    /**
     * A stage of the day.
     *
     * @param kind its kind: {@code soak}, {@code dry-salt}, {@code heat-before}, {@code heat}, {@code heat-after} or {@code rest}
     * @param start its start since the start of the day [s]
     * @param end its end [s]
     * @param clock its start on the clock of the plan
     */
    public record Span(String kind, double start, double end, ZonedDateTime clock) {}

    private Fronts(Plan plan, History history, double timeFactor, double delay, int samples) {
        this.plan = plan;
        this.history = history;
        this.timeFactor = timeFactor;
        this.delay = delay;
        correction = correction(plan);
        kept = thinned(history, samples);
        spans = placed();
    }

    private static SolidCheck.Correction correction(Plan plan) {
        return plan.cooking().check().map(SolidCheck::correction).orElse(SolidCheck.Correction.NONE);
    }

    /**
     * Carries the median piece of a plan through its day.
     *
     * @param plan the plan
     * @return its fronts
     */
    public static Fronts of(Plan plan) {
        return of(plan, FULL);
    }

    /**
     * Carries the median piece of a plan through its day, just finely enough to be looked at while a slider moves.
     *
     * @param plan the plan
     * @return its fronts
     */
    public static Fronts glance(Plan plan) {
        return of(plan, ROUGH);
    }

    private static Fronts of(Plan plan, Resolution resolution) {
        Request request = plan.request();
        CookStages cook = new CookStages(request, plan.cooking().verdict().rule());
        double pull = plan.cooking().pullTemperature();
        double whole = plan.salting().time()
                + plan.cooking().timeToPull().median()
                + plan.cooking().rest();
        History history = run(plan, SaltStages.wholeDay(request, plan.salting(), cook, pull), whole, resolution);
        double factor = isTwoFaced(plan, history)
                ? plan.cooking().timeToPull().median() / heatTime(history)
                : correction(plan).timeFactor();
        return new Fronts(plan, history, factor, 0, resolution.kept());
    }

    /** The same piece in the stages of another day; times of the heat are stretched as in this one. */
    Fronts in(List<DayEnsemble.StageFor> stages, double whole, double startsLater, Resolution resolution) {
        return new Fronts(plan, run(plan, stages, whole, resolution), timeFactor, startsLater, resolution.kept());
    }

    private static History run(Plan plan, List<DayEnsemble.StageFor> stages, double whole, Resolution resolution) {
        Request.Food food = plan.request().food();
        SafetyRule rule = plan.cooking().verdict().rule();
        SolverSettings settings = SolverSettings.DEFAULT
                .withTolerances(resolution.tolerance(), 5e-5)
                .withKinetics(rule.holdTable()::rate, new KajitaniJuice());
        List<Stage> day = stages.stream().map(stage -> stage.stage(Draw.MEDIAN)).toList();
        Member median = new DayEnsemble(
                        food.meat(), food.shape(), food.startTemperature(), List.of(Draw.MEDIAN), settings)
                .member(Draw.MEDIAN, false);
        Piece piece =
                new Piece(food.shape(), median.start(), median.heat(), median.salt(), false, median.juiceFactor());
        double heat = plan.cooking().timeToPull().median();
        double every = Math.max(LEAST_INTERVAL, Math.max(heat / resolution.kept() / 2, whole / resolution.simulated()));
        return Simulation.run(piece, day, settings, new SimulationOutput(every, true, resolution.layers()));
    }

    private static double heatTime(History history) {
        return history.stages().stream()
                .filter(stage -> stage.kind().equals(CookStages.HEAT))
                .mapToDouble(stage -> stage.end() - stage.start())
                .sum();
    }

    private static int[] thinned(History history, int samples) {
        List<Integer> indices = new ArrayList<>();
        double[] times = history.series(Series.TIME);
        double next = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < times.length; i++) {
            double time = times[i];
            StageRecord stage = stageAt(history, time);
            double every = (stage.end() - stage.start()) / samples;
            boolean ends = i == times.length - 1 || stageAt(history, times[i + 1]) != stage;
            if (time >= next || ends) {
                indices.add(i);
                next = ends ? time : time + every * (1 - 1e-9);
            }
        }
        return indices.stream().mapToInt(Integer::intValue).toArray();
    }

    private static StageRecord stageAt(History history, double time) {
        for (StageRecord stage : history.stages()) {
            if (time <= stage.end()) {
                return stage;
            }
        }
        return history.stages().get(history.stages().size() - 1);
    }

    private List<Span> placed() {
        List<Span> result = new ArrayList<>();
        ZonedDateTime cookStart = clockOf(Plan.StepKind.COOK).plusSeconds(Math.round(delay));
        double heatStart = 0;
        boolean first = true;
        for (StageRecord stage : history.stages()) {
            boolean before =
                    stage.kind().equals(SaltStages.SOAK) || stage.kind().equals(SaltStages.DRY_SALT);
            double start = corrected(stage.start());
            heatStart = first && !before ? start : heatStart;
            first &= before;
            ZonedDateTime clock =
                    before ? clockOf(Plan.StepKind.SALT) : cookStart.plusSeconds(Math.round(start - heatStart));
            result.add(new Span(stage.kind(), start, corrected(stage.end()), clock));
        }
        return List.copyOf(result);
    }

    private ZonedDateTime clockOf(Plan.StepKind kind) {
        return plan.clock().stream()
                .filter(step -> step.kind() == kind)
                .findFirst()
                .map(Plan.Step::time)
                .orElseThrow(() -> new IllegalArgumentException(PHRASES.say("the-clock-of-the-plan", kind)));
    }

    /** Time with the heat stretched [s]. */
    private double corrected(double time) {
        double result = time;
        for (StageRecord stage : history.stages()) {
            if (stage.kind().equals(CookStages.HEAT)) {
                double heated = Math.max(0, Math.min(time, stage.end()) - stage.start());
                result += (timeFactor - 1) * heated;
            }
        }
        return result;
    }

    /** Returns the plan. */
    public Plan plan() {
        return plan;
    }

    /** Returns the stages in order. */
    public List<Span> spans() {
        return spans;
    }

    /** Returns the number of samples. */
    public int size() {
        return kept.length;
    }

    /**
     * Returns the time of a sample since the start of the day [s].
     *
     * @param sample which sample
     * @return the time
     */
    public double time(int sample) {
        return corrected(history.value(Series.TIME, kept[sample]));
    }

    /** Returns the depths below the first face, from the surface inward [m]: to the middle, or through to a second face. */
    public double[] depths() {
        return history.depths();
    }

    /** Returns how deep the picture goes [m]: half the thickness, or the whole of it where the faces differ. */
    public double depth() {
        double half = plan.request().food().shape().halfThickness();
        return isTwoFaced() ? 2 * half : half;
    }

    /** Tells whether the two faces meet different media, so that depth runs from face to face. */
    public boolean isTwoFaced() {
        return isTwoFaced(plan, history);
    }

    private static boolean isTwoFaced(Plan plan, History history) {
        double[] depths = history.depths();
        return depths[depths.length - 1] > 1.01 * plan.request().food().shape().halfThickness();
    }

    /** Core temperature at the end of the last stage of a kind [K]. */
    double coreAtEndOf(String kind) {
        double end = history.stages().stream()
                .filter(stage -> stage.kind().equals(kind))
                .mapToDouble(StageRecord::end)
                .max()
                .orElseThrow(() -> new IllegalArgumentException(PHRASES.say("there-is-no-stage-in", kind)));
        int after = 1;
        while (after < history.size() - 1 && history.value(Series.TIME, after) < end) {
            after++;
        }
        double from = history.value(Series.TIME, after - 1);
        double share = (end - from) / (history.value(Series.TIME, after) - from);
        double first = history.value(Series.CORE_TEMPERATURE, after - 1);
        return first + share * (history.value(Series.CORE_TEMPERATURE, after) - first);
    }

    /** Returns the factor from times of the layers to those of the plan, in the stage that the thermometer ends [-]. */
    double timeFactor() {
        return timeFactor;
    }

    /**
     * Returns the temperatures of all depths at a sample [K].
     *
     * @param sample which sample
     * @return as long as {@link #depths}
     */
    public double[] temperatures(int sample) {
        return history.temperatures(kept[sample]);
    }

    /**
     * Returns the salt of all depths at a sample, per wet mass [kg/kg].
     *
     * @param sample which sample
     * @return as long as {@link #depths}
     */
    public double[] salts(int sample) {
        return history.salts(kept[sample]);
    }

    /**
     * Returns the share of the required hold that the worst place has had [-].
     *
     * @param sample which sample
     * @return the share; 1 is enough
     */
    public double killShare(int sample) {
        return correction.holdFactor() * history.value(Series.LEAST_KILL, kept[sample]);
    }

    /**
     * Returns what is left of the raw weight [kg/kg]; above 1 where the meat has drunk.
     *
     * @param sample which sample
     * @return weight per raw weight
     */
    public double weight(int sample) {
        return 1 - history.value(Series.MASS_LOSS, kept[sample]);
    }
}
