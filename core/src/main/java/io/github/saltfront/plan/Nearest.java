package io.github.saltfront.plan;

import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;

/**
 * What can be done instead of a request that cannot be met: one wish is let go at a time, and each offer is planned in full
 * before it is made.
 *
 * @param words what is let go, as a whole sentence
 * @param request the request that can be met
 * @param plan its plan
 */
public record Nearest(String words, Request request, Plan plan) {
    private static final Phrases PHRASES = Phrases.of(Nearest.class);

    /** Tried after the time at which it would be ready if one began now [min]. */
    private static final List<Integer> MORE_MINUTES = List.of(1, 15, 60);

    /**
     * Looks for what can be done instead.
     *
     * @param request the request that cannot be met
     * @param executor where to run parts
     * @param seed seed of the ensemble
     * @return the nearest requests that can be met, the nearest first; empty if letting go of one wish does not help
     */
    public static List<Nearest> of(Request request, Executor executor, long seed) {
        List<Nearest> offers = new ArrayList<>();
        if (request.timing().serve().isPresent()) {
            later(request, executor, seed).ifPresent(offers::add);
        }
        if (request.salting().treatment() != Request.Treatment.SURFACE_SALT) {
            Request salted = Way.with(
                    untimed(request),
                    new Way.Salting(Request.Treatment.SURFACE_SALT, OptionalDouble.empty(), OptionalDouble.empty()));
            offer(offers, PHRASES.say("salt-the-outside-just-before"), salted, executor, seed);
        }
        double hottest = request.cook().appliance().temperature().high();
        if (request.cook().setting() < hottest) {
            offer(
                    offers,
                    PHRASES.say("set-the-appliance-to", QuantityFormat.temperature(hottest, KitchenUnits.METRIC)),
                    Way.with(request, new Way.Heat(request.cook().appliance(), hottest, OptionalDouble.empty())),
                    executor,
                    seed);
        }
        request.food().cut().ifPresent(cut -> {
            double usual = cut.qualityCore().typical();
            if (request.taste().core().orElse(usual) > usual) {
                offer(
                        offers,
                        PHRASES.say("aim-at-a-core-of", QuantityFormat.temperature(usual, KitchenUnits.METRIC)),
                        Way.with(
                                request,
                                new Way.Heat(
                                        request.cook().appliance(),
                                        request.cook().setting(),
                                        OptionalDouble.of(usual))),
                        executor,
                        seed);
            }
        });
        return List.copyOf(offers);
    }

    /** As soon as it can be is planned first, and then that time itself, in case the clock needs a little more. */
    private static Optional<Nearest> later(Request request, Executor executor, long seed) {
        Optional<Plan> soonest = plan(later(request, Optional.empty()), executor, seed);
        for (int minutes : soonest.isPresent() ? MORE_MINUTES : List.<Integer>of()) {
            List<Plan.Step> clock = soonest.get().clock();
            ZonedDateTime ready = clock.get(clock.size() - 1)
                    .time()
                    .plusMinutes(minutes)
                    .withSecond(0)
                    .withNano(0);
            Request served = later(request, Optional.of(ready));
            Optional<Plan> plan = plan(served, executor, seed);
            if (plan.isPresent()) {
                return Optional.of(
                        new Nearest(PHRASES.say("serve-at-or-later", ready.toLocalDateTime()), served, plan.get()));
            }
        }
        return Optional.empty();
    }

    private static void offer(List<Nearest> offers, String words, Request request, Executor executor, long seed) {
        plan(request, executor, seed).ifPresent(plan -> offers.add(new Nearest(words, request, plan)));
    }

    private static Optional<Plan> plan(Request request, Executor executor, long seed) {
        try {
            Plan plan = Planner.plan(request, executor, seed);
            return plan.cooking().verdict().isMet() ? Optional.of(plan) : Optional.empty();
        } catch (PlanningException e) {
            return Optional.empty();
        }
    }

    private static Request later(Request request, Optional<ZonedDateTime> serve) {
        return request.at(new Request.Timing(request.timing().now(), serve));
    }

    /** Without a time and a strength that only salting ahead has a use for. */
    private static Request untimed(Request request) {
        Request.Salting old = request.salting();
        return request.salted(new Request.Salting(
                old.treatment(),
                old.salt(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                old.liquor(),
                old.refrigerator(),
                old.label()));
    }
}
