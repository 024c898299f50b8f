package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;
import java.util.Arrays;
import java.util.List;

/**
 * Advances all lanes of a block by one attempted step of ROS34PW2 each, with a step size of its own for every lane, so that
 * a lane's numbers do not depend on its neighbors. Heat, salt and water are advanced together; the approximate Jacobian
 * keeps the coupling along the layers and what water does to heat where a face dries, and leaves out the rest of that between
 * heat, salt and water, which the W method allows.
 */
final class LayerStepper {
    private static final int STAGES = RosenbrockW.STAGES;

    private static final double[][] NO_ROWS = {};

    final LaneBlock block;
    final HeatTerms heat;
    final SaltTerms salt;
    final FaceTerms atFaces;
    final double[][][] stageHeat;
    final double[][][] stageSalt;
    final double[][][] stageWater;

    private final int cells;
    private final int lanes;
    private boolean moving;

    /** Enthalpy that comes with the stage changes of water and salt where a face dries; no rows where none does. */
    private double[][] content = NO_ROWS;

    private final double[][] water;
    private final double[][] slotSalt;
    private final double[] rate;
    private final double[] errorScale;

    /** Temperature at an edge in degrees Celsius, and enthalpy that salt and water carry across it [W/m2]. */
    private final double[] between;

    private final double[] carried;

    private double[][] endEnthalpy;

    /** Temperature of each cell at the end of the attempted step in degrees Celsius. */
    double[][] endTemperature;

    private double[][] endCapacity;
    private double[][] endWater;
    private double[][] endSalt;

    private boolean meansKnown;
    private final double[] meanStart;
    private final double[] meanEnd;
    private final double[] meanSlope;

    /** Error of the attempted step relative to the tolerance, of each lane [-]. */
    final double[] error;

    LayerStepper(LaneBlock block) {
        this.block = block;
        cells = block.cells;
        lanes = block.lanes;
        heat = new HeatTerms(block);
        salt = new SaltTerms(block);
        atFaces = new FaceTerms(block, heat, salt);
        stageHeat = Rows.ofStages(cells, lanes);
        stageSalt = Rows.ofStages(cells + 2, lanes);
        stageWater = Rows.ofStages(cells, lanes);
        water = Rows.of(cells, lanes);
        slotSalt = Rows.of(cells + 2, lanes);
        rate = new double[lanes];
        errorScale = new double[lanes];
        between = new double[lanes];
        carried = new double[lanes];
        endEnthalpy = Rows.of(cells, lanes);
        endTemperature = Rows.of(cells, lanes);
        endCapacity = Rows.of(cells, lanes);
        // where it is constant, nobody writes it again
        Rows.copy(block.capacity, endCapacity);
        endWater = Rows.of(cells, lanes);
        endSalt = Rows.of(cells + 2, lanes);
        meanStart = new double[lanes];
        meanEnd = new double[lanes];
        meanSlope = new double[lanes];
        error = new double[lanes];
    }

    /** Sets the conditions of a stage for all lanes. */
    void begin(List<StageInput> inputs) {
        atFaces.begin(inputs);
        moving = atFaces.isMoving();
        content = atFaces.isCoupled() ? Rows.of(cells, lanes) : NO_ROWS;
    }

    /** Whether salt or water is advanced in this stage. */
    boolean isMoving() {
        return moving;
    }

    /**
     * Attempts one step of every lane; stage vectors, the state at its end and errors are left in this object, the block is
     * not changed.
     *
     * @param step step of each lane [s]
     * @param settings tolerances
     */
    void attempt(double[] step, SolverSettings settings) {
        for (int l = 0; l < lanes; l++) {
            rate[l] = 1 / (step[l] * RosenbrockW.GAMMA);
        }
        for (int stage = 0; stage < STAGES; stage++) {
            combineStates(stage);
            evaluate(stage, step);
            if (stage == 0) {
                atFaces.computeSlopes();
                heat.factor(rate, atFaces.slopeHeat);
                if (moving) {
                    salt.factor(rate, block.slotSalt, block.water, block.reservoirWater, atFaces.slopeWater);
                }
            }
            if (moving) {
                atFaces.solveFilms(stage, rate);
                salt.solveSalt(stage, rate, stageSalt);
                salt.solveWater(stage, stageWater);
                atFaces.solveReservoirs(stage, rate, stageWater[stage]);
            }
            if (content.length > 0) {
                computeContent(stage);
            }
            heat.solve(stage, atFaces.flow, moving, content, stageHeat, atFaces.change);
            atFaces.solveAccounts(stage, rate, stageWater[stage]);
        }
        computeEnd();
        meansKnown = false;
        estimateErrors(settings.temperatureTolerance(), settings.saltTolerance());
    }

