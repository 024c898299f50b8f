package io.github.saltfront.app.notebook;

import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.safety.InstrumentCheck;
import io.github.saltfront.safety.InstrumentHistory;
import io.github.saltfront.words.Phrases;
import java.time.LocalDate;
import java.util.List;

/** The history of a thermometer, for reading. */
public final class ThermometerText {
    private static final Phrases PHRASES = Phrases.of(ThermometerText.class);

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
            text.append(PHRASES.say(
                    "at-63-c-c-within",
                    stored.day(),
                    check.describe(),
                    correction,
                    check.bound(NotebookViews.SHOWN_AT),
                    check.isWithinFoodCodeTolerance() ? "" : PHRASES.say("worse-than-the-1-c"),
                    stored.note().isEmpty() ? "" : "; " + stored.note()));
        }
        double drift = history.drift(NotebookViews.SHOWN_AT).orElse(0);
        if (Math.abs(drift) > InstrumentHistory.LARGEST_DRIFT) {
            text.append(PHRASES.say("it-drifted-by-c-since", drift));
        }
        long left = history.daysLeft(today, InstrumentHistory.USUAL_DAYS, NotebookViews.SHOWN_AT);
        String due = history.dueOn(InstrumentHistory.USUAL_DAYS, NotebookViews.SHOWN_AT)
                .map(LocalDate::toString)
                .orElse(PHRASES.say("now"));
        return text.append(
                        left > 0 ? PHRASES.say("the-next-check-is-due", due) : PHRASES.say("a-check-is-due-since", due))
                .toString();
    }
}
