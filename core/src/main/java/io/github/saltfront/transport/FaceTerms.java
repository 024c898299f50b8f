package io.github.saltfront.transport;

import io.github.saltfront.numerics.RosenbrockW;
import java.util.Arrays;
import java.util.List;

/**
 * What goes through the faces of a block for all lanes: heat, evaporation from the film and from the meat, and the enthalpy that
 * water and salt carry. Work arrays are allocated once. See {@link Rows} for the form of the loops.
 *
 * <p>Film, water and heat of a stage are solved in this order, each with the change of those before it. Where a face dries, the
 * water that is left decides how much evaporates and so how warm it stays; left out of the Jacobian, that keeps steps to seconds.
 *
 * <p>Juice is expelled at the end of a step. To come to the film at an even pace, the film is fed in the next one at the rate of
 * the last, and the difference is made up for later.
 */
final class FaceTerms {
    /** Water on the face below which evaporation turns to the meat [kg/m2]; estimate: a tenth of the film. */
    private static final double FILM_SCALE = LaneBlock.FILM_CAPACITY / 10;

    /** Largest place of a stage within a step [-]: just before the end, where a profile may jump. */
    private static final double LAST_PLACE = 1 - 1e-8;

    final SurfaceBalance surface = new SurfaceBalance();

    /** Stage vectors of the heat that has entered each face [J/m2]. */
    final double[][][] stageHeatIn;

    /** Stage vectors of the water evaporated at each face; of that from the meat where water moves [kg/m2]. */
    final double[][][] stageEvaporated;

    /** Stage vectors of the film on each face [kg/m2]. */
    final double[][][] stageFilm;

    /** Stage vectors of the water of each reservoir [kg/m2]. */
    final double[][][] stageReservoirWater;

    /** Water of each reservoir at the last evaluation after the first of a step [kg/m2]. */
    final double[][] reservoirWater;

    /** Heat and enthalpy that flow into the cell at each face [W/m2]. */
    final double[][] flow;

    /** Derivative of {@link #flow} by the temperature of that cell, at the base of the step [W/(m2.K)]. */
    final double[][] slopeHeat;

    /** Derivative of the water taken from the cell at each face by its water, at the base of the step [kg/(m2.s)]. */
    final double[][] slopeWater;

    /** One for lanes with a face that dries, zero for others. */
    final double[] drying;

    /** Stage change of the temperature of the cell at each face [K]; set by the caller. */
    final double[][] change;

    private final LaneBlock block;
    private final HeatTerms heat;
    private final SaltTerms salt;
    private final int lanes;
    private final int faces;
    private FaceCondition[][] conditions = new FaceCondition[0][0];
    private boolean moving;
    private boolean evaporating;

    /** Whether all lanes of a face have a linear condition that does not change in time. */
    private final boolean[] steady;

    private final double[][] steadyMedium;
    private final double[][] steadyCoefficient;

    private final double[][] film;
    private final double[][] flux;
    private final double[][] fluxSlope;
    private final double[][] temperature;

    /** Temperature of the cell at each face for which that of the face was found. */
    private final double[][] cellTemperature;

    private final double[][] carried;

    /** Derivative of {@link #carried} by the temperature of the cell at each face, where water boils. */
    private final double[][] carriedSlope;

    private final double[][] evaporation;
    private final double[][] evaporationByWater;
    private final double[][] boilingByCell;
    private final double[][] filmLoss;
    private final double[][] meatLoss;
    private final double[][] slopeFilm;
    private final double[][] fluxByWater;

    /** Derivatives of {@link #flow} by the water of the cell and by the film at each face, at the base of the step. */
    private final double[][] slopeFlowByWater;

    private final double[][] slopeFlowByFilm;

    /** Juice that the film of each face is fed in the attempted step [kg/(m2.s)]. */
    private final double[][] feed;

