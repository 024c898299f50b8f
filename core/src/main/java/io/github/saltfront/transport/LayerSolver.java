package io.github.saltfront.transport;

import io.github.saltfront.numerics.ConvergenceException;
import io.github.saltfront.numerics.RosenbrockW;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Carries pieces of meat, cut into layers, through stages: heat, salt and water in one system, with error control, events
 * and dense output. Several members are advanced side by side, each with its own step sizes; a member's result is the same
 * to the last bit whether it runs alone or with others.
 *
 * <p>Method: finite volumes in coordinates fixed to the dry matter; ROS34PW2 (see {@link RosenbrockW}) in time. Protein
 * changes, juice and kill are integrated along the temperature history of each step, with the rate taken as exponential
 * between the start, the middle and the end. Not thread-safe; use one solver for each thread.
 *
 * <p>Temperatures of arguments and results are in K.
 */
public final class LayerSolver extends LayerState {
    private static final double SAFETY = 0.9;
    private static final double LARGEST_GROWTH = 5;
    private static final double LARGEST_SHRINK = 0.15;

    /** First step after a jump of the medium, over the one a stage begins with [-]. */
    private static final double AFTER_JUMP = 10;

    private static final double SMALLEST_STEP = 1e-9;
    private static final int MOST_STEPS = 1_000_000;

    private final double[] proposed;
    private final boolean[] active;
    private final boolean[] accepted;
    private final boolean[] stopped;

    /** Whether the proposed step ends at an event that was found within the last one; it must not be stretched again. */
    private final boolean[] located;

    private final double[] duration;

    /** The step that went beyond an event before it was located; none if zero [s]. */
    private final double[] overshoot;

    private final List<Member> ownMembers;
    final int[] steps;
    final int[] rejected;
    private List<StageInput> inputs = List.of();

    /**
     * Creates a solver with members at their start.
     *
     * @param grid the layers, shared by all members; symmetric or two-faced
     * @param members the members, at least one
     * @param settings tolerances and kinetics
     */
    public LayerSolver(LayerGrid grid, List<Member> members, SolverSettings settings) {
        super(grid, members, settings);
        proposed = new double[lanes];
        active = new boolean[lanes];
        accepted = new boolean[lanes];
        stopped = new boolean[lanes];
        located = new boolean[lanes];
        duration = new double[lanes];
        overshoot = new double[lanes];
        ownMembers = List.copyOf(members);
        steps = new int[lanes];
        rejected = new int[lanes];
    }

    /** Makes the conductances those of the present state, whatever was attempted last in a batch. */
    private void refreshConductances() {
        stepper.heat.takeTemperatures();
        stepper.heat.takeComposition(block.water, block.slotSalt);
        stepper.heat.computeConductances(block.water, block.slotSalt);
    }

    /**
     * Runs one stage for all members.
     *
     * @param stageInputs one input a member
     * @param sink sees every accepted step
     * @throws ConvergenceException if a step below 1 ns or more than a million steps would be needed
     */
    public void run(List<StageInput> stageInputs, StepSink sink) {
        Checks.require(
                stageInputs.size() == lanes,
                "a stage needs one input a member: expected " + lanes + ", got " + stageInputs.size() + ".");
        inputs = List.copyOf(stageInputs);
        for (StageInput input : inputs) {
            Checks.require(
                    input.faces().size() == block.faces,
                    "the grid has " + block.faces + " face(s), the stage "
                            + input.faces().size() + ".");
        }
        stepper.begin(inputs);
        refreshConductances();
        for (int l = 0; l < lanes; l++) {
            block.stageTime[l] = 0;
            duration[l] = inputs.get(l).duration();
            proposed[l] = Math.min(initialStep(l), settings.longestStep());
            overshoot[l] = 0;
        }
        advance(sink);
    }

