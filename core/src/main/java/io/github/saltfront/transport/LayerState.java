package io.github.saltfront.transport;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * What can be read off pieces of meat in layers: temperatures, salt, water, kill and balances, at the present time and, while a step
 * is seen, within it. {@link LayerSolver} carries the state on.
 *
 * <p>Temperatures of arguments and results are in K.
 */
public abstract sealed class LayerState permits LayerSolver {
    static final double CELSIUS = LaneBlock.KELVIN;

    final LayerGrid grid;
    final SolverSettings settings;
    final LaneBlock block;
    final LayerStepper stepper;
    final Balance balance;
    final Kinetics kinetics;
    final int cells;
    final int lanes;

    /** Length of the step that is attempted or seen, by member [s]. */
    final double[] step;

    LayerState(LayerGrid grid, List<Member> members, SolverSettings settings) {
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
        refreshTemperatures();
        balance = new Balance(block);
    }

    final void refreshTemperatures() {
        stepper.heat.takeComposition(block.water, block.slotSalt);
        stepper.heat.computeTemperatures(
                block.enthalpy, block.water, block.slotSalt, block.temperature, block.capacity);
    }

    /** Returns the grid. */
    public final LayerGrid grid() {
        return grid;
    }

    /** Returns the number of members. */
    public final int members() {
        return lanes;
    }

    /**
     * Returns the time a member has spent in the stage that ran last.
     *
     * @param member which member
     * @return time [s]
     */
    public final double stageTime(int member) {
        return block.stageTime[member];
    }

    /**
     * Returns the temperature in the middle.
     *
     * @param member which member
     * @return temperature [K]
     */
    public final double coreTemperature(int member) {
        return grid.middle(block.temperature, member) + CELSIUS;
    }

    /**
     * Returns the temperature in the middle within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public final double coreTemperature(int member, double theta) {
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
    public final double cellTemperature(int member, int cell, double theta) {
        return denseCelsius(member, cell, theta) + CELSIUS;
    }

    /**
     * Returns the temperature of a cell.
     *
     * @param member which member
     * @param cell which cell
     * @return temperature [K]
     */
    public final double cellTemperature(int member, int cell) {
        return block.temperature[cell][member] + CELSIUS;
    }

    /**
     * Returns the mean temperature by volume within the step a {@link StepSink} sees.
     *
     * @param member which member
     * @param theta place in the step, 0 to 1 [-]
     * @return temperature [K]
     */
    public final double meanTemperature(int member, double theta) {
        return stepper.meanTemperature(member, theta) + CELSIUS;
    }

