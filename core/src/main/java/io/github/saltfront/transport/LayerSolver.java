package io.github.saltfront.transport;

import io.github.saltfront.numerics.ConvergenceException;
import io.github.saltfront.numerics.RosenbrockW;
import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Checks;
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
public final class LayerSolver {
    private static final double CELSIUS = LaneBlock.KELVIN;
    private static final double SAFETY = 0.9;
    private static final double LARGEST_GROWTH = 5;
    private static final double LARGEST_SHRINK = 0.15;

    /** First step after a jump of the medium, over the one a stage begins with [-]. */
    private static final double AFTER_JUMP = 10;

    private static final double SMALLEST_STEP = 1e-9;
    private static final int MOST_STEPS = 1_000_000;

    private final LayerGrid grid;
    private final SolverSettings settings;
    final LaneBlock block;
    final LayerStepper stepper;
    final Balance balance;
    private final Kinetics kinetics;
    private final int cells;
    private final int lanes;

    private final double[] step;
    private final double[] proposed;
    private final boolean[] active;
    private final boolean[] accepted;
    private final boolean[] stopped;
    private final double[] duration;
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
        Checks.require(!members.isEmpty(), "a solver needs at least one member, got none.");
        this.grid = grid;
        this.settings = settings;
        block = new LaneBlock(
                grid,
                members,
                settings.killRates().size(),
                settings.denaturation().reactions());
        stepper = new LayerStepper(block);
        kinetics = new Kinetics(block, settings);
        cells = block.cells;
        lanes = block.lanes;
        step = new double[lanes];
        proposed = new double[lanes];
        active = new boolean[lanes];
        accepted = new boolean[lanes];
        stopped = new boolean[lanes];
        duration = new double[lanes];
        steps = new int[lanes];
        rejected = new int[lanes];
        refreshTemperatures();
        balance = new Balance(block);
    }

    void refreshTemperatures() {
        stepper.heat.takeComposition(block.water, block.slotSalt);
        stepper.heat.computeTemperatures(
                block.enthalpy, block.water, block.slotSalt, block.temperature, block.capacity);
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
        balance.beginStage();
        int running = 0;
        for (int l = 0; l < lanes; l++) {
            block.stageTime[l] = 0;
            duration[l] = inputs.get(l).duration();
            stopped[l] = eventValue(l, block.temperature, block.water, block.slotSalt, false) >= 0;
            active[l] = duration[l] > 0 && !stopped[l];
            proposed[l] = Math.min(initialStep(l), settings.longestStep());
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
            step[l] = h > 0.999 * limit ? limit : Math.min(h, 0.55 * limit > h ? h : 0.5 * limit);
        }
    }

    private double nextBreak(int lane, double now) {
        double next = Double.POSITIVE_INFINITY;
        for (int f = 0; f < block.faces; f++) {
            FaceCondition condition = stepper.condition(f, lane);
            // a break that was reached but for round-off lies behind
            next = Math.min(next, condition.mediumTemperature().nextBreak(now + 1e-9));
            next = Math.min(next, condition.coefficient().nextBreak(now + 1e-9));
        }
        return next;
    }

    /** Whether a medium of a lane has just jumped. */
    private boolean hasJumped(int lane, double now) {
        for (int f = 0; f < block.faces; f++) {
            TimeProfile medium = stepper.condition(f, lane).mediumTemperature();
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
            return false;
        }
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
                                stepper.guessFace(0, lane, temperature[cells - 1][lane]))
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
        kinetics.commit(step, stepper, stepper.endTemperature, accepted);
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
                juice |= kinetics.changesComposition() && kinetics.expelJuice(l);
            }
        }
        if (juice) {
            refreshTemperatures();
        }
    }

    private void commitFaces(int lane) {
        for (int f = 0; f < block.faces; f++) {
            boolean fixed = block.waterFixed[lane];
            for (int j = 0; j < RosenbrockW.STAGES; j++) {
                double m = RosenbrockW.solution(j);
                block.heatIn[f][lane] += m * stepper.stageHeatIn[j][f][lane];
                block.evaporated[f][lane] += m * stepper.stageEvaporated[j][f][lane];
                if (stepper.isMoving()) {
                    block.reservoirWater[f][lane] += m * stepper.stageReservoirWater[j][f][lane];
                    block.filmWater[f][lane] += m * stepper.stageFilm[j][f][lane];
                    block.evaporated[f][lane] -= fixed ? 0 : m * stepper.stageFilm[j][f][lane];
                    boolean boils = !fixed && stepper.condition(f, lane).boils();
                    block.boiled[f][lane] += boils ? m * stepper.stageEvaporated[j][f][lane] : 0;
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

    /** Returns the grid. */
    public LayerGrid grid() {
        return grid;
    }

    /** Returns the number of members. */
    public int members() {
        return lanes;
    }

    /**
     * Returns the time a member has spent in the stage that ran last.
     *
     * @param member which member
     * @return time [s]
     */
    public double stageTime(int member) {
        return block.stageTime[member];
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
     * Returns the temperature in the middle.
     *
     * @param member which member
     * @return temperature [K]
     */
    public double coreTemperature(int member) {
        return grid.middle(block.temperature, member) + CELSIUS;
    }

    /**
     * Returns the temperature in the middle within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public double coreTemperature(int member, double theta) {
        double sum = 0;
        for (int i = 0; i < grid.middleCells(); i++) {
            sum += grid.middleWeight(i) * denseCelsius(member, grid.middleCell(i), theta);
        }
        return sum + CELSIUS;
    }

    private double denseCelsius(int lane, int cell, double theta) {
        return Kinetics.denseTemperature(block, stepper, stepper.endTemperature, cell, lane, theta);
    }

    /**
     * Returns the temperature of a cell within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param cell which cell
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public double cellTemperature(int member, int cell, double theta) {
        return denseCelsius(member, cell, theta) + CELSIUS;
    }

    /**
     * Returns the temperature of a cell.
     *
     * @param member which member
     * @param cell which cell
     * @return temperature [K]
     */
    public double cellTemperature(int member, int cell) {
        return block.temperature[cell][member] + CELSIUS;
    }

    /**
     * Returns the mean temperature by volume within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public double meanTemperature(int member, double theta) {
        return stepper.meanTemperature(member, theta) + CELSIUS;
    }

    /**
     * Returns the mean temperature by volume.
     *
     * @param member which member
     * @return temperature [K]
     */
    public double meanTemperature(int member) {
        double sum = 0;
        for (int i = 0; i < cells; i++) {
            sum += grid.volume(i) * cellTemperature(member, i);
        }
        return sum / grid.totalVolume();
    }

    /**
     * Returns the temperature of a face within the step a {@link StepSink} sees.
     *
     * @param face 0 for the first, 1 for the second face
     * @param member which member
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public double faceTemperature(int face, int member, double theta) {
        double cell = denseCelsius(member, block.faceCell(face), theta);
        double time = block.stageTime[member] + theta * step[member];
        double guess = stepper.guessFace(face, member, cell);
        return faceTemperature(face, member, cell, stepper.waterAtEnd(), stepper.saltAtEnd(), time, guess);
    }

    /**
     * Returns the temperature of a face at the present time.
     *
     * @param face 0 for the first, 1 for the second face
     * @param member which member
     * @return temperature [K]
     */
    public double faceTemperature(int face, int member) {
        double cell = block.temperature[block.faceCell(face)][member];
        return faceTemperature(
                face, member, cell, block.water, block.slotSalt, block.stageTime[member], SurfaceBalance.NO_GUESS);
    }

    private double faceTemperature(
            int face, int lane, double cell, double[][] water, double[][] salt, double time, double guess) {
        FaceCondition condition = stepper.condition(face, lane);
        int c = block.faceCell(face);
        double activity = condition.isDrying() ? SurfaceBalance.waterActivity(water[c][lane], salt[c + 1][lane]) : 0;
        double conductance = stepper.heat.faceConductance[face][lane];
        stepper.surface.crust = stepper.crust(face, lane);
        stepper.surface.solve(condition, time, cell, conductance, activity, guess);
        return stepper.surface.surface + CELSIUS;
    }

    /**
     * Returns the temperature of the outside of the face that was asked for last: that of the crust where water boils under it, that
     * of the face elsewhere.
     *
     * @return temperature [K]
     */
    public double outsideOfLastFace() {
        return stepper.surface.outside + CELSIUS;
    }

    /**
     * Returns the thickness of the dried crust on the first face.
     *
     * @param member which member
     * @return thickness [m]
     */
    public double crust(int member) {
        return stepper.crust(0, member);
    }

    /**
     * Returns the salt of the whole piece per its wet mass.
     *
     * @param member which member
     * @return salt [kg/kg]
     */
    public double meanSalt(int member) {
        return meanSalt(member, block.water, block.slotSalt);
    }

    private double meanSalt(int lane, double[][] water, double[][] salt) {
        double saltMass = 0;
        double mass = 0;
        for (int i = 0; i < cells; i++) {
            double dry = block.dryMass[i][lane];
            double s = salt[i + 1][lane];
            saltMass += dry * s;
            mass += dry * (1 + water[i][lane] + s);
        }
        return saltMass / mass;
    }

    /**
     * Returns the salt in the middle per wet mass.
     *
     * @param member which member
     * @return salt [kg/kg]
     */
    public double coreSalt(int member) {
        return coreSalt(member, block.water, block.slotSalt);
    }

    private double coreSalt(int lane, double[][] water, double[][] salt) {
        double sum = 0;
        for (int i = 0; i < grid.middleCells(); i++) {
            int cell = grid.middleCell(i);
            double s = salt[cell + 1][lane];
            sum += grid.middleWeight(i) * s / (1 + water[cell][lane] + s);
        }
        return Math.max(0, sum);
    }

    /**
     * Returns the salt of a cell per its wet mass.
     *
     * @param member which member
     * @param cell which cell
     * @return salt [kg/kg]
     */
    public double cellSalt(int member, int cell) {
        double s = block.slotSalt[cell + 1][member];
        return s / (1 + block.water[cell][member] + s);
    }

    /**
     * Returns the salt of the whole piece per its wet mass within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param theta place in the step, 0 to 1 [-]
     * @return salt [kg/kg]
     */
    public double meanSalt(int member, double theta) {
        double saltMass = 0;
        double mass = 0;
        for (int i = 0; i < cells; i++) {
            double dry = block.dryMass[i][member];
            double s = denseSalt(i, member, theta);
            saltMass += dry * s;
            mass += dry * (1 + denseWater(i, member, theta) + s);
        }
        return saltMass / mass;
    }

    /**
     * Returns the salt in the middle per wet mass within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param theta place in the step, 0 to 1 [-]
     * @return salt [kg/kg]
     */
    public double coreSalt(int member, double theta) {
        double sum = 0;
        for (int i = 0; i < grid.middleCells(); i++) {
            sum += grid.middleWeight(i) * cellSalt(member, grid.middleCell(i), theta);
        }
        return Math.max(0, sum);
    }

    /**
     * Returns the salt of a cell per its wet mass within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param cell which cell
     * @param theta place in the step, 0 to 1 [-]
     * @return salt [kg/kg]
     */
    public double cellSalt(int member, int cell, double theta) {
        double s = denseSalt(cell, member, theta);
        return s / (1 + denseWater(cell, member, theta) + s);
    }

    private double denseSalt(int cell, int lane, double theta) {
        double start = block.slotSalt[cell + 1][lane];
        return stepper.isMoving() ? Rows.dense(start, stepper.stageSalt, cell + 1, lane, theta) : start;
    }

    private double denseWater(int cell, int lane, double theta) {
        double start = block.water[cell][lane];
        return stepper.isMoving() ? Rows.dense(start, stepper.stageWater, cell, lane, theta) : start;
    }

    /**
     * Returns the salt of the layer below the first face, per its wet mass.
     *
     * @param member which member
     * @param depth depth of the layer [m], above zero
     * @return salt [kg/kg]
     */
    public double outerSalt(int member, double depth) {
        double saltMass = 0;
        double mass = 0;
        for (int i = cells - 1; i >= 0; i--) {
            double top = block.extent[member] * (1 - grid.edge(i + 1));
            double bottom = block.extent[member] * (1 - grid.edge(i));
            double share = Math.min(1, (depth - top) / (bottom - top));
            if (share <= 0) {
                break;
            }
            double dry = share * block.dryMass[i][member];
            double s = block.slotSalt[i + 1][member];
            saltMass += dry * s;
            mass += dry * (1 + block.water[i][member] + s);
        }
        return saltMass / mass;
    }

    /**
     * Returns the kill in a cell within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param cell which cell
     * @param kind which kind, as in the settings
     * @param theta place in the step, 0 to 1 [-]
     * @return kill, in the unit of the kill rate times s
     */
    public double cellKill(int member, int cell, int kind, double theta) {
        double start = cellTemperature(member, cell);
        double middle = cellTemperature(member, cell, 0.5 * theta);
        double end = cellTemperature(member, cell, theta);
        return cellKill(member, cell, kind) + kinetics.between(kind, start, middle, end, theta * step[member]);
    }

    /**
     * Returns the water of a cell per its dry solids.
     *
     * @param member which member
     * @param cell which cell
     * @return water [kg/kg]
     */
    public double cellWater(int member, int cell) {
        return block.water[cell][member];
    }

    /**
     * Returns the kill of the first kind in a cell.
     *
     * @param member which member
     * @param cell which cell
     * @return kill, in the unit of the kill rate times s; zero if none is computed
     */
    public double cellKill(int member, int cell) {
        return cellKill(member, cell, 0);
    }

    /**
     * Returns the kill in a cell.
     *
     * @param member which member
     * @param cell which cell
     * @param kind which kind, as in the settings
     * @return kill, in the unit of the kill rate times s; zero if none is computed
     */
    public double cellKill(int member, int cell, int kind) {
        return block.kill.length == 0 ? 0 : block.kill[kind][cell][member];
    }

    /**
     * Returns the kill of the first kind in the middle.
     *
     * @param member which member
     * @return kill, in the unit of the kill rate times s
     */
    public double coreKill(int member) {
        return coreKill(member, 0);
    }

    /**
     * Returns the kill in the middle.
     *
     * @param member which member
     * @param kind which kind, as in the settings
     * @return kill, in the unit of the kill rate times s
     */
    public double coreKill(int member, int kind) {
        return cellKill(member, grid.isTwoFaced() ? cells / 2 : 0, kind);
    }

    /**
     * Returns the kill of the first kind in the cell that has least.
     *
     * @param member which member
     * @return kill, in the unit of the kill rate times s
     */
    public double leastKill(int member) {
        return leastKill(member, 0);
    }

    /**
     * Returns the kill in the cell that has least.
     *
     * @param member which member
     * @param kind which kind, as in the settings
     * @return kill, in the unit of the kill rate times s
     */
    public double leastKill(int member, int kind) {
        return kinetics.worst(kind, member, false);
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
     * Returns the salt that left with dripping juice, as a share of the salt of the piece.
     *
     * @param member which member
     * @return share [-]
     */
    public double drippedSaltShare(int member) {
        return balance.drippedSaltShare(member);
    }

    /**
     * Returns the extent of a protein change in a cell.
     *
     * @param member which member
     * @param cell which cell
     * @param reaction which reaction
     * @return extent, 0 raw to 1 complete [-]
     */
    public double cellExtent(int member, int cell, int reaction) {
        return block.extents[reaction][cell][member];
    }

    /**
     * Returns how much lighter the piece is than at its start.
     *
     * @param member which member
     * @return lost mass over starting mass [-], negative if it has gained
     */
    public double massLoss(int member) {
        return balance.massLoss(member);
    }

    /**
     * Returns the mass of the piece per area of its outer face, or of one face of a two-faced grid.
     *
     * @param member which member
     * @return mass per area, dry solids, water and salt [kg/m2]
     */
    public double massPerArea(int member) {
        return balance.mass(member);
    }

    /**
     * Returns the water that has evaporated, per mass of the piece at its start.
     *
     * @param member which member
     * @return evaporated water [kg/kg]
     */
    public double evaporatedShare(int member) {
        return balance.evaporatedShare(member);
    }

    /**
     * Returns salt per water left in the reservoir of a face.
     *
     * @param face 0 for the first, 1 for the second face
     * @param member which member
     * @return strength [kg/kg], zero if there is no reservoir
     */
    public double reservoirStrength(int face, int member) {
        return stepper.salt.reservoirStrength(
                face, member, block.slotSalt[block.faceSlot(face)][member], block.reservoirWater[face][member]);
    }

    /**
     * Returns the source of salt that a face had in the stage that ran last.
     *
     * @param face 0 for the first, 1 for the second face
     * @param member which member
     * @return the source, with what it had at the start of that stage
     */
    public SaltSource source(int face, int member) {
        return stepper.salt.source(face, member);
    }

    /**
     * Returns the relative errors of the balances since the start.
     *
     * @param member which member
     * @return errors of energy, salt and water
     */
    public BalanceError balanceError(int member) {
        return balance.error(member);
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
