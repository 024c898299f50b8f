package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;

/**
 * What a face of the piece meets: heat by convection or contact, radiation, and water that evaporates.
 *
 * <pre>q = h (T_m - T_s) + eps sigma (T_w^4 - T_s^4) - m L(T_s)
 * m = f h M_w / (M_a c_p Le^(2/3)) ln[(p - p_v) / (p - a_w p_sat(T_s))]</pre>
 *
 * with the medium temperature T_m, wall temperature T_w, wet share f of the surface and vapor pressure p_v of the medium.
 * The logarithm is the Stefan-flow form; the mass coefficient follows from the Chilton-Colburn analogy (Incropera, DeWitt,
 * Fundamentals of Heat and Mass Transfer, chapter 6), Le^(2/3) = 0.88.
 *
 * <p>Against hot metal or fat, water leaves by boiling instead: while the flux of the medium exceeds what the meat takes up at the
 * boiling temperature of its surface, the face stays there and the rest of the heat drives vapor off,
 *
 * <pre>q = min[ h' (T_m - T_s), what holds T_s = T_b(a_w) ],  m L = h' (T_m - T_b) - q,  1/h' = 1/h + d/k</pre>
 *
 * with the thickness d of the crust, which is the water that has boiled out of the meat over what a volume of it holds, and its
 * conductivity k: a front that recedes behind a dry crust (Farkas, Singh, Rumsey 1996, from memory; Vijayan, Singh 1998).
 *
 * @param mediumTemperature temperature of air, liquid, plate or wall contact [K]
 * @param coefficient heat transfer coefficient, contact conductance or liquid film [W/(m2.K)], a profile so that a turn can
 *     change it
 * @param emissivity effective emissivity toward walls at the temperature of the medium [-], from 0 to 1
 * @param wetShare share of the surface that evaporates freely [-], from 0 to 1; 0 in liquids and bags
 * @param vaporPressure vapor pressure of the medium [Pa]
 * @param totalPressure ambient pressure [Pa]
 * @param boilingTemperature temperature at which free water on the face boils [K]; positive infinity where water leaves by
 *     evaporation, if at all
 */
public record FaceCondition(
        TimeProfile mediumTemperature,
        TimeProfile coefficient,
        double emissivity,
        double wetShare,
        double vaporPressure,
        double totalPressure,
        double boilingTemperature) {

    /** Checks the values. */
    public FaceCondition {
        Checks.requireInRange("emissivity", emissivity, 0, 1, "-");
        Checks.requireInRange("wet share of the surface", wetShare, 0, 1, "-");
        Checks.requireInRange("ambient pressure", totalPressure, 10_000, 500_000, "Pa");
        Checks.requireInRange("vapor pressure of the medium", vaporPressure, 0, totalPressure, "Pa");
        Checks.require(
                boilingTemperature >= 300,
                "boiling temperature must be at least 300 K, got " + boilingTemperature + " K.");
        Checks.require(
                boilingTemperature == Double.POSITIVE_INFINITY || emissivity == 0 && wetShare == 0,
                "a face that boils has neither radiation nor evaporation of its own.");
    }

    /**
     * Creates a face from which water leaves by evaporation, if at all.
     *
     * @param mediumTemperature temperature of the medium [K]
     * @param coefficient heat transfer coefficient [W/(m2.K)]
     * @param emissivity effective emissivity [-]
     * @param wetShare share of the surface that evaporates freely [-]
     * @param vaporPressure vapor pressure of the medium [Pa]
     * @param totalPressure ambient pressure [Pa]
     */
    public FaceCondition(
            TimeProfile mediumTemperature,
            TimeProfile coefficient,
            double emissivity,
            double wetShare,
            double vaporPressure,
            double totalPressure) {
        this(
                mediumTemperature,
                coefficient,
                emissivity,
                wetShare,
                vaporPressure,
                totalPressure,
                Double.POSITIVE_INFINITY);
    }

    /**
     * Returns contact with metal or fat that may be hotter than water boils.
     *
     * @param temperature temperature of plate or fat [K]
     * @param coefficient contact conductance or heat transfer coefficient [W/(m2.K)]
     * @param totalPressure ambient pressure [Pa]
     * @param boilingTemperature temperature at which water boils there [K]
     * @return the condition
     */
    public static FaceCondition boiling(
            TimeProfile temperature, TimeProfile coefficient, double totalPressure, double boilingTemperature) {
        return new FaceCondition(temperature, coefficient, 0, 0, 0, totalPressure, boilingTemperature);
    }

    /**
     * Returns plain convection or contact at constant temperature and coefficient.
     *
     * @param temperature temperature of the medium [K]
     * @param coefficient heat transfer coefficient [W/(m2.K)]
     * @return the condition
     */
    public static FaceCondition convection(double temperature, double coefficient) {
        return convection(TimeProfile.constant(temperature), coefficient);
    }

    /**
     * Returns plain convection or contact with a medium whose temperature changes.
     *
     * @param temperature temperature of the medium [K]
     * @param coefficient heat transfer coefficient [W/(m2.K)]
     * @return the condition
     */
    public static FaceCondition convection(TimeProfile temperature, double coefficient) {
        Checks.requireInRange("heat transfer coefficient", coefficient, 0, 1e12, "W/(m2.K)");
        return new FaceCondition(temperature, TimeProfile.constant(coefficient), 0, 0, 0, 101325);
    }

    /** Returns whether temperature and coefficient stay what they are. */
    boolean isSteady() {
        return mediumTemperature instanceof TimeProfile.Constant && coefficient instanceof TimeProfile.Constant;
    }

    /** Returns whether heat comes by a term that is linear in the surface temperature alone. */
    boolean isLinear() {
        return emissivity == 0 && wetShare == 0 && !boils();
    }

    /** Returns whether water may boil at the face. */
    boolean boils() {
        return boilingTemperature < Double.POSITIVE_INFINITY;
    }

    /** Returns whether water may leave through the face. */
    boolean isDrying() {
        return wetShare > 0 || boils();
    }
}
