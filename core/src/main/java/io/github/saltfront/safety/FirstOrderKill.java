package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;

/**
 * Log-linear kill with one D value and one z value: decimal reductions per second.
 *
 * <pre>rate(T) = 10^((T - T_ref)/z) / D</pre>
 *
 * Assumes no shoulder and no tail, and holds only in the range of temperatures in which D and z were measured; the class
 * computes outside it without a flag, because the range belongs to the source. It informs and never decides: the official
 * tables come from curves with a shoulder, and one line through them asks for too little time in places.
 *
 * @param dValue time for one decimal reduction at the reference temperature [s]
 * @param referenceTemperature reference temperature [K]
 * @param zValue rise of temperature that makes D ten times shorter [K]
 */
public record FirstOrderKill(double dValue, double referenceTemperature, double zValue) implements LethalRate {
    private static final double LN10 = Math.log(10);

    /** Checks the values. */
    public FirstOrderKill {
        Checks.requirePositive("D value", dValue, "s");
        Checks.requireInRange("reference temperature", referenceTemperature, 250, 450, "K");
        Checks.requirePositive("z value", zValue, "K");
    }

    @Override
    public double rate(double kelvin) {
        return Math.exp(LN10 * (kelvin - referenceTemperature) / zValue) / dValue;
    }

    @Override
    public double meanRate(double from, double to) {
        // start from the hotter end: the ratio then stays within (0, 1] and cannot overflow
        double hotter = Math.max(from, to);
        return rate(hotter) * PiecewiseExponential.expm1Ratio(-LN10 * Math.abs(to - from) / zValue);
    }

    /**
     * Returns the decimal reductions along a history.
     *
     * @param history temperature of the place in question over time
     * @return log10 reductions, not negative [-]
     */
    public double logReduction(TemperatureHistory history) {
        return history.integrate(this);
    }
}
