package io.github.saltfront.safety;

/**
 * How fast heat works against bacteria at a temperature, per second.
 *
 * <p>What one unit is, is up to the implementation: a share of a required hold for {@link HoldTable}, one decimal (log10)
 * reduction for {@link FirstOrderKill}. The rate is never negative and never falls with temperature. Implementations are
 * immutable, allocate nothing and may be called once a cell and step.
 */
public interface LethalRate {
    /**
     * Returns the rate at a temperature.
     *
     * @param kelvin temperature [K]; NaN gives NaN
     * @return rate, not negative [1/s]
     */
    double rate(double kelvin);

    /**
     * Returns the mean rate while the temperature runs linearly in time from one value to another.
     *
     * <pre>mean = 1/(to - from) integral of rate(T) dT</pre>
     *
     * Exact for the implementations of this package, so that a coarse step loses nothing.
     *
     * @param from temperature at the start of the step [K]
     * @param to temperature at its end [K]
     * @return mean rate, not negative [1/s]
     */
    double meanRate(double from, double to);
}
