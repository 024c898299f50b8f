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

    private final LaneBlock block;
    private final int cells;
    private final int lanes;
    private final int slots;

    /** Source of each face and lane. */
    private final SaltSource[] sources;

    /** Salt per water times partition in each slot [kg/kg], of the last evaluation. */
    private final double[] potential;

    private final double[] saltConductance;
    private final double[] waterConductance;
    private final double[] mobility;

    /** Flow of salt across edge e toward its lower side [kg/(m2.s)]. */
    final double[] saltFlow;

    /** Flow of water across edge e toward its lower side [kg/(m2.s)], evaporation not included. */
    final double[] waterFlow;

    /** Net flow of salt into each slot [kg/(m2.s)]. */
    final double[] netSalt;

    /** Net flow of water into each cell [kg/(m2.s)], evaporation not included. */
    final double[] netWater;

    private final double[] baseSalt;
    private final double[] baseWater;
    private final double[] basePotentialSlope;
    private final double[] pivotSalt;
    private final double[] pivotWater;
    private final double[] slotMass;
    private final double[] work;

    SaltTerms(LaneBlock block) {
        this.block = block;
        cells = block.cells;
        lanes = block.lanes;
        slots = cells + 2;
        int n = cells * lanes;
        int e = (cells + 1) * lanes;
        sources = new SaltSource[block.faces * lanes];
        Arrays.fill(sources, SaltSource.NONE);
        potential = new double[slots * lanes];
        saltConductance = new double[e];
        waterConductance = new double[e];
        mobility = new double[n];
        saltFlow = new double[e];
        waterFlow = new double[e];
        netSalt = new double[slots * lanes];
        netWater = new double[n];
        baseSalt = new double[e];
        baseWater = new double[e];
        basePotentialSlope = new double[slots * lanes];
        pivotSalt = new double[slots * lanes];
        pivotWater = new double[n];
        slotMass = new double[slots * lanes];
        work = new double[slots * lanes];
        Arrays.fill(slotMass, 1);
        System.arraycopy(block.dryMass, 0, slotMass, lanes, n);
    }

    void setSource(int face, int lane, SaltSource source) {
        sources[face * lanes + lane] = source;
    }

    SaltSource source(int face, int lane) {
        return sources[face * lanes + lane];
    }

    /** Salt per water of a reservoir [kg/kg]. */
    double reservoirStrength(int face, int lane, double salt, double water) {
        SaltSource source = sources[face * lanes + lane];
        if (source instanceof SaltSource.Bath) {
            return salt / water;
        }
        if (source instanceof SaltSource.Dose dose) {
            double thin = dose.saltPerArea() * SaltSource.Dose.THIN_FILM_SHARE;
            return dose.saturation() * salt / (salt + thin);
        }
        return 0;
    }

    private double strengthBySalt(int face, int lane, double salt, double water) {
        SaltSource source = sources[face * lanes + lane];
        if (source instanceof SaltSource.Bath) {
            return 1 / water;
        }
        if (source instanceof SaltSource.Dose dose) {
            double thin = dose.saltPerArea() * SaltSource.Dose.THIN_FILM_SHARE;
            return dose.saturation() * thin / ((salt + thin) * (salt + thin));
        }
        return 0;
    }

    /** Sets flows and net flows from a state. */
    void evaluate(double[] temperature, double[] slotSalt, double[] water, double[] expelled, double[] reservoirWater) {
        computeMobility(temperature);
        computePotentials(slotSalt, water, reservoirWater);
        computeConductances(water);
        Arrays.fill(netSalt, 0);
        Arrays.fill(netWater, 0);
        for (int e = 0; e <= cells; e++) {
            int b = e * lanes;
            for (int l = 0; l < lanes; l++) {
                double flow = saltConductance[b + l] * (potential[b + lanes + l] - potential[b + l]);
                saltFlow[b + l] = flow;
                netSalt[b + l] += flow;
                netSalt[b + lanes + l] -= flow;
            }
        }
        for (int e = 1; e < cells; e++) {
            int b = e * lanes;
            for (int l = 0; l < lanes; l++) {
                int c = b + l;
                double excess = water[c] + expelled[c] - water[c - lanes] - expelled[c - lanes];
                double donor = excess > 0 ? water[c] : water[c - lanes];
                double flow = waterConductance[c] * excess * supply(donor);
                waterFlow[c] = flow;
                netWater[c - lanes] += flow;
                netWater[c] -= flow;
            }
        }
        for (int f = 0; f < block.faces; f++) {
            faceWater(f, slotSalt, water, expelled, reservoirWater);
        }
    }

    /** Share of a flow that a layer with little water left can feed; cooked layers differ in what they would hold if wet. */
    private static double supply(double water) {
        return Math.min(Math.max(water, 0) / SCARCE_WATER, 1);
    }

    private void faceWater(int face, double[] slotSalt, double[] water, double[] expelled, double[] reservoirWater) {
        int edge = block.faceEdge(face) * lanes;
        int cell = block.faceCell(face) * lanes;
        int slot = block.faceSlot(face) * lanes;
        for (int l = 0; l < lanes; l++) {
            double flow = 0;
            if (sources[face * lanes + l] instanceof SaltSource.Bath bath && waterConductance[edge + l] > 0) {
                double strength = reservoirStrength(face, l, slotSalt[slot + l], reservoirWater[face * lanes + l]);
                double excess = water[cell + l] + expelled[cell + l] - block.rawWater[l];
                flow = waterConductance[edge + l] * (bath.swelling().excessWater(strength) - excess);
            }
            // positive flow at an edge runs toward its lower side; at the second face the meat is the upper side
            waterFlow[edge + l] = face == 0 ? flow : -flow;
            netWater[cell + l] += flow;
        }
    }

    private void computeMobility(double[] temperature) {
        for (int i = 0; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                double kelvin = temperature[b + l] + CELSIUS;
                mobility[b + l] = block.diffusivity5[l] * Math.exp(-block.activation[l] * (1 / kelvin - 1 / REFERENCE));
            }
        }
    }

    private void computePotentials(double[] slotSalt, double[] water, double[] reservoirWater) {
        for (int c = 0; c < water.length; c++) {
            potential[c + lanes] = slotSalt[c + lanes] / water[c];
        }
        for (int f = 0; f < block.faces; f++) {
            int slot = block.faceSlot(f) * lanes;
            for (int l = 0; l < lanes; l++) {
                potential[slot + l] =
                        block.partition[l] * reservoirStrength(f, l, slotSalt[slot + l], reservoirWater[f * lanes + l]);
            }
        }
    }

    private void computeConductances(double[] water) {
        for (int i = 1; i < cells; i++) {
            int b = i * lanes;
            double up = block.grid.edge(i) - block.grid.node(i - 1);
            double lo = block.grid.node(i) - block.grid.edge(i);
            double area = block.grid.area(i);
            for (int l = 0; l < lanes; l++) {
                double da = mobility[b - lanes + l];
                double db = mobility[b + l];
                double sa = da * water[b - lanes + l];
                double sb = db * water[b + l];
                double scale = area * block.dryDensity[l] / block.extent[l];
                saltConductance[b + l] = scale * sa * sb / (up * sb + lo * sa);
                waterConductance[b + l] =
                        block.waterFixed[l] ? 0 : scale * block.waterRatio[l] * da * db / (up * db + lo * da);
            }
        }
        for (int f = 0; f < block.faces; f++) {
            int edge = block.faceEdge(f) * lanes;
            int cell = block.faceCell(f) * lanes;
            double distance = block.faceDistance(f);
            for (int l = 0; l < lanes; l++) {
                SaltSource source = sources[f * lanes + l];
                double perLength = block.dryDensity[l] / (block.extent[l] * distance);
                double salt = perLength * mobility[cell + l] * water[cell + l];
                double through = salt / (1 + salt * block.skinResistance[l]);
                saltConductance[edge + l] = source instanceof SaltSource.None ? 0 : through;
                waterConductance[edge + l] = source instanceof SaltSource.Bath && !block.waterFixed[l]
                        ? perLength * mobility[cell + l] * block.waterRatio[l] * through / salt
                        : 0;
            }
        }
    }

    /**
     * Factors the systems of this step from the state of the last evaluation.
     *
     * @param rate 1 / (h gamma) of each lane [1/s]
     * @param slotSalt salt of each slot
     * @param water water of each cell
     * @param reservoirWater water of each reservoir
     * @param evaporationByWater derivative of the water taken from the cell at each face by its water [kg/(m2.s)]
     */
    void factor(
            double[] rate, double[] slotSalt, double[] water, double[] reservoirWater, double[] evaporationByWater) {
        System.arraycopy(saltConductance, 0, baseSalt, 0, baseSalt.length);
        System.arraycopy(waterConductance, 0, baseWater, 0, baseWater.length);
        Arrays.fill(basePotentialSlope, 1);
        for (int c = 0; c < water.length; c++) {
            basePotentialSlope[c + lanes] = 1 / water[c];
        }
        for (int f = 0; f < block.faces; f++) {
            int slot = block.faceSlot(f) * lanes;
            for (int l = 0; l < lanes; l++) {
                if (!(sources[f * lanes + l] instanceof SaltSource.None)) {
                    basePotentialSlope[slot + l] = block.partition[l]
                            * strengthBySalt(f, l, slotSalt[slot + l], reservoirWater[f * lanes + l]);
                }
            }
        }
        factorSalt(rate);
        factorWater(rate, evaporationByWater);
    }

    private void factorSalt(double[] rate) {
        for (int j = 0; j < slots; j++) {
            int b = j * lanes;
            for (int l = 0; l < lanes; l++) {
                double diagonal = slotMass[b + l] / basePotentialSlope[b + l] * rate[l];
                if (j > 0) {
                    diagonal += baseSalt[b - lanes + l];
                }
                if (j <= cells) {
                    diagonal += baseSalt[b + l];
                }
                double g = j > 0 ? baseSalt[b - lanes + l] : 0;
                pivotSalt[b + l] = 1 / (j > 0 ? diagonal - g * g * pivotSalt[b - lanes + l] : diagonal);
            }
        }
    }

    private void factorWater(double[] rate, double[] evaporationByWater) {
        for (int i = 0; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                work[b + l] = block.dryMass[b + l] * rate[l] + baseWater[b + l] + baseWater[b + lanes + l];
            }
        }
        for (int f = 0; f < block.faces; f++) {
            int cell = block.faceCell(f) * lanes;
            for (int l = 0; l < lanes; l++) {
                work[cell + l] += evaporationByWater[f * lanes + l];
            }
        }
        for (int i = 0; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                double g = i > 0 ? baseWater[b + l] : 0;
                pivotWater[b + l] = 1 / (i > 0 ? work[b + l] - g * g * pivotWater[b - lanes + l] : work[b + l]);
            }
        }
    }

    /** Solves one stage for salt; the right-hand side [kg/(m2.s)] is overwritten, the stage vector U [kg/kg] received. */
    void solveSalt(double[] right, double[] stage) {
        for (int j = 1; j < slots; j++) {
            int b = j * lanes;
            for (int l = 0; l < lanes; l++) {
                right[b + l] += baseSalt[b - lanes + l] * pivotSalt[b - lanes + l] * right[b - lanes + l];
            }
        }
        for (int j = slots - 1; j >= 0; j--) {
            int b = j * lanes;
            for (int l = 0; l < lanes; l++) {
                double above = j < slots - 1 ? baseSalt[b + l] * right[b + lanes + l] : 0;
                right[b + l] = (right[b + l] + above) * pivotSalt[b + l];
                stage[b + l] = right[b + l] / basePotentialSlope[b + l];
            }
        }
    }

    /** Solves one stage for water; the right-hand side [kg/(m2.s)] is overwritten, the stage vector U [kg/kg] received. */
    void solveWater(double[] right, double[] stage) {
        for (int i = 1; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                right[b + l] += baseWater[b + l] * pivotWater[b - lanes + l] * right[b - lanes + l];
            }
        }
        for (int i = cells - 1; i >= 0; i--) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                double above = i < cells - 1 ? baseWater[b + lanes + l] * right[b + lanes + l] : 0;
                right[b + l] = (right[b + l] + above) * pivotWater[b + l];
                stage[b + l] = right[b + l];
            }
        }
    }

    /** Derivative of the flow of water into the meat at a face by the water of its outermost cell, at the base of the step. */
    double baseFaceWater(int face, int lane) {
        return -baseWater[block.faceEdge(face) * lanes + lane];
    }
}