    private void combineStates(int stage) {
        if (stage == 0) {
            heat.takeTemperatures();
            if (moving) {
                heat.takeComposition(block.water, block.slotSalt);
            }
        } else {
            if (moving) {
                Rows.combine(stage, block.water, stageWater, water);
                Rows.combine(stage, block.slotSalt, stageSalt, slotSalt);
                atFaces.combine(stage);
                heat.takeComposition(water, slotSalt);
            }
            heat.computeStageTemperatures(stage, stageHeat);
            heat.computeFrozenStage(stage, stageHeat, stageWaterOf(stage), stageSaltOf(stage));
        }
    }

    /** Water of a stage; that of the block where none moves. */
    private double[][] stageWaterOf(int stage) {
        return moving && stage > 0 ? water : block.water;
    }

    private double[][] stageSaltOf(int stage) {
        return moving && stage > 0 ? slotSalt : block.slotSalt;
    }

    /** Evaluates all flows of the combined state, whose temperatures are known. */
    private void evaluate(int stage, double[] step) {
        double[][] waterNow = stageWaterOf(stage);
        double[][] saltNow = stageSaltOf(stage);
        heat.computeConductances(waterNow, saltNow);
        if (moving) {
            double[][] reservoirNow = stage > 0 ? atFaces.reservoirWater : block.reservoirWater;
            salt.evaluate(heat.temperature, saltNow, waterNow, block.expelled, reservoirNow);
            carryEnthalpy();
        }
        atFaces.evaluate(stage, step, waterNow, saltNow);
    }

    /**
     * Makes the attempted steps of accepted lanes the state of the block. The arrays are exchanged, since that costs nothing
     * where all lanes go on; lanes that do not are carried over first.
     */
    void commit(boolean[] accepted) {
        for (int l = 0; l < lanes; l++) {
            if (!accepted[l]) {
                Rows.copyLane(block.enthalpy, endEnthalpy, l);
                Rows.copyLane(block.temperature, endTemperature, l);
                Rows.copyLane(block.capacity, endCapacity, l);
                if (moving) {
                    Rows.copyLane(block.water, endWater, l);
                    Rows.copyLane(block.slotSalt, endSalt, l);
                }
            }
        }
        double[][] spare = block.enthalpy;
        block.enthalpy = endEnthalpy;
        endEnthalpy = spare;
        spare = block.temperature;
        block.temperature = endTemperature;
        endTemperature = spare;
        spare = block.capacity;
        block.capacity = endCapacity;
        endCapacity = spare;
        if (moving) {
            spare = block.water;
            block.water = endWater;
            endWater = spare;
            spare = block.slotSalt;
            block.slotSalt = endSalt;
            endSalt = spare;
        }
    }

    private void carryEnthalpy() {
        for (double[] row : heat.carriedNet) {
            Arrays.fill(row, 0);
        }
        if (block.constantHeat) {
            return;
        }
        for (int e = 1; e < cells; e++) {
            betweenRow(heat.temperature[e - 1], heat.temperature[e], between);
            Arrays.fill(carried, 0);
            addContentRow(block.waterCapacity, between, salt.waterFlow[e], carried);
            addContentRow(block.saltCapacity, between, salt.saltFlow[e], carried);
            moveRow(carried, heat.carriedNet[e - 1], heat.carriedNet[e]);
        }
    }

