package io.github.saltfront.live;

import io.github.saltfront.live.LiveWarning.Kind;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.NotMet;
import io.github.saltfront.units.Temperature;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds what the cook should know. */
final class LiveWarnings {
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
        String name = "Probe \"" + track.probe() + "\"";
        int unit = track.count(ReadingState.UNIT_IN_DOUBT);
        if (unit > 0 && track.accepted().isEmpty()) {
            add(
                    Kind.UNIT,
                    name + " shows numbers that fit this meat in degrees Fahrenheit, not Celsius. They are left out"
                            + " until you say which unit they are in.");
        } else if (track.isSuspended()) {
            add(
                    Kind.PROBE,
                    name + ": the last reading " + track.lastState().words() + ". It is left out until readings fit"
                            + " again: is the tip in the thickest part of the meat?");
        } else if (track.spot() > 0) {
            add(
                    Kind.PROBE,
                    name
                            + " seems to sit in another spot than before. Nobody vouches for that spot, so from there on its"
                            + " readings show no hold.");
        }
        if (track.startDiffers()) {
            add(
                    Kind.START,
                    name + " did not start where you said the meat would be. Give the true temperature of the meat when"
                            + " it went into the heat, and the prediction gets sharper.");
        }
        if (!track.raw().isEmpty() && now - track.raw().lastKey() > GAP) {
            add(
                    Kind.GAP,
                    String.format(
                            Locale.ROOT,
                            "%s has been silent for %.0f min. Nothing is credited for that time: check its battery.",
                            name,
                            (now - track.raw().lastKey()) / 60));
        }
    }

    void mismatch(int shocks, double doubt) {
        if (shocks >= 3 || doubt > 2) {
            add(
                    Kind.MISMATCH,
                    "The readings do not follow what was told of this cook, so the intervals are wider. Was the setting"
                            + " changed, the door left open, the piece taken out, or is the tip near a hot tray? Tell it here.");
        }
    }

    void oven(Spread error) {
        boolean sure = error.p05() > 0 || error.p95() < 0;
        if (sure && Math.abs(error.p50()) >= OVEN) {
            add(
                    Kind.OVEN,
                    String.format(
                            Locale.ROOT,
                            "The oven seems to be about %.0f K %s than its setting (90 %%: %.0f to %.0f K).",
                            Math.abs(error.p50()),
                            error.p50() > 0 ? "hotter" : "colder",
                            Math.min(Math.abs(error.p05()), Math.abs(error.p95())),
                            Math.max(Math.abs(error.p05()), Math.abs(error.p95()))));
        }
    }

    void door(boolean seen) {
        if (seen) {
            add(Kind.DOOR, "The air in the oven has fallen: the door seems to be open.");
        }
    }

    void place(Optional<Spread> above) {
        if (above.isPresent() && above.get().p05() > PLACE) {
            add(
                    Kind.PLACE,
                    String.format(
                            Locale.ROOT,
                            "The probe is not in the coldest spot: that is about %.0f K colder (90 %%: %.0f to %.0f K)."
                                    + " Push the tip into the middle of the thickest part.",
                            above.get().p50(),
                            above.get().p05(),
                            above.get().p95()));
        }
    }

    void stalled(double rise, Outlook.Pull pull) {
        if (pull.advice() == Outlook.Advice.WAIT
                && rise < STALL
                && pull.timeLeft().p50() > STALL_TIME) {
            add(
                    Kind.STALLED,
                    "The temperature hardly rises: the surface dries and cools the meat. A hotter setting or a wrap helps.");
        }
    }

    void comeUp(Outlook.Inferred inferred, double now) {
        double limit = 5 * 3600.0;
        if (now > limit && inferred.core().p50() < Temperature.fromFahrenheit(130)) {
            add(
                    Kind.SAFETY,
                    "The middle has been warming for more than 5 h and is below 54 °C. Officially it may take at most 6 h"
                            + " through 10-54 °C: raise the setting.");
        }
    }

    void serving(Outlook.Plate plate, Outlook.Phase phase) {
        if (plate.behind().isEmpty()) {
            return;
        }
        double behind = plate.behind().getAsDouble();
        if (behind > LATE) {
            String what = phase == Outlook.Phase.HEAT ? "Raise the setting, or tell your guests." : "Tell your guests.";
            add(
                    Kind.LATE,
                    behind == Double.POSITIVE_INFINITY
                            ? "At this setting it will not be ready in the time that is looked at. " + what
                            : String.format(
                                    Locale.ROOT, "It will be served about %.0f min late. %s", behind / 60, what));
        } else if (behind < -2 * LATE) {
            add(
                    Kind.EARLY,
                    String.format(
                            Locale.ROOT,
                            "It will be ready about %.0f min early. Lower the setting, or plan to keep it at 57 °C or above.",
                            -behind / 60));
        }
    }

    private void add(Kind kind, String text) {
        found.add(new LiveWarning(kind, text));
    }

    List<LiveWarning> list() {
        return found.stream().sorted(Comparator.comparing(LiveWarning::kind)).toList();
    }
}
