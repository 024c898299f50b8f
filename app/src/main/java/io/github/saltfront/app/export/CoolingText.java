package io.github.saltfront.app.export;

import io.github.saltfront.plan.CoolingAdvice;
import io.github.saltfront.plan.CoolingForecast;
import io.github.saltfront.plan.HotFood;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.Locale;
import java.util.OptionalDouble;

/** Advice on cooling as plain text, narrow enough for a phone. */
public final class CoolingText {
    private static final Phrases PHRASES = Phrases.of(CoolingText.class);

    /** What must stand beside every forecast of cooling. */
    static String proof() {
        return PHRASES.say("proof");
    }

    private static final double MOST_DECADES = 3;

    private final CoolingAdvice advice;
    private final StringBuilder text = new StringBuilder();

    private CoolingText(CoolingAdvice advice) {
        this.advice = advice;
    }

    /**
     * Returns the text.
     *
     * @param advice the advice
     * @return lines of at most 64 columns
     */
    public static String of(CoolingAdvice advice) {
        return new CoolingText(advice).write();
    }

    /** Returns the verdict in one sentence. */
    static String headline(CoolingAdvice advice) {
        return advice.asked().keepsLimits()
                ? PHRASES.say("predicted-to-keep-both-official")
                : PHRASES.say("predicted-to-break-an-official");
    }

    private String write() {
        CoolingForecast asked = advice.asked();
        HotFood food = asked.food();
        line(PHRASES.say(
                "thick-where-heat-leaves-from",
                food.name(),
                QuantityFormat.mass(food.mass(), KitchenUnits.METRIC),
                QuantityFormat.length(food.thickness(), KitchenUnits.METRIC),
                Temperature.toCelsius(food.start())));
        line(PHRASES.say(
                "in-at-c-covered",
                asked.medium().name(),
                Temperature.toCelsius(asked.medium().temperature())));
        text.append('\n');
        line(headline(advice));
        limit("57 to 21 °C", asked.timeToFirst(), asked.firstStep());
        limit("57 to 5 °C", asked.timeToTotal(), asked.total());
        row(PHRASES.say("counted"), PHRASES.say("from-57-c-135-f"));
        row(
                PHRASES.say("likely"),
                PHRASES.say(
                        "to-21-c-in-to",
                        time(advice.typical().timeToFirst()),
                        time(advice.typical().timeToTotal())));
        row(PHRASES.say("growth"), PHRASES.say("clostridium-perfringens-no-lag-this", growth(asked.growth())));
        line(proof());
        changes();
        keeping();
        return text.toString();
    }

    private void limit(String name, OptionalDouble taken, LimitCheck check) {
        row(
                name,
                PHRASES.say(
                        "at-most",
                        time(taken),
                        QuantityFormat.time(check.limit()),
                        (check.outcome() == LimitCheck.Outcome.PASS ? PHRASES.say("kept") : PHRASES.say("broken"))));
    }

    /** A model without lag is an upper bound; beyond a few decades its figure is arithmetic. */
    static String growth(double decades) {
        return decades > MOST_DECADES
                ? PHRASES.say("could-grow-by-more-than")
                : PHRASES.say("could-grow-by-at-most", decades);
    }

    static String time(OptionalDouble seconds) {
        return seconds.isPresent()
                ? LethalityText.duration(seconds.getAsDouble())
                : PHRASES.say("more-than", QuantityFormat.time(CoolingForecast.LONGEST));
    }

    private void changes() {
        if (advice.changes().isEmpty()) {
            return;
        }
        text.append('\n');
        line(PHRASES.say("what-would-help-the-least"));
        for (CoolingAdvice.Change change : advice.changes()) {
            CoolingForecast forecast = change.forecast();
            bullet(
                    forecast.keepsLimits() ? PHRASES.say("yes") : PHRASES.say("no"),
                    PHRASES.say("and", change.words(), time(forecast.timeToFirst()), time(forecast.timeToTotal())));
        }
        line(advice.smallestChange()
                .map(change -> PHRASES.say("smallest-change-that-keeps-both", change.words()))
                .orElse(PHRASES.say("none-of-these-keeps-both")));
    }

    private void keeping() {
        text.append('\n');
        line(PHRASES.say("keeping"));
        row(PHRASES.say("ice"), PHRASES.say("an-ice-bath-melts-kg", advice.ice()));
        row(PHRASES.say("keeps"), advice.storage().describe());
        row(
                PHRASES.say("reheat"),
                PHRASES.say("to-the-official-minimum-for", advice.reheating().describe()));
    }

    private void bullet(String mark, String words) {
        text.append(TextLayout.wrapped(words, String.format(Locale.ROOT, "  %-5s", mark), " ".repeat(7)));
    }

    private void line(String words) {
        text.append(TextLayout.wrapped(words, 0));
    }

    private void row(String name, String value) {
        text.append(TextLayout.wrapped(value, String.format(Locale.ROOT, "  %-12s ", name), " ".repeat(15)));
    }
}
