package io.github.saltfront.app.export;

import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.MeasuredHold;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.live.Spread;
import io.github.saltfront.safety.CannotTell;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.units.Temperature;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Outlooks of a cook under the names of the file contract. A time that does not come within the horizon is null. */
public final class OutlookJson {
    /** Name of the contract. */
    public static final String SCHEMA = "saltfront.outlook";

    /** Version of the contract; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    private static final double CELSIUS = -Temperature.ZERO_CELSIUS;
    private static final double MINUTE = 1.0 / 60;

    private OutlookJson() {}

    /**
     * Returns the outlooks as nested maps and lists.
     *
     * @param setup what the cook started from
     * @param outlooks what is known and expected at some moments, in order
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> of(LiveSetup setup, List<Outlook> outlooks, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        json.put("name", setup.meat().name());
        json.put("wished_core_c", Temperature.toCelsius(setup.wished()));
        json.put("planned_pull_temperature_c", Temperature.toCelsius(setup.pull()));
        json.put("outlooks", outlooks.stream().map(OutlookJson::outlook).toList());
        return json;
    }

    /**
     * Returns one outlook.
     *
     * @param outlook what is known and expected at a moment
     * @return content for a JSON writer
     */
    public static Map<String, Object> outlook(Outlook outlook) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("time_min", outlook.time() / 60);
        json.put("phase", word(outlook.phase()));
        json.put("pull", pull(outlook.pull()));
        json.put("inferred", inferred(outlook.inferred()));
        json.put("measured", outlook.measured().map(m -> measured(m, outlook)).orElseGet(Map::of));
        json.put("plate", plate(outlook.plate()));
        json.put(
                "warnings",
                outlook.warnings().stream()
                        .map(w -> Map.of("kind", word(w.kind()), "text", w.text()))
                        .toList());
        Map<String, Object> quality = new LinkedHashMap<>();
        quality.put("readings_used", outlook.quality().used());
        quality.put("readings_left_out", outlook.quality().leftOut());
        quality.put("effective_members", outlook.quality().effectiveCurves());
        quality.put("surprises", outlook.quality().shocks());
        quality.put("oven_error_k", spread(outlook.quality().ovenError(), 1, 0));
        json.put("quality", quality);
        Map<String, Object> official = new LinkedHashMap<>();
        official.put("temperature_c", Temperature.toCelsius(outlook.minimum().temperature()));
        official.put("rest_min", outlook.minimum().rest() / 60);
        official.put("edition", ConsumerMinimum.EDITION);
        json.put("consumer_minimum", official);
        return json;
    }

    private static Map<String, Object> pull(Outlook.Pull pull) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("advice", word(pull.advice()));
        json.put("time_left_min", spread(pull.timeLeft(), MINUTE, 0));
        json.put("core_then_c", spread(pull.coreThen(), 1, CELSIUS));
        pull.probeThen().ifPresent(probe -> json.put("probe_then_c", Temperature.toCelsius(probe)));
        json.put("safe_share_now_pct", 100 * pull.safeShareNow());
        put(json, "safe_in_min", pull.safeIn() / 60);
        json.put("peak_if_now_c", spread(pull.peakIfNow(), 1, CELSIUS));
        return json;
    }

    private static Map<String, Object> inferred(Outlook.Inferred inferred) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("proof", "prediction");
        json.put("coldest_spot_c", spread(inferred.core(), 1, CELSIUS));
        inferred.probeAbove().ifPresent(above -> json.put("probe_above_coldest_k", spread(above, 1, 0)));
        json.put("hold_share_pct", spread(inferred.holdShare(), 100, 0));
        json.put("hold_time_left_min", spread(inferred.holdTimeLeft(), MINUTE, 0));
        return json;
    }

    private static Map<String, Object> measured(MeasuredHold measured, Outlook outlook) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("proof", "measurement");
        json.put("met", measured.isShown());
        json.put("verdict", verdict(measured));
        json.put("headline", measured.verdict().headline());
        json.put("reasons", measured.verdict().reasons());
        json.put("note", measured.verdict().kitchenNote());
        json.put(
                "hold_share_pct",
                Math.min(100, Math.floor(100 * measured.lethality().share())));
        outlook.measuredTimeLeft().ifPresent(left -> json.put("hold_time_left_min", spread(left, MINUTE, 0)));
        return json;
    }

    private static String verdict(MeasuredHold measured) {
        if (measured.isShown()) {
            return "met";
        }
        return measured.verdict() instanceof CannotTell ? "cannot-tell" : "not-met";
    }

    private static Map<String, Object> plate(Outlook.Plate plate) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("peak_core_temperature_c", spread(plate.peak(), 1, CELSIUS));
        json.put("time_to_peak_min", plate.timeToPeak() / 60);
        json.put("rest_min", plate.rest() / 60);
        json.put("mass_loss_pct", spread(plate.massLoss(), 100, 0));
        json.put("served_in_min", spread(plate.servedIn(), MINUTE, 0));
        plate.behind().ifPresent(behind -> json.put("behind_min", finite(behind / 60)));
        return json;
    }

    private static Map<String, Object> spread(Spread spread, double factor, double offset) {
        Spread shown = spread.scaled(factor, offset);
        Map<String, Object> json = new LinkedHashMap<>();
        put(json, "p05", shown.p05());
        put(json, "p25", shown.p25());
        put(json, "p50", shown.p50());
        put(json, "p75", shown.p75());
        put(json, "p95", shown.p95());
        return json;
    }

    @SuppressWarnings("NullAway") // the JSON writer takes null for a number that is not there
    private static void put(Map<String, Object> json, String name, double value) {
        json.put(name, finite(value));
    }

    private static @Nullable Double finite(double value) {
        return Double.isFinite(value) ? Double.valueOf(value) : null;
    }

    /**
     * Returns a constant as the contract names it.
     *
     * @param constant the constant
     * @return such as {@code not-safe-yet}
     */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
