package io.github.saltfront.transport;

import io.github.saltfront.numerics.ConvergenceException;
import io.github.saltfront.numerics.RosenbrockW;
import io.github.saltfront.shape.SolidGrid;
import io.github.saltfront.units.Checks;

/**
 * Carries one piece of meat through stages on a three-dimensional grid: the same physics as {@link LayerSolver}, for boxes,
 * ellipsoids and finite cylinders.
 *
 * <p>Method: cell-centered finite volumes (see {@link SolidGrid}), ROS34PW2 in time with error control on the mean square over
 * the volume, stage systems by preconditioned conjugate gradients. Not thread-safe; results do not depend on any threads.
 *
 * <p>Temperatures of arguments and results are in K. Sums such as heat and mass are reported as ratios, so that symmetry does
 * not show.
 */
public final class SolidSolver {
    private static final double CELSIUS = SolidState.KELVIN;
    private static final double SAFETY = 0.9;
    private static final double LARGEST_GROWTH = 5;
    private static final double LARGEST_SHRINK = 0.15;
    private static final double SMALLEST_STEP = 1e-9;
    private static final int MOST_STEPS = 1_000_000;

    private final SolidGrid grid;
    private final SolverSettings settings;
    private final SolidState state;
    private final SolidStepper stepper;
    private final SolidKinetics kinetics;
    private final SolidBalance balance;
    private final SolidEvents events;
    private final double[] endEnthalpy;
    private final double[] endSalt;
    private final double[] endTemperature;
    private final double[] endCapacity;
    private final double[] work;

    /** Temperatures within the attempted step, and at which place in it they are; not a number if nowhere. */
    private final double[] dense;

    private double denseTheta = Double.NaN;
    private double step;
    private double proposed;
    private boolean stopped;

    /** Whether the proposed step ends at an event that was found within the last one; it must not be stretched again. */
    private boolean located;

    private int steps;
    private int rejected;

    /**
     * Creates a solver with the piece at its start.
     *
     * @param grid the cells
     * @param piece start and properties
     * @param settings tolerances and kinetics
     */
    public SolidSolver(SolidGrid grid, SolidPiece piece, SolverSettings settings) {
        this.grid = grid;
        this.settings = settings;
        state = new SolidState(
                grid,
                piece,
                settings.killRates().size(),
                settings.denaturation().reactions());
        stepper = new SolidStepper(state);
        kinetics = new SolidKinetics(state, settings);
        endEnthalpy = new double[state.cells];
        endSalt = new double[state.cells];
        endTemperature = new double[state.cells];
        endCapacity = new double[state.cells];
        work = new double[state.cells];
        dense = new double[state.cells];
        refreshTemperatures();
        balance = new SolidBalance(state);
        events = new SolidEvents(this);
    }

    private void refreshTemperatures() {
        stepper.heat.computeTemperatures(state.enthalpy, state.water, state.saltContent);
        System.arraycopy(stepper.heat.temperature, 0, state.temperature, 0, state.cells);
        System.arraycopy(stepper.heat.capacity, 0, state.capacity, 0, state.cells);
    }

    /**
     * Runs one stage.
     *
     * @param input media, salt, duration and stop rule; as many faces as the grid
     * @param sink sees every accepted step
     * @throws ConvergenceException if a step below 1 ns or more than a million steps would be needed
     */
    public void run(StageInput input, SolidSink sink) {
        Checks.require(
                input.faces().size() == state.faces,
                "the grid has " + state.faces + " face(s), the stage "
                        + input.faces().size() + ".");
        stepper.begin(input);
        balance.beginStage();
        state.stageTime = 0;
        located = false;
        double duration = input.duration();
        stepper.heat.takeTemperatures();
        stepper.heat.computeConductances(state.water, state.saltContent);
        stopped = events.value(input.stop(), false) >= 0;
        proposed = Math.min(initialStep(), settings.longestStep());
        for (int count = 0; state.stageTime < duration && !stopped; count++) {
            if (count > MOST_STEPS) {
                throw new ConvergenceException("a stage was not finished", count, 0, settings.temperatureTolerance());
            }
            chooseStep(duration);
            stepper.attempt(step, settings);
            computeEnd();
            denseTheta = Double.NaN;
            kinetics.computeEndKill(step, stepper, endTemperature);
            if (decide(input.stop())) {
                sink.accept(this, state.stageTime, state.stageTime + step);
                commit(duration);
            }
        }
        balance.endStage();
    }

