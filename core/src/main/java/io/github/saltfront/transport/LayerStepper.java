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

    private static final double[][] NO_ROWS = {};

    final LaneBlock block;
    final HeatTerms heat;
    final SaltTerms salt;
    final SurfaceBalance surface = new SurfaceBalance();
    final double[][][] stageHeat;
    final double[][][] stageSalt;
    final double[][][] stageWater;
    final double[][][] stageReservoirWater;
    final double[][][] stageHeatIn;
    final double[][][] stageEvaporated;
    final double[][][] stageFilm;

    private final int cells;
    private final int lanes;
    private final int faces;
    private FaceCondition[][] conditions = new FaceCondition[0][0];
    private boolean moving;
    private boolean evaporating;

    /** One for lanes with a face at which water may boil, zero for others. */
    private final double[] boiling;

    /** Enthalpy that comes with the stage changes of water and salt where water boils; no rows where it does not. */
    private double[][] content = NO_ROWS;

    /** Derivative of {@link #carried} by the temperature of the cell at each face, where water boils. */
    private final double[][] carriedSlope;

    /** Whether all lanes of a face have a linear condition that does not change in time. */
    private final boolean[] steady;

    private final double[][] steadyMedium;
    private final double[][] steadyCoefficient;

    private final double[][] water;
    private final double[][] slotSalt;
    private final double[][] reservoirWater;
    private final double[][] film;
    private final double[] rate;
    private final double[][] faceFlux;
    private final double[][] faceSlope;
    private final double[][] faceFlow;
    private final double[][] faceTemperature;

    /** Temperature of the cell at each face for which that of the face was found. */
    private final double[][] outerTemperature;

    private final double[][] carried;
    private final double[][] evaporation;
    private final double[][] evaporationByWater;
    private final double[][] boilingByCell;
    private final double[][] filmLoss;
    private final double[][] meatLoss;
    private final double[][] slopeHeat;
    private final double[][] slopeFilm;
    private final double[][] slopeWater;
    private final double[][] faceChange;
    private final double[] errorScale;

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
        faces = block.faces;
        heat = new HeatTerms(block);
        salt = new SaltTerms(block);
        stageHeat = Rows.ofStages(cells, lanes);
        stageSalt = Rows.ofStages(cells + 2, lanes);
        stageWater = Rows.ofStages(cells, lanes);
        stageReservoirWater = Rows.ofStages(faces, lanes);
        stageHeatIn = Rows.ofStages(faces, lanes);
        stageEvaporated = Rows.ofStages(faces, lanes);
        stageFilm = Rows.ofStages(faces, lanes);
        steady = new boolean[faces];
        steadyMedium = Rows.of(faces, lanes);
        steadyCoefficient = Rows.of(faces, lanes);
        water = Rows.of(cells, lanes);
        slotSalt = Rows.of(cells + 2, lanes);
        reservoirWater = Rows.of(faces, lanes);
        film = Rows.of(faces, lanes);
        rate = new double[lanes];
        faceFlux = Rows.of(faces, lanes);
        faceSlope = Rows.of(faces, lanes);
        faceFlow = Rows.of(faces, lanes);
        faceTemperature = Rows.of(faces, lanes);
        outerTemperature = Rows.of(faces, lanes);
        carried = Rows.of(faces, lanes);
        carriedSlope = Rows.of(faces, lanes);
        boiling = new double[lanes];
        evaporation = Rows.of(faces, lanes);
        evaporationByWater = Rows.of(faces, lanes);
        boilingByCell = Rows.of(faces, lanes);
        filmLoss = Rows.of(faces, lanes);
        meatLoss = Rows.of(faces, lanes);
        slopeHeat = Rows.of(faces, lanes);
        slopeFilm = Rows.of(faces, lanes);
        slopeWater = Rows.of(faces, lanes);
        faceChange = Rows.of(faces, lanes);
        errorScale = new double[lanes];
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

    /** Sets the conditions of a stage for all lanes and fills the reservoirs. */
    void begin(List<StageInput> inputs) {
        conditions = new FaceCondition[faces][lanes];
        moving = block.extents.length > 0 || !block.isUniform();
        evaporating = false;
        Arrays.fill(steady, true);
        Arrays.fill(boiling, 0);
        for (int l = 0; l < lanes; l++) {
            for (int f = 0; f < faces; f++) {
                FaceCondition condition = inputs.get(l).faces().get(f);
                SaltSource source = inputs.get(l).sources().get(f);
                conditions[f][l] = condition;
                salt.setSource(f, l, source);
                block.fillReservoir(f, l, source);
                moving |= !(source instanceof SaltSource.None);
                moving |= !block.waterFixed[l] && condition.isDrying();
                evaporating |= condition.isDrying();
                boiling[l] = condition.boils() ? 1 : boiling[l];
                steady[f] &= condition.isLinear() && condition.isSteady();
                steadyMedium[f][l] = condition.mediumTemperature().at(0) - LaneBlock.KELVIN;
                steadyCoefficient[f][l] = condition.coefficient().at(0);
                faceTemperature[f][l] = Double.NaN;
            }
        }
        for (int f = 0; f < faces; f++) {
            clearFace(f);
        }
        boolean coupled = moving && Arrays.stream(boiling).anyMatch(share -> share > 0);
        content = coupled ? Rows.of(cells, lanes) : NO_ROWS;
    }

    /** What an evaluation without evaporation or flow of water leaves alone. */
    private void clearFace(int face) {
        Arrays.fill(evaporation[face], 0);
        Arrays.fill(evaporationByWater[face], 0);
        Arrays.fill(filmLoss[face], 0);
        Arrays.fill(meatLoss[face], 0);
        Arrays.fill(carried[face], 0);
        Arrays.fill(carriedSlope[face], 0);
        for (double[][] stage : stageEvaporated) {
            Arrays.fill(stage[face], 0);
        }
    }

    FaceCondition condition(int face, int lane) {
        return conditions[face][lane];
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
                for (int f = 0; f < faces; f++) {
                    addRows(faceSlope[f], carriedSlope[f], slopeHeat[f]);
                }
                heat.factor(rate, slopeHeat);
                if (moving) {
                    computeFilmSlopes();
                    salt.factor(rate, block.slotSalt, block.water, block.reservoirWater, slopeWater);
                }
            }
            if (moving) {
                solveSaltAndWater(stage);
            }
            if (content.length > 0) {
                computeContent(stage);
            }
            solveHeat(stage);
            if (evaporating) {
                solveEvaporation(stage);
            }
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
                Rows.combine(stage, block.reservoirWater, stageReservoirWater, reservoirWater);
                Rows.combine(stage, block.filmWater, stageFilm, film);
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
        double share = Math.min(RosenbrockW.stageTime(stage), LAST_PLACE);
        double[][] waterNow = stageWaterOf(stage);
        double[][] saltNow = stageSaltOf(stage);
        heat.computeConductances(waterNow, saltNow);
        if (moving) {
            double[][] reservoirNow = stage > 0 ? reservoirWater : block.reservoirWater;
            salt.evaluate(heat.temperature, saltNow, waterNow, block.expelled, reservoirNow);
            carryEnthalpy();
        }
        for (int f = 0; f < faces; f++) {
            int cell = block.faceCell(f);
            if (steady[f]) {
                SurfaceBalance.exchangeRow(
                        steadyMedium[f],
                        steadyCoefficient[f],
                        heat.faceConductance[f],
                        heat.temperature[cell],
                        faceFlux[f],
                        faceSlope[f],
                        faceTemperature[f]);
            } else {
                for (int l = 0; l < lanes; l++) {
                    solveFace(f, l, waterNow[cell][l], saltNow[cell + 1][l], block.stageTime[l] + share * step[l]);
                }
            }
            if (moving) {
                double[][] filmNow = stage > 0 ? film : block.filmWater;
                for (int l = 0; l < lanes; l++) {
                    moveThroughFace(f, l, waterNow[cell][l], filmNow[f][l]);
                }
            }
            addRows(faceFlux[f], carried[f], faceFlow[f]);
        }
    }

    /**
     * Temperature of a face to be expected with a temperature of its cell, by a straight line from the evaluation that came
     * last; NaN before the first of a stage. In degrees Celsius.
     */
    double guessFace(int face, int lane, double cell) {
        double byCell = 1 + faceSlope[face][lane] / heat.faceConductance[face][lane];
        return faceTemperature[face][lane] + byCell * (cell - outerTemperature[face][lane]);
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

    private static void addRows(double[] a, double[] b, double[] sum) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] = a[l] + b[l];
        }
    }

    private void solveFace(int face, int lane, double water, double salt, double time) {
        FaceCondition condition = conditions[face][lane];
        double activity = condition.isDrying() ? SurfaceBalance.waterActivity(water, salt) : 0;
        double cell = heat.temperature[block.faceCell(face)][lane];
        double guess = guessFace(face, lane, cell);
        surface.crust = crust(face, lane);
        surface.solve(condition, time, cell, heat.faceConductance[face][lane], activity, guess);
        faceTemperature[face][lane] = surface.surface;
        outerTemperature[face][lane] = cell;
        faceFlux[face][lane] = surface.flux;
        faceSlope[face][lane] = surface.slope;
        evaporation[face][lane] = surface.evaporation;
        boilingByCell[face][lane] = surface.boilingByCell;
        evaporationByWater[face][lane] = surface.evaporationByActivity * SurfaceBalance.activityByWater(water);
    }

    /** Share of the evaporation that the film gives; none where water boils under a crust, since the juice runs off beside it. */
    private double filmShare(int face, int lane, double held) {
        return conditions[face][lane].boils() ? 0 : held / (held + FILM_SCALE);
    }

    /** Thickness of the crust: what has boiled out of the meat over the water of a volume of it [m]. */
    double crust(int face, int lane) {
        double waterDensity = block.dryDensity[lane] * block.rawWater[lane];
        return Math.max(0, block.boiled[face][lane]) / waterDensity;
    }

    /** Shares evaporation between film and meat, and finds the heat that water and salt carry through the face. */
    private void moveThroughFace(int face, int lane, double water, double filmWater) {
        double lost = 0;
        if (!block.waterFixed[lane]) {
            double held = Math.max(filmWater, 0);
            double all = evaporation[face][lane];
            double fromFilm = all > 0 ? filmShare(face, lane, held) : 1;
            filmLoss[face][lane] = all * fromFilm;
            lost = all - filmLoss[face][lane];
            salt.netWater[block.faceCell(face)][lane] -= lost;
        }
        meatLoss[face][lane] = lost;
        boolean boils = conditions[face][lane].boils() && !block.waterFixed[lane];
        carriedSlope[face][lane] =
                boils ? -boilingByCell[face][lane] * block.waterEnthalpy(lane, faceTemperature[face][lane]) : 0;
        int edge = block.faceEdge(face);
        double sign = face == 0 ? 1 : -1;
        carried[face][lane] =
                (sign * salt.waterFlow[edge][lane] - lost) * block.waterEnthalpy(lane, faceTemperature[face][lane])
                        + sign * salt.saltFlow[edge][lane] * block.saltEnthalpy(lane, faceTemperature[face][lane]);
    }

    private void carryEnthalpy() {
        for (double[] row : heat.carriedNet) {
            Arrays.fill(row, 0);
        }
        if (block.constantHeat) {
            return;
        }
        for (int e = 1; e < cells; e++) {
            for (int l = 0; l < lanes; l++) {
                double between = 0.5 * (heat.temperature[e][l] + heat.temperature[e - 1][l]);
                double flow = salt.waterFlow[e][l] * block.waterEnthalpy(l, between)
                        + salt.saltFlow[e][l] * block.saltEnthalpy(l, between);
                heat.carriedNet[e - 1][l] += flow;
                heat.carriedNet[e][l] -= flow;
            }
        }
    }

    private void computeFilmSlopes() {
        for (int f = 0; f < faces; f++) {
            for (int l = 0; l < lanes; l++) {
                double lost = evaporation[f][l];
                boolean drying = lost > 0 && !block.waterFixed[l];
                boolean boiling = conditions[f][l].boils();
                double scaled = Math.max(block.filmWater[f][l], 0) + FILM_SCALE;
                slopeFilm[f][l] = drying && !boiling ? lost * FILM_SCALE / (scaled * scaled) : 0;
                slopeWater[f][l] = drying ? evaporationByWater[f][l] * (boiling ? 1 : FILM_SCALE / scaled) : 0;
            }
        }
    }

    /** Enthalpy of the stage changes of water and salt at the temperature of each cell at the base of the step. */
    private void computeContent(int stage) {
        for (int i = 0; i < cells; i++) {
            double[] celsius = block.temperature[i];
            double[] waterChange = stageWater[stage][i];
            double[] saltChange = stageSalt[stage][i + 1];
            for (int l = 0; l < lanes; l++) {
                content[i][l] = boiling[l]
                        * (waterChange[l] * block.waterEnthalpy(l, celsius[l])
                                + saltChange[l] * block.saltEnthalpy(l, celsius[l]));
            }
        }
    }

    private void solveHeat(int stage) {
        heat.solve(stage, faceFlow, moving, content, stageHeat, faceChange);
        for (int f = 0; f < faces; f++) {
            double[] result = stageHeatIn[stage][f];
            flowRow(faceFlow[f], slopeHeat[f], faceChange[f], result);
            integrate(stage, stageHeatIn, f);
        }
    }

    private static void flowRow(double[] flow, double[] slope, double[] change, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = flow[l] + slope[l] * change[l];
        }
    }

    /** Turns the flow in a stage's place into its stage vector, for a quantity on which no flow depends. */
    private void integrate(int stage, double[][][] stages, int row) {
        double[] result = stages[stage][row];
        Rows.addCoupling(stage, stages, row, 1, rate, result);
        for (int l = 0; l < lanes; l++) {
            result[l] /= rate[l];
        }
    }

    private void solveSaltAndWater(int stage) {
        salt.solveSalt(stage, rate, stageSalt);
        salt.solveWater(stage, stageWater);
        for (int f = 0; f < faces; f++) {
            double[] flow = salt.waterFlow[block.faceEdge(f)];
            double[] change = stageWater[stage][block.faceCell(f)];
            double[] reservoir = stageReservoirWater[stage][f];
            double[] held = stageFilm[stage][f];
            double sign = f == 0 ? 1 : -1;
            for (int l = 0; l < lanes; l++) {
                reservoir[l] = -sign * flow[l] - salt.baseFaceWater(f, l) * change[l];
                held[l] = -filmLoss[f][l];
            }
            integrate(stage, stageReservoirWater, f);
            Rows.addCoupling(stage, stageFilm, f, 1, rate, held);
            for (int l = 0; l < lanes; l++) {
                held[l] /= rate[l] + slopeFilm[f][l];
            }
        }
    }

    private void solveEvaporation(int stage) {
        for (int f = 0; f < faces; f++) {
            double[] change = stageWater[stage][block.faceCell(f)];
            double[] result = stageEvaporated[stage][f];
            for (int l = 0; l < lanes; l++) {
                boolean fromMeat = moving && !block.waterFixed[l];
                result[l] = fromMeat ? meatLoss[f][l] + slopeWater[f][l] * change[l] : evaporation[f][l];
            }
            integrate(stage, stageEvaporated, f);
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
