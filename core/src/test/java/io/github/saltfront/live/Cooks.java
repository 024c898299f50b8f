package io.github.saltfront.live;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.plan.CookStages;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SaltedAlready;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.units.Temperature;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/** Planned cooks that tests follow. */
final class Cooks {
    private static final Catalog CATALOG = Catalog.load();
    private static final ZonedDateTime NOON = ZonedDateTime.parse("2026-11-28T12:00Z");
    private static final Map<String, LiveSetup> KNOWN = new ConcurrentHashMap<>();

    private Cooks() {}

    static LiveSetup breast() {
        return setup("chicken-breast-skinless", "oven-fan", 0.25, OptionalDouble.empty());
    }

    static LiveSetup loin() {
        return setup("pork-loin-roast", "oven-conventional", 1.2, OptionalDouble.empty());
    }

    static LiveSetup steak() {
        return setup("beef-ribeye-steak", "oven-low", 0.5, OptionalDouble.of(Temperature.fromCelsius(58)));
    }

    static LiveSetup setup(String cut, String appliance, double mass, OptionalDouble core) {
        return KNOWN.computeIfAbsent(
                cut + " " + appliance + " " + mass,
                key -> LiveSetup.of(Planner.plan(request(cut, appliance, mass, core), Runnable::run, 1)));
    }

    private static Request request(String id, String applianceId, double mass, OptionalDouble core) {
        Cut cut = CATALOG.cuts().get(id);
        MeatModel meat = MeatModel.of(cut);
        var appliance = CATALOG.appliances().get(applianceId);
        return new Request(
                new Request.Food(
                        Optional.of(cut),
                        meat,
                        PieceShape.of(cut, mass, OptionalDouble.empty()),
                        1,
                        mass,
                        1 - cut.traits().boneShare(),
                        Temperature.fromCelsius(4)),
                new Request.Salting(
                        Request.Treatment.NONE,
                        CATALOG.salts().get("table-salt-fine"),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Request.Liquor.USUAL,
                        Temperature.fromCelsius(4),
                        SaltedAlready.plain(meat.nativeSalt())),
                new Request.Cook(appliance, appliance.temperature().typical(), 0),
                new Request.Taste(0.01, core, OptionalDouble.empty()),
                new Request.Timing(NOON, Optional.empty()),
                new Request.Guests(2, false, Kitchen.HOME),
                List.of());
    }

    static boolean isBath(LiveSetup setup) {
        return new CookStages(setup.request(), setup.rule()).isBath();
    }

    static Plan plan(LiveSetup setup) {
        return Planner.plan(setup.request(), Runnable::run, 1);
    }
}
