package io.github.saltfront.matter;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;

/**
 * A property as a quadratic of the temperature in degrees Celsius: {@code a0 + a1 t + a2 t^2}. The coefficients are in
 * SI units of the property, per degree Celsius; a vectorized kernel may use them directly.
 *
 * @param a0 value at 0 degrees Celsius [unit of the property]
 * @param a1 linear coefficient [unit of the property per K]
 * @param a2 quadratic coefficient [unit of the property per K2]
 * @param lowest lowest published temperature [K]
 * @param highest highest published temperature [K]
 */
public record QuadraticInCelsius(double a0, double a1, double a2, double lowest, double highest) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a coefficient is not finite or the range is empty
     */
    public QuadraticInCelsius {
        Checks.requireFinite("coefficient a0", a0);
        Checks.requireFinite("coefficient a1", a1);
        Checks.requireFinite("coefficient a2", a2);
        Checks.require(lowest < highest, "range must not be empty, got " + lowest + " to " + highest + " K.");
    }

    /**
     * Returns the value at a temperature; outside the published range the polynomial is extrapolated, see
     * {@link #isPublishedAt}.
     *
     * @param temperature temperature [K]
     * @return value [unit of the property]
     */
    public double value(double temperature) {
        return atCelsius(Temperature.toCelsius(temperature));
    }

    /**
     * Returns the integral over temperature from 0 degrees Celsius.
     *
     * @param temperature upper limit [K]
     * @return integral [unit of the property times K]
     */
    public double integral(double temperature) {
        return integralToCelsius(Temperature.toCelsius(temperature));
    }

    /**
     * Tells whether the source claims the polynomial at a temperature.
     *
     * @param temperature temperature [K]
     * @return true inside the published range
     */
    public boolean isPublishedAt(double temperature) {
        return lowest <= temperature && temperature <= highest;
    }

    double atCelsius(double t) {
        return a0 + t * (a1 + t * a2);
    }

    double integralToCelsius(double t) {
        return t * (a0 + t * (a1 / 2 + t * a2 / 3));
    }
}
