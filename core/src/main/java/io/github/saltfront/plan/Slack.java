package io.github.saltfront.plan;

import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;

/**
 * What the plan can bear when the evening does not go to plan: done early, done late, guests who come late. All times are the
 * plan's own; the limits are the official ones of serving.
 *
 * @param early how much before the latest time the fastest twentieth is done [s]
 * @param bath how much longer the meat may lie in the bath than planned [s]; zero without a bath
 */
public record Slack(double early, double bath) {
    private static final Phrases PHRASES = Phrases.of(Slack.class);

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
        words.add(PHRASES.say(
                "the-clock-allows-for-the",
                early / 60,
                Temperature.toCelsius(serving.hotHolding()),
                serving.out() / 3600));
        if (plan.salting().treatment().isSoak()) {
            words.add(
                    bath >= 15 * 60
                            ? PHRASES.say("if-guests-are-late-and", time(bath))
                            : PHRASES.say("if-guests-are-late-and-2"));
        } else {
            words.add(PHRASES.say("if-guests-are-late-and-3"));
        }
        words.add(PHRASES.say("once-it-is-in-the"));
        return words;
    }

    private static String time(double seconds) {
        double minutes = Math.floor(seconds / 60 / 5) * 5;
        return minutes >= 120
                ? Phrases.figures("%.0f h", Math.floor(minutes / 60))
                : Phrases.figures("%.0f min", minutes);
    }
}
