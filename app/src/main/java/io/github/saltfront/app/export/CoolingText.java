package io.github.saltfront.app.export;

import io.github.saltfront.plan.CoolingAdvice;
import io.github.saltfront.plan.CoolingForecast;
import io.github.saltfront.plan.HotFood;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import java.util.Locale;
import java.util.OptionalDouble;

/** Advice on cooling as plain text, narrow enough for a phone. */
public final class CoolingText {
    /** What must stand beside every forecast of cooling. */
    static final String PROOF = "A prediction is not proof: measure the middle at 2 h and at 6 h. If a limit is missed,"
            + " discard; do not taste. Local code comes first.";

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
                ? "Predicted to keep both official limits of cooling."
                : "Predicted to break an official limit of cooling.";
    }

    private String write() {
        CoolingForecast asked = advice.asked();
        HotFood food = asked.food();
        line(String.format(
                Locale.ROOT,
                "%s, %s, %s thick where heat leaves, from %.0f °C",
                food.name(),
                QuantityFormat.mass(food.mass(), KitchenUnits.METRIC),
                QuantityFormat.length(food.thickness(), KitchenUnits.METRIC),
                Temperature.toCelsius(food.start())));
        line(String.format(
                Locale.ROOT,
                "in: %s at %.1f °C, covered",
                asked.medium().name(),
                Temperature.toCelsius(asked.medium().temperature())));
        text.append('\n');
        line(headline(advice));
        limit("57 to 21 °C", asked.timeToFirst(), asked.firstStep());
        limit("57 to 5 °C", asked.timeToTotal(), asked.total());
        row("counted", "from 57 °C (135 °F) outside to the middle, at the cautious end");
        row(
                "likely",
                "to 21 °C in " + time(advice.typical().timeToFirst()) + ", to 5 °C in "
                        + time(advice.typical().timeToTotal()) + "; this decides nothing");
        row("growth", "Clostridium perfringens " + growth(asked.growth()) + " (no lag); this decides nothing");
        line(PROOF);
        changes();
        keeping();
        return text.toString();
    }

    private void limit(String name, OptionalDouble taken, LimitCheck check) {
        row(
                name,
                time(taken) + ", at most " + QuantityFormat.time(check.limit()) + ": "
                        + (check.outcome() == LimitCheck.Outcome.PASS ? "kept" : "BROKEN"));
    }

    /** A model without lag is an upper bound; beyond a few decades its figure is arithmetic. */
    static String growth(double decades) {
        return decades > MOST_DECADES
                ? "could grow by more than 3 decades"
                : String.format(Locale.ROOT, "could grow by at most %.1f decades", decades);
    }

    static String time(OptionalDouble seconds) {
        return seconds.isPresent()
                ? LethalityText.duration(seconds.getAsDouble())
                : "more than " + QuantityFormat.time(CoolingForecast.LONGEST);
    }

    private void changes() {
        if (advice.changes().isEmpty()) {
            return;
        }
        text.append('\n');
        line("WHAT WOULD HELP, the least work first");
        for (CoolingAdvice.Change change : advice.changes()) {
            CoolingForecast forecast = change.forecast();
            bullet(
                    forecast.keepsLimits() ? "yes" : "no",
                    change.words() + ": " + time(forecast.timeToFirst()) + " and " + time(forecast.timeToTotal()));
        }
        line(advice.smallestChange()
                .map(change -> "Smallest change that keeps both limits: " + change.words() + ".")
                .orElse("None of these keeps both limits. Make less, or cool it in a plant that is built for it."));
    }

    private void keeping() {
        text.append('\n');
        line("KEEPING");
        row("ice", String.format(Locale.ROOT, "an ice bath melts %.1f kg at least; have twice as much", advice.ice()));
        row("keeps", advice.storage().describe());
        row("reheat", "to " + advice.reheating().describe() + ", the official minimum for leftovers");
    }

    private void bullet(String mark, String words) {
        text.append(TextLayout.wrapped(words, String.format(Locale.ROOT, "  %-4s", mark), " ".repeat(6)));
    }

    private void line(String words) {
        text.append(TextLayout.wrapped(words, 0));
    }

    private void row(String name, String value) {
        text.append(TextLayout.wrapped(value, String.format(Locale.ROOT, "  %-12s ", name), " ".repeat(15)));
    }
}
