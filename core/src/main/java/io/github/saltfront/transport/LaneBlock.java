package io.github.saltfront.transport;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;
import java.util.Arrays;
import java.util.List;

/**
 * Parameters and state of several members that are advanced side by side ("lanes"). Arrays have one row a cell, edge, face or
 * slot and one value a lane in each, see {@link Rows}. Face 0 is the outer or first face and face 1 the second; slot 0 is the
 * reservoir of the second face, slots 1 to n the cells and slot n + 1 the reservoir of the first face. Temperatures inside are
 * in degrees Celsius, since the property polynomials are. Not thread-safe.
 */
final class LaneBlock {
    /** Zero of the Celsius scale [K]. */
    static final double KELVIN = Temperature.ZERO_CELSIUS;

    /** Juice that a face can hold before it drips [kg/m2]; estimate: a film of 0.05 mm. */
    static final double FILM_CAPACITY = 0.05;

    /** Least share of {@link #feedTime} that is kept from step to step [-]: a much shorter one would be a jolt. */
    private static final double KEPT_FEED_TIME = 0.5;

    final LayerGrid grid;
    final int cells;
    final int lanes;
    final int faces;

    final double[] extent;
    final double[] dryDensity;
    final double[] rawWater;
    final double[][] dryCapacity;
    final double[][] waterCapacity;
    final double[][] saltCapacity;
    final double[][] conductivity;
    final double[][] waterConductivity;
    final FrozenState[] ice;
    final double[] diffusivity5;
    final double[] activation;
    final double[] partition;
    final double[] waterRatio;
    final double[] skinResistance;
    final boolean[] waterFixed;
    final double[] juiceFactor;
    final boolean constantHeat;
    final boolean mayFreeze;

    /** Dry mass of each cell per area of the outer face [kg/m2]. */
    final double[][] dryMass;

    /** Dry mass per area of the outer face and relative volume [kg/m2]. */
    final double[] dryPerArea;

    /** Factor on the conductances over the extent [1/m]. */
    final double[] perExtent;

    double[][] enthalpy;
    double[][] temperature;
    double[][] capacity;
    double[][] water;
    double[][] slotSalt;
    final double[][] expelled;

    /** Kill of each kind and cell. */
    final double[][][] kill;

    final double[][][] extents;

    final double[][] reservoirWater;
    /** Rate at which juice is expelled to each face, from the last steps [kg/(m2.s)]. */
    final double[][] juiceRate;

    /** By how much the juice of the last step was not what the steps before let expect [kg/m2]. */
    final double[][] juiceMiss;

    /** Juice that has come to each face beyond what its film was fed; negative where more was fed [kg/m2]. */
    final double[][] unfed;

    /** Time over which the rate is a mean, and within which {@link #unfed} is to be made up for [s]. */
    final double[][] feedTime;

    /** Water that wets each face [kg/m2]. */
    final double[][] filmWater;

    final double[][] filmSalt;

    final double[][] heatIn;
    final double[][] evaporated;
    /** Water that has boiled out of the meat at each face, of which the crust is what is left [kg/m2]. */
    final double[][] boiled;

    final double[] dripWater;
    final double[] dripSalt;
    final double[] dripEnthalpy;

    final double[] stageTime;

