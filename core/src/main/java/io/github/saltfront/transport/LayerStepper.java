package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;
import java.util.Arrays;
import java.util.List;

/**
 * Advances all lanes of a block by one attempted step of ROS34PW2 each, with a step size of its own for every lane, so that
 * a lane's numbers do not depend on its neighbors. Heat, salt and water are advanced together; the approximate Jacobian
 * keeps the coupling along the layers and leaves out that between heat, salt and water, which the W method allows.
 */
final class LayerStepper {
    private static final int STAGES = RosenbrockW.STAGES;

    /** Water on the face below which evaporation turns to the meat [kg/m2]; estimate: a tenth of the film. */
    private static final double FILM_SCALE = LaneBlock.FILM_CAPACITY / 10;

    /** Largest place of a stage within a step [-]: just before the end, where a profile may jump. */
    private static final double LAST_PLACE = 1 - 1e-8;

    final LaneBlock block;
    final HeatTerms heat;
    final SaltTerms salt;
    final SurfaceBalance surface = new SurfaceBalance();
    final double[][] stageHeat;
    final double[][] stageSalt;
    final double[][] stageWater;
    final double[][] stageReservoirWater;
    final double[][] stageHeatIn;
    final double[][] stageEvaporated;
    final double[][] stageFilm;

    private final int cells;
    private final int lanes;
    private final int faces;
    private FaceCondition[] conditions = new FaceCondition[0];
    private boolean moving;

    private final double[] enthalpy;
    private final double[] water;
    private final double[] slotSalt;
    private final double[] reservoirWater;
    private final double[] film;
    private final double[] right;
    private final double[] rightSlots;
    private final double[] rate;
    private final double[] faceFlux;
    private final double[] faceSlope;
    private final double[] carried;
    private final double[] evaporation;
    private final double[] evaporationByWater;
    private final double[] filmLoss;
    private final double[] meatLoss;
    private final double[] slopeHeat;
    private final double[] slopeFilm;
    private final double[] slopeWater;
    private final double[] faceChange;
    private final double[] stageFace;

    /** Error of the attempted step relative to the tolerance, of each lane [-]. */
    final double[] error;

    LayerStepper(LaneBlock block) {
        this.block = block;
        cells = block.cells;
        lanes = block.lanes;
        faces = block.faces;
        heat = new HeatTerms(block);
        salt = new SaltTerms(block);
        int n = cells * lanes;
        int f = faces * lanes;
        stageHeat = new double[STAGES][n];
        stageSalt = new double[STAGES][n + 2 * lanes];
        stageWater = new double[STAGES][n];
        stageReservoirWater = new double[STAGES][f];
        stageHeatIn = new double[STAGES][f];
        stageEvaporated = new double[STAGES][f];
        stageFilm = new double[STAGES][f];
        enthalpy = new double[n];
        water = new double[n];
        slotSalt = new double[n + 2 * lanes];
        reservoirWater = new double[f];
        film = new double[f];
        right = new double[n];
        rightSlots = new double[n + 2 * lanes];
        rate = new double[lanes];
        faceFlux = new double[f];
        faceSlope = new double[f];
        carried = new double[f];
        evaporation = new double[f];
        evaporationByWater = new double[f];
        filmLoss = new double[f];
        meatLoss = new double[f];
        slopeHeat = new double[f];
        slopeFilm = new double[f];
        slopeWater = new double[f];
        faceChange = new double[f];
        stageFace = new double[f];
        error = new double[lanes];
    }

    /** Sets the conditions of a stage for all lanes and fills the reservoirs. */
    void begin(List<StageInput> inputs) {
        conditions = new FaceCondition[faces * lanes];
        moving = block.extents.length > 0 || !block.isUniform();
        for (int l = 0; l < lanes; l++) {
            for (int f = 0; f < faces; f++) {
                FaceCondition condition = inputs.get(l).faces().get(f);
                SaltSource source = inputs.get(l).sources().get(f);
                conditions[f * lanes + l] = condition;
                salt.setSource(f, l, source);
                block.fillReservoir(f, l, source);
                moving |= !(source instanceof SaltSource.None);
                moving |= !block.waterFixed[l] && condition.wetShare() > 0;
            }
        }
    }

    FaceCondition condition(int face, int lane) {
        return conditions[face * lanes + lane];
    }

    /** Whether salt or water is advanced in this stage. */
    boolean isMoving() {
        return moving;
    }

