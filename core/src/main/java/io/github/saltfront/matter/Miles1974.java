package io.github.saltfront.matter;

import io.github.saltfront.units.Temperature;

/**
 * Ice from the freezing point depression of an ideal solution, with bound water set apart.
 *
 * <pre>ice = (W - Wb) (1 - tf/t), t and tf in degrees Celsius</pre>
 *
 * <p>With the molar mass that fits the freezing point, the equation of Chen 1985 is the same.
 *
 * @see "miles1974, as given in ashrae2006, chapter 9, ice fraction"
 */
public final class Miles1974 implements IceModel {
    /** Key of the source in the bibliography. */
    public static final String SOURCE = "miles1974";

    @Override
    public double ice(double temperature, double freezingPoint, double waterPerSolids, double boundPerSolids) {
        double free = waterPerSolids - boundPerSolids;
        if (temperature >= freezingPoint || free <= 0) {
            return 0;
        }
        return free * (1 - Temperature.toCelsius(freezingPoint) / Temperature.toCelsius(temperature));
    }

    @Override
    public double derivative(double temperature, double freezingPoint, double waterPerSolids, double boundPerSolids) {
        double free = waterPerSolids - boundPerSolids;
        if (temperature > freezingPoint || free <= 0) {
            return 0;
        }
        double t = Temperature.toCelsius(temperature);
        return free * Temperature.toCelsius(freezingPoint) / (t * t);
    }
}
