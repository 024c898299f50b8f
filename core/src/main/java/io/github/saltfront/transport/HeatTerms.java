package io.github.saltfront.transport;

/**
 * Conduction of heat between layers for all lanes: temperatures from enthalpies, conductances, net flows, and the
 * tridiagonal systems of the implicit stages. Work arrays are allocated once. See {@link Rows} for the form of the loops.
 */
final class HeatTerms {
    private final LaneBlock block;
    private final int cells;
    private final int lanes;
    private final double[] upper;
    private final double[] lower;

    /** Temperature of each cell in degrees Celsius, of the last evaluation. */
    double[][] temperature;

    /** Heat capacity per dry mass [J/(kg.K)], of the last evaluation. */
    double[][] capacity;

    private final double[][] ownTemperature;
    private final double[][] ownCapacity;
    private final double[] coldest;

    /** Whether any temperature of the last evaluation may lie in the domain of {@link FrozenState}. */
    private boolean cold;

    private final double[][] conductivity;

    /** Heat capacity at 0 degrees Celsius, and linear and quadratic terms of the enthalpy relative to it. */
    private final double[][] capacity0;

    private final double[][] inverseCapacity0;
    private final double[][] second;
    private final double[][] third;

    /** Conductivity at 0 degrees Celsius and its linear term. */
    private final double[][] conductivity0;

    private final double[][] conductivity1;

    /** Conductance of each inner edge per area of the outer face [W/(m2.K)], of the last evaluation. */
    private final double[][] conductance;

    /** Conductance from the outermost node to each face [W/(m2.K)], of the last evaluation. */
    final double[][] faceConductance;

    /** Heat that salt and water carry into each cell from its neighbors [W/m2]; set by the caller where they move. */
    final double[][] carriedNet;

    /** Right-hand side of a stage, in whose place it is solved [W/m2], then [K]. */
    private final double[][] right;

    /** Heat capacity at the base of the step [J/(kg.K)]. */
    double[][] baseCapacity;

    private final double[][] pivot;

    /** Conductance of an edge times the pivot of the cell below it, both of the base of the step [-]. */
    private final double[][] multiplier;

    private final double[] rateMass;
    private final double[] rowEnthalpy;
    private final double[][] enthalpy;

    HeatTerms(LaneBlock block) {
        this.block = block;
        cells = block.cells;
        lanes = block.lanes;
        ownTemperature = Rows.of(cells, lanes);
        ownCapacity = Rows.of(cells, lanes);
        temperature = block.temperature;
        capacity = block.capacity;
        baseCapacity = block.capacity;
        coldest = new double[lanes];
        conductivity = Rows.of(cells, lanes);
        capacity0 = Rows.of(cells, lanes);
        inverseCapacity0 = Rows.of(cells, lanes);
        second = Rows.of(cells, lanes);
        third = Rows.of(cells, lanes);
        conductivity0 = Rows.of(cells, lanes);
        conductivity1 = Rows.of(cells, lanes);
        conductance = Rows.of(cells + 1, lanes);
        faceConductance = Rows.of(block.faces, lanes);
        carriedNet = Rows.of(cells, lanes);
        right = Rows.of(cells, lanes);
        rowEnthalpy = new double[lanes];
        enthalpy = Rows.of(cells, lanes);
        pivot = Rows.of(cells, lanes);
        multiplier = Rows.of(cells + 1, lanes);
        rateMass = new double[lanes];
        upper = new double[cells];
        lower = new double[cells];
        for (int i = 0; i < cells; i++) {
            lower[i] = block.grid.node(i) - block.grid.edge(i);
            upper[i] = block.grid.edge(i + 1) - block.grid.node(i);
        }
        if (block.constantHeat) {
            for (int i = 0; i < cells; i++) {
                System.arraycopy(block.conductivity[0], 0, conductivity[i], 0, lanes);
                System.arraycopy(block.dryCapacity[0], 0, ownCapacity[i], 0, lanes);
                System.arraycopy(block.dryCapacity[0], 0, block.capacity[i], 0, lanes);
            }
            computeConductances();
        }
    }

