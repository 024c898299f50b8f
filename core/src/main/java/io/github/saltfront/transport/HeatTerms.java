package io.github.saltfront.transport;

import java.util.Arrays;

/**
 * Conduction of heat between layers for all lanes: temperatures from enthalpies, conductances, net flows, and the
 * tridiagonal systems of the implicit stages. Work arrays are allocated once.
 */
final class HeatTerms {
    private final LaneBlock block;
    private final int cells;
    private final int lanes;
    private final double[] upper;
    private final double[] lower;

    /** Temperature of each cell in degrees Celsius, of the last evaluation. */
    final double[] temperature;

    /** Heat capacity per dry mass [J/(kg.K)], of the last evaluation. */
    final double[] capacity;

    private final double[] conductivity;

    /** Conductance of each inner edge per area of the outer face [W/(m2.K)], of the last evaluation. */
    private final double[] conductance;

    /** Conductance from the outermost node to each face [W/(m2.K)], of the last evaluation. */
    final double[] faceConductance;

    /** Net flow of heat into each cell per area of the outer face [W/m2]. */
    final double[] net;

    private final double[] baseConductance;
    private final double[] baseCapacity;
    private final double[] pivot;
    private final double[] work;

    HeatTerms(LaneBlock block) {
        this.block = block;
        cells = block.cells;
        lanes = block.lanes;
        int n = cells * lanes;
        temperature = new double[n];
        capacity = new double[n];
        conductivity = new double[n];
        conductance = new double[n + lanes];
        faceConductance = new double[block.faces * lanes];
        net = new double[n];
        baseConductance = new double[n + lanes];
        baseCapacity = new double[n];
        pivot = new double[n];
        work = new double[n];
        upper = new double[cells];
        lower = new double[cells];
        for (int i = 0; i < cells; i++) {
            lower[i] = block.grid.node(i) - block.grid.edge(i);
            upper[i] = block.grid.edge(i + 1) - block.grid.node(i);
        }
        if (block.constantHeat) {
            for (int i = 0; i < cells; i++) {
                System.arraycopy(block.conductivity[0], 0, conductivity, i * lanes, lanes);
                System.arraycopy(block.dryCapacity[0], 0, capacity, i * lanes, lanes);
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

    /** Takes temperature and heat capacity of the last evaluation from the block. */
    void takeTemperatures() {
        System.arraycopy(block.temperature, 0, temperature, 0, temperature.length);
        System.arraycopy(block.capacity, 0, capacity, 0, capacity.length);
    }

    /** Sets temperature and heat capacity from a state. */
    void computeTemperatures(double[] enthalpy, double[] water, double[] slotSalt) {
        if (block.constantHeat) {
            double[] capacity0 = block.dryCapacity[0];
            for (int i = 0; i < cells; i++) {
                int b = i * lanes;
                for (int l = 0; l < lanes; l++) {
                    temperature[b + l] = enthalpy[b + l] / capacity0[l];
                }
            }
            return;
        }
        for (int i = 0; i < cells; i++) {
            invertRow(i * lanes, enthalpy, water, slotSalt);
        }
        if (block.mayFreeze) {
            computeFrozen(enthalpy, water, slotSalt);
        }
    }

    /**
     * Solves c0 t + c1 t^2 / 2 + c2 t^3 / 3 = H. Since c changes by some percent only, the series of second order is good to
     * 1e-3 K between 0 and 110 degrees Celsius and one Newton step after it to 1e-9 K; two divisions in all.
     */
    private void invertRow(int b, double[] enthalpy, double[] water, double[] slotSalt) {
        double[] d0 = block.dryCapacity[0];
        double[] d1 = block.dryCapacity[1];
        double[] d2 = block.dryCapacity[2];
        double[] e0 = block.waterCapacity[0];
        double[] e1 = block.waterCapacity[1];
        double[] e2 = block.waterCapacity[2];
        double[] g0 = block.saltCapacity[0];
        double[] g1 = block.saltCapacity[1];
        double[] g2 = block.saltCapacity[2];
        for (int l = 0; l < lanes; l++) {
            double w = water[b + l];
            double s = slotSalt[b + lanes + l];
            double c0 = d0[l] + w * e0[l] + s * g0[l];
            double c1 = d1[l] + w * e1[l] + s * g1[l];
            double c2 = d2[l] + w * e2[l] + s * g2[l];
            double inverse = 1 / c0;
            double linear = enthalpy[b + l] * inverse;
            double second = 0.5 * c1 * inverse;
            double third = c2 * inverse * (1.0 / 3);
            double t = linear - linear * linear * (second + linear * third) * (1 - 2 * second * linear);
            t -= (t * (1 + t * (second + t * third)) - linear) / (1 + t * (2 * second + 3 * third * t));
            temperature[b + l] = t;
            capacity[b + l] = c0 + t * (c1 + t * c2);
        }
    }

    private void computeFrozen(double[] enthalpy, double[] water, double[] slotSalt) {
        for (int c = 0; c < temperature.length; c++) {
            if (temperature[c] < 0) {
                FrozenState ice = block.ice[c % lanes];
                double w = water[c];
                double s = slotSalt[c + lanes];
                if (!(w > 0 && s >= 0)) {
                    // an attempted state that is none: the error estimate becomes NaN and the step is tried again,
                    // shorter
                    temperature[c] = Double.NaN;
                } else if (temperature[c] < ice.upperLimit(w, s)) {
                    temperature[c] = ice.temperature(enthalpy[c], w, s);
                    capacity[c] = Double.isNaN(temperature[c]) ? Double.NaN : ice.heatCapacity(temperature[c], w, s);
                }
            }
        }
    }

    /** Sets conductivities and conductances from the temperatures of the last evaluation. */
    void computeConductances(double[] water, double[] slotSalt) {
        if (block.constantHeat) {
            return;
        }
        double[] k0 = block.conductivity[0];
        double[] k1 = block.conductivity[1];
        double[] k2 = block.conductivity[2];
        double[] l0 = block.waterConductivity[0];
        double[] l1 = block.waterConductivity[1];
        double[] raw = block.rawWater;
        for (int i = 0; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                double t = temperature[b + l];
                conductivity[b + l] = k0[l] + t * (k1[l] + t * k2[l]) + (water[b + l] - raw[l]) * (l0[l] + t * l1[l]);
            }
        }
        if (block.mayFreeze) {
            for (int c = 0; c < temperature.length; c++) {
                if (temperature[c] < 0
                        && block.ice[c % lanes].isFrozen(temperature[c], water[c], slotSalt[c + lanes])) {
                    conductivity[c] = block.ice[c % lanes].conductivity(temperature[c], water[c], slotSalt[c + lanes]);
                }
            }
        }
        computeConductances();
    }

    private void computeConductances() {
        for (int i = 1; i < cells; i++) {
            int b = i * lanes;
            double up = upper[i - 1];
            double lo = lower[i];
            double area = block.grid.area(i);
            for (int l = 0; l < lanes; l++) {
                double ka = conductivity[b - lanes + l];
                double kb = conductivity[b + l];
                conductance[b + l] = area * block.factor[l] * ka * kb / (block.extent[l] * (up * kb + lo * ka));
            }
        }
        for (int f = 0; f < block.faces; f++) {
            int b = block.faceCell(f) * lanes;
            double distance = block.faceDistance(f);
            for (int l = 0; l < lanes; l++) {
                faceConductance[f * lanes + l] = block.factor[l] * conductivity[b + l] / (block.extent[l] * distance);
            }
        }
    }

    /** Sets the net flow of heat into each cell by conduction alone; faces are added by the caller. */
    void computeNet() {
        Arrays.fill(net, 0);
        for (int i = 1; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                double flow = conductance[b + l] * (temperature[b + l] - temperature[b - lanes + l]);
                net[b - lanes + l] += flow;
                net[b + l] -= flow;
            }
        }
    }

    /**
     * Factors the systems of this step from the state of the last evaluation.
     *
     * @param rate 1 / (h gamma) of each lane [1/s]
     * @param faceSlope derivative of the heat flow at each face by the cell temperature, not positive [W/(m2.K)]
     */
    void factor(double[] rate, double[] faceSlope) {
        System.arraycopy(conductance, 0, baseConductance, 0, conductance.length);
        System.arraycopy(capacity, 0, baseCapacity, 0, capacity.length);
        double[] mass = block.dryMass;
        for (int i = 0; i < cells; i++) {
            int b = i * lanes;
            boolean hasUpper = i < cells - 1;
            for (int l = 0; l < lanes; l++) {
                double diagonal = mass[b + l] * baseCapacity[b + l] * rate[l];
                if (hasUpper) {
                    diagonal += baseConductance[b + lanes + l];
                }
                if (i > 0) {
                    diagonal += baseConductance[b + l];
                }
                work[b + l] = diagonal;
            }
        }
        for (int f = 0; f < block.faces; f++) {
            int b = block.faceCell(f) * lanes;
            for (int l = 0; l < lanes; l++) {
                work[b + l] -= faceSlope[f * lanes + l];
            }
        }
        for (int l = 0; l < lanes; l++) {
            pivot[l] = 1 / work[l];
        }
        for (int i = 1; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                double g = baseConductance[b + l];
                pivot[b + l] = 1 / (work[b + l] - g * g * pivot[b - lanes + l]);
            }
        }
    }

