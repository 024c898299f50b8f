package io.github.saltfront.transport;

import java.util.Arrays;

/**
 * Diffusion of salt (on salt per water) and of excess water between layers and with the reservoirs at the faces, for all
 * lanes. Slots are those of {@link LaneBlock}: reservoir, cells, reservoir. Work arrays are allocated once.
 */
final class SaltTerms {
    private static final double CELSIUS = LaneBlock.KELVIN;
    private static final double REFERENCE = CELSIUS + 5;

    /** Water per dry solids below which a layer gives less of it [kg/kg]; estimate: about what is bound. */
    private static final double SCARCE_WATER = 0.1;

    /**
     * Water per dry solids that salt is taken to be dissolved in at least [kg/kg]; estimate: in a crust as dry as that nothing
     * moves any more, and salt per water would have no bound.
     */
    private static final double LEAST_WATER = 0.02;

    private final LaneBlock block;
    private final int cells;
    private final int lanes;
    private final int slots;

    /** Source of each face and lane. */
    private final SaltSource[][] sources;

    /** Salt per water times partition in each slot [kg/kg], of the last evaluation. */
    private final double[][] potential;

    private double[][] saltConductance;
    private double[][] waterConductance;
    private final double[][] mobility;

    /** Mobility times the water in which salt is dissolved, of each cell. */
    private final double[][] saltMobility;

    /** Dry solids per volume over the extent [kg/m4]. */
    private final double[] densityPerExtent;

    /** The same times the diffusivity of excess water over that of salt; zero where water may not move. */
    private final double[] waterDensityPerExtent;

    /** Flow of salt across edge e toward its lower side [kg/(m2.s)]. */
    final double[][] saltFlow;

    /** Flow of water across edge e toward its lower side [kg/(m2.s)], evaporation not included. */
    final double[][] waterFlow;

    /** Net flow of salt into each slot [kg/(m2.s)]; a stage is solved in the same place. */
    final double[][] netSalt;

    /** Net flow of water into each cell [kg/(m2.s)], evaporation not included; a stage is solved in the same place. */
    final double[][] netWater;

    private double[][] baseWater;
    private double[][] baseSalt;
    private final double[][] basePotentialSlope;
    private final double[][] pivotSalt;
    private final double[][] multiplierSalt;
    private final double[][] pivotWater;
    private final double[][] multiplierWater;
    private final double[] rateMass;

    SaltTerms(LaneBlock block) {
        this.block = block;
        cells = block.cells;
        lanes = block.lanes;
        slots = cells + 2;
        sources = new SaltSource[block.faces][lanes];
        for (SaltSource[] face : sources) {
            Arrays.fill(face, SaltSource.NONE);
        }
        potential = Rows.of(slots, lanes);
        saltConductance = Rows.of(cells + 1, lanes);
        waterConductance = Rows.of(cells + 1, lanes);
        mobility = Rows.of(cells, lanes);
        saltMobility = Rows.of(cells, lanes);
        densityPerExtent = new double[lanes];
        waterDensityPerExtent = new double[lanes];
        for (int l = 0; l < lanes; l++) {
            densityPerExtent[l] = block.dryDensity[l] / block.extent[l];
            waterDensityPerExtent[l] = block.waterFixed[l] ? 0 : densityPerExtent[l] * block.waterRatio[l];
        }
        saltFlow = Rows.of(cells + 1, lanes);
        waterFlow = Rows.of(cells + 1, lanes);
        netSalt = Rows.of(slots, lanes);
        netWater = Rows.of(cells, lanes);
        baseSalt = Rows.of(cells + 1, lanes);
        baseWater = Rows.of(cells + 1, lanes);
        basePotentialSlope = Rows.of(slots, lanes);
        pivotSalt = Rows.of(slots, lanes);
        multiplierSalt = Rows.of(slots, lanes);
        pivotWater = Rows.of(cells, lanes);
        multiplierWater = Rows.of(cells, lanes);
        rateMass = new double[lanes];
    }

    void setSource(int face, int lane, SaltSource source) {
        sources[face][lane] = source;
    }

    SaltSource source(int face, int lane) {
        return sources[face][lane];
    }

    /** Salt per water of a reservoir [kg/kg]. */
    double reservoirStrength(int face, int lane, double salt, double water) {
        SaltSource source = sources[face][lane];
        if (source instanceof SaltSource.Bath) {
            return salt / water;
        }
        if (source instanceof SaltSource.Dose dose) {
            double thin = dose.film();
            // carried on by a straight line below zero: past -thin the curve turns round and would give salt without
            // end
            return dose.saturation() * salt / (Math.max(0, salt) + thin);
        }
        return 0;
    }