    private static void betweenRow(double[] below, double[] above, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = 0.5 * (above[l] + below[l]);
        }
    }

    private static void moveRow(double[] flow, double[] netBelow, double[] netAbove) {
        for (int l = 0; l < flow.length; l++) {
            netBelow[l] += flow[l];
            netAbove[l] -= flow[l];
        }
    }

    /** Adds amounts times their enthalpy above 0 degrees Celsius, of which the powers of the heat capacity are given. */
    private static void addContentRow(double[][] capacity, double[] celsius, double[] amount, double[] sum) {
        double[] c0 = capacity[0];
        double[] c1 = capacity[1];
        double[] c2 = capacity[2];
        for (int l = 0; l < sum.length; l++) {
            double t = celsius[l];
            sum[l] += amount[l] * t * (c0[l] + t * (c1[l] * (1.0 / 2) + t * c2[l] * (1.0 / 3)));
        }
    }

    /** Enthalpy of the stage changes of water and salt at the temperature of each cell at the base of the step. */
    private void computeContent(int stage) {
        for (int i = 0; i < cells; i++) {
            Arrays.fill(content[i], 0);
            addContentRow(block.waterCapacity, block.temperature[i], stageWater[stage][i], content[i]);
            addContentRow(block.saltCapacity, block.temperature[i], stageSalt[stage][i + 1], content[i]);
            multiplyRow(atFaces.drying, content[i]);
        }
    }

    private static void multiplyRow(double[] factor, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] *= factor[l];
        }
    }

    /** Water at the end of the attempted step. */
    double[][] waterAtEnd() {
        return moving ? endWater : block.water;
    }

    /** Salt of the slots at the end of the attempted step. */
    double[][] saltAtEnd() {
        return moving ? endSalt : block.slotSalt;
    }

    /**
     * Mean temperature by volume within the attempted step in degrees Celsius. The dense output of a cell is T0 + (T1 - T0)
     * theta^2 + D (theta - theta^2); the means of T0, T1 and D are formed once a step, for all lanes together.
     */
    double meanTemperature(int lane, double theta) {
        if (!meansKnown) {
            computeMeans();
            meansKnown = true;
        }
        double square = theta * theta;
        return meanStart[lane] + (meanEnd[lane] - meanStart[lane]) * square + meanSlope[lane] * (theta - square);
    }

    private void computeMeans() {
        Arrays.fill(meanStart, 0);
        Arrays.fill(meanEnd, 0);
        Arrays.fill(meanSlope, 0);
        for (int i = 0; i < cells; i++) {
            double share = block.grid.volume(i) / block.grid.totalVolume();
            addShare(share, block.temperature[i], meanStart);
            addShare(share, endTemperature[i], meanEnd);
            Rows.addSlope(share, stageHeat, i, block.capacity[i], meanSlope);
        }
    }

    private static void addShare(double share, double[] values, double[] sum) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] += share * values[l];
        }
    }

    private void computeEnd() {
        Rows.addSolution(block.enthalpy, stageHeat, endEnthalpy);
        if (moving) {
            Rows.addSolution(block.water, stageWater, endWater);
            Rows.addSolution(block.slotSalt, stageSalt, endSalt);
            heat.takeComposition(endWater, endSalt);
        }
        heat.computeTemperatures(endEnthalpy, waterAtEnd(), saltAtEnd(), endTemperature, endCapacity);
    }

    /** Root mean square over the cells of the difference to the embedded method, over the tolerances. */
    private void estimateErrors(double temperatureTolerance, double saltTolerance) {
        Arrays.fill(error, 0);
        for (int i = 0; i < cells; i++) {
            // a cell that leaves the freezing range takes its error of enthalpy to where it weighs far more in kelvin
            scaleRow(heat.baseCapacity[i], endCapacity[i], temperatureTolerance, errorScale);
            Rows.addError(stageHeat, i, errorScale, error);
        }
        if (moving) {
            Arrays.fill(errorScale, saltTolerance);
            for (int i = 0; i < cells; i++) {
                Rows.addError(stageSalt, i + 1, errorScale, error);
            }
            Arrays.fill(errorScale, 10 * saltTolerance);
            for (int i = 0; i < cells; i++) {
                Rows.addError(stageWater, i, errorScale, error);
            }
        }
        for (int l = 0; l < lanes; l++) {
            error[l] = Math.sqrt(error[l] / cells);
        }
    }

    private static void scaleRow(double[] start, double[] end, double tolerance, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = Math.min(start[l], end[l]) * tolerance;
        }
    }
}
