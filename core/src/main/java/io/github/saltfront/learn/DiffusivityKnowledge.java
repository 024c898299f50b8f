package io.github.saltfront.learn;

import io.github.saltfront.catalog.SaltDiffusivity;
import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * What was learned about the speed of salt in one kind of meat from how much it gained in the brine. A gain tells little where
 * everything else moves it as much; then the interval stays nearly as wide as before, and says so.
 *
 * @param factor diffusion coefficient over that of the catalog [-]
 * @param spread what is left of the geometric standard deviation [-], above 1
 */
public record DiffusivityKnowledge(LearnedValue factor, double spread) {
    /** Largest factor, and one over the smallest, that plans use [-]; our limit, the catalog's own band is a factor of 3. */
    public static final double LARGEST_FACTOR = 4;

    /** Least geometric standard deviation that plans keep [-]: animals differ; estimate. */
    private static final double LEAST_SPREAD = 1.25;

    private static final double FARTHEST = 4;
    private static final int POINTS = 401;

    /**
     * A soak whose gain was weighed.
     *
     * @param response what the model says
     * @param gain gain per raw mass of the edible part [kg/kg]
     */
    public record WeighedSoak(GainResponse response, double gain) {
        /** Checks the gain. */
        public WeighedSoak {
            Checks.requireInRange("gain of mass", gain, -0.3, 0.5, "kg/kg");
        }
    }

    /**
     * Learns.
     *
     * @param diffusivity the catalog's diffusion coefficient
     * @param soaks weighed soaks, at least one
     * @return what was learned
     */
    public static DiffusivityKnowledge learn(SaltDiffusivity diffusivity, List<WeighedSoak> soaks) {
        Checks.require(!soaks.isEmpty(), "learning the speed of salt needs a weighed soak, got none.");
        GridPosterior posterior = GridPosterior.of(-FARTHEST, FARTHEST, POINTS, place -> {
            double log = -0.5 * place * place;
            for (WeighedSoak soak : soaks) {
                double apart = (soak.gain() - soak.response().gain(place))
                        / soak.response().spread();
                log -= 0.5 * apart * apart;
            }
            return log;
        });
        LearnedValue place = posterior.learned(soaks.size());
        double base = diffusivity.geometricStandardDeviation();
        LearnedValue factor = new LearnedValue(
                Math.pow(base, place.value()), Math.pow(base, place.low()), Math.pow(base, place.high()), soaks.size());
        return new DiffusivityKnowledge(
                factor, Math.max(Math.min(LEAST_SPREAD, base), Math.pow(base, Math.min(1, posterior.deviation()))));
    }

    /**
     * Returns the diffusion coefficient with what was learned, within {@link #LARGEST_FACTOR}.
     *
     * @param diffusivity that of the catalog
     * @return that of this kind of meat
     */
    public SaltDiffusivity applied(SaltDiffusivity diffusivity) {
        double limited = Math.max(1 / LARGEST_FACTOR, Math.min(LARGEST_FACTOR, factor.value()));
        return new SaltDiffusivity(
                diffusivity.id(),
                diffusivity.name(),
                diffusivity.medianAt5C() * limited,
                spread,
                diffusivity.activationEnergy(),
                diffusivity.provenance());
    }
}
