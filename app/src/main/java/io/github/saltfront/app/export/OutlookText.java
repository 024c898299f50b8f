package io.github.saltfront.app.export;

import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.LiveWarning;
import io.github.saltfront.live.MeasuredHold;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.live.Spread;
import io.github.saltfront.safety.CannotTell;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Outlooks of a cook as plain text, narrow enough for a phone. */
public final class OutlookText {
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
        writer.wrap(
                "Times in brackets: half of the cooks of the ensemble, then 90 % of them. What is inferred is a prediction and"
                        + " proves nothing; only the measured hold counts.");
        return writer.text.toString();
    }

    private void head() {
        wrap(setup.meat().name());
        wrap("wished core " + celsius(setup.wished()) + ", planned to come out at " + celsius(setup.pull()));
    }

    private void write(Outlook outlook) {
        text.append('\n').append("AFTER ").append(duration(outlook.time())).append('\n');
        pull(outlook.pull());
        inferred(outlook);
        measured(outlook);
        plate(outlook);
        for (LiveWarning warning : outlook.warnings()) {
            text.append(TextLayout.wrapped(warning.text(), "  ! ", "    "));
        }
        if (outlook.quality().leftOut() > 0) {
            row(
                    "readings",
                    outlook.quality().used() + " count, " + outlook.quality().leftOut() + " are left out");
        }
    }

    private void pull(Outlook.Pull pull) {
        row(
                "now",
                switch (pull.advice()) {
                    case WAIT -> "Leave it in.";
                    case SOON -> "Get ready: it comes out within 5 min.";
                    case NOW -> "Take it out now: carry-over does the rest.";
                    case NOT_SAFE_YET ->
                        "Leave it in: the wish is reached, but the rule would be met for only "
                                + Math.round(100 * pull.safeShareNow()) + " % of the ensemble.";
                    case OUT -> "It is out and rests.";
                });
        if (pull.advice() == Outlook.Advice.OUT) {
            return;
        }
        row(
                "take out",
                switch (pull.advice()) {
                    case NOW -> "now";
                    case NOT_SAFE_YET -> "in about " + duration(pull.safeIn()) + ", when 99 of 100 would meet the rule";
                    default -> "in " + times(pull.timeLeft());
                });
        if (pull.probeThen().isPresent() && Double.isFinite(pull.timeLeft().p50())) {
            row("", "the probe then shows about " + celsius(pull.probeThen().getAsDouble()));
        }
        row("if now", "it would rise to " + temperatures(pull.peakIfNow()));
    }

    private void inferred(Outlook outlook) {
        row("coldest", temperatures(outlook.inferred().core()) + ", inferred");
        outlook.inferred()
                .probeAbove()
                .filter(above -> above.p50() >= 0.5)
                .ifPresent(above -> row(
                        "",
                        String.format(
                                Locale.ROOT,
                                "the tip is %.1f K warmer (%.1f to %.1f)",
                                above.p50(),
                                above.p05(),
                                above.p95())));
        Spread left = outlook.inferred().holdTimeLeft();
        row(
                "hold",
                left.p95() <= 0
                        ? "inferred: fulfilled at the worst place"
                        : "inferred: fulfilled in " + times(left) + " if it stays in the heat");
    }

    private void measured(Outlook outlook) {
        Optional<MeasuredHold> measured = outlook.measured();
        if (measured.isEmpty()) {
            row("", "measured: no reading counts yet");
            return;
        }
        String share = measured.get().lethality().shareText() + " of the hold";
        boolean bare = measured.get().verdict() instanceof CannotTell;
        row("", "measured: " + share + (bare ? ", if the readings are true" : ""));
        outlook.measuredTimeLeft()
                .filter(left -> !measured.get().isShown())
                .ifPresent(left -> row("", "measured: expected to be shown in " + times(left)));
        row("", measured.get().verdict().headline());
        measured.get().verdict().reasons().forEach(reason -> row("", "- " + reason));
        row("official", "consumer minimum: " + outlook.minimum().describe());
    }

    private void plate(Outlook outlook) {
        Outlook.Plate plate = outlook.plate();
        row("peak", temperatures(plate.peak()));
        row("rest", Math.round(plate.rest() / 60) + " min");
        row(
                "loss",
                String.format(
                        Locale.ROOT,
                        "%.0f %% of raw mass (%.0f to %.0f)",
                        100 * plate.massLoss().p50(),
                        100 * plate.massLoss().p05(),
                        100 * plate.massLoss().p95()));
        row("serve", plate.servedIn().p50() <= 0 ? "now" : "in " + times(plate.servedIn()));
    }

    private static String times(Spread spread) {
        return duration(spread.p50()) + " (" + duration(spread.p25()) + " to " + duration(spread.p75()) + "; "
                + duration(spread.p05()) + " to " + duration(spread.p95()) + ")";
    }

    private static String duration(double seconds) {
        if (!Double.isFinite(seconds)) {
            return "never at this setting";
        }
        long minutes = Math.round(seconds / 60);
        return minutes < 60
                ? minutes + " min"
                : minutes / 60 + " h" + (minutes % 60 > 0 ? " " + minutes % 60 + " min" : "");
    }

    private static String temperatures(Spread spread) {
        return String.format(
                Locale.ROOT,
                "%s (%.1f to %.1f)",
                celsius(spread.p50()),
                Temperature.toCelsius(spread.p05()),
                Temperature.toCelsius(spread.p95()));
    }

    private static String celsius(double kelvin) {
        return String.format(
                Locale.ROOT, "%.1f °C (%.0f °F)", Temperature.toCelsius(kelvin), Temperature.toFahrenheit(kelvin));
    }

    private void row(String name, String value) {
        text.append(TextLayout.row(name, value));
    }

    private void wrap(String words) {
        text.append(TextLayout.wrapped(words, 0));
    }
}
