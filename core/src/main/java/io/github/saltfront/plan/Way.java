package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One way of doing what a request asks for: what the request leaves open, filled in.
 *
 * @param treatment how it is salted, never {@code AUTO}
 * @param strength strength of a brine as salt per mass of water [kg/kg], if it is not the usual one
 * @param time time of salting [s], if it is not the one the treatment works out
 * @param appliance appliance of the main heat
 * @param setting setting of the appliance [K]
 * @param core wished core temperature [K], if it is not the usual one
 */
public record Way(
        Request.Treatment treatment,
        OptionalDouble strength,
        OptionalDouble time,
        Appliance appliance,
        double setting,
        OptionalDouble core) {
    private static final double HOUR = 3600;

    /** Times of dry salting that are tried [s]: an hour, an afternoon, a night, a day, two days. */
    private static final double[] DRY_TIMES = {HOUR, 4 * HOUR, 12 * HOUR, 24 * HOUR, 48 * HOUR};

    /** Strength of a fast brine as salt per mass of water [kg/kg]; common practice, no source. */
    private static final double FAST_STRENGTH = 0.10;

    /** Salting alone: what ways with the same salting share. */
    record Salting(Request.Treatment treatment, OptionalDouble strength, OptionalDouble time) {}

    /** Heat alone: what ways with the same heat share. */
    record Heat(Appliance appliance, double setting, OptionalDouble core) {
        /** Whether a cook is done in this heat, whatever the wished core. */
        boolean isOf(Request.Cook cook) {
            return appliance.id().equals(cook.appliance().id()) && Math.abs(setting - cook.setting()) < 1;
        }
    }

    Salting salting() {
        return new Salting(treatment, strength, time);
    }

    Heat heat() {
        return new Heat(appliance, setting, core);
    }

    /**
     * Returns the request that asks for just this way.
     *
     * @param request the request that leaves it open
     * @return the request
     */
    public Request applyTo(Request request) {
        return with(with(request, salting()), heat());
    }

    static Request with(Request request, Salting way) {
        Request.Salting old = request.salting();
        return request.salted(new Request.Salting(
                way.treatment(),
                old.salt(),
                way.strength().isPresent() ? way.strength() : old.strength(),
                way.time().isPresent() ? way.time() : old.time(),
                old.liquor(),
                old.refrigerator(),
                old.label()));
    }

    static Request with(Request request, Heat way) {
        Request.Taste taste = request.taste();
        Request.Cook cook = request.cook();
        return request.cookedBy(new Request.Cook(way.appliance(), way.setting(), cook.altitude(), cook.sequence()))
                .tasting(new Request.Taste(
                        taste.rawSalt(),
                        way.core().isPresent() ? way.core() : taste.core(),
                        taste.sodiumLimit(),
                        taste.wishes()));
    }

    /** All ways of salting that a request leaves open; those that cannot be are dropped when they are tried. */
    static List<Salting> saltings(Request request) {
        List<Salting> ways = new ArrayList<>();
        for (Request.Treatment treatment : treatments(request)) {
            boolean timeIsOpen = request.salting().time().isEmpty();
            boolean strengthIsOpen = request.salting().strength().isEmpty();
            if (treatment == Request.Treatment.DRY_SALT && timeIsOpen) {
                for (double time : DRY_TIMES) {
                    ways.add(new Salting(treatment, OptionalDouble.empty(), OptionalDouble.of(time)));
                }
                continue;
            }
            ways.add(new Salting(treatment, OptionalDouble.empty(), OptionalDouble.empty()));
            if (treatment == Request.Treatment.WET_BRINE && timeIsOpen && strengthIsOpen) {
                ways.add(new Salting(treatment, OptionalDouble.of(FAST_STRENGTH), OptionalDouble.empty()));
            }
        }
        return ways;
    }

    private static List<Request.Treatment> treatments(Request request) {
        Request.Treatment wish = request.salting().treatment();
        if (wish != Request.Treatment.AUTO) {
            return List.of(wish);
        }
        boolean liquidIsNamed = request.salting().liquor().liquid().isPresent();
        boolean strongIsRefused = request.salting().label().verdict() == SaltedAlready.Verdict.REFUSE;
        boolean weighs = request.taste().sodiumLimit().isPresent();
        List<Request.Treatment> all = new ArrayList<>(List.of(Request.Treatment.NONE, Request.Treatment.SURFACE_SALT));
        all.add(Request.Treatment.DRY_SALT);
        if (!liquidIsNamed && !strongIsRefused && !weighs) {
            all.add(Request.Treatment.WET_BRINE);
            all.add(Request.Treatment.EQUILIBRIUM);
        }
        return all;
    }

    /**
     * All ways of heating that a request leaves open: other cores at the setting of the request, other settings and other appliances
     * with its core. All together would be too many to try.
     */
    static List<Heat> heats(Request request) {
        Appliance appliance = request.cook().appliance();
        Set<Double> settings = new LinkedHashSet<>(List.of(request.cook().setting()));
        if (isOpen(request, "setting")) {
            settings.add(appliance.temperature().low());
            settings.add(appliance.temperature().high());
        }
        Set<OptionalDouble> cores = new LinkedHashSet<>(List.of(request.taste().core()));
        if (isOpen(request, "taste.core")) {
            request.food().cut().ifPresent(cut -> {
                cores.add(OptionalDouble.of(cut.qualityCore().low()));
                cores.add(OptionalDouble.of(cut.qualityCore().high()));
            });
        }
        List<Heat> ways = new ArrayList<>();
        for (OptionalDouble core : cores) {
            ways.add(new Heat(appliance, request.cook().setting(), core));
        }
        OptionalDouble asked = request.taste().core();
        for (double setting : settings) {
            if (setting != request.cook().setting()) {
                ways.add(new Heat(appliance, setting, asked));
            }
        }
        request.equipment().others().forEach(other -> ways.add(new Heat(other, usualSetting(request, other), asked)));
        return ways;
    }

    /** What an appliance is usually set to; a bath to the wished core. */
    private static double usualSetting(Request request, Appliance appliance) {
        double typical = appliance.temperature().typical();
        if (!CookStages.isBath(appliance)) {
            return typical;
        }
        double usual =
                request.food().cut().map(cut -> cut.qualityCore().typical()).orElse(typical);
        double core = request.taste().core().orElse(usual);
        return Math.min(
                appliance.temperature().high(), Math.max(appliance.temperature().low(), core));
    }

    private static boolean isOpen(Request request, String field) {
        return request.assumptions().stream().anyMatch(a -> a.field().equals(field));
    }
}
