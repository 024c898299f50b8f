package io.github.saltfront.app.follow;

import io.github.saltfront.app.export.OutlookJson;
import io.github.saltfront.app.follow.Follower.Look;
import io.github.saltfront.app.store.StoredReading;
import io.github.saltfront.live.LiveCook;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.live.Spread;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Cooks under the names of the JSON interface. */
final class CookJson {
    private static final Phrases PHRASES = Phrases.of(CookJson.class);

    static final String SCHEMA = "saltfront.cook";
    private static final int SCHEMA_VERSION = 1;

    /** Points of a probe that a page draws; more of them are thinned out. */
    private static final int MOST_POINTS = 600;

    private CookJson() {}

    /** All that a page needs to show a cook. */
    static Map<String, Object> whole(RunningCook cook, String programVersion, List<Map<String, Object>> sources) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        json.putAll(head(cook));
        json.put("request", FollowJson.stored(cook.stored().request()));
        json.put("readings", readings(cook));
        json.put("sources", sources);
        json.putAll(told(cook));
        json.putAll(look(cook));
        return json;
    }

    /** A line of the list of cooks. */
    static Map<String, Object> head(RunningCook cook) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", cook.id());
        json.put("title", cook.stored().title());
        json.put("status", cook.status());
        json.put("started", iso(cook.stored().started()));
        json.put("speed", cook.stored().speed());
        cook.outlook().ifPresent(outlook -> {
            json.put("advice", OutlookJson.word(outlook.pull().advice()));
            if (Double.isFinite(outlook.pull().timeLeft().p50())) {
                json.put("time_left_min", outlook.pull().timeLeft().p50() / 60);
            }
            json.put("as_of_min", outlook.time() / 60);
        });
        json.put("open_alarms", cook.openAlarms().stream().map(CookJson::alarm).toList());
        return json;
    }

    /** What was told of a cook, and its alarms. */
    static Map<String, Object> told(RunningCook cook) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", cook.id());
        json.put("status", cook.status());
        cook.failure().ifPresent(message -> json.put("problem", message));
        json.put("events", events(cook));
        json.put("alarms", cook.alarms().stream().map(CookJson::alarm).toList());
        json.put("fahrenheit", cook.fahrenheit());
        return json;
    }

    /** What is expected of a cook; empty as long as nothing is computed. */
    static Map<String, Object> look(RunningCook cook) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", cook.id());
        json.put("status", cook.status());
        json.put("time_min", Math.max(0, cook.clock().at(cook.kitchen().now())) / 60);
        if (Double.isFinite(cook.clock().end())) {
            json.put("clock_ends_min", cook.clock().end() / 60);
        }
        Optional<Look> seen = cook.look();
        if (seen.isEmpty()) {
            return json;
        }
        Look look = seen.get();
        LiveSetup setup = look.setup();
        json.put("name", setup.meat().name());
        json.put("wished_core_c", Temperature.toCelsius(setup.wished()));
        json.put("planned_pull_temperature_c", Temperature.toCelsius(setup.pull()));
        json.put("outlook", OutlookJson.outlook(look.outlook()));
        json.putAll(clockTimes(cook, look.outlook()));
        json.put("fan", look.fan().stream().map(CookJson::fanPoint).toList());
        if (look.heats().size() > 1) {
            json.put("heats", heats(look));
        }
        json.put("left_out", look.leftOut().stream().map(CookJson::leftOut).toList());
        json.put("alarms", cook.alarms().stream().map(CookJson::alarm).toList());
        return json;
    }

    private static List<Map<String, Object>> heats(Look look) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (LiveCook.Heat heat : look.heats()) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("words", heat(heat));
            json.put("main", heat.main());
            heat.begin().ifPresent(begin -> json.put("begin_min", begin / 60));
            json.put("told", heat.told());
            json.put("on", list.size() + 1 == look.heat());
            list.add(json);
        }
        return list;
    }

    /** A heat in a few words. */
    static String heat(LiveCook.Heat heat) {
        return PHRASES.say("at-c", heat.appliance(), Temperature.toCelsius(heat.setting()));
    }

    private static Map<String, Object> clockTimes(RunningCook cook, Outlook outlook) {
        Map<String, Object> json = new LinkedHashMap<>();
        if (outlook.phase() == Outlook.Phase.HEAT) {
            json.put("take_out_at", times(cook, outlook.time(), outlook.pull().timeLeft()));
        }
        json.put("serve_at", times(cook, outlook.time(), outlook.plate().servedIn()));
        return json;
    }

    private static Map<String, Object> times(RunningCook cook, double time, Spread left) {
        Map<String, Object> json = new LinkedHashMap<>();
        putTime(json, "p05", cook, time + left.p05());
        putTime(json, "p50", cook, time + left.p50());
        putTime(json, "p95", cook, time + left.p95());
        return json;
    }

    private static void putTime(Map<String, Object> json, String name, RunningCook cook, double time) {
        if (Double.isFinite(time)) {
            json.put(name, iso(cook.clock().whenAt(time)));
        }
    }

    private static Map<String, Object> fanPoint(LiveCook.FanPoint point) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("time_min", point.time() / 60);
        json.put("core_c", celsius(point.core()));
        point.probe().ifPresent(probe -> json.put("probe_c", celsius(probe)));
        return json;
    }

    /** Quantiles of 5, 25, 50, 75 and 95 %. */
    private static List<Double> celsius(Spread spread) {
        return List.of(
                tenth(spread.p05()),
                tenth(spread.p25()),
                tenth(spread.p50()),
                tenth(spread.p75()),
                tenth(spread.p95()));
    }

    private static double tenth(double kelvin) {
        return Math.rint(10 * Temperature.toCelsius(kelvin)) / 10;
    }

    private static Map<String, Object> leftOut(Follower.LeftOut reading) {
        return Map.of(
                "probe", reading.probe(),
                "time_min", reading.time() / 60,
                "temperature_c", tenth(reading.temperature()),
                "why", reading.why());
    }

    private static Map<String, Object> alarm(CookAlarm alarm) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", alarm.number());
        json.put("kind", alarm.kind().word());
        json.put("urgent", alarm.kind().isUrgent());
        json.put("text", alarm.text());
        json.put("time_min", alarm.time() / 60);
        json.put("raised", iso(alarm.raised()));
        alarm.acknowledged().ifPresent(time -> json.put("acknowledged", iso(time)));
        return json;
    }

    /** What was done and said; where readings come from is told apart. */
    static List<Map<String, Object>> events(RunningCook cook) {
        return cook.events().stream()
                .filter(event -> !event.kind().equals(MqttSettings.KIND))
                .map(CookJson::event)
                .toList();
    }

    static Map<String, Object> event(ToldEvent event) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", event.number());
        json.put("kind", event.kind());
        json.put("time_min", event.time() / 60);
        json.put("words", event.words());
        if (event.kind().equals(RunningCook.ENDING)) {
            json.put("ending", event.content());
        }
        return json;
    }

    /** Readings that just came. */
    static Map<String, Object> fresh(List<StoredReading> readings, Set<String> fahrenheit) {
        List<Map<String, Object>> list = new ArrayList<>();
        for (StoredReading reading : readings) {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("probe", reading.probe());
            json.put("role", reading.role());
            json.put("point", point(reading, fahrenheit));
            list.add(json);
        }
        return Map.of("readings", list);
    }

    private static List<Double> point(StoredReading reading, Set<String> fahrenheit) {
        String unit = fahrenheit.contains(reading.probe()) ? "F" : reading.unit();
        double celsius = Temperature.toCelsius(ReadingCheck.kelvin(reading.value(), unit));
        return List.of(reading.time() / 60_000.0, Math.rint(100 * celsius) / 100);
    }

    private static List<Map<String, Object>> readings(RunningCook cook) {
        Set<String> fahrenheit = cook.fahrenheit();
        Map<String, List<StoredReading>> probes = new TreeMap<>();
        cook.readings()
                .forEach(reading -> probes.computeIfAbsent(reading.probe(), name -> new ArrayList<>())
                        .add(reading));
        List<Map<String, Object>> json = new ArrayList<>();
        probes.forEach((probe, list) -> {
            list.sort(java.util.Comparator.comparingLong(StoredReading::time));
            int step = Math.max(1, (list.size() + MOST_POINTS - 1) / MOST_POINTS);
            List<List<Double>> points = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                if (i % step == 0 || i == list.size() - 1) {
                    points.add(point(list.get(i), fahrenheit));
                }
            }
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("probe", probe);
            one.put("role", list.get(0).role());
            one.put("count", list.size());
            one.put("points", points);
            json.add(one);
        });
        return json;
    }

    static String iso(long time) {
        return Instant.ofEpochMilli(time).toString();
    }
}