    private double strengthBySalt(int face, int lane, double salt, double water) {
        SaltSource source = sources[face][lane];
        if (source instanceof SaltSource.Bath) {
            return 1 / water;
        }
        if (source instanceof SaltSource.Dose dose) {
            double thin = dose.film();
            double held = Math.max(0, salt) + thin;
            return dose.saturation() * thin / (held * held);
        }
        return 0;
    }

    /** Sets flows and net flows from a state. */
    void evaluate(
            double[][] temperature,
            double[][] slotSalt,
            double[][] water,
            double[][] expelled,
            double[][] reservoirWater) {
        computeMobility(temperature);
        computePotentials(slotSalt, water, reservoirWater);
        computeConductances(water);
        for (double[] row : netSalt) {
            Arrays.fill(row, 0);
        }
        for (double[] row : netWater) {
            Arrays.fill(row, 0);
        }
        for (int e = 0; e <= cells; e++) {
            saltFlowRow(saltConductance[e], potential[e], potential[e + 1], saltFlow[e]);
            addFlowRow(saltFlow[e], netSalt[e], netSalt[e + 1]);
        }
        for (int i = 1; i < cells; i++) {
            excessRow(water[i - 1], expelled[i - 1], water[i], expelled[i], waterFlow[i]);
            waterFlowRow(waterConductance[i], water[i - 1], water[i], waterFlow[i]);
            addFlowRow(waterFlow[i], netWater[i - 1], netWater[i]);
        }
        for (int f = 0; f < block.faces; f++) {
            faceWater(f, slotSalt, water, expelled, reservoirWater);
        }
    }

    private static void saltFlowRow(double[] conductance, double[] below, double[] above, double[] flow) {
        for (int l = 0; l < flow.length; l++) {
            flow[l] = conductance[l] * (above[l] - below[l]);
        }
    }

    private static void addFlowRow(double[] flow, double[] netBelow, double[] netAbove) {
        for (int l = 0; l < flow.length; l++) {
            netBelow[l] += flow[l];
            netAbove[l] -= flow[l];
        }
    }

    private static void excessRow(
            double[] waterBelow, double[] expelledBelow, double[] waterAbove, double[] expelledAbove, double[] excess) {
        for (int l = 0; l < excess.length; l++) {
            excess[l] = waterAbove[l] + expelledAbove[l] - waterBelow[l] - expelledBelow[l];
        }
    }

    /**
     * Turns an excess into a flow, in its place. A layer with little water left feeds but a share of a flow; cooked layers differ in
     * what they would hold if wet.
     */
    private static void waterFlowRow(double[] conductance, double[] below, double[] above, double[] flow) {
        for (int l = 0; l < flow.length; l++) {
            double fromAbove = Math.min(Math.max(above[l], 0) * (1 / SCARCE_WATER), 1);
            double fromBelow = Math.min(Math.max(below[l], 0) * (1 / SCARCE_WATER), 1);
            flow[l] = conductance[l] * (Math.max(flow[l], 0) * fromAbove + Math.min(flow[l], 0) * fromBelow);
        }
    }

    private void faceWater(
            int face, double[][] slotSalt, double[][] water, double[][] expelled, double[][] reservoirWater) {
        int edge = block.faceEdge(face);
        int cell = block.faceCell(face);
        int slot = block.faceSlot(face);
        for (int l = 0; l < lanes; l++) {
            double flow = 0;
            double conductance = waterConductance[edge][l];
            if (sources[face][l] instanceof SaltSource.Bath bath && conductance > 0) {
                double strength = reservoirStrength(face, l, slotSalt[slot][l], reservoirWater[face][l]);
                double excess = water[cell][l] + expelled[cell][l] - block.rawWater[l];
                flow = conductance * (bath.swelling().excessWater(strength) - excess);
            }
            // positive flow at an edge runs toward its lower side; at the second face the meat is the upper side
            waterFlow[edge][l] = face == 0 ? flow : -flow;
            netWater[cell][l] += flow;
        }
    }

    private void computeMobility(double[][] temperature) {
        for (int i = 0; i < cells; i++) {
            for (int l = 0; l < lanes; l++) {
                double kelvin = temperature[i][l] + CELSIUS;
                mobility[i][l] = block.diffusivity5[l] * Math.exp(-block.activation[l] * (1 / kelvin - 1 / REFERENCE));
            }
        }
    }

    private void computePotentials(double[][] slotSalt, double[][] water, double[][] reservoirWater) {
        for (int i = 0; i < cells; i++) {
            strengthRow(slotSalt[i + 1], water[i], potential[i + 1]);
        }
        for (int f = 0; f < block.faces; f++) {
            int slot = block.faceSlot(f);
            for (int l = 0; l < lanes; l++) {
                potential[slot][l] =
                        block.partition[l] * reservoirStrength(f, l, slotSalt[slot][l], reservoirWater[f][l]);
            }
        }
    }

