package io.github.saltfront.live;

import io.github.saltfront.live.LiveWarning.Kind;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.NotMet;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds what the cook should know. */
final class LiveWarnings {
    private static final Phrases PHRASES = Phrases.of(LiveWarnings.class);

    /** Oven error that is worth a word [K]. */
    private static final double OVEN = 8;

    /** Distance of the probe's tip from the coldest spot that is worth a word [K]. */
    private static final double PLACE = 1.5;

    /** Rise in {@link #STALL_TIME} below which a cook is stalled [K]. */
    private static final double STALL = 1;

    private static final double STALL_TIME = 1200;

    /** Lateness that is worth a word [s]. */
    private static final double LATE = 600;

    /** Time without readings that is worth a word in the heat [s]; after it no kill is credited. */
    private static final double GAP = MeasuredRecord.DEFAULT_LONGEST_GAP;

    private final List<LiveWarning> found = new ArrayList<>();

    void safety(Optional<MeasuredHold> measured) {
        if (measured.isPresent() && measured.get().verdict() instanceof NotMet notMet && !notMet.cookingOnHelps()) {
            add(Kind.SAFETY, notMet.headline() + " " + String.join("; ", notMet.reasons()) + ".");
        }
    }

    void probe(ProbeTrack track, double now) {
        String name = PHRASES.say("probe", track.probe());
        int unit = track.count(ReadingState.UNIT_IN_DOUBT);
        if (unit > 0 && track.accepted().isEmpty()) {
            add(Kind.UNIT, PHRASES.say("shows-numbers-that-fit-this", name));
        } else if (track.isSuspended()) {
            add(
                    Kind.PROBE,
                    PHRASES.say(
                            "the-last-reading-it-is", name, track.lastState().words()));
        } else if (track.spot() > 0) {
            add(Kind.PROBE, PHRASES.say("seems-to-sit-in-another", name));
        }
        if (track.startDiffers()) {
            add(Kind.START, PHRASES.say("did-not-start-where-you", name));
        }
        if (!track.raw().isEmpty() && now - track.raw().lastKey() > GAP) {
            add(
                    Kind.GAP,
                    PHRASES.say(
                            "has-been-silent-for-min", name, (now - track.raw().lastKey()) / 60));
        }
    }

    void mismatch(int shocks, double doubt) {
        if (shocks >= 3 || doubt > 2) {
            add(Kind.MISMATCH, PHRASES.say("the-readings-do-not-follow"));
        }
    }

    void oven(Spread error) {
        boolean sure = error.p05() > 0 || error.p95() < 0;
        if (sure && Math.abs(error.p50()) >= OVEN) {
            add(
                    Kind.OVEN,
                    PHRASES.say(
                            "the-oven-seems-to-be",
                            Math.abs(error.p50()),
                            PHRASES.say(error.p50() > 0 ? "hotter" : "colder"),
                            Math.min(Math.abs(error.p05()), Math.abs(error.p95())),
                            Math.max(Math.abs(error.p05()), Math.abs(error.p95()))));
        }
    }

    void door(boolean seen) {
        if (seen) {
            add(Kind.DOOR, PHRASES.say("the-air-in-the-oven"));
        }
    }

    void place(Optional<Spread> above) {
        if (above.isPresent() && above.get().p05() > PLACE) {
            add(
                    Kind.PLACE,
                    PHRASES.say(
                            "the-probe-is-not-in",
                            above.get().p50(),
                            above.get().p05(),
                            above.get().p95()));
        }
    }

    void stalled(double rise, Outlook.Pull pull) {
        if (pull.advice() == Outlook.Advice.WAIT
                && rise < STALL
                && pull.timeLeft().p50() > STALL_TIME) {
            add(Kind.STALLED, PHRASES.say("the-temperature-hardly-rises-the"));
        }
    }

    void comeUp(Outlook.Inferred inferred, double now) {
        double limit = 5 * 3600.0;
        if (now > limit && inferred.core().p50() < Temperature.fromFahrenheit(130)) {
            add(Kind.SAFETY, PHRASES.say("the-middle-has-been-warming"));
        }
    }

    void serving(Outlook.Plate plate, Outlook.Phase phase) {
        if (plate.behind().isEmpty()) {
            return;
        }
        double behind = plate.behind().getAsDouble();
        if (behind > LATE) {
            String what = phase == Outlook.Phase.HEAT
                    ? PHRASES.say("raise-the-setting-or-tell")
                    : PHRASES.say("tell-your-guests");
            add(
                    Kind.LATE,
                    behind == Double.POSITIVE_INFINITY
                            ? PHRASES.say("at-this-setting-it-will", what)
                            : PHRASES.say("it-will-be-served-about", behind / 60, what));
        } else if (behind < -2 * LATE) {
            add(Kind.EARLY, PHRASES.say("it-will-be-ready-about", -behind / 60));
        }
    }

    private void add(Kind kind, String text) {
        found.add(new LiveWarning(kind, text));
    }

    List<LiveWarning> list() {
        return found.stream().sorted(Comparator.comparing(LiveWarning::kind)).toList();
    }
}
