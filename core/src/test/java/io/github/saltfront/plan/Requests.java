package io.github.saltfront.plan;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.units.Temperature;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Requests for tests; invented. */
final class Requests {
    static final ZonedDateTime NOON = ZonedDateTime.of(2026, 11, 28, 12, 0, 0, 0, ZoneId.of("Europe/Paris"));
    private static final Catalog CATALOG = Catalog.load();

    private Requests() {}

    /** The same with heat and core as given, so that only the salting is left open. */
    static Request withGivenHeat(Request request) {
        return new Request(
                request.food(),
                request.salting(),
                request.cook(),
                request.taste(),
                request.timing(),
                request.guests(),
                request.equipment(),
                List.of());
    }

    /** The same in a kitchen that has other things. */
    static Request equipped(Request request, Request.Equipment equipment) {
        return new Request(
                request.food(),
                request.salting(),
                request.cook(),
                request.taste(),
                request.timing(),
                request.guests(),
                equipment,
                request.assumptions());
    }

    static Request of(
            String id,
            String applianceId,
            Request.Treatment treatment,
            OptionalDouble saltingTime,
            Optional<ZonedDateTime> serve,
            List<Wish> wishes) {
        Cut cut = CATALOG.cuts().get(id);
        double mass = cut.size().mass().typical();
        Appliance appliance = CATALOG.appliances().get(applianceId);
        return new Request(
                new Request.Food(
                        Optional.of(cut),
                        MeatModel.of(cut),
                        PieceShape.of(cut, mass, OptionalDouble.empty()),
                        2,
                        mass,
                        1 - cut.traits().boneShare(),
                        Temperature.fromCelsius(4)),
                new Request.Salting(
                        treatment,
                        CATALOG.salts().get("table-salt-fine"),
                        OptionalDouble.empty(),
                        saltingTime,
                        Request.Liquor.USUAL,
                        Temperature.fromCelsius(4),
                        SaltedAlready.of(Optional.of(cut), cut.composition().nativeSalt(), SaltedAlready.Label.NONE)),
                new Request.Cook(appliance, appliance.temperature().typical(), 0),
                new Request.Taste(0.0075, OptionalDouble.empty(), OptionalDouble.empty(), wishes),
                new Request.Timing(NOON, serve),
                new Request.Guests(2, false, Kitchen.HOME),
                List.of(
                        new Request.Assumption("setting", "usual", "not said"),
                        new Request.Assumption("taste.core", "usual", "not said")));
    }
}