    /**
     * Attempts one step of every lane; stage vectors and errors are left in this object, the block is not changed.
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
            if (stage == 0) {
                heat.takeTemperatures();
            } else {
                heat.computeTemperatures(enthalpy, water, slotSalt);
            }
            evaluate(RosenbrockW.stageTime(stage), step);
            if (stage == 0) {
                System.arraycopy(faceSlope, 0, slopeHeat, 0, faceSlope.length);
                heat.factor(rate, slopeHeat);
                if (moving) {
                    computeFilmSlopes();
                    salt.factor(rate, slotSalt, water, reservoirWater, slopeWater);
                }
            }
            solveHeat(stage, step);
            if (moving) {
                solveSaltAndWater(stage, step);
            }
            solveEvaporation(stage, step);
        }
        estimateErrors(settings.temperatureTolerance(), settings.saltTolerance());
    }

    private void combineStates(int stage) {
        combine(stage, block.enthalpy, stageHeat, enthalpy);
        if (moving || stage == 0) {
            combine(stage, block.water, stageWater, water);
            combine(stage, block.slotSalt, stageSalt, slotSalt);
            combine(stage, block.reservoirWater, stageReservoirWater, reservoirWater);
            combine(stage, block.filmWater, stageFilm, film);
        }
    }

    /** base + sum over earlier stages of a_ij U_j; written out for each stage so that the loops vectorize. */
    private static void combine(int stage, double[] base, double[][] stages, double[] result) {
        int n = result.length;
        if (stage == 0) {
            System.arraycopy(base, 0, result, 0, n);
            return;
        }
        double a0 = RosenbrockW.stageState(stage, 0);
        double a1 = RosenbrockW.stageState(stage, 1);
        double a2 = RosenbrockW.stageState(stage, 2);
        double[] u0 = stages[0];
        double[] u1 = stages[1];
        double[] u2 = stages[2];
        if (stage == 1) {
            for (int i = 0; i < n; i++) {
                result[i] = base[i] + a0 * u0[i];
            }
        } else if (stage == 2) {
            for (int i = 0; i < n; i++) {
                result[i] = base[i] + a0 * u0[i] + a1 * u1[i];
            }
        } else {
            for (int i = 0; i < n; i++) {
                result[i] = base[i] + a0 * u0[i] + a1 * u1[i] + a2 * u2[i];
            }
        }
    }

    /** sum over earlier stages of c_ij U_j, to be divided by the step. */
    private static double coupled(int stage, double[][] stages, int index) {
        double sum = 0;
        for (int j = 0; j < stage; j++) {
            sum += RosenbrockW.stageCoupling(stage, j) * stages[j][index];
        }
        return sum;
    }

    /** Evaluates all flows of the combined state, whose temperatures are known. */
    private void evaluate(double share, double[] step) {
        heat.computeConductances(water, slotSalt);
        heat.computeNet();
        if (moving) {
            salt.evaluate(heat.temperature, slotSalt, water, block.expelled, reservoirWater);
            carryEnthalpy();
        }
        for (int f = 0; f < faces; f++) {
            int cell = block.faceCell(f) * lanes;
            for (int l = 0; l < lanes; l++) {
                evaluateFace(f, l, cell + l, block.stageTime[l] + Math.min(share, LAST_PLACE) * step[l]);
            }
        }
    }

    private void evaluateFace(int face, int lane, int cell, double time) {
        int k = face * lanes + lane;
        FaceCondition condition = conditions[k];
        double activity = 0;
        if (condition.wetShare() > 0) {
            activity = SurfaceBalance.waterActivity(water[cell], slotSalt[cell + lanes]);
        }
        surface.solve(condition, time, heat.temperature[cell], heat.faceConductance[k], activity);
        faceFlux[k] = surface.flux;
        faceSlope[k] = surface.slope;
        evaporation[k] = surface.evaporation;
        evaporationByWater[k] = 0;
        filmLoss[k] = 0;
        meatLoss[k] = 0;
        carried[k] = 0;
        if (moving && !block.waterFixed[lane]) {
            evaporationByWater[k] = surface.evaporationByActivity * SurfaceBalance.activityByWater(water[cell]);
            double held = Math.max(film[k], 0);
            double fromFilm = evaporation[k] > 0 ? held / (held + FILM_SCALE) : 1;
            filmLoss[k] = evaporation[k] * fromFilm;
            meatLoss[k] = evaporation[k] - filmLoss[k];
            salt.netWater[cell] -= meatLoss[k];
        }
        if (moving) {
            int edge = block.faceEdge(face) * lanes + lane;
            double sign = face == 0 ? 1 : -1;
            carried[k] = (sign * salt.waterFlow[edge] - meatLoss[k]) * block.waterEnthalpy(lane, surface.surface)
                    + sign * salt.saltFlow[edge] * block.saltEnthalpy(lane, surface.surface);
        }
        heat.net[cell] += faceFlux[k] + carried[k];
    }

    private void carryEnthalpy() {
        if (block.constantHeat) {
            return;
        }
        for (int e = 1; e < cells; e++) {
            int b = e * lanes;
            for (int l = 0; l < lanes; l++) {
                int c = b + l;
                double between = 0.5 * (heat.temperature[c] + heat.temperature[c - lanes]);
                double flow = salt.waterFlow[c] * block.waterEnthalpy(l, between)
                        + salt.saltFlow[c] * block.saltEnthalpy(l, between);
                heat.net[c - lanes] += flow;
                heat.net[c] -= flow;
            }
        }
    }