    /** Computes conductances anew where they do not change with the state. */
    void refreshConstantConductances() {
        if (block.constantHeat) {
            computeConductances();
        }
    }

    /** Takes over a composition, from which follow the polynomials of heat capacity and conductivity of each cell. */
    void takeComposition(double[][] water, double[][] slotSalt) {
        if (block.constantHeat) {
            return;
        }
        for (int i = 0; i < cells; i++) {
            capacityRow(0, water[i], slotSalt[i + 1], capacity0[i]);
            capacityRow(1, water[i], slotSalt[i + 1], second[i]);
            capacityRow(2, water[i], slotSalt[i + 1], third[i]);
            reciprocalRow(capacity0[i], inverseCapacity0[i]);
            scaleRow(0.5, inverseCapacity0[i], second[i]);
            scaleRow(1.0 / 3, inverseCapacity0[i], third[i]);
            conductivityRow(0, water[i], conductivity0[i]);
            conductivityRow(1, water[i], conductivity1[i]);
        }
    }

    private void capacityRow(int power, double[] water, double[] salt, double[] result) {
        double[] dry = block.dryCapacity[power];
        double[] byWater = block.waterCapacity[power];
        double[] bySalt = block.saltCapacity[power];
        for (int l = 0; l < result.length; l++) {
            result[l] = dry[l] + water[l] * byWater[l] + salt[l] * bySalt[l];
        }
    }