    /**
     * Solves one stage.
     *
     * @param right right-hand side, flows in W/m2; overwritten
     * @param stage receives the stage vector U of the enthalpy [J/kg]
     * @param faceTemperature receives the stage change of the temperature of the cell at each face [K]
     */
    void solve(double[] right, double[] stage, double[] faceTemperature) {
        for (int i = 1; i < cells; i++) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                right[b + l] += baseConductance[b + l] * pivot[b - lanes + l] * right[b - lanes + l];
            }
        }
        int last = (cells - 1) * lanes;
        for (int l = 0; l < lanes; l++) {
            right[last + l] *= pivot[last + l];
        }
        for (int i = cells - 2; i >= 0; i--) {
            int b = i * lanes;
            for (int l = 0; l < lanes; l++) {
                right[b + l] = (right[b + l] + baseConductance[b + lanes + l] * right[b + lanes + l]) * pivot[b + l];
            }
        }
        for (int f = 0; f < block.faces; f++) {
            System.arraycopy(right, block.faceCell(f) * lanes, faceTemperature, f * lanes, lanes);
        }
        for (int c = 0; c < stage.length; c++) {
            stage[c] = right[c] * baseCapacity[c];
        }
    }

    /** Heat capacity at the base of the step [J/(kg.K)]. */
    double baseCapacity(int index) {
        return baseCapacity[index];
    }
}