    private void computeFilmSlopes() {
        for (int k = 0; k < faces * lanes; k++) {
            boolean drying = evaporation[k] > 0 && !block.waterFixed[k % lanes];
            double scaled = Math.max(film[k], 0) + FILM_SCALE;
            slopeFilm[k] = drying ? evaporation[k] * FILM_SCALE / (scaled * scaled) : 0;
            slopeWater[k] = drying ? evaporationByWater[k] * FILM_SCALE / scaled : 0;
        }
    }

    private void solveHeat(int stage, double[] step) {
        addCoupling(stage, stageHeat, heat.net, right, 0, step);
        heat.solve(right, stageHeat[stage], faceChange);
        for (int k = 0; k < faces * lanes; k++) {
            double flow = faceFlux[k] + carried[k] + slopeHeat[k] * faceChange[k];
            stageHeatIn[stage][k] = (flow + coupled(stage, stageHeatIn, k) / step[k % lanes]) / rate[k % lanes];
        }
    }

    /** right = flows + mass / h sum c_ij U_j. */
    private void addCoupling(
            int stage, double[][] stages, double[] flows, double[] result, int firstCell, double[] step) {
        System.arraycopy(flows, 0, result, 0, result.length);
        double[] mass = block.dryMass;
        for (int j = 0; j < stage; j++) {
            double c = RosenbrockW.stageCoupling(stage, j);
            double[] u = stages[j];
            for (int i = 0; i < cells; i++) {
                int b = i * lanes;
                int r = b + firstCell;
                for (int l = 0; l < lanes; l++) {
                    result[r + l] += c * mass[b + l] * u[r + l] / step[l];
                }
            }
        }
    }

    private void solveSaltAndWater(int stage, double[] step) {
        addCoupling(stage, stageSalt, salt.netSalt, rightSlots, lanes, step);
        for (int f = 0; f < faces; f++) {
            int slot = block.faceSlot(f) * lanes;
            for (int l = 0; l < lanes; l++) {
                rightSlots[slot + l] += coupled(stage, stageSalt, slot + l) / step[l];
            }
        }
        salt.solveSalt(rightSlots, stageSalt[stage]);
        addCoupling(stage, stageWater, salt.netWater, right, 0, step);
        salt.solveWater(right, stageWater[stage]);
        for (int f = 0; f < faces; f++) {
            int edge = block.faceEdge(f) * lanes;
            int cell = block.faceCell(f) * lanes;
            double sign = f == 0 ? 1 : -1;
            for (int l = 0; l < lanes; l++) {
                int k = f * lanes + l;
                double flow = sign * salt.waterFlow[edge + l] + salt.baseFaceWater(f, l) * stageWater[stage][cell + l];
                stageReservoirWater[stage][k] = (-flow + coupled(stage, stageReservoirWater, k) / step[l]) / rate[l];
                stageFilm[stage][k] =
                        (-filmLoss[k] + coupled(stage, stageFilm, k) / step[l]) / (rate[l] + slopeFilm[k]);
                stageFace[k] = slopeWater[k] * stageWater[stage][cell + l];
            }
        }
    }

    private void solveEvaporation(int stage, double[] step) {
        for (int k = 0; k < faces * lanes; k++) {
            int l = k % lanes;
            boolean fromMeat = moving && !block.waterFixed[l];
            double flow = fromMeat ? meatLoss[k] + stageFace[k] : evaporation[k];
            stageEvaporated[stage][k] = (flow + coupled(stage, stageEvaporated, k) / step[l]) / rate[l];
        }
    }

    private void estimateErrors(double temperatureTolerance, double saltTolerance) {
        Arrays.fill(error, 0);
        double e0 = RosenbrockW.error(0);
        double e1 = RosenbrockW.error(1);
        double e2 = RosenbrockW.error(2);
        double e3 = RosenbrockW.error(3);
        for (int i = 0; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                int c = b + l;
                double difference =
                        e0 * stageHeat[0][c] + e1 * stageHeat[1][c] + e2 * stageHeat[2][c] + e3 * stageHeat[3][c];
                // a cell that leaves the freezing range takes its error of enthalpy to where it weighs far more in
                // kelvin
                double capacity = Math.min(heat.baseCapacity(c), heat.capacity[c]);
                double scaled = difference / (capacity * temperatureTolerance);
                error[l] += scaled * scaled;
            }
        }
        if (moving) {
            for (int c = 0; c < cells * lanes; c++) {
                double saltDifference = e0 * stageSalt[0][c + lanes]
                        + e1 * stageSalt[1][c + lanes]
                        + e2 * stageSalt[2][c + lanes]
                        + e3 * stageSalt[3][c + lanes];
                double waterDifference =
                        e0 * stageWater[0][c] + e1 * stageWater[1][c] + e2 * stageWater[2][c] + e3 * stageWater[3][c];
                double scaledSalt = saltDifference / saltTolerance;
                double scaledWater = waterDifference / (10 * saltTolerance);
                error[c % lanes] += scaledSalt * scaledSalt + scaledWater * scaledWater;
            }
        }
        for (int l = 0; l < lanes; l++) {
            error[l] = Math.sqrt(error[l] / cells);
        }
    }
}
