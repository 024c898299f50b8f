package io.github.saltfront.learn;

import io.github.saltfront.plan.Draw;
import io.github.saltfront.plan.KitchenForecast;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Uncertainty;
import io.github.saltfront.units.Checks;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Executor;

/**
 * How the gain of mass in one soak depends on the speed of salt in the meat, by the model of the plans, and how far everything else
 * moves it.
 *
 * @param places points of the speed in standard normal variates of its band, rising, one step apart [-]
 * @param gains gain at each point per raw mass of the edible part [kg/kg]
 * @param spread standard deviation of the gain by everything else [kg/kg]
 */
public record GainResponse(List<Double> places, List<Double> gains, double spread) {
    private static final int FARTHEST = 4;
    private static final int OTHERS = 60;

    /** Standard deviation of what no draw holds: liquid that clings to the meat on the scale [kg/kg]; estimate. */
    private static final double CLINGING = 0.007;

    /** Copies the lists and checks them. */
    public GainResponse {
        places = List.copyOf(places);
        gains = List.copyOf(gains);
        Checks.require(
                places.size() >= 2 && places.size() == gains.size(),
                "a response of gains needs as many gains as places, got " + gains.size() + " and " + places.size()
                        + ".");
        gains.forEach(gain -> Checks.requireFinite("gain", gain));
        Checks.requirePositive("spread of the gain", spread, "kg/kg");
    }

    /**
     * Computes the response of a soak.
     *
     * @param request the request, without anything learned
     * @param salting the soak
     * @param executor where to run parts of the ensemble; has no effect on the numbers
     * @param seed seed of everything else
     * @return the response
     */
    public static GainResponse of(Request request, Plan.SaltPlan salting, Executor executor, long seed) {
        List<Double> places = new ArrayList<>();
        List<Draw> draws = new ArrayList<>();
        for (int i = -FARTHEST; i <= FARTHEST; i++) {
            places.add((double) i);
            draws.add(Draw.MEDIAN.with(Uncertainty.DIFFUSIVITY, i));
        }
        List<Double> gains = Arrays.stream(KitchenForecast.gains(request, salting, draws, executor))
                .boxed()
                .toList();
        List<Draw> others = Draw.ensemble(OTHERS, seed).stream()
                .map(draw -> draw.with(Uncertainty.DIFFUSIVITY, 0))
                .toList();
        double[] other = KitchenForecast.gains(request, salting, others, executor);
        double mean = Arrays.stream(other).average().orElse(0);
        double square = Arrays.stream(other).map(g -> (g - mean) * (g - mean)).sum() / (other.length - 1);
        return new GainResponse(places, gains, Math.sqrt(square + CLINGING * CLINGING));
    }

    /** Gain at a speed [kg/kg], by straight lines between points. */
    double gain(double place) {
        int i = Math.max(0, Math.min(places.size() - 2, (int) Math.floor(place - places.get(0))));
        double share = place - places.get(i);
        return gains.get(i) + share * (gains.get(i + 1) - gains.get(i));
    }
}
