package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.safety.InstrumentCheck;
import io.github.saltfront.safety.InstrumentHistory;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** The history of a thermometer, for reading. */
public final class ThermometerText {
    private ThermometerText() {}

    /**
     * Writes the history.
     *
     * @param instrument name of the thermometer
     * @param checks its checks, at least one, the first day first
     * @param history the same for the core
     * @param today the day it is
     * @return lines
     */
    public static String of(String instrument, List<StoredCheck> checks, InstrumentHistory history, LocalDate today) {
        StringBuilder text = new StringBuilder(instrument).append('\n');
        for (StoredCheck stored : checks) {
            InstrumentCheck check = Thermometers.check(stored);
            double correction = check.corrected(NotebookViews.SHOWN_AT) - NotebookViews.SHOWN_AT;
            text.append(String.format(
                    Locale.ROOT,
                    "  %s  %s%n              at 63 °C: %+.1f °C, within %.1f °C%s%s%n",
                    stored.day(),
                    check.describe(),
                    correction,
                    check.bound(NotebookViews.SHOWN_AT),
                    check.isWithinFoodCodeTolerance() ? "" : "; worse than the 1 °C that the food code asks for",
                    stored.note().isEmpty() ? "" : "; " + stored.note()));
        }
        double drift = history.drift(NotebookViews.SHOWN_AT).orElse(0);
        if (Math.abs(drift) > InstrumentHistory.LARGEST_DRIFT) {
            text.append(String.format(
                    Locale.ROOT,
                    "  It drifted by %+.1f °C since the check before: check it twice as often, or replace it.%n",
                    drift));
        }
        long left = history.daysLeft(today, InstrumentHistory.USUAL_DAYS, NotebookViews.SHOWN_AT);
        String due = history.dueOn(InstrumentHistory.USUAL_DAYS, NotebookViews.SHOWN_AT)
                .map(LocalDate::toString)
                .orElse("now");
        return text.append(
                        left > 0
                                ? "  The next check is due on " + due + ", and at once after a fall or a new battery.\n"
                                : "  A check is DUE (since " + due + "). Until then its corrections are old news.\n")
                .toString();
    }
}