    /**
     * Returns the mean temperature by volume.
     *
     * @param member which member
     * @return temperature [K]
     */
    public final double meanTemperature(int member) {
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
    public final double faceTemperature(int face, int member, double theta) {
        double cell = denseCelsius(member, block.faceCell(face), theta);
        double time = block.stageTime[member] + theta * step[member];
        double guess = stepper.atFaces.guess(face, member, cell);
        return faceTemperature(face, member, cell, stepper.waterAtEnd(), stepper.saltAtEnd(), time, guess);
    }

    /**
     * Returns the temperature of a face at the present time.
     *
     * @param face 0 for the first, 1 for the second face
     * @param member which member
     * @return temperature [K]
     */
    public final double faceTemperature(int face, int member) {
        double cell = block.temperature[block.faceCell(face)][member];
        return faceTemperature(
                face, member, cell, block.water, block.slotSalt, block.stageTime[member], SurfaceBalance.NO_GUESS);
    }

    double faceTemperature(
            int face, int lane, double cell, double[][] water, double[][] salt, double time, double guess) {
        FaceCondition condition = stepper.atFaces.condition(face, lane);
        int c = block.faceCell(face);
        double activity = condition.isDrying() ? SurfaceBalance.waterActivity(water[c][lane], salt[c + 1][lane]) : 0;
        double conductance = stepper.heat.faceConductance[face][lane];
        stepper.atFaces.surface.crust = stepper.atFaces.crust(face, lane);
        stepper.atFaces.surface.solve(condition, time, cell, conductance, activity, guess);
        return stepper.atFaces.surface.surface + CELSIUS;
    }

    /**
     * Returns the temperature of the outside of the face that was asked for last: that of the crust where water boils under it, that
     * of the face elsewhere.
     *
     * @return temperature [K]
     */
    public final double outsideOfLastFace() {
        return stepper.atFaces.surface.outside + CELSIUS;
    }

    /**
     * Returns the thickness of the dried crust on the first face.
     *
     * @param member which member
     * @return thickness [m]
     */
    public final double crust(int member) {
        return stepper.atFaces.crust(0, member);
    }

    /**
     * Returns the salt of the whole piece per its wet mass.
     *
     * @param member which member
     * @return salt [kg/kg]
     */
    public final double meanSalt(int member) {
        return meanSalt(member, block.water, block.slotSalt);
    }

    double meanSalt(int lane, double[][] water, double[][] salt) {
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
    public final double coreSalt(int member) {
        return coreSalt(member, block.water, block.slotSalt);
    }

    double coreSalt(int lane, double[][] water, double[][] salt) {
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
    public final double cellSalt(int member, int cell) {
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
    public final double meanSalt(int member, double theta) {
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
    public final double coreSalt(int member, double theta) {
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
    public final double cellSalt(int member, int cell, double theta) {
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
    public final double outerSalt(int member, double depth) {
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
    public final double cellKill(int member, int cell, int kind, double theta) {
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
    public final double cellWater(int member, int cell) {
        return block.water[cell][member];
    }

    /**
     * Returns the kill of the first kind in a cell.
     *
     * @param member which member
     * @param cell which cell
     * @return kill, in the unit of the kill rate times s; zero if none is computed
     */
    public final double cellKill(int member, int cell) {
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
    public final double cellKill(int member, int cell, int kind) {
        return block.kill.length == 0 ? 0 : block.kill[kind][cell][member];
    }

    /**
     * Returns the kill of the first kind in the middle.
     *
     * @param member which member
     * @return kill, in the unit of the kill rate times s
     */
    public final double coreKill(int member) {
        return coreKill(member, 0);
    }

    /**
     * Returns the kill in the middle.
     *
     * @param member which member
     * @param kind which kind, as in the settings
     * @return kill, in the unit of the kill rate times s
     */
    public final double coreKill(int member, int kind) {
        return cellKill(member, grid.isTwoFaced() ? cells / 2 : 0, kind);
    }

    /**
     * Returns the kill of the first kind in the cell that has least.
     *
     * @param member which member
     * @return kill, in the unit of the kill rate times s
     */
    public final double leastKill(int member) {
        return leastKill(member, 0);
    }

    /**
     * Returns the kill in the cell that has least.
     *
     * @param member which member
     * @param kind which kind, as in the settings
     * @return kill, in the unit of the kill rate times s
     */
    public final double leastKill(int member, int kind) {
        return kinetics.worst(kind, member, false);
    }

    /**
     * Returns the salt that left with dripping juice, as a share of the salt of the piece.
     *
     * @param member which member
     * @return share [-]
     */
    public final double drippedSaltShare(int member) {
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
    public final double cellExtent(int member, int cell, int reaction) {
        return block.extents[reaction][cell][member];
    }

    /**
     * Returns how much lighter the piece is than at its start.
     *
     * @param member which member
     * @return lost mass over starting mass [-], negative if it has gained
     */
    public final double massLoss(int member) {
        return balance.massLoss(member);
    }

    /**
     * Returns the mass of the piece per area of its outer face, or of one face of a two-faced grid.
     *
     * @param member which member
     * @return mass per area, dry solids, water and salt [kg/m2]
     */
    public final double massPerArea(int member) {
        return balance.mass(member);
    }

    /**
     * Returns the water that has evaporated, per mass of the piece at its start.
     *
     * @param member which member
     * @return evaporated water [kg/kg]
     */
    public final double evaporatedShare(int member) {
        return balance.evaporatedShare(member);
    }

    /**
     * Returns salt per water left in the reservoir of a face.
     *
     * @param face 0 for the first, 1 for the second face
     * @param member which member
     * @return strength [kg/kg], zero if there is no reservoir
     */
    public final double reservoirStrength(int face, int member) {
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
    public final SaltSource source(int face, int member) {
        return stepper.salt.source(face, member);
    }

    /**
     * Returns the relative errors of the balances since the start.
     *
     * @param member which member
     * @return errors of energy, salt and water
     */
    public final BalanceError balanceError(int member) {
        return balance.error(member);
    }
}
