package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.PhysicalConstants;
import io.github.saltfront.units.Temperature;

/**
 * How salt and water move in the meat.
 *
 * <pre>D(T) = D5 exp[-(Ea/R) (1/T - 1/278.15 K)]</pre>
 *
 * @param diffusivity diffusion coefficient of salt in the meat at 5 degrees Celsius, D5 [m2/s]
 * @param activationEnergy Ea [J/mol], not negative
 * @param partition salt per water in the meat over salt per water in the brine at equilibrium [-]
 * @param waterRatio diffusion coefficient of excess water over that of salt [-], not negative
 * @param skinResistance resistance of skin and fat to salt, on the basis of salt per water [m2.s/kg], not negative
 */
public record SaltProperties(
        double diffusivity, double activationEnergy, double partition, double waterRatio, double skinResistance) {

    private static final double REFERENCE = Temperature.fromCelsius(5);

    /** Checks the values. */
    public SaltProperties {
        Checks.requireInRange("diffusion coefficient of salt", diffusivity, 1e-14, 1e-6, "m2/s");
        Checks.requireInRange("activation energy", activationEnergy, 0, 200_000, "J/mol");
        Checks.requireInRange("partition coefficient", partition, 0.01, 10, "-");
        Checks.requireInRange("ratio of water to salt diffusion", waterRatio, 0, 100, "-");
        Checks.requireInRange("resistance of the skin", skinResistance, 0, 1e15, "m2.s/kg");
    }

    /**
     * Returns the diffusion coefficient at a temperature.
     *
     * @param kelvin temperature [K]
     * @return D [m2/s]
     */
    public double diffusivityAt(double kelvin) {
        return diffusivity * Math.exp(-activationEnergy / PhysicalConstants.MOLAR_GAS * (1 / kelvin - 1 / REFERENCE));
    }
}