    private static void divideRow(double[] numerator, double[] denominator, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = numerator[l] / denominator[l];
        }
    }

    private static void strengthRow(double[] salt, double[] water, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = salt[l] / Math.max(water[l], LEAST_WATER);
        }
    }

    private void computeConductances(double[][] water) {
        for (int i = 0; i < cells; i++) {
            saltMobilityRow(mobility[i], water[i], saltMobility[i]);
        }
        for (int e = 1; e < cells; e++) {
            double area = block.grid.area(e);
            double up = (block.grid.edge(e) - block.grid.node(e - 1)) / area;
            double lo = (block.grid.node(e) - block.grid.edge(e)) / area;
            conductanceRow(up, lo, densityPerExtent, saltMobility[e - 1], saltMobility[e], saltConductance[e]);
            conductanceRow(up, lo, waterDensityPerExtent, mobility[e - 1], mobility[e], waterConductance[e]);
        }
        for (int f = 0; f < block.faces; f++) {
            int edge = block.faceEdge(f);
            int cell = block.faceCell(f);
            double distance = block.faceDistance(f);
            for (int l = 0; l < lanes; l++) {
                SaltSource source = sources[f][l];
                double perLength = densityPerExtent[l] / distance;
                double salt = perLength * mobility[cell][l] * Math.max(water[cell][l], LEAST_WATER);
                double through = salt / (1 + salt * block.skinResistance[l]);
                saltConductance[edge][l] = source instanceof SaltSource.None ? 0 : through;
                waterConductance[edge][l] = source instanceof SaltSource.Bath && !block.waterFixed[l]
                        ? perLength * mobility[cell][l] * block.waterRatio[l] * through / salt
                        : 0;
            }
        }
    }

    private static void saltMobilityRow(double[] mobility, double[] water, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = mobility[l] * Math.max(water[l], LEAST_WATER);
        }
    }

    /** Two half layers in series. */
    private static void conductanceRow(
            double up, double lo, double[] scale, double[] below, double[] above, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = scale[l] * below[l] * above[l] / (up * above[l] + lo * below[l]);
        }
    }

    /**
     * Factors the systems of this step from the state of the last evaluation, whose conductances become those of the base.
     *
     * @param rate 1 / (h gamma) of each lane [1/s]
     * @param slotSalt salt of each slot
     * @param water water of each cell
     * @param reservoirWater water of each reservoir
     * @param evaporationByWater derivative of the water taken from the cell at each face by its water [kg/(m2.s)]
     */
    void factor(
            double[] rate,
            double[][] slotSalt,
            double[][] water,
            double[][] reservoirWater,
            double[][] evaporationByWater) {
        double[][] spare = baseSalt;
        baseSalt = saltConductance;
        saltConductance = spare;
        spare = baseWater;
        baseWater = waterConductance;
        waterConductance = spare;
        for (int l = 0; l < lanes; l++) {
            rateMass[l] = rate[l] * block.dryPerArea[l];
        }
        computePotentialSlopes(slotSalt, water, reservoirWater);
        factorSalt(rate);
        factorWater(evaporationByWater);
    }

    private void computePotentialSlopes(double[][] slotSalt, double[][] water, double[][] reservoirWater) {
        Arrays.fill(basePotentialSlope[0], 1);
        Arrays.fill(basePotentialSlope[slots - 1], 1);
        for (int i = 0; i < cells; i++) {
            invertRow(water[i], basePotentialSlope[i + 1]);
        }
        for (int f = 0; f < block.faces; f++) {
            int slot = block.faceSlot(f);
            for (int l = 0; l < lanes; l++) {
                if (!(sources[f][l] instanceof SaltSource.None)) {
                    basePotentialSlope[slot][l] =
                            block.partition[l] * strengthBySalt(f, l, slotSalt[slot][l], reservoirWater[f][l]);
                }
            }
        }
    }

    private static void invertRow(double[] values, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = 1 / Math.max(values[l], LEAST_WATER);
        }
    }

    private void factorSalt(double[] rate) {
        for (int l = 0; l < lanes; l++) {
            pivotSalt[0][l] = 1 / (rate[l] / basePotentialSlope[0][l] + baseSalt[0][l]);
        }
        for (int i = 0; i < cells; i++) {
            diagonalRow(
                    block.grid.volume(i),
                    rateMass,
                    basePotentialSlope[i + 1],
                    baseSalt[i],
                    baseSalt[i + 1],
                    pivotSalt[i + 1]);
        }
        int last = slots - 1;
        for (int l = 0; l < lanes; l++) {
            pivotSalt[last][l] = rate[l] / basePotentialSlope[last][l] + baseSalt[cells][l];
        }
        for (int j = 1; j < slots; j++) {
            pivotRow(baseSalt[j - 1], pivotSalt[j - 1], multiplierSalt[j], pivotSalt[j]);
        }
    }

    private static void diagonalRow(
            double volume, double[] rateMass, double[] slope, double[] lower, double[] upper, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = volume * rateMass[l] / slope[l] + lower[l] + upper[l];
        }
    }

    private static void pivotRow(double[] conductance, double[] below, double[] multiplier, double[] pivot) {
        for (int l = 0; l < pivot.length; l++) {
            double m = conductance[l] * below[l];
            multiplier[l] = m;
            pivot[l] = 1 / (pivot[l] - conductance[l] * m);
        }
    }

    private void factorWater(double[][] evaporationByWater) {
        for (int i = 0; i < cells; i++) {
            double mass = block.grid.volume(i);
            for (int l = 0; l < lanes; l++) {
                pivotWater[i][l] = mass * rateMass[l] + baseWater[i][l] + baseWater[i + 1][l];
            }
        }
        for (int f = 0; f < block.faces; f++) {
            int cell = block.faceCell(f);
            for (int l = 0; l < lanes; l++) {
                pivotWater[cell][l] += evaporationByWater[f][l];
            }
        }
        for (int l = 0; l < lanes; l++) {
            pivotWater[0][l] = 1 / pivotWater[0][l];
        }
        for (int i = 1; i < cells; i++) {
            pivotRow(baseWater[i], pivotWater[i - 1], multiplierWater[i], pivotWater[i]);
        }
    }

    /**
     * Solves one stage for salt; its right-hand side are the net flows and what earlier stages give.
     *
     * @param stage which stage
     * @param rate 1 / (h gamma) of each lane [1/s]
     * @param stages stage vectors U of the salt in slots [kg/kg], of which this stage's is set
     */
    void solveSalt(int stage, double[] rate, double[][][] stages) {
        for (int j = 0; j < slots; j++) {
            boolean isCell = j > 0 && j <= cells;
            double mass = isCell ? block.grid.volume(j - 1) : 1;
            Rows.addCoupling(stage, stages, j, mass, isCell ? rateMass : rate, netSalt[j]);
            if (j > 0) {
                eliminateRow(multiplierSalt[j], netSalt[j - 1], netSalt[j]);
            }
        }
        double[][] result = stages[stage];
        for (int j = slots - 1; j >= 0; j--) {
            substitute(j, slots - 1, multiplierSalt, pivotSalt, netSalt);
            divideRow(netSalt[j], basePotentialSlope[j], result[j]);
        }
    }

    /**
     * Solves one stage for water; its right-hand side are the net flows and what earlier stages give.
     *
     * @param stage which stage
     * @param stages stage vectors U of the water [kg/kg], of which this stage's is set
     */
    void solveWater(int stage, double[][][] stages) {
        for (int i = 0; i < cells; i++) {
            Rows.addCoupling(stage, stages, i, block.grid.volume(i), rateMass, netWater[i]);
            if (i > 0) {
                eliminateRow(multiplierWater[i], netWater[i - 1], netWater[i]);
            }
        }
        for (int i = cells - 1; i >= 0; i--) {
            substitute(i, cells - 1, multiplierWater, pivotWater, netWater);
            System.arraycopy(netWater[i], 0, stages[stage][i], 0, lanes);
        }
    }

    private static void eliminateRow(double[] multiplier, double[] below, double[] right) {
        for (int l = 0; l < right.length; l++) {
            right[l] += multiplier[l] * below[l];
        }
    }

    private static void substitute(int row, int last, double[][] multiplier, double[][] pivot, double[][] right) {
        if (row == last) {
            scaleRow(pivot[row], right[row]);
        } else {
            substituteRow(multiplier[row + 1], right[row + 1], pivot[row], right[row]);
        }
    }

    private static void scaleRow(double[] pivot, double[] right) {
        for (int l = 0; l < right.length; l++) {
            right[l] *= pivot[l];
        }
    }

    private static void substituteRow(double[] multiplier, double[] above, double[] pivot, double[] right) {
        for (int l = 0; l < right.length; l++) {
            right[l] = right[l] * pivot[l] + multiplier[l] * above[l];
        }
    }

    /** Derivative of the flow of water into the meat at a face by the water of its outermost cell, at the base of the step. */
    double baseFaceWater(int face, int lane) {
        return -baseWater[block.faceEdge(face)][lane];
    }
}
