package io.github.saltfront.units;

/** Universal constants in SI units. */
public final class PhysicalConstants {
    /** Molar gas constant [J/(mol.K)] (CODATA 2018, exact). */
    public static final double MOLAR_GAS = 8.31446261815324;

    /** Stefan-Boltzmann constant [W/(m2.K4)] (CODATA 2018). */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** Standard atmosphere [Pa] (ISO 2533:1975, exact). */
    public static final double STANDARD_ATMOSPHERE = 101325.0;

    /** Molar mass of water [kg/mol] (IAPWS R6-95). */
    public static final double MOLAR_MASS_WATER = 0.018015268;

    /** Molar mass of sodium chloride [kg/mol] (IUPAC atomic weights). */
    public static final double MOLAR_MASS_SODIUM_CHLORIDE = 0.0584428;

    private PhysicalConstants() {}
}
