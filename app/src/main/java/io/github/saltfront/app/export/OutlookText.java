package io.github.saltfront.app.export;

import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.LiveWarning;
import io.github.saltfront.live.MeasuredHold;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.live.Spread;
import io.github.saltfront.safety.CannotTell;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Optional;

/** Outlooks of a cook as plain text, narrow enough for a phone. */
public final class OutlookText {
    private static final Phrases PHRASES = Phrases.of(OutlookText.class);

    private final LiveSetup setup;
    private final StringBuilder text = new StringBuilder();

    private OutlookText(LiveSetup setup) {
        this.setup = setup;
    }

    /**
     * Returns the text.
     *
     * @param setup what the cook started from
     * @param outlooks what is known and expected at some moments, in order
     * @return lines of at most 64 columns
     */
    public static String of(LiveSetup setup, List<Outlook> outlooks) {
        OutlookText writer = new OutlookText(setup);
        writer.head();
        outlooks.forEach(writer::write);
        writer.text.append('\n');
        writer.wrap(PHRASES.say("times-in-brackets-half-of"));
        return writer.text.toString();
    }

    private void head() {
        wrap(setup.meat().name());
        wrap(PHRASES.say("wished-core-planned-to-come", celsius(setup.wished()), celsius(setup.pull())));
    }

    private void write(Outlook outlook) {
        text.append('\n').append(PHRASES.say("after", duration(outlook.time()))).append('\n');
        pull(outlook.pull());
        inferred(outlook);
        measured(outlook);
        plate(outlook);
        for (LiveWarning warning : outlook.warnings()) {
            text.append(TextLayout.wrapped(warning.text(), "  ! ", "    "));
        }
        if (outlook.quality().leftOut() > 0) {
            row(
                    PHRASES.say("readings"),
                    PHRASES.say(
                            "count-are-left-out",
                            outlook.quality().used(),
                            outlook.quality().leftOut()));
        }
    }

    private void pull(Outlook.Pull pull) {
        row(
                PHRASES.say("now"),
                switch (pull.advice()) {
                    case WAIT -> PHRASES.say("leave-it-in");
                    case SOON -> PHRASES.say("get-ready-it-comes-out");
                    case NOW -> PHRASES.say("take-it-out-now-carry");
                    case NOT_SAFE_YET -> PHRASES.say("leave-it-in-the-wish", Math.round(100 * pull.safeShareNow()));
                    case OUT -> PHRASES.say("it-is-out-and-rests");
                });
        if (pull.advice() == Outlook.Advice.OUT) {
            return;
        }
        row(
                PHRASES.say("take-out"),
                switch (pull.advice()) {
                    case NOW -> PHRASES.say("now");
                    case NOT_SAFE_YET -> PHRASES.say("in-about-when-99-of", duration(pull.safeIn()));
                    default -> "in " + times(pull.timeLeft());
                });
        if (pull.probeThen().isPresent() && Double.isFinite(pull.timeLeft().p50())) {
            row(
                    "",
                    PHRASES.say(
                            "the-probe-then-shows-about",
                            celsius(pull.probeThen().getAsDouble())));
        }
        row(PHRASES.say("if-now"), PHRASES.say("it-would-rise-to", temperatures(pull.peakIfNow())));
    }

    private void inferred(Outlook outlook) {
        row(
                PHRASES.say("coldest"),
                PHRASES.say("inferred", temperatures(outlook.inferred().core())));
        outlook.inferred()
                .probeAbove()
                .filter(above -> above.p50() >= 0.5)
                .ifPresent(above -> row("", PHRASES.say("the-tip-is-k-warmer", above.p50(), above.p05(), above.p95())));
        Spread left = outlook.inferred().holdTimeLeft();
        row(
                PHRASES.say("hold"),
                left.p95() <= 0
                        ? PHRASES.say("inferred-fulfilled-at-the-worst")
                        : PHRASES.say("inferred-fulfilled-in-if-it", times(left)));
    }

    private void measured(Outlook outlook) {
        Optional<MeasuredHold> measured = outlook.measured();
        if (measured.isEmpty()) {
            row("", PHRASES.say("measured-no-reading-counts-yet"));
            return;
        }
        String share = PHRASES.say("of-the-hold", measured.get().lethality().shareText());
        boolean bare = measured.get().verdict() instanceof CannotTell;
        row("", PHRASES.say("measured", share, (bare ? PHRASES.say("if-the-readings-are-true") : "")));
        outlook.measuredTimeLeft()
                .filter(left -> !measured.get().isShown())
                .ifPresent(left -> row("", PHRASES.say("measured-expected-to-be-shown", times(left))));
        row("", measured.get().verdict().headline());
        measured.get().verdict().reasons().forEach(reason -> row("", "- " + reason));
        row(
                PHRASES.say("official"),
                PHRASES.say("consumer-minimum", outlook.minimum().describe()));
    }

    private void plate(Outlook outlook) {
        Outlook.Plate plate = outlook.plate();
        row(PHRASES.say("peak"), temperatures(plate.peak()));
        row(PHRASES.say("rest"), Math.round(plate.rest() / 60) + " min");
        row(
                PHRASES.say("loss"),
                PHRASES.say(
                        "of-raw-mass-to",
                        100 * plate.massLoss().p50(),
                        100 * plate.massLoss().p05(),
                        100 * plate.massLoss().p95()));
        row(
                PHRASES.say("serve"),
                plate.servedIn().p50() <= 0 ? PHRASES.say("now") : PHRASES.say("in-time", times(plate.servedIn())));
    }

    private static String times(Spread spread) {
        return PHRASES.say(
                "to-to",
                duration(spread.p50()),
                duration(spread.p25()),
                duration(spread.p75()),
                duration(spread.p05()),
                duration(spread.p95()));
    }

    private static String duration(double seconds) {
        if (!Double.isFinite(seconds)) {
            return PHRASES.say("never-at-this-setting");
        }
        long minutes = Math.round(seconds / 60);
        return minutes < 60
                ? minutes + " min"
                : minutes / 60 + " h" + (minutes % 60 > 0 ? " " + minutes % 60 + " min" : "");
    }

    private static String temperatures(Spread spread) {
        return PHRASES.say(
                "to", celsius(spread.p50()), Temperature.toCelsius(spread.p05()), Temperature.toCelsius(spread.p95()));
    }

    private static String celsius(double kelvin) {
        return Phrases.figures("%.1f °C (%.0f °F)", Temperature.toCelsius(kelvin), Temperature.toFahrenheit(kelvin));
    }

    private void row(String name, String value) {
        text.append(TextLayout.row(name, value));
    }

    private void wrap(String words) {
        text.append(TextLayout.wrapped(words, 0));
    }
}
