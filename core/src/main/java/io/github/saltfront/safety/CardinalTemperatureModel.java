package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;

/**
 * Growth by the cardinal-temperature model with inflection.
 *
 * <pre>
 * mu = mu_opt (T - Tmax)(T - Tmin)^2 / ((Topt - Tmin) [(Topt - Tmin)(T - Topt) - (Topt - Tmax)(Topt + Tmin - 2 T)])
 * </pre>
 *
 * Zero outside Tmin to Tmax.
 *
 * @param optimumRate rate at the optimum [log10/s]
 * @param minimum lowest temperature of growth [K]
 * @param optimum temperature of fastest growth [K]
 * @param maximum highest temperature of growth [K]
 * @see "form: Rosso et al. 1993, from memory; parameters in growth_models.csv"
 */
public record CardinalTemperatureModel(double optimumRate, double minimum, double optimum, double maximum)
        implements GrowthModel {
    /** Checks the order of the temperatures. */
    public CardinalTemperatureModel {
        Checks.requirePositive("optimum rate", optimumRate, "log10/s");
        Checks.require(
                minimum < optimum && optimum < maximum,
                "cardinal temperatures must rise, got " + minimum + ", " + optimum + " and " + maximum + " K.");
    }

    @Override
    public double rate(double kelvin) {
        if (!(minimum < kelvin && kelvin < maximum)) {
            return 0;
        }
        double span = optimum - minimum;
        double numerator = (kelvin - maximum) * (kelvin - minimum) * (kelvin - minimum);
        double denominator =
                span * (span * (kelvin - optimum) - (optimum - maximum) * (optimum + minimum - 2 * kelvin));
        return optimumRate * numerator / denominator;
    }
}