    /** Time in which the fastest cell at the surface would follow a jump, a tenth of it; cut cells count as whole ones. */
    private double initialStep() {
        double smallest = 1;
        for (int p = 0; p < state.lines.patches; p++) {
            int c = state.lines.patchCell[p];
            double d = state.lines.patchDistance[p];
            double perVolume = state.heat.dryDensity() * state.capacity[c];
            smallest = Math.min(smallest, 0.1 * perVolume * d * d / stepper.heat.conductivity[c]);
        }
        return Math.max(smallest, 1e-4);
    }

    private void chooseStep(double duration) {
        double now = state.stageTime;
        double next = duration;
        for (int f = 0; f < state.faces; f++) {
            FaceCondition condition = stepper.condition(f);
            next = Math.min(next, condition.mediumTemperature().nextBreak(now));
            next = Math.min(next, condition.coefficient().nextBreak(now));
        }
        double limit = next - now;
        double h = Math.min(proposed, settings.longestStep());
        double free = h > 0.999 * limit ? limit : Math.min(h, 0.55 * limit > h ? h : 0.5 * limit);
        step = located ? Math.min(h, limit) : free;
    }

    private void computeEnd() {
        SolidStepper.addSolution(state.enthalpy, stepper.stageHeat, endEnthalpy);
        if (stepper.isMoving()) {
            stepper.salt.addSolution(endSalt);
        } else {
            System.arraycopy(state.saltContent, 0, endSalt, 0, state.cells);
        }
        stepper.heat.computeTemperatures(endEnthalpy, state.water, endSalt);
        System.arraycopy(stepper.heat.temperature, 0, endTemperature, 0, state.cells);
        System.arraycopy(stepper.heat.capacity, 0, endCapacity, 0, state.cells);
    }

    private boolean decide(StopRule rule) {
        double error = stepper.error;
        double factor = error > 0 ? SAFETY * Math.pow(error, -1.0 / RosenbrockW.ORDER) : LARGEST_GROWTH;
        if (!(error <= 1)) {
            rejected++;
            proposed = step * (factor >= LARGEST_SHRINK ? factor : LARGEST_SHRINK);
            if (proposed < SMALLEST_STEP) {
                throw new ConvergenceException(
                        "no accepted step at t = " + state.stageTime + " s of the stage", rejected, error, 1);
            }
            return false;
        }
        double beyond = events.value(rule, true);
        if (beyond > SolidEvents.tolerance(rule) && step > 1e-6) {
            rejected++;
            proposed = step * events.theta(rule, beyond);
            located = true;
            return false;
        }
        located = false;
        stopped = beyond >= 0;
        proposed = step * Math.min(LARGEST_GROWTH, factor) * kinetics.stepFactor(endTemperature);
        steps++;
        return true;
    }

    private void commit(double duration) {
        System.arraycopy(endEnthalpy, 0, state.enthalpy, 0, state.cells);
        if (stepper.isMoving()) {
            stepper.salt.commit(endSalt);
        }
        kinetics.commit(step, stepper, endTemperature);
        System.arraycopy(endTemperature, 0, state.temperature, 0, state.cells);
        System.arraycopy(endCapacity, 0, state.capacity, 0, state.cells);
        // juice first, so that what evaporates in the same step is juice as far as there is any, and only the rest
        // drips
        if (kinetics.changesComposition()) {
            kinetics.expelJuice();
        }
        takeVapor();
        if (kinetics.changesComposition()) {
            kinetics.drip();
            refreshTemperatures();
        }
        state.stageTime += step;
        if (duration - state.stageTime < 1e-9 * Math.max(1, duration)) {
            state.stageTime = duration;
        }
    }

