package io.github.saltfront.plan;

import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the plan can bear when the evening does not go to plan: done early, done late, guests who come late. All times are the
 * plan's own; the limits are the official ones of serving.
 *
 * @param early how much before the latest time the fastest twentieth is done [s]
 * @param bath how much longer the meat may lie in the bath than planned [s]; zero without a bath
 */
public record Slack(double early, double bath) {

    /**
     * Reads the slack off a plan.
     *
     * @param plan the plan
     * @return the slack
     */
    public static Slack of(Plan plan) {
        Interval time = plan.cooking().timeToPull();
        double bath = plan.salting()
                .window()
                .map(window -> Math.max(0, window.latest() - plan.salting().time()))
                .orElse(0.0);
        return new Slack(time.high() - time.low(), bath);
    }

    /**
     * Returns what to do, in whole sentences.
     *
     * @param plan the plan the slack was read off
     * @return sentences
     */
    public List<String> words(Plan plan) {
        OfficialLimits.Serving serving = OfficialLimits.serving();
        List<String> words = new ArrayList<>();
        words.add(String.format(
                Locale.ROOT,
                "The clock allows for the slowest of 20 cooks. The fastest is done %.0f min sooner: keep it at %.0f °C or above"
                        + " till it is served, or serve it within %.0f h.",
                early / 60,
                Temperature.toCelsius(serving.hotHolding()),
                serving.out() / 3600));
        if (plan.salting().treatment().isSoak()) {
            words.add(
                    bath >= 15 * 60
                            ? String.format(
                                    Locale.ROOT,
                                    "If guests are late and it is not in the heat yet, it may lie in the bath %s longer.",
                                    time(bath))
                            : "If guests are late and it is not in the heat yet, take it out of the bath on time, pat it dry and keep"
                                    + " it in the refrigerator.");
        } else {
            words.add(
                    "If guests are late and it is not in the heat yet, leave it in the refrigerator and start later.");
        }
        words.add("Once it is in the heat do not stop halfway: finish, then keep it hot.");
        return words;
    }

    private static String time(double seconds) {
        double minutes = Math.floor(seconds / 60 / 5) * 5;
        return minutes >= 120
                ? String.format(Locale.ROOT, "%.0f h", Math.floor(minutes / 60))
                : String.format(Locale.ROOT, "%.0f min", minutes);
    }
}
