package io.github.saltfront.app.follow;

import io.github.saltfront.app.follow.Follower.Look;
import io.github.saltfront.live.FrontMoment;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The front of heat of a cook under the names of the plan's fronts. */
final class FrontJson {
    private FrontJson() {}

    static Map<String, Object> of(Look look) {
        List<Double> places = FrontMoment.places();
        double half = 1000 * look.setup().request().food().shape().halfThickness();
        List<Double> depths = new ArrayList<>();
        for (int j = places.size() - 1; j >= 0; j--) {
            depths.add(rounded(half * (1 - places.get(j)), 1000));
        }
        List<List<Double>> temperatures = new ArrayList<>();
        for (FrontMoment moment : look.front()) {
            List<Double> row = new ArrayList<>();
            for (int j = places.size() - 1; j >= 0; j--) {
                row.add(rounded(Temperature.toCelsius(moment.temperatures().get(j)), 100));
            }
            temperatures.add(row);
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("as_of_min", look.outlook().time() / 60);
        json.put("depth_total_mm", rounded(half, 1000));
        json.put("depth_mm", depths);
        json.put("time_s", look.front().stream().map(m -> rounded(m.time(), 10)).toList());
        json.put("temperature_c", temperatures);
        json.put(
                "kill_share_of_hold",
                look.front().stream().map(m -> rounded(m.holdShare(), 10_000)).toList());
        json.put(
                "weight_pct",
                look.front().stream()
                        .map(m -> rounded(100 * (1 - m.massLoss()), 100))
                        .toList());
        json.put(
                "pull_temperature_c", rounded(Temperature.toCelsius(look.setup().pull()), 10));
        return json;
    }

    private static double rounded(double value, double steps) {
        return Math.rint(value * steps) / steps;
    }
}