    private static void reciprocalRow(double[] values, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = 1 / values[l];
        }
    }

    private static void scaleRow(double factor, double[] scale, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] *= factor * scale[l];
        }
    }

    private void conductivityRow(int power, double[] water, double[] result) {
        double[] raw = block.conductivity[power];
        double[] byWater = block.waterConductivity[power];
        double[] rawWater = block.rawWater;
        for (int l = 0; l < result.length; l++) {
            result[l] = raw[l] + (water[l] - rawWater[l]) * byWater[l];
        }
    }

    /** Takes temperature and heat capacity of the last evaluation from the block. */
    void takeTemperatures() {
        temperature = block.temperature;
        capacity = block.capacity;
        cold = block.mayFreeze && isAnyBelowZero(temperature);
    }

    /**
     * Sets temperature and heat capacity of the last evaluation to those of a stage after the first, whose composition was
     * taken over.
     */
    void computeStageTemperatures(int stage, double[][][] stages) {
        temperature = ownTemperature;
        capacity = ownCapacity;
        for (int i = 0; i < cells; i++) {
            Rows.combineRow(stage, block.enthalpy[i], stages, i, rowEnthalpy);
            invert(i, rowEnthalpy, temperature[i], capacity[i]);
        }
    }

    /** Lets {@link FrozenState} take over where a stage is in the cold. */
    void computeFrozenStage(int stage, double[][][] stages, double[][] water, double[][] slotSalt) {
        cold = block.mayFreeze && isAnyBelowZero(temperature);
        if (cold) {
            for (int i = 0; i < cells; i++) {
                Rows.combineRow(stage, block.enthalpy[i], stages, i, enthalpy[i]);
            }
            computeFrozen(enthalpy, water, slotSalt, temperature, capacity);
        }
    }

    /** Computes temperature and heat capacity of a state whose composition was taken over. */
    void computeTemperatures(
            double[][] enthalpy, double[][] water, double[][] slotSalt, double[][] celsius, double[][] perKelvin) {
        for (int i = 0; i < cells; i++) {
            invert(i, enthalpy[i], celsius[i], perKelvin[i]);
        }
        if (block.mayFreeze && isAnyBelowZero(celsius)) {
            computeFrozen(enthalpy, water, slotSalt, celsius, perKelvin);
        }
    }

    private void invert(int cell, double[] enthalpy, double[] celsius, double[] perKelvin) {
        if (block.constantHeat) {
            divideRow(enthalpy, block.dryCapacity[0], celsius);
        } else {
            invertRow(enthalpy, inverseCapacity0[cell], second[cell], third[cell], celsius);
            refineRow(enthalpy, inverseCapacity0[cell], second[cell], third[cell], celsius);
            capacityRow(celsius, capacity0[cell], second[cell], third[cell], perKelvin);
        }
    }

    private static void divideRow(double[] enthalpy, double[] capacity0, double[] celsius) {
        for (int l = 0; l < celsius.length; l++) {
            celsius[l] = enthalpy[l] / capacity0[l];
        }
    }

    /**
     * Solves c0 (t + a t^2 + b t^3) = H. Since the heat capacity changes by some percent only, the series of second order is
     * good to 1e-3 K between 0 and 110 degrees Celsius and one Newton step after it to 1e-9 K.
     */
    private static void invertRow(
            double[] enthalpy, double[] inverse, double[] second, double[] third, double[] celsius) {
        for (int l = 0; l < celsius.length; l++) {
            double a = second[l];
            double b = third[l];
            double linear = enthalpy[l] * inverse[l];
            celsius[l] = linear - linear * linear * (a + linear * b) * (1 - 2 * a * linear);
        }
    }

    /** The Newton step after {@link #invertRow}; a loop of its own, since C2 does not vectorize longer ones. */
    private static void refineRow(
            double[] enthalpy, double[] inverse, double[] second, double[] third, double[] celsius) {
        for (int l = 0; l < celsius.length; l++) {
            double t = celsius[l];
            double a = second[l] * t;
            double b = third[l] * t * t;
            celsius[l] = t - (t * (1 + a + b) - enthalpy[l] * inverse[l]) / (1 + 2 * a + 3 * b);
        }
    }

    private static void capacityRow(
            double[] celsius, double[] capacity0, double[] second, double[] third, double[] result) {
        for (int l = 0; l < result.length; l++) {
            double t = celsius[l];
            result[l] = capacity0[l] * (1 + t * (2 * second[l] + 3 * third[l] * t));
        }
    }

    private boolean isAnyBelowZero(double[][] celsius) {
        System.arraycopy(celsius[0], 0, coldest, 0, lanes);
        for (int i = 1; i < cells; i++) {
            takeLess(celsius[i], coldest);
        }
        for (double t : coldest) {
            if (t < 0) {
                return true;
            }
        }
        return false;
    }

    private static void takeLess(double[] values, double[] least) {
        for (int l = 0; l < least.length; l++) {
            least[l] = Math.min(least[l], values[l]);
        }
    }

    private void computeFrozen(
            double[][] enthalpy, double[][] water, double[][] slotSalt, double[][] celsius, double[][] perKelvin) {
        for (int i = 0; i < cells; i++) {
            for (int l = 0; l < lanes; l++) {
                if (celsius[i][l] < 0) {
                    FrozenState ice = block.ice[l];
                    double w = water[i][l];
                    double s = slotSalt[i + 1][l];
                    if (!(w > 0 && s >= 0)) {
                        // an attempted state that is none: the error estimate becomes NaN and the step is tried
                        // again, shorter
                        celsius[i][l] = Double.NaN;
                    } else if (celsius[i][l] < ice.upperLimit(w, s)) {
                        double t = ice.temperature(enthalpy[i][l], w, s);
                        celsius[i][l] = t;
                        perKelvin[i][l] = Double.isNaN(t) ? Double.NaN : ice.heatCapacity(t, w, s);
                    }
                }
            }
        }
    }

    /** Sets conductivities and conductances from the temperatures of the last evaluation. */
    void computeConductances(double[][] water, double[][] slotSalt) {
        if (block.constantHeat) {
            return;
        }
        for (int i = 0; i < cells; i++) {
            quadraticRow(temperature[i], conductivity0[i], conductivity1[i], block.conductivity[2], conductivity[i]);
        }
        if (cold) {
            computeFrozenConductivity(water, slotSalt);
        }
        computeConductances();
    }

    private static void quadraticRow(double[] celsius, double[] k0, double[] k1, double[] k2, double[] result) {
        for (int l = 0; l < result.length; l++) {
            double t = celsius[l];
            result[l] = k0[l] + t * (k1[l] + t * k2[l]);
        }
    }

    private void computeFrozenConductivity(double[][] water, double[][] slotSalt) {
        for (int i = 0; i < cells; i++) {
            for (int l = 0; l < lanes; l++) {
                double t = temperature[i][l];
                if (t < 0 && block.ice[l].isFrozen(t, water[i][l], slotSalt[i + 1][l])) {
                    conductivity[i][l] = block.ice[l].conductivity(t, water[i][l], slotSalt[i + 1][l]);
                }
            }
        }
    }

    private void computeConductances() {
        for (int i = 1; i < cells; i++) {
            double area = block.grid.area(i);
            conductanceRow(
                    upper[i - 1] / area,
                    lower[i] / area,
                    block.perExtent,
                    conductivity[i - 1],
                    conductivity[i],
                    conductance[i]);
        }
        for (int f = 0; f < block.faces; f++) {
            double[] outer = conductivity[block.faceCell(f)];
            double distance = block.faceDistance(f);
            for (int l = 0; l < lanes; l++) {
                faceConductance[f][l] = block.perExtent[l] * outer[l] / distance;
            }
        }
    }

    /** Two half layers in series: 1 / (up / ka + lo / kb). */
    private static void conductanceRow(
            double up, double lo, double[] perExtent, double[] below, double[] above, double[] result) {
        for (int l = 0; l < result.length; l++) {
            double ka = below[l];
            double kb = above[l];
            result[l] = perExtent[l] * ka * kb / (up * kb + lo * ka);
        }
    }

    /** Sets a row of the right-hand side to the net flow by conduction between layers. */
    private void computeNet(int i) {
        if (i == 0) {
            netRow(conductance[1], temperature[1], temperature[0], right[0]);
        } else if (i == cells - 1) {
            netRow(conductance[i], temperature[i - 1], temperature[i], right[i]);
        } else {
            netRow(
                    conductance[i],
                    temperature[i - 1],
                    temperature[i],
                    conductance[i + 1],
                    temperature[i + 1],
                    right[i]);
        }
    }

    private static void netRow(double[] conductance, double[] neighbor, double[] own, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = conductance[l] * (neighbor[l] - own[l]);
        }
    }

    private static void netRow(
            double[] lower, double[] below, double[] own, double[] upper, double[] above, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = upper[l] * (above[l] - own[l]) - lower[l] * (own[l] - below[l]);
        }
    }

    /**
     * Factors the systems of this step from the state of the last evaluation.
     *
     * @param rate 1 / (h gamma) of each lane [1/s]
     * @param faceSlope derivative of the heat flow at each face by the cell temperature, not positive [W/(m2.K)]
     */
    void factor(double[] rate, double[][] faceSlope) {
        baseCapacity = capacity;
        for (int l = 0; l < lanes; l++) {
            rateMass[l] = rate[l] * block.dryPerArea[l];
        }
        for (int i = 0; i < cells; i++) {
            // edges 0 and n of the conductances stay zero: faces are added below
            diagonalRow(block.grid.volume(i), rateMass, baseCapacity[i], conductance[i], conductance[i + 1], pivot[i]);
        }
        for (int f = 0; f < block.faces; f++) {
            double[] diagonal = pivot[block.faceCell(f)];
            for (int l = 0; l < lanes; l++) {
                diagonal[l] -= faceSlope[f][l];
            }
        }
        for (int l = 0; l < lanes; l++) {
            pivot[0][l] = 1 / pivot[0][l];
        }
        for (int i = 1; i < cells; i++) {
            pivotRow(conductance[i], pivot[i - 1], multiplier[i], pivot[i]);
        }
    }

    private static void diagonalRow(
            double volume, double[] rateMass, double[] capacity, double[] lower, double[] upper, double[] result) {
        for (int l = 0; l < result.length; l++) {
            result[l] = volume * rateMass[l] * capacity[l] + lower[l] + upper[l];
        }
    }

    private static void pivotRow(double[] conductance, double[] below, double[] multiplier, double[] pivot) {
        for (int l = 0; l < pivot.length; l++) {
            double m = conductance[l] * below[l];
            multiplier[l] = m;
            pivot[l] = 1 / (pivot[l] - conductance[l] * m);
        }
    }

    /**
     * Solves one stage at the temperatures of the last evaluation. What water and salt bring in enthalpy without a change of
     * temperature drives no conduction: with it the matrix acts on temperatures also where much water leaves.
     *
     * @param stage which stage
     * @param faceFlow flow of heat into the cell at each face [W/m2]
     * @param carrying whether {@link #carriedNet} is to be added
     * @param content enthalpy that comes with the stage changes of water and salt [J/kg], or no rows to leave it out
     * @param stages stage vectors U of the enthalpy [J/kg], of which this stage's is set
     * @param faceTemperature receives the stage change of the temperature of the cell at each face [K]
     */
    void solve(
            int stage,
            double[][] faceFlow,
            boolean carrying,
            double[][] content,
            double[][][] stages,
            double[][] faceTemperature) {
        int last = cells - 1;
        for (int i = 0; i < cells; i++) {
            computeNet(i);
            if (carrying) {
                addRow(carriedNet[i], right[i]);
            }
            if (i == last) {
                addRow(faceFlow[0], right[i]);
            } else if (i == 0 && block.faces == 2) {
                addRow(faceFlow[1], right[i]);
            }
            Rows.addCoupling(stage, stages, i, block.grid.volume(i), rateMass, right[i]);
            if (content.length > 0) {
                takeContent(block.grid.volume(i), rateMass, content[i], right[i]);
            }
            if (i > 0) {
                eliminateRow(multiplier[i], right[i - 1], right[i]);
            }
        }
        double[][] result = stages[stage];
        for (int l = 0; l < lanes; l++) {
            right[last][l] *= pivot[last][l];
            result[last][l] = right[last][l] * baseCapacity[last][l];
        }
        for (int i = last - 1; i >= 0; i--) {
            substituteRow(multiplier[i + 1], right[i + 1], pivot[i], right[i], baseCapacity[i], result[i]);
        }
        for (int f = 0; f < block.faces; f++) {
            System.arraycopy(right[block.faceCell(f)], 0, faceTemperature[f], 0, lanes);
        }
        for (int i = 0; i < content.length; i++) {
            addRow(content[i], result[i]);
        }
    }

    private static void takeContent(double volume, double[] rateMass, double[] content, double[] right) {
        for (int l = 0; l < right.length; l++) {
            right[l] -= volume * rateMass[l] * content[l];
        }
    }

    private static void addRow(double[] values, double[] sum) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] += values[l];
        }
    }

    private static void eliminateRow(double[] multiplier, double[] below, double[] right) {
        for (int l = 0; l < right.length; l++) {
            right[l] += multiplier[l] * below[l];
        }
    }

    private static void substituteRow(
            double[] multiplier, double[] above, double[] pivot, double[] right, double[] capacity, double[] stage) {
        for (int l = 0; l < right.length; l++) {
            double t = right[l] * pivot[l] + multiplier[l] * above[l];
            right[l] = t;
            stage[l] = t * capacity[l];
        }
    }
}
