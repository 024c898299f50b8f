package io.github.saltfront.app.export;

import io.github.saltfront.plan.Nearest;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.units.Temperature;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What can be done instead of a request that cannot be met, as changes of its keys. */
public final class OffersJson {
    /** Name of the contract. */
    public static final String SCHEMA = "saltfront.offers";

    /** Version of the contract; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    private OffersJson() {}

    /**
     * Returns the offers as nested maps and lists.
     *
     * @param request the request that cannot be met
     * @param offers what can be done instead
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(Request request, List<Nearest> offers, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        json.put("offers", offers.stream().map(offer -> offer(request, offer)).toList());
        return json;
    }

    private static Map<String, Object> offer(Request request, Nearest offer) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("words", offer.words());
        json.put("changes", changes(request, offer.request()));
        Plan plan = offer.plan();
        json.put("served", time(plan.clock().get(plan.clock().size() - 1).time()));
        json.put("pull_temperature_c", celsius(plan.cooking().pullTemperature()));
        json.put("mass_loss_pct", Math.round(100 * plan.result().massLoss().median()));
        return json;
    }

    /** The keys of the request file that differ; a group replaces the keys it names. */
    private static Map<String, Object> changes(Request from, Request to) {
        Map<String, Object> changes = new LinkedHashMap<>();
        to.timing()
                .serve()
                .filter(serve -> !from.timing().serve().equals(to.timing().serve()))
                .ifPresent(serve -> changes.put("serve", time(serve)));
        if (from.salting().treatment() != to.salting().treatment()) {
            String treatment =
                    to.salting().treatment().name().toLowerCase(Locale.ROOT).replace('_', '-');
            changes.put("salting", Map.of("treatment", treatment));
        }
        if (from.cook().setting() != to.cook().setting()) {
            changes.put("setting", celsius(to.cook().setting()) + " °C");
        }
        if (!from.taste().core().equals(to.taste().core())) {
            to.taste().core().ifPresent(core -> changes.put("taste", Map.of("core", celsius(core) + " °C")));
        }
        return changes;
    }

    private static String time(ZonedDateTime time) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }

    private static double celsius(double kelvin) {
        return Math.rint(Temperature.toCelsius(kelvin) * 10) / 10;
    }
}