    FaceTerms(LaneBlock block, HeatTerms heat, SaltTerms salt) {
        this.block = block;
        this.heat = heat;
        this.salt = salt;
        lanes = block.lanes;
        faces = block.faces;
        stageReservoirWater = Rows.ofStages(faces, lanes);
        stageHeatIn = Rows.ofStages(faces, lanes);
        stageEvaporated = Rows.ofStages(faces, lanes);
        stageFilm = Rows.ofStages(faces, lanes);
        steady = new boolean[faces];
        steadyMedium = Rows.of(faces, lanes);
        steadyCoefficient = Rows.of(faces, lanes);
        reservoirWater = Rows.of(faces, lanes);
        film = Rows.of(faces, lanes);
        flux = Rows.of(faces, lanes);
        fluxSlope = Rows.of(faces, lanes);
        flow = Rows.of(faces, lanes);
        temperature = Rows.of(faces, lanes);
        cellTemperature = Rows.of(faces, lanes);
        carried = Rows.of(faces, lanes);
        carriedSlope = Rows.of(faces, lanes);
        drying = new double[lanes];
        evaporation = Rows.of(faces, lanes);
        evaporationByWater = Rows.of(faces, lanes);
        boilingByCell = Rows.of(faces, lanes);
        filmLoss = Rows.of(faces, lanes);
        meatLoss = Rows.of(faces, lanes);
        slopeHeat = Rows.of(faces, lanes);
        slopeFilm = Rows.of(faces, lanes);
        fluxByWater = Rows.of(faces, lanes);
        slopeFlowByWater = Rows.of(faces, lanes);
        slopeFlowByFilm = Rows.of(faces, lanes);
        feed = Rows.of(faces, lanes);
        slopeWater = Rows.of(faces, lanes);
        change = Rows.of(faces, lanes);
    }