    LaneBlock(LayerGrid grid, List<Member> members, int kills, int reactions) {
        this.grid = grid;
        cells = grid.cells();
        lanes = members.size();
        faces = grid.isTwoFaced() ? 2 : 1;
        extent = lane(members, Member::extent);
        dryDensity = lane(members, m -> m.heat().dryDensity());
        rawWater = lane(members, m -> m.heat().rawWater());
        dryCapacity = powers(members, 3, (m, k) -> m.heat().dryCapacity(k));
        waterCapacity = powers(members, 3, (m, k) -> m.heat().waterCapacity(k));
        saltCapacity = powers(members, 3, (m, k) -> m.heat().saltCapacity(k));
        conductivity = powers(members, 3, (m, k) -> m.heat().conductivity(k));
        waterConductivity = powers(members, 2, (m, k) -> m.heat().conductivityOfWater(k));
        ice = new FrozenState[lanes];
        boolean freezing = false;
        for (int l = 0; l < lanes; l++) {
            ice[l] = members.get(l).heat().ice();
            freezing |= ice[l] != FrozenState.NONE;
        }
        mayFreeze = freezing;
        diffusivity5 = lane(members, m -> m.salt().diffusivity());
        activation = lane(members, m -> m.salt().activationEnergy() / PhysicalConstants.MOLAR_GAS);
        partition = lane(members, m -> m.salt().partition());
        waterRatio = lane(members, m -> m.salt().waterRatio());
        skinResistance = lane(members, m -> m.salt().skinResistance());
        juiceFactor = lane(members, Member::juiceFactor);
        waterFixed = new boolean[lanes];
        for (int l = 0; l < lanes; l++) {
            waterFixed[l] = members.get(l).waterFixed();
        }
        constantHeat = !mayFreeze
                && allZero(dryCapacity[1])
                && allZero(dryCapacity[2])
                && allZero(waterCapacity)
                && allZero(saltCapacity)
                && allZero(conductivity[1])
                && allZero(conductivity[2])
                && allZero(waterConductivity);

        perExtent = new double[lanes];
        dryPerArea = new double[lanes];
        for (int l = 0; l < lanes; l++) {
            setFactor(l, members.get(l).conductanceFactor());
            dryPerArea[l] = dryDensity[l] * extent[l];
        }
        dryMass = Rows.of(cells, lanes);
        enthalpy = Rows.of(cells, lanes);
        temperature = Rows.of(cells, lanes);
        capacity = Rows.of(cells, lanes);
        water = Rows.of(cells, lanes);
        slotSalt = Rows.of(cells + 2, lanes);
        expelled = Rows.of(cells, lanes);
        kill = new double[kills][cells][lanes];
        extents = new double[reactions][cells][lanes];
        for (int l = 0; l < lanes; l++) {
            InitialState start = members.get(l).start();
            double perDry = members.get(l).heat().enthalpy(start.temperature() - KELVIN, start.water(), start.salt());
            for (int i = 0; i < cells; i++) {
                dryMass[i][l] = dryPerArea[l] * grid.volume(i);
                water[i][l] = start.water();
                slotSalt[i + 1][l] = start.salt();
                enthalpy[i][l] = perDry;
            }
        }
        reservoirWater = Rows.of(faces, lanes);
        juiceRate = Rows.of(faces, lanes);
        juiceMiss = Rows.of(faces, lanes);
        unfed = Rows.of(faces, lanes);
        feedTime = Rows.of(faces, lanes);
        filmWater = Rows.of(faces, lanes);
        filmSalt = Rows.of(faces, lanes);
        heatIn = Rows.of(faces, lanes);
        evaporated = Rows.of(faces, lanes);
        boiled = Rows.of(faces, lanes);
        dripWater = new double[lanes];
        dripSalt = new double[lanes];
        dripEnthalpy = new double[lanes];
        stageTime = new double[lanes];
    }

    /** Takes over the state of a block of the same members in the same grid. */
    void takeState(LaneBlock from) {
        Rows.copy(from.enthalpy, enthalpy);
        Rows.copy(from.temperature, temperature);
        Rows.copy(from.capacity, capacity);
        Rows.copy(from.water, water);
        Rows.copy(from.slotSalt, slotSalt);
        Rows.copy(from.expelled, expelled);
        for (int k = 0; k < kill.length; k++) {
            Rows.copy(from.kill[k], kill[k]);
        }
        for (int r = 0; r < extents.length; r++) {
            Rows.copy(from.extents[r], extents[r]);
        }
        Rows.copy(from.reservoirWater, reservoirWater);
        Rows.copy(from.juiceRate, juiceRate);
        Rows.copy(from.unfed, unfed);
        Rows.copy(from.feedTime, feedTime);
        Rows.copy(from.filmWater, filmWater);
        Rows.copy(from.filmSalt, filmSalt);
        Rows.copy(from.heatIn, heatIn);
        Rows.copy(from.evaporated, evaporated);
        Rows.copy(from.boiled, boiled);
        Rows.copy(
                new double[][] {from.perExtent, from.dripWater, from.dripSalt, from.dripEnthalpy, from.stageTime},
                new double[][] {perExtent, dripWater, dripSalt, dripEnthalpy, stageTime});
    }

