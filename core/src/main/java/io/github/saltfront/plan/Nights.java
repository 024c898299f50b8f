package io.github.saltfront.plan;

import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Keeps salting from starting at night, where its time has room; common practice, no source. */
final class Nights {
    private static final Phrases PHRASES = Phrases.of(Nights.class);

    /** Nobody wants to start after this minute of the day, or before {@link #MORNING} [min]. */
    private static final int EVENING = 22 * 60 + 30;

    private static final int MORNING = 6 * 60;

    /** How far from the night a start is put that was moved [min]: the clock may still shift it by some minutes. */
    private static final int MARGIN = 30;

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final List<String> SOURCE = List.of("common-practice");

    private final Optional<ZonedDateTime> saltEnd;

    /**
     * Creates the nights before a meal.
     *
     * @param request the request
     * @param cookAndRest time from the first heat to serving [s]
     */
    Nights(Request request, double cookAndRest) {
        saltEnd = request.timing().serve().map(serve -> serve.minusSeconds((long) (cookAndRest + Clock.DRYING)));
    }

    /** Whether a time of the day is one to sleep at. */
    static boolean isNight(ZonedDateTime time) {
        int minute = time.getHour() * 60 + time.getMinute();
        return minute >= EVENING || minute < MORNING;
    }

    /** Moves a time at night to the evening before, where that is not too early. */
    static ZonedDateTime eveningBefore(ZonedDateTime time, ZonedDateTime earliest) {
        int minute = time.getHour() * 60 + time.getMinute();
        ZonedDateTime evening = time.minusMinutes(Math.floorMod(minute - (EVENING - MARGIN), 24 * 60));
        return isNight(time) && !evening.isBefore(earliest) ? evening : time;
    }

    /**
     * Returns a time of salting that starts by day.
     *
     * @param time wished time [s]
     * @param least shortest time that will do [s]
     * @param most longest time that will do [s]
     * @param reasons told what was done, or that nothing could be
     * @return the time [s]; the wished one if it starts by day, or if none that will do does
     */
    double awake(double time, double least, double most, List<Plan.Reason> reasons) {
        if (saltEnd.isEmpty() || time <= 0) {
            return time;
        }
        ZonedDateTime start = saltEnd.get().minusSeconds((long) time);
        if (!isNight(start)) {
            return time;
        }
        int minute = start.getHour() * 60 + start.getMinute();
        int sinceEvening = Math.floorMod(minute - (EVENING - MARGIN), 24 * 60);
        int tillMorning = Math.floorMod(MORNING + MARGIN - minute, 24 * 60);
        double longer = time + sinceEvening * 60.0;
        double shorter = time - tillMorning * 60.0;
        boolean canLonger = longer <= most;
        boolean canShorter = shorter >= least;
        if (!canLonger && !canShorter) {
            reasons.add(new Plan.Reason(PHRASES.say("it-starts-at-at-night", CLOCK.format(start)), SOURCE));
            return time;
        }
        double chosen = canLonger && (!canShorter || sinceEvening <= tillMorning) ? longer : shorter;
        reasons.add(new Plan.Reason(
                PHRASES.say(
                        "instead-of-so-that-nobody",
                        QuantityFormat.time(60 * Math.rint(chosen / 60)),
                        QuantityFormat.time(60 * Math.rint(time / 60))),
                SOURCE));
        return chosen;
    }
}