    private void takeVapor() {
        for (int f = 0; f < state.faces; f++) {
            double vapor = 0;
            for (int j = 0; j < RosenbrockW.STAGES; j++) {
                double m = RosenbrockW.solution(j);
                state.heatIn[f] += m * stepper.stageHeatIn[j][f];
                vapor += m * stepper.stageEvaporated[j][f];
            }
            state.evaporated[f] += vapor;
            double fromFilm = Math.min(vapor, state.filmWater[f]);
            if (fromFilm > 0) {
                state.filmWater[f] -= fromFilm;
                state.evaporatedFilm += fromFilm;
            }
        }
    }

    /** Temperatures at the present time or at the end of the attempted step, in degrees Celsius. */
    double[] temperatures(boolean atEnd) {
        return atEnd ? endTemperature : state.temperature;
    }

    SolidKinetics kinetics() {
        return kinetics;
    }

    /** Returns the grid. */
    public SolidGrid grid() {
        return grid;
    }

    /** Returns the time spent in the stage that ran last [s]. */
    public double stageTime() {
        return state.stageTime;
    }

    /** Returns whether the stage that ran last was ended by its stop rule, not by its time. */
    public boolean wasStopped() {
        return stopped;
    }

    /** Returns the temperature in the middle [K]. */
    public double coreTemperature() {
        return coreTemperature(false);
    }

    double coreTemperature(boolean atEnd) {
        return grid.middle(temperatures(atEnd)) + CELSIUS;
    }

    /**
     * Returns the temperature in the middle within the step a {@link SolidSink} sees.
     *
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public double coreTemperature(double theta) {
        return grid.middle(computeDense(theta)) + CELSIUS;
    }

    /** Temperatures of all cells within the step a {@link SolidSink} sees, in degrees Celsius; not to be modified. */
    double[] computeDense(double theta) {
        if (theta != denseTheta) {
            for (int c = 0; c < state.cells; c++) {
                dense[c] = SolidKinetics.denseTemperature(state, stepper, endTemperature, c, theta);
            }
            denseTheta = theta;
        }
        return dense;
    }

    /**
     * Returns the temperature of a cell.
     *
     * @param cell which cell
     * @return temperature [K]
     */
    public double cellTemperature(int cell) {
        return state.temperature[cell] + CELSIUS;
    }

    /**
     * Returns the temperature of a cell within the step a {@link SolidSink} sees.
     *
     * @param cell which cell
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public double cellTemperature(int cell, double theta) {
        return SolidKinetics.denseTemperature(state, stepper, endTemperature, cell, theta) + CELSIUS;
    }

    /** Returns the mean temperature by volume [K]. */
    public double meanTemperature() {
        return mean(state.temperature) + CELSIUS;
    }

    /**
     * Returns the mean temperature by volume within the step a {@link SolidSink} sees.
     *
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public double meanTemperature(double theta) {
        return mean(computeDense(theta)) + CELSIUS;
    }

    private double mean(double[] values) {
        double sum = 0;
        double volume = 0;
        for (int c = 0; c < state.cells; c++) {
            sum += state.lines.volume[c] * values[c];
            volume += state.lines.volume[c];
        }
        return sum / volume;
    }

    /**
     * Returns the temperature in the middle of a face: where the thickness axis leaves the piece.
     *
     * @param face 0 for the first or only, 1 for the second face
     * @return temperature [K]
     */
    public double faceTemperature(int face) {
        return faceTemperature(face, false);
    }

    double faceTemperature(int face, boolean atEnd) {
        int patch = face == 0 ? grid.upperPatch() : grid.lowerPatch();
        return patchTemperature(patch, temperatures(atEnd), state.stageTime + (atEnd ? step : 0));
    }

