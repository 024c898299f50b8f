package io.github.saltfront.quality;

import io.github.saltfront.units.Checks;

/**
 * First-order change whose rate follows Arrhenius.
 * <pre>dX/dt = k (1 - X),  k = k_ref exp(-(Ea/R) (1/T - 1/T_ref))</pre>
 * X is the changed share [-], from 0 to 1. Any temperature above zero is accepted; whoever supplies the constants knows
 * the range in which they were measured.
 *
 * @param referenceRate rate constant at the reference temperature, k_ref [1/s]
 * @param referenceTemperature T_ref [K]
 * @param activationEnergy Ea [J/mol]
 */
public record FirstOrderKinetics(double referenceRate, double referenceTemperature, double activationEnergy) {
    /** Gas constant that the fitted constants go with [J/(mol.K)]; the last digits matter where Ea/(R T) is near 100. */
    static final double GAS = 8.314;

    /** Checks that all three are positive. */
    public FirstOrderKinetics {
        Checks.requirePositive("rate constant at the reference temperature", referenceRate, "1/s");
        Checks.requirePositive("reference temperature", referenceTemperature, "K");
        Checks.requirePositive("activation energy", activationEnergy, "J/mol");
    }

    /**
     * Rate constant [1/s].
     *
     * @param temperature temperature [K]
     * @return k at the temperature [1/s]
     */
    public double rateConstant(double temperature) {
        Checks.requirePositive("temperature", temperature, "K");
        return referenceRate * Math.exp(-activationEnergy / GAS * (1 / temperature - 1 / referenceTemperature));
    }

    /**
     * Time after which half of what was native is changed, at constant temperature [s].
     *
     * @param temperature temperature [K]
     * @return half-life [s]
     */
    public double halfLife(double temperature) {
        return timeTo(0.5, temperature);
    }

    /**
     * Time until a share is changed, from none, at constant temperature [s].
     *
     * @param extent changed share, from 0 up to but without 1 [-]
     * @param temperature temperature [K]
     * @return time [s]
     */
    public double timeTo(double extent, double temperature) {
        Checks.requireInRange("extent", extent, 0, Math.nextDown(1.0), "-");
        return -Math.log1p(-extent) / rateConstant(temperature);
    }

    /**
     * Changed share after a step at constant temperature [-]; exact for any length of step.
     *
     * @param extent changed share before the step [-], 0 to 1
     * @param temperature temperature during the step [K]
     * @param duration length of the step [s], not negative
     * @return changed share after the step [-]
     */
    public double advance(double extent, double temperature, double duration) {
        Checks.requireInRange("extent", extent, 0, 1, "-");
        Checks.requireInRange("duration", duration, 0, Double.MAX_VALUE, "s");
        return 1 - (1 - extent) * Math.exp(-rateConstant(temperature) * duration);
    }
}