    /**
     * Goes on with the stage that ran last, for members that their stop rule ended, with other rules: from a lower reading to a
     * higher one. Nothing is filled or dosed anew.
     *
     * @param stops the new stop rules, one a member; a rule that is fulfilled already ends the stage where it is
     * @param sink sees every accepted step
     * @throws ConvergenceException if a step below 1 ns or more than a million steps would be needed
     */
    public void goOn(List<StopRule> stops, StepSink sink) {
        Checks.require(
                stops.size() == inputs.size(),
                "going on needs a stage that ran and one stop rule a member: expected " + inputs.size() + ", got "
                        + stops.size() + ".");
        List<StageInput> later = new ArrayList<>();
        for (int l = 0; l < lanes; l++) {
            StageInput input = inputs.get(l);
            later.add(new StageInput(input.faces(), input.sources(), input.duration(), stops.get(l)));
            proposed[l] = Math.max(proposed[l], overshoot[l]);
            overshoot[l] = 0;
        }
        inputs = List.copyOf(later);
        advance(sink);
    }

    /**
     * Returns a solver in the same state, that goes on by itself. At the first step of a face with radiation or evaporation it may
     * differ in the last bits, as its iteration starts from another place.
     *
     * @return a copy
     * @throws IllegalArgumentException if no stage has run
     */
    public LayerSolver copy() {
        Checks.require(!inputs.isEmpty(), "a solver is copied after a stage has run.");
        LayerSolver copy = new LayerSolver(grid, ownMembers, settings);
        copy.inputs = inputs;
        copy.stepper.begin(inputs);
        copy.block.takeState(block);
        double[] same = new double[lanes];
        Arrays.fill(same, 1);
        copy.balance.takeOver(balance, same);
        for (int l = 0; l < lanes; l++) {
            copy.proposed[l] = proposed[l];
            copy.stopped[l] = stopped[l];
            copy.duration[l] = duration[l];
            copy.overshoot[l] = overshoot[l];
            copy.steps[l] = steps[l];
            copy.rejected[l] = rejected[l];
        }
        copy.stepper.heat.refreshConstantConductances();
        copy.refreshConductances();
        return copy;
    }

    private void advance(StepSink sink) {
        balance.beginStage();
        int running = 0;
        for (int l = 0; l < lanes; l++) {
            located[l] = false;
            stopped[l] = eventValue(l, block.temperature, block.water, block.slotSalt, false) >= 0;
            active[l] = block.stageTime[l] < duration[l] && !stopped[l];
            step[l] = 1;
            running += active[l] ? 1 : 0;
        }
        for (int count = 0; running > 0; count++) {
            if (count > MOST_STEPS) {
                throw new ConvergenceException("a stage was not finished", count, 0, settings.temperatureTolerance());
            }
            chooseSteps();
            stepper.attempt(step, settings);
            kinetics.computeEndKill(step, stepper, stepper.endTemperature, active);
            for (int l = 0; l < lanes; l++) {
                accepted[l] = active[l] && decide(l);
                if (accepted[l]) {
                    sink.accept(this, l, block.stageTime[l], block.stageTime[l] + step[l]);
                }
            }
            commit();
            running = countActive();
        }
        refreshConductances();
        balance.endStage();
    }

    /** Time in which the outermost cell would follow a jump at its face, a tenth of it. */
    private double initialStep(int lane) {
        double smallest = Double.POSITIVE_INFINITY;
        for (int f = 0; f < block.faces; f++) {
            int c = block.faceCell(f);
            double conductance = stepper.heat.faceConductance[f][lane];
            double time = conductance > 0 ? block.dryMass[c][lane] * block.capacity[c][lane] / conductance : 1;
            smallest = Math.min(smallest, 0.1 * time);
        }
        return Math.max(Math.min(smallest, 1), 1e-4);
    }

    private void chooseSteps() {
        for (int l = 0; l < lanes; l++) {
            if (!active[l]) {
                continue;
            }
            double now = block.stageTime[l];
            double limit = Math.min(duration[l], nextBreak(l, now)) - now;
            double h = Math.min(proposed[l], settings.longestStep());
            if (located[l]) {
                step[l] = Math.min(h, limit);
            } else {
                step[l] = h > 0.999 * limit ? limit : Math.min(h, 0.55 * limit > h ? h : 0.5 * limit);
            }
        }
    }

