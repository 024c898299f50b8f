package io.github.saltfront.transport;

import java.util.Arrays;

/** Temperatures, heat capacities, conductivities and conduction between cells of a three-dimensional grid. */
final class SolidHeat {
    private final SolidState state;
    private final SolidLines lines;
    private final HeatProperties heat;
    private final boolean constant;
    private final boolean mayFreeze;

    /** Temperature of each cell in degrees Celsius, of the last evaluation. */
    final double[] temperature;

    /** Heat capacity per dry mass [J/(kg.K)], of the last evaluation. */
    final double[] capacity;

    /** Conductivity [W/(m.K)], of the last evaluation. */
    final double[] conductivity;

    /** Conductance to the next cell in each direction [W/K], of the last evaluation. */
    final double[][] conductance;

    /** Net flow of heat into each cell [W]. */
    final double[] net;

    SolidHeat(SolidState state) {
        this.state = state;
        lines = state.lines;
        heat = state.heat;
        int n = state.cells;
        temperature = new double[n];
        capacity = new double[n];
        conductivity = new double[n];
        conductance = new double[3][n];
        net = new double[n];
        InitialState start = state.piece.start();
        mayFreeze = heat.ice().isFrozen(-200, start.water(), start.salt());
        constant = isConstant();
        if (constant) {
            Arrays.fill(capacity, heat.dryCapacity(0));
            Arrays.fill(conductivity, heat.conductivity(0));
            lines.computeConductances(conductivity, conductance);
        }
    }

    private boolean isConstant() {
        boolean zero = heat.dryCapacity(1) == 0 && heat.dryCapacity(2) == 0;
        zero &= heat.conductivity(1) == 0 && heat.conductivity(2) == 0;
        zero &= heat.conductivityOfWater(0) == 0 && heat.conductivityOfWater(1) == 0;
        for (int power = 0; power < 3; power++) {
            zero &= heat.waterCapacity(power) == 0 && heat.saltCapacity(power) == 0;
        }
        return zero && !mayFreeze;
    }

    boolean isConstantInTime() {
        return constant;
    }

    boolean canFreeze() {
        return mayFreeze;
    }

    void takeTemperatures() {
        System.arraycopy(state.temperature, 0, temperature, 0, temperature.length);
        System.arraycopy(state.capacity, 0, capacity, 0, capacity.length);
    }

    /** Sets temperature and heat capacity; two Newton steps as in {@link HeatTerms}. */
    void computeTemperatures(double[] enthalpy, double[] water, double[] salt) {
        if (constant) {
            double inverse = 1 / heat.dryCapacity(0);
            for (int c = 0; c < temperature.length; c++) {
                temperature[c] = enthalpy[c] * inverse;
            }
            return;
        }
        double d0 = heat.dryCapacity(0);
        double d1 = heat.dryCapacity(1);
        double d2 = heat.dryCapacity(2);
        double e0 = heat.waterCapacity(0);
        double e1 = heat.waterCapacity(1);
        double e2 = heat.waterCapacity(2);
        double g0 = heat.saltCapacity(0);
        double g1 = heat.saltCapacity(1);
        double g2 = heat.saltCapacity(2);
        for (int c = 0; c < temperature.length; c++) {
            double w = water[c];
            double s = salt[c];
            double c0 = d0 + w * e0 + s * g0;
            double c1 = d1 + w * e1 + s * g1;
            double c2 = d2 + w * e2 + s * g2;
            double h = enthalpy[c];
            double t = h / c0;
            t -= (t * (c0 + t * (0.5 * c1 + t * (c2 * (1.0 / 3)))) - h) / (c0 + t * (c1 + t * c2));
            t -= (t * (c0 + t * (0.5 * c1 + t * (c2 * (1.0 / 3)))) - h) / (c0 + t * (c1 + t * c2));
            temperature[c] = t;
            capacity[c] = c0 + t * (c1 + t * c2);
        }
        if (mayFreeze) {
            computeFrozen(enthalpy, water, salt);
        }
    }

    private void computeFrozen(double[] enthalpy, double[] water, double[] salt) {
        for (int c = 0; c < temperature.length; c++) {
            if (temperature[c] < 0 && heat.ice().isFrozen(temperature[c], water[c], salt[c])) {
                temperature[c] = heat.ice().temperature(enthalpy[c], water[c], salt[c]);
                capacity[c] = heat.ice().heatCapacity(temperature[c], water[c], salt[c]);
            }
        }
    }

    /** Sets conductivities and conductances from the temperatures of the last evaluation. */
    void computeConductances(double[] water, double[] salt) {
        if (constant) {
            return;
        }
        double k0 = heat.conductivity(0);
        double k1 = heat.conductivity(1);
        double k2 = heat.conductivity(2);
        double l0 = heat.conductivityOfWater(0);
        double l1 = heat.conductivityOfWater(1);
        double raw = heat.rawWater();
        for (int c = 0; c < temperature.length; c++) {
            double t = temperature[c];
            conductivity[c] = k0 + t * (k1 + t * k2) + (water[c] - raw) * (l0 + t * l1);
        }
        for (int c = 0; mayFreeze && c < temperature.length; c++) {
            if (temperature[c] < 0 && heat.ice().isFrozen(temperature[c], water[c], salt[c])) {
                conductivity[c] = heat.ice().conductivity(temperature[c], water[c], salt[c]);
            }
        }
        lines.computeConductances(conductivity, conductance);
    }

    void computeNet() {
        lines.computeNet(temperature, conductance, net);
    }
}
