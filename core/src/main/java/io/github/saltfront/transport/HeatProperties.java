package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/**
 * Heat properties of one piece in the form the solver works with: polynomials in the temperature t in degrees Celsius.
 *
 * <pre>
 * heat capacity per kg of dry solids   c = (d0 + w e0 + s g0) + (d1 + w e1 + s g1) t + (d2 + w e2 + s g2) t^2   [J/(kg.K)]
 * conductivity                         k = k0 + k1 t + k2 t^2 + (w - w0) (l0 + l1 t)                             [W/(m.K)]
 * </pre>
 *
 * with w and s the water and salt per kg of dry solids [kg/kg] and w0 the raw water content. In the cold a {@link FrozenState}
 * takes over where there is one.
 *
 * <p>Immutable.
 */
public final class HeatProperties {
    private final double dryDensity;
    private final double rawWater;
    private final double[] dryCapacity;
    private final double[] waterCapacity;
    private final double[] saltCapacity;
    private final double[] conductivity;
    private final double[] conductivityOfWater;
    private final FrozenState ice;

    /**
     * Creates the properties.
     *
     * @param dryDensity dry solids per volume of raw meat [kg/m3]
     * @param rawWater water of the raw meat per dry solids, w0 [kg/kg]
     * @param dryCapacity d0, d1, d2; copied
     * @param waterCapacity e0, e1, e2; copied
     * @param saltCapacity g0, g1, g2; copied
     * @param conductivity k0, k1, k2; copied
     * @param conductivityOfWater l0, l1; copied
     * @param ice what happens in the cold; {@link FrozenState#NONE} for none
     */
    public HeatProperties(
            double dryDensity,
            double rawWater,
            double[] dryCapacity,
            double[] waterCapacity,
            double[] saltCapacity,
            double[] conductivity,
            double[] conductivityOfWater,
            FrozenState ice) {
        this.dryDensity = Checks.requirePositive("dry solids per volume", dryDensity, "kg/m3");
        this.rawWater = Checks.requireInRange("water per dry solids", rawWater, 0, 100, "kg/kg");
        this.dryCapacity = checked(dryCapacity, 3, "heat capacity of dry solids");
        this.waterCapacity = checked(waterCapacity, 3, "heat capacity of water");
        this.saltCapacity = checked(saltCapacity, 3, "heat capacity of salt");
        this.conductivity = checked(conductivity, 3, "conductivity");
        this.conductivityOfWater = checked(conductivityOfWater, 2, "effect of water on conductivity");
        this.ice = ice;
    }

    /**
     * Returns constant properties, as used in exact solutions.
     *
     * @param density density of the meat [kg/m3]
     * @param heatCapacity heat capacity of the meat [J/(kg.K)]
     * @param conductivity conductivity [W/(m.K)]
     * @param waterPerDry water per dry solids [kg/kg]
     * @return the properties
     */
    public static HeatProperties constant(
            double density, double heatCapacity, double conductivity, double waterPerDry) {
        Checks.requirePositive("density", density, "kg/m3");
        Checks.requirePositive("heat capacity", heatCapacity, "J/(kg.K)");
        Checks.requirePositive("conductivity", conductivity, "W/(m.K)");
        double wet = 1 + waterPerDry;
        return new HeatProperties(
                density / wet,
                waterPerDry,
                new double[] {heatCapacity * wet, 0, 0},
                new double[3],
                new double[3],
                new double[] {conductivity, 0, 0},
                new double[2],
                FrozenState.NONE);
    }

    /**
     * Returns the properties with the conductivity of the unfrozen meat multiplied by a factor.
     *
     * @param factor factor [-]
     * @return the properties
     */
    public HeatProperties withConductivityFactor(double factor) {
        Checks.requireInRange("factor on the conductivity", factor, 0.1, 10, "-");
        double[] scaled = new double[3];
        double[] scaledByWater = new double[2];
        for (int k = 0; k < 3; k++) {
            scaled[k] = factor * conductivity[k];
        }
        for (int k = 0; k < 2; k++) {
            scaledByWater[k] = factor * conductivityOfWater[k];
        }
        return new HeatProperties(
                dryDensity, rawWater, dryCapacity, waterCapacity, saltCapacity, scaled, scaledByWater, ice);
    }

    /**
     * Returns the properties with another amount of dry solids per volume.
     *
     * @param density dry solids per volume of raw meat [kg/m3]
     * @return the properties
     */
    public HeatProperties withDryDensity(double density) {
        return new HeatProperties(
                density, rawWater, dryCapacity, waterCapacity, saltCapacity, conductivity, conductivityOfWater, ice);
    }

    /**
     * Returns the properties with a constant heat capacity and without ice.
     *
     * @param perDry heat capacity of the wet meat per dry solids [J/(kg.K)]
     * @return the properties
     */
    public HeatProperties withConstantCapacity(double perDry) {
        Checks.requirePositive("heat capacity", perDry, "J/(kg.K)");
        return new HeatProperties(
                dryDensity,
                rawWater,
                new double[] {perDry, 0, 0},
                new double[3],
                new double[3],
                conductivity,
                conductivityOfWater,
                FrozenState.NONE);
    }

    /**
     * Returns the properties with a constant conductivity and without ice.
     *
     * @param value conductivity [W/(m.K)]
     * @return the properties
     */
    public HeatProperties withConstantConductivity(double value) {
        Checks.requirePositive("conductivity", value, "W/(m.K)");
        return new HeatProperties(
                dryDensity,
                rawWater,
                dryCapacity,
                waterCapacity,
                saltCapacity,
                new double[] {value, 0, 0},
                new double[2],
                FrozenState.NONE);
    }

    private static double[] checked(double[] coefficients, int length, String what) {
        Checks.require(
                coefficients.length == length,
                "coefficients of the " + what + " must be " + length + ", got " + coefficients.length + ".");
        for (double c : coefficients) {
            Checks.requireFinite("coefficient of the " + what, c);
        }
        return coefficients.clone();
    }

    /** Returns the dry solids per volume of raw meat [kg/m3]. */
    public double dryDensity() {
        return dryDensity;
    }

    /** Returns the water of the raw meat per dry solids [kg/kg]. */
    public double rawWater() {
        return rawWater;
    }

    double dryCapacity(int power) {
        return dryCapacity[power];
    }

    double waterCapacity(int power) {
        return waterCapacity[power];
    }

    double saltCapacity(int power) {
        return saltCapacity[power];
    }

    double conductivity(int power) {
        return conductivity[power];
    }

    double conductivityOfWater(int power) {
        return conductivityOfWater[power];
    }

    FrozenState ice() {
        return ice;
    }

    /**
     * Returns the enthalpy per kg of dry solids above that of the liquid state at 0 degrees Celsius [J/kg].
     *
     * @param celsius temperature in degrees Celsius
     * @param water water per dry solids [kg/kg]
     * @param salt salt per dry solids [kg/kg]
     * @return enthalpy [J/kg]
     */
    public double enthalpy(double celsius, double water, double salt) {
        if (ice.isFrozen(celsius, water, salt)) {
            return ice.enthalpy(celsius, water, salt);
        }
        double sum = 0;
        for (int k = 2; k >= 0; k--) {
            double c = dryCapacity[k] + water * waterCapacity[k] + salt * saltCapacity[k];
            sum = celsius * (sum + c / (k + 1));
        }
        return sum;
    }
}