    private double nextBreak(int lane, double now) {
        double next = Double.POSITIVE_INFINITY;
        for (int f = 0; f < block.faces; f++) {
            FaceCondition condition = stepper.atFaces.condition(f, lane);
            // a break that was reached but for round-off lies behind
            next = Math.min(next, condition.mediumTemperature().nextBreak(now + 1e-9));
            next = Math.min(next, condition.coefficient().nextBreak(now + 1e-9));
        }
        return next;
    }

    /** Whether a medium of a lane has just jumped. */
    private boolean hasJumped(int lane, double now) {
        for (int f = 0; f < block.faces; f++) {
            TimeProfile medium = stepper.atFaces.condition(f, lane).mediumTemperature();
            if (medium.jumps() && medium.nextBreak(now - step[lane] + 1e-9) <= now + 1e-9) {
                return true;
            }
        }
        return false;
    }

    /** Accepts or rejects the attempted step of a lane and proposes the next one. */
    private boolean decide(int lane) {
        double error = stepper.error[lane];
        double factor = error == 0 ? LARGEST_GROWTH : SAFETY * Math.pow(error, -1.0 / RosenbrockW.ORDER);
        if (!(error <= 1)) {
            rejected[lane]++;
            proposed[lane] = step[lane] * (factor >= LARGEST_SHRINK ? factor : LARGEST_SHRINK);
            if (proposed[lane] < SMALLEST_STEP) {
                throw new ConvergenceException(
                        "no accepted step of member " + lane + " at t = " + block.stageTime[lane] + " s of the stage",
                        rejected[lane],
                        error,
                        1);
            }
            return false;
        }
        double beyond = eventValue(lane, stepper.endTemperature, stepper.waterAtEnd(), stepper.saltAtEnd(), true);
        if (beyond > eventTolerance(lane) && step[lane] > 1e-6) {
            rejected[lane]++;
            proposed[lane] = step[lane] * eventTheta(lane, beyond);
            overshoot[lane] = located[lane] ? overshoot[lane] : step[lane];
            located[lane] = true;
            return false;
        }
        located[lane] = false;
        stopped[lane] = beyond >= 0;
        proposed[lane] =
                step[lane] * Math.min(LARGEST_GROWTH, factor) * kinetics.stepFactor(lane, stepper.endTemperature);
        steps[lane]++;
        return true;
    }

    private double eventTolerance(int lane) {
        return switch (inputs.get(lane).stop().kind()) {
            case NEVER -> Double.POSITIVE_INFINITY;
            case CORE_ABOVE, CORE_BELOW, SURFACE_ABOVE -> 1e-4;
            case MEAN_SALT_ABOVE, CORE_SALT_ABOVE -> 1e-8;
            case KILL_ABOVE -> 1e-4;
        };
    }

    /** How far the watched quantity is beyond its threshold; negative before it is reached. */
    private double eventValue(int lane, double[][] temperature, double[][] water, double[][] salt, boolean atEnd) {
        StopRule rule = inputs.get(lane).stop();
        return switch (rule.kind()) {
            case NEVER -> Double.NEGATIVE_INFINITY;
            case CORE_ABOVE -> grid.middle(temperature, lane) + CELSIUS - rule.threshold();
            case CORE_BELOW -> rule.threshold() - grid.middle(temperature, lane) - CELSIUS;
            case SURFACE_ABOVE ->
                faceTemperature(
                                0,
                                lane,
                                temperature[cells - 1][lane],
                                water,
                                salt,
                                block.stageTime[lane] + (atEnd ? step[lane] : 0),
                                stepper.atFaces.guess(0, lane, temperature[cells - 1][lane]))
                        - rule.threshold();
            case MEAN_SALT_ABOVE -> meanSalt(lane, water, salt) - rule.threshold();
            case CORE_SALT_ABOVE -> coreSalt(lane, water, salt) - rule.threshold();
            case KILL_ABOVE -> kinetics.worst(0, lane, atEnd) - rule.threshold();
        };
    }