    /** Edge index of a face: the last edge for the first face, edge 0 for the second. */
    int faceEdge(int face) {
        return face == 0 ? cells : 0;
    }

    /** Cell that touches a face. */
    int faceCell(int face) {
        return face == 0 ? cells - 1 : 0;
    }

    /** Slot of the reservoir of a face. */
    int faceSlot(int face) {
        return face == 0 ? cells + 1 : 0;
    }

    /** Distance from the node of the cell at a face to the face, relative to the extent [-]. */
    double faceDistance(int face) {
        return face == 0 ? grid.edge(cells) - grid.node(cells - 1) : grid.node(0);
    }

    /** Enthalpy of liquid water above 0 degrees Celsius [J/kg]; zero where water carries none (constant properties). */
    double waterEnthalpy(int lane, double celsius) {
        return celsius
                * (waterCapacity[0][lane]
                        + celsius * (waterCapacity[1][lane] / 2 + celsius * waterCapacity[2][lane] / 3));
    }

    /** Enthalpy of dissolved salt above 0 degrees Celsius [J/kg]. */
    double saltEnthalpy(int lane, double celsius) {
        return celsius
                * (saltCapacity[0][lane] + celsius * (saltCapacity[1][lane] / 2 + celsius * saltCapacity[2][lane] / 3));
    }

    /** Whether salt and excess water are the same in all cells, so that nothing moves by itself. */
    boolean isUniform() {
        for (int i = 1; i < cells; i++) {
            for (int l = 0; l < lanes; l++) {
                boolean sameSalt = slotSalt[i + 1][l] / water[i][l] == slotSalt[i][l] / water[i - 1][l];
                if (!sameSalt || water[i][l] + expelled[i][l] != water[i - 1][l] + expelled[i - 1][l]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Sets the factor on the conductances of a lane. */
    void setFactor(int lane, double factor) {
        perExtent[lane] = factor / extent[lane];
    }

    /** Fills the reservoir of a face for a new stage; what an earlier one held has left with it. */
    void fillReservoir(int face, int lane, SaltSource source) {
        double[] slot = slotSalt[faceSlot(face)];
        slot[lane] = 0;
        reservoirWater[face][lane] = 0;
        if (source instanceof SaltSource.Bath bath) {
            slot[lane] = bath.saltPerArea();
            reservoirWater[face][lane] = bath.waterPerArea();
        } else if (source instanceof SaltSource.Dose dose) {
            slot[lane] = dose.saltPerArea();
        }
    }

    private interface OfMember {
        double value(Member member);
    }

    private interface OfMemberAndPower {
        double value(Member member, int power);
    }

    private static double[] lane(List<Member> members, OfMember value) {
        double[] result = new double[members.size()];
        for (int l = 0; l < result.length; l++) {
            result[l] = value.value(members.get(l));
        }
        return result;
    }

    private static double[][] powers(List<Member> members, int count, OfMemberAndPower value) {
        double[][] result = new double[count][];
        for (int k = 0; k < count; k++) {
            int power = k;
            result[k] = lane(members, m -> value.value(m, power));
        }
        return result;
    }

    private static boolean allZero(double[]... arrays) {
        return Arrays.stream(arrays).flatMapToDouble(Arrays::stream).allMatch(x -> x == 0);
    }

    /** Takes the juice that a step [s] has brought to a face [kg/m2]; in steps much shorter than those before, little changes. */
    void takeJuice(int face, int lane, double juice, double step) {
        double time = Math.max(step, KEPT_FEED_TIME * feedTime[face][lane]);
        juiceMiss[face][lane] = Math.abs(juice - juiceRate[face][lane] * step);
        juiceRate[face][lane] += (juice - juiceRate[face][lane] * step) / time;
        unfed[face][lane] += juice;
        feedTime[face][lane] = time;
    }
}
