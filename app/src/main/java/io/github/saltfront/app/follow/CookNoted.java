package io.github.saltfront.app.follow;

import io.github.saltfront.app.notebook.CookReadings;
import io.github.saltfront.app.store.StoredReading;
import io.github.saltfront.units.Temperature;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A cook that is over, as the notebook takes it.
 *
 * @param content what a cook file holds, with its request
 * @param readings readings of the thermometer in the meat, if there were any
 */
public record CookNoted(Map<String, Object> content, Optional<CookReadings> readings) {
    private static final String CORE = "core";

    /** What is said of the salt at the stove, on the scale of the tasting sheet. */
    private static final Map<String, String> SALT = Map.of(
            "too-mild", "slightly too weak", "just-right", "just about right", "too-salty", "slightly too strong");

    static CookNoted of(RunningCook cook, Map<String, Object> ending) {
        List<StoredReading> core = core(cook);
        Set<String> fahrenheit = cook.fahrenheit();
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("title", cook.stored().title());
        content.put(
                "cooked",
                Instant.ofEpochMilli(cook.stored().started())
                        .atZone(ZoneId.systemDefault())
                        .toLocalDate()
                        .toString());
        Map<String, Object> measured = new LinkedHashMap<>();
        put(measured, "raw", ending.get("weight_before_g"));
        put(measured, "cooked", ending.get("weight_after_g"));
        OptionalDouble out = cook.events().stream()
                .filter(event -> event.kind().equals(ToldEvent.TAKEN_OUT))
                .mapToDouble(ToldEvent::time)
                .findFirst();
        if (out.isPresent()) {
            long at = Math.round(1000 * out.getAsDouble());
            core.stream()
                    .filter(reading -> reading.time() <= at)
                    .reduce((a, b) -> b)
                    .ifPresent(last -> measured.put(
                            "pull",
                            Map.of(
                                    "reading", celsius(last, fahrenheit) + " °C",
                                    "time", Math.round(out.getAsDouble()) + " s")));
            core.stream()
                    .filter(reading -> reading.time() > at)
                    .mapToDouble(reading -> celsius(reading, fahrenheit))
                    .max()
                    .ifPresent(peak -> measured.put("peak", peak + " °C"));
        }
        if (!measured.isEmpty()) {
            content.put("measured", measured);
        }
        content.put("tags", List.of("followed"));
        String notes = notes(ending);
        if (!notes.isEmpty()) {
            content.put("notes", notes);
        }
        Optional.ofNullable(SALT.get(String.valueOf(ending.get("salt"))))
                .ifPresent(said -> content.put("ratings", List.of(Map.of("taster", "the cook", "saltiness", said))));
        content.put("request", FollowJson.stored(cook.stored().request()));
        return new CookNoted(content, readings(core, fahrenheit));
    }

    /** What has no place of its own in the notebook. */
    private static String notes(Map<String, Object> ending) {
        List<String> words = new ArrayList<>();
        Optional.ofNullable(ending.get("juice")).ifPresent(said -> words.add("Juice: " + said + "."));
        Optional.ofNullable(ending.get("doneness")).ifPresent(said -> words.add("Middle: " + said + "."));
        Optional.ofNullable(ending.get("note")).ifPresent(said -> words.add(String.valueOf(said)));
        return String.join(" ", words);
    }

    private static void put(Map<String, Object> measured, String key, @org.jspecify.annotations.Nullable Object grams) {
        if (grams != null) {
            measured.put(key, grams + " g");
        }
    }

    private static List<StoredReading> core(RunningCook cook) {
        Optional<String> probe = cook.readings().stream()
                .filter(reading -> reading.role().equals(CORE))
                .map(StoredReading::probe)
                .findFirst();
        return cook.readings().stream()
                .filter(reading -> probe.isPresent() && reading.probe().equals(probe.get()) && reading.time() >= 0)
                .sorted(Comparator.comparingLong(StoredReading::time))
                .toList();
    }

    private static double celsius(StoredReading reading, Set<String> fahrenheit) {
        String unit = fahrenheit.contains(reading.probe()) ? "F" : reading.unit();
        return Math.rint(10 * Temperature.toCelsius(ReadingCheck.kelvin(reading.value(), unit))) / 10;
    }

    private static Optional<CookReadings> readings(List<StoredReading> core, Set<String> fahrenheit) {
        if (core.isEmpty()) {
            return Optional.empty();
        }
        int stride = (core.size() + CookReadings.MOST - 1) / CookReadings.MOST;
        List<Double> times = new ArrayList<>();
        List<Double> temperatures = new ArrayList<>();
        for (int i = 0; i < core.size(); i += stride) {
            times.add((core.get(i).time() - core.get(0).time()) / 1000.0);
            temperatures.add(celsius(core.get(i), fahrenheit));
        }
        return Optional.of(new CookReadings(times, temperatures));
    }
}
