package io.github.saltfront.learn;

import io.github.saltfront.catalog.Appliance;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SaltedAlready;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.shape.Shape;
import io.github.saltfront.units.Temperature;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Requests to learn with. */
final class LearnRequests {
    private LearnRequests() {}

    /** Breasts of 28 mm in 6 % brine for 4 h, everything said that could be learned left open. */
    static Request breast(Appliance appliance, double settingC) {
        return request(appliance, settingC, Request.Treatment.WET_BRINE);
    }

    /** The same without salt, quick to plan. */
    static Request plain(Appliance appliance, double settingC) {
        return request(appliance, settingC, Request.Treatment.NONE);
    }

    private static Request request(Appliance appliance, double settingC, Request.Treatment treatment) {
        Catalog catalog = Catalog.load();
        Cut cut = catalog.cuts().get("chicken-breast-skinless");
        MeatModel meat = MeatModel.of(cut);
        return new Request(
                new Request.Food(Optional.of(cut), meat, new Shape.Slab(0.028), 4, 0.22, 1, Temperature.fromCelsius(4)),
                new Request.Salting(
                        treatment,
                        catalog.salts().get("table-salt-fine"),
                        OptionalDouble.of(0.06),
                        OptionalDouble.of(4 * 3600),
                        Request.Liquor.USUAL,
                        Temperature.fromCelsius(4),
                        SaltedAlready.plain(meat.nativeSalt())),
                new Request.Cook(appliance, Temperature.fromCelsius(settingC), 0),
                new Request.Taste(0.0075, OptionalDouble.empty(), OptionalDouble.empty()),
                new Request.Timing(ZonedDateTime.parse("2026-11-28T12:00+01:00"), Optional.empty()),
                new Request.Guests(4, false, Kitchen.HOME),
                List.of(
                        new Request.Assumption("thickness", "28 mm", "usual"),
                        new Request.Assumption("refrigerator", "4 °C", "the official limit"),
                        new Request.Assumption("taste.salt", "0.75 %", "usual")));
    }
}