    /** Sets the conditions of a stage for all lanes and fills the reservoirs. */
    void begin(List<StageInput> inputs) {
        conditions = new FaceCondition[faces][lanes];
        moving = block.extents.length > 0 || !block.isUniform();
        evaporating = false;
        Arrays.fill(steady, true);
        Arrays.fill(drying, 0);
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
                drying[l] = condition.isDrying() ? 1 : drying[l];
                steady[f] &= condition.isLinear() && condition.isSteady();
                steadyMedium[f][l] = condition.mediumTemperature().at(0) - LaneBlock.KELVIN;
                steadyCoefficient[f][l] = condition.coefficient().at(0);
                temperature[f][l] = Double.NaN;
            }
        }
        for (int f = 0; f < faces; f++) {
            clear(f);
        }
    }

    /** What an evaluation without evaporation or flow of water leaves alone. */
    private void clear(int face) {
        Arrays.fill(evaporation[face], 0);
        Arrays.fill(evaporationByWater[face], 0);
        Arrays.fill(fluxByWater[face], 0);
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

    /** Whether the enthalpy of the water that moves is to be kept apart from what drives conduction. */
    boolean isCoupled() {
        return moving && Arrays.stream(drying).anyMatch(share -> share > 0);
    }

    /** Forms film and reservoirs of a stage after the first. */
    void combine(int stage) {
        Rows.combine(stage, block.reservoirWater, stageReservoirWater, reservoirWater);
        Rows.combine(stage, block.filmWater, stageFilm, film);
    }

    /**
     * Evaluates all flows through faces at the temperatures, conductances and flows of salt and water of the last evaluation.
     *
     * @param stage which stage
     * @param step step of each lane [s]
     * @param water water of each cell in this stage
     * @param slotSalt salt of each slot in this stage
     */
    void evaluate(int stage, double[] step, double[][] water, double[][] slotSalt) {
        double share = Math.min(RosenbrockW.stageTime(stage), LAST_PLACE);
        for (int f = 0; f < faces; f++) {
            int cell = block.faceCell(f);
            if (steady[f]) {
                SurfaceBalance.exchangeRow(
                        steadyMedium[f],
                        steadyCoefficient[f],
                        heat.faceConductance[f],
                        heat.temperature[cell],
                        flux[f],
                        fluxSlope[f],
                        temperature[f]);
            } else {
                for (int l = 0; l < lanes; l++) {
                    solve(f, l, water[cell][l], slotSalt[cell + 1][l], block.stageTime[l] + share * step[l]);
                }
            }
            if (moving) {
                double[][] held = stage > 0 ? film : block.filmWater;
                for (int l = 0; l < lanes; l++) {
                    move(f, l, held[f][l]);
                }
                if (stage == 0) {
                    chooseFeed(f, step);
                }
            }
            addRows(flux[f], carried[f], flow[f]);
        }
    }

    private void chooseFeed(int face, double[] step) {
        for (int l = 0; l < lanes; l++) {
            double time = Math.max(step[l], block.feedTime[face][l]);
            feed[face][l] = block.juiceRate[face][l] + block.unfed[face][l] / time;
        }
    }

    /** Takes what the film was fed in an accepted step [s] from what it is owed, and returns it [kg/m2]. */
    double commitFeed(int face, int lane, double step) {
        double fed = feed[face][lane] * step;
        block.unfed[face][lane] -= fed;
        return fed;
    }

    private static void addRows(double[] a, double[] b, double[] sum) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] = a[l] + b[l];
        }
    }

    /**
     * Temperature of a face to be expected with a temperature of its cell, by a straight line from the evaluation that came
     * last; NaN before the first of a stage. In degrees Celsius.
     */
    double guess(int face, int lane, double cell) {
        double byCell = 1 + fluxSlope[face][lane] / heat.faceConductance[face][lane];
        return temperature[face][lane] + byCell * (cell - cellTemperature[face][lane]);
    }

    private void solve(int face, int lane, double water, double salt, double time) {
        FaceCondition condition = conditions[face][lane];
        double activity = condition.isDrying() ? SurfaceBalance.waterActivity(water, salt) : 0;
        double cell = heat.temperature[block.faceCell(face)][lane];
        double guess = guess(face, lane, cell);
        surface.crust = crust(face, lane);
        surface.solve(condition, time, cell, heat.faceConductance[face][lane], activity, guess);
        temperature[face][lane] = surface.surface;
        cellTemperature[face][lane] = cell;
        flux[face][lane] = surface.flux;
        fluxSlope[face][lane] = surface.slope;
        evaporation[face][lane] = surface.evaporation;
        boilingByCell[face][lane] = surface.boilingByCell;
        double byWater = SurfaceBalance.activityByWater(water, salt);
        evaporationByWater[face][lane] = surface.evaporationByActivity * byWater;
        fluxByWater[face][lane] = surface.fluxByActivity * byWater;
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
    private void move(int face, int lane, double filmWater) {
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
                boils ? -boilingByCell[face][lane] * block.waterEnthalpy(lane, temperature[face][lane]) : 0;
        int edge = block.faceEdge(face);
        double sign = face == 0 ? 1 : -1;
        carried[face][lane] =
                (sign * salt.waterFlow[edge][lane] - lost) * block.waterEnthalpy(lane, temperature[face][lane])
                        + sign * salt.saltFlow[edge][lane] * block.saltEnthalpy(lane, temperature[face][lane]);
    }

    /** Keeps the derivatives of the last evaluation as those of the base of the step. */
    void computeSlopes() {
        for (int f = 0; f < faces; f++) {
            addRows(fluxSlope[f], carriedSlope[f], slopeHeat[f]);
            for (int l = 0; moving && l < lanes; l++) {
                double lost = evaporation[f][l];
                boolean dries = lost > 0 && !block.waterFixed[l];
                boolean boils = conditions[f][l].boils();
                double scaled = Math.max(block.filmWater[f][l], 0) + FILM_SCALE;
                slopeFilm[f][l] = dries && !boils ? lost * FILM_SCALE / (scaled * scaled) : 0;
                slopeWater[f][l] = dries ? evaporationByWater[f][l] * (boils ? 1 : FILM_SCALE / scaled) : 0;
                double enthalpy = block.waterEnthalpy(l, temperature[f][l]);
                slopeFlowByWater[f][l] = dries ? fluxByWater[f][l] - enthalpy * slopeWater[f][l] : 0;
                slopeFlowByFilm[f][l] = enthalpy * slopeFilm[f][l];
            }
        }
    }

    /**
     * Solves one stage of the films; where one grows, the cell below it dries less.
     *
     * @param stage which stage
     * @param rate 1 / (h gamma) of each lane [1/s]
     */
    void solveFilms(int stage, double[] rate) {
        for (int f = 0; f < faces; f++) {
            double[] held = stageFilm[stage][f];
            double[] net = salt.netWater[block.faceCell(f)];
            for (int l = 0; l < lanes; l++) {
                held[l] = feed[f][l] - filmLoss[f][l];
            }
            Rows.addCoupling(stage, stageFilm, f, 1, rate, held);
            for (int l = 0; l < lanes; l++) {
                held[l] /= rate[l] + slopeFilm[f][l];
                net[l] += slopeFilm[f][l] * held[l];
            }
        }
    }

    /**
     * Solves one stage of the reservoirs, and changes the flow of heat by what film and water change.
     *
     * @param stage which stage
     * @param rate 1 / (h gamma) of each lane [1/s]
     * @param waterChange stage change of the water of each cell
     */
    void solveReservoirs(int stage, double[] rate, double[][] waterChange) {
        for (int f = 0; f < faces; f++) {
            double[] through = salt.waterFlow[block.faceEdge(f)];
            double[] cellChange = waterChange[block.faceCell(f)];
            double[] reservoir = stageReservoirWater[stage][f];
            double[] held = stageFilm[stage][f];
            double sign = f == 0 ? 1 : -1;
            for (int l = 0; l < lanes; l++) {
                reservoir[l] = -sign * through[l] - salt.baseFaceWater(f, l) * cellChange[l];
                flow[f][l] += slopeFlowByWater[f][l] * cellChange[l] + slopeFlowByFilm[f][l] * held[l];
            }
            integrate(stage, stageReservoirWater, f, rate);
        }
    }

    /**
     * Solves one stage of the heat that entered and of the water that evaporated, once temperatures and water are solved.
     *
     * @param stage which stage
     * @param rate 1 / (h gamma) of each lane [1/s]
     * @param waterChange stage change of the water of each cell
     */
    void solveAccounts(int stage, double[] rate, double[][] waterChange) {
        for (int f = 0; f < faces; f++) {
            flowRow(flow[f], slopeHeat[f], change[f], stageHeatIn[stage][f]);
            integrate(stage, stageHeatIn, f, rate);
            if (evaporating) {
                double[] cellChange = waterChange[block.faceCell(f)];
                double[] held = stageFilm[stage][f];
                double[] result = stageEvaporated[stage][f];
                for (int l = 0; l < lanes; l++) {
                    boolean fromMeat = moving && !block.waterFixed[l];
                    result[l] = fromMeat
                            ? meatLoss[f][l] + slopeWater[f][l] * cellChange[l] - slopeFilm[f][l] * held[l]
                            : evaporation[f][l];
                }
                integrate(stage, stageEvaporated, f, rate);
            }
        }
    }

    private static void flowRow(double[] flow, double[] slope, double[] change, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = flow[l] + slope[l] * change[l];
        }
    }

    /** Turns the flow in a stage's place into its stage vector, for a quantity on which no flow depends. */
    private void integrate(int stage, double[][][] stages, int row, double[] rate) {
        double[] result = stages[stage][row];
        Rows.addCoupling(stage, stages, row, 1, rate, result);
        for (int l = 0; l < lanes; l++) {
            result[l] /= rate[l];
        }
    }
}
