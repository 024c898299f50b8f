package io.github.saltfront.app.export;

import io.github.saltfront.plan.Plan;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;

/** What ends the heat, in words: a reading, a time where there is no thermometer, or the hold of a bath. */
final class TakeOut {
    private static final Phrases PHRASES = Phrases.of(TakeOut.class);

    private TakeOut() {}

    static boolean isByReading(Plan plan) {
        return plan.request().equipment().thermometer() && !plan.endsByHold();
    }

    /** The reading, or how long it stays in for the slow ones. */
    static String sign(Plan plan) {
        if (isByReading(plan)) {
            return Phrases.figures(
                    "%.1f °C (%.0f °F)",
                    Temperature.toCelsius(plan.cooking().pullTemperature()),
                    Temperature.toFahrenheit(plan.cooking().pullTemperature()));
        }
        return QuantityFormat.time(60 * Math.ceil(plan.cooking().timeToPull().high() / 60));
    }

    /** When to take it out, as the end of a sentence. */
    static String when(Plan plan) {
        if (isByReading(plan)) {
            return PHRASES.say("when-the-middle-shows", sign(plan));
        }
        return plan.endsByHold()
                ? PHRASES.say("after-the-hold-decides-not", sign(plan))
                : PHRASES.say("after-not-before", sign(plan));
    }
}