    /** Share of the step at which the event lies: by bisection of the core's dense output, by a straight line otherwise. */
    private double eventTheta(int lane, double beyond) {
        StopRule rule = inputs.get(lane).stop();
        if (rule.kind() == StopRule.Kind.CORE_ABOVE || rule.kind() == StopRule.Kind.CORE_BELOW) {
            double sign = rule.kind() == StopRule.Kind.CORE_ABOVE ? 1 : -1;
            double low = 0;
            double high = 1;
            for (int i = 0; i < 40; i++) {
                double middle = 0.5 * (low + high);
                if (sign * (coreTemperature(lane, middle) - rule.threshold()) > 0) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return Math.min(Math.max(high, 1e-3), 0.9999);
        }
        double before = eventValue(lane, block.temperature, block.water, block.slotSalt, false);
        double share = before / (before - beyond);
        return Math.min(Math.max(share, 1e-3), 0.999);
    }

    private void commit() {
        kinetics.commit(step, stepper.endTemperature, accepted);
        stepper.commit(accepted);
        boolean juice = false;
        for (int l = 0; l < lanes; l++) {
            if (accepted[l]) {
                commitFaces(l);
                block.stageTime[l] += step[l];
                if (duration[l] - block.stageTime[l] < 1e-9 * Math.max(1, duration[l])) {
                    block.stageTime[l] = duration[l];
                }
                active[l] = !stopped[l] && block.stageTime[l] < duration[l];
                if (active[l] && hasJumped(l, block.stageTime[l])) {
                    proposed[l] = Math.min(proposed[l], AFTER_JUMP * initialStep(l));
                }
                if (kinetics.changesComposition() && kinetics.expelJuice(l, step[l])) {
                    juice = true;
                    proposed[l] *= kinetics.juiceFactor(l);
                }
            }
        }
        if (juice) {
            refreshTemperatures();
        }
    }

    private void commitFaces(int lane) {
        for (int f = 0; f < block.faces; f++) {
            boolean fixed = block.waterFixed[lane];
            if (stepper.isMoving()) {
                double fed = stepper.atFaces.commitFeed(f, lane, step[lane]);
                block.evaporated[f][lane] += fixed ? 0 : fed;
            }
            for (int j = 0; j < RosenbrockW.STAGES; j++) {
                double m = RosenbrockW.solution(j);
                block.heatIn[f][lane] += m * stepper.atFaces.stageHeatIn[j][f][lane];
                block.evaporated[f][lane] += m * stepper.atFaces.stageEvaporated[j][f][lane];
                if (stepper.isMoving()) {
                    block.reservoirWater[f][lane] += m * stepper.atFaces.stageReservoirWater[j][f][lane];
                    block.filmWater[f][lane] += m * stepper.atFaces.stageFilm[j][f][lane];
                    block.evaporated[f][lane] -= fixed ? 0 : m * stepper.atFaces.stageFilm[j][f][lane];
                    boolean boils = !fixed && stepper.atFaces.condition(f, lane).boils();
                    block.boiled[f][lane] += boils ? m * stepper.atFaces.stageEvaporated[j][f][lane] : 0;
                }
            }
        }
    }

    private int countActive() {
        int count = 0;
        for (boolean a : active) {
            count += a ? 1 : 0;
        }
        return count;
    }

    /**
     * Returns whether the stage that ran last was ended by its stop rule.
     *
     * @param member which member
     * @return true if the rule was fulfilled, false if the time was up
     */
    public boolean wasStopped(int member) {
        return stopped[member];
    }

    /**
     * Changes the factor on the conductances of a member, for the stages to come.
     *
     * @param member which member
     * @param factor factor [-], see {@link Member#conductanceFactor}
     */
    public void setConductanceFactor(int member, double factor) {
        block.setFactor(member, Checks.requireInRange("conductance factor", factor, 0.1, 10, "-"));
        stepper.heat.refreshConstantConductances();
    }

    /**
     * Returns the number of accepted steps of a member since the start.
     *
     * @param member which member
     * @return steps
     */
    public int steps(int member) {
        return steps[member];
    }

    /**
     * Returns the number of rejected steps of a member since the start.
     *
     * @param member which member
     * @return steps
     */
    public int rejectedSteps(int member) {
        return rejected[member];
    }

    @Override
    public String toString() {
        return "LayerSolver of " + lanes + " member(s) in " + cells + " layers, steps " + Arrays.toString(steps);
    }
}