    /**
     * Returns the temperature in the middle of a face within the step a {@link SolidSink} sees.
     *
     * @param face 0 for the first or only, 1 for the second face
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public double faceTemperature(int face, double theta) {
        int patch = face == 0 ? grid.upperPatch() : grid.lowerPatch();
        return patchTemperature(patch, computeDense(theta), state.stageTime + theta * step);
    }

    /**
     * Returns the mean surface temperature of a face by area at the present time.
     *
     * @param face 0 for the first or only, 1 for the second face
     * @return temperature [K]
     */
    public double meanFaceTemperature(int face) {
        double sum = 0;
        double area = 0;
        for (int p = 0; p < state.lines.patches; p++) {
            if (state.lines.patchFace[p] == face) {
                sum += state.lines.patchArea[p] * patchTemperature(p, state.temperature, state.stageTime);
                area += state.lines.patchArea[p];
            }
        }
        return sum / area;
    }

    /**
     * Returns the surface temperature of a patch at the present time.
     *
     * @param patch which patch of the grid
     * @return temperature [K]
     */
    public double patchTemperature(int patch) {
        return patchTemperature(patch, state.temperature, state.stageTime);
    }

    private double patchTemperature(int patch, double[] temperature, double time) {
        int c = state.lines.patchCell[patch];
        double activity = SurfaceBalance.waterActivity(state.water[c], state.saltContent[c]);
        FaceCondition condition = stepper.condition(state.lines.patchFace[patch]);
        stepper.solveSurface(patch, condition, time, temperature, activity);
        return stepper.surface.surface + CELSIUS;
    }

    /** Returns the salt of the whole piece per its wet mass [kg/kg]. */
    public double meanSalt() {
        return meanSalt(false);
    }

    double meanSalt(boolean atEnd) {
        double salt = state.total(atEnd ? endSalt : state.saltContent);
        return salt / (balance.dryMass() + salt + state.total(state.water));
    }

    /** Returns the salt in the middle per wet mass [kg/kg]. */
    public double coreSalt() {
        return coreSalt(false);
    }

    double coreSalt(boolean atEnd) {
        for (int c = 0; c < state.cells; c++) {
            double s = atEnd ? endSalt[c] : state.saltContent[c];
            work[c] = s / (1 + state.water[c] + s);
        }
        return Math.max(0, grid.middle(work));
    }

    /**
     * Returns the salt of the whole piece per its wet mass within the step a {@link SolidSink} sees.
     *
     * @param theta place in the step, 0 to 1 [-]
     * @return salt [kg/kg]
     */
    public double meanSalt(double theta) {
        double salt = 0;
        for (int c = 0; c < state.cells; c++) {
            salt += state.dryMass[c] * denseSalt(c, theta);
        }
        return salt / (balance.dryMass() + salt + state.total(state.water));
    }

    /**
     * Returns the salt in the middle per wet mass within the step a {@link SolidSink} sees.
     *
     * @param theta place in the step, 0 to 1 [-]
     * @return salt [kg/kg]
     */
    public double coreSalt(double theta) {
        return Math.max(0, grid.middle(denseSalts(theta)));
    }

    private double denseSalt(int c, double theta) {
        double salt = state.saltContent[c];
        for (int j = 0; stepper.isMoving() && j < RosenbrockW.STAGES; j++) {
            salt += RosenbrockW.dense(j, theta) * stepper.salt.stageSalt[j][c];
        }
        return salt;
    }

    /** Salt of all cells within that step, per wet mass [kg/kg]; not to be modified. */
    double[] denseSalts(double theta) {
        for (int c = 0; c < state.cells; c++) {
            double s = denseSalt(c, theta);
            work[c] = s / (1 + state.water[c] + s);
        }
        return work;
    }

    /**
     * Returns the salt of a cell per its wet mass.
     *
     * @param cell which cell
     * @return salt [kg/kg]
     */
    public double cellSalt(int cell) {
        double s = state.saltContent[cell];
        return s / (1 + state.water[cell] + s);
    }

    /**
     * Returns the water of a cell per its dry solids.
     *
     * @param cell which cell
     * @return water [kg/kg]
     */
    public double cellWater(int cell) {
        return state.water[cell];
    }

    /**
     * Returns the kill of the first kind at the node of a cell.
     *
     * @param cell which cell
     * @return kill, in the unit of the kill rate times s; zero if none is computed
     */
    public double cellKill(int cell) {
        return cellKill(cell, 0);
    }

    /**
     * Returns the kill at the node of a cell, which may lie outside the body if the cell is cut, see {@link
     * SolidGrid#nodesInside}.
     *
     * @param cell which cell
     * @param kind which kind, as in the settings
     * @return kill, in the unit of the kill rate times s; zero if none is computed
     */
    public double cellKill(int cell, int kind) {
        return kind < state.kill.length ? state.kill[kind][cell] : 0;
    }

    /** Returns the kill of the first kind in the middle, in the unit of the kill rate times s. */
    public double coreKill() {
        return coreKill(0);
    }

    /**
     * Returns the kill at the node nearest to the middle.
     *
     * @param kind which kind, as in the settings
     * @return kill, in the unit of the kill rate times s; zero if none is computed
     */
    public double coreKill(int kind) {
        return cellKill(grid.middleCell(), kind);
    }

    /** Returns the least kill of the first kind, in the unit of the kill rate times s. */
    public double leastKill() {
        return leastKill(0);
    }

    /**
     * Returns the kill at the place that has least: on the surface or at a node inside the body.
     *
     * @param kind which kind, as in the settings
     * @return kill, in the unit of the kill rate times s; zero if none is computed
     */
    public double leastKill(int kind) {
        return kinetics.least(kind, false);
    }

    /** Computes kills within the step a {@link SolidSink} sees, to be read from {@link #kinetics}. */
    void computeKillWithin(double theta) {
        kinetics.computeWithin(theta, step, stepper, endTemperature);
    }

    /**
     * Returns the extent of a protein change in a cell.
     *
     * @param cell which cell
     * @param reaction which reaction
     * @return extent, 0 raw to 1 complete [-]
     */
    public double cellExtent(int cell, int reaction) {
        return state.extents[reaction][cell];
    }

    /** Returns how much lighter the piece is than at its start: lost over starting mass [-], negative if it has gained. */
    public double massLoss() {
        return balance.massLoss();
    }

    /** Returns the mass of the piece per area of its surface: dry solids, water and salt [kg/m2]. */
    public double massPerArea() {
        double mass = balance.dryMass() + state.total(state.water) + state.total(state.saltContent);
        double area = 0;
        for (double face : state.faceArea) {
            area += face;
        }
        return mass / area;
    }

    /** Returns the water that has evaporated, per mass of the piece at its start [kg/kg]. */
    public double evaporatedShare() {
        return balance.evaporatedShare();
    }

    /**
     * Returns salt per water of what lies on a face.
     *
     * @param face 0 for the first or only, 1 for the second face
     * @return strength [kg/kg], zero if there is no bath or dry salt
     */
    public double reservoirStrength(int face) {
        return stepper.salt.strength(face);
    }

    /** Returns the relative errors of the balances of energy, salt and water since the start. */
    public BalanceError balanceError() {
        return balance.error();
    }

    /** Returns the number of accepted steps since the start. */
    public int steps() {
        return steps;
    }

    /** Returns the number of rejected steps since the start. */
    public int rejectedSteps() {
        return rejected;
    }

    /** Returns the number of iterations of the linear solver since the start. */
    public long linearIterations() {
        return stepper.system.iterations + stepper.salt.system.iterations;
    }

    @Override
    public String toString() {
        return "SolidSolver of " + state.cells + " cells, steps " + steps;
    }
}
