package io.github.saltfront.app.export;

import io.github.saltfront.plan.CookSequence;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Loads;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.plan.SolidCheck;
import io.github.saltfront.safety.Caution;
import io.github.saltfront.safety.ConsumerMinimum;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.safety.OfficialLimits;
import io.github.saltfront.units.KitchenUnits;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A plan as plain text, narrow enough for a phone. */
public final class PlanText {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private final Plan plan;
    private final StringBuilder text = new StringBuilder();

    private PlanText(Plan plan) {
        this.plan = plan;
    }

    /**
     * Returns the text.
     *
     * @param plan the plan
     * @return lines of at most 64 columns
     */
    public static String of(Plan plan) {
        return new PlanText(plan).write();
    }

    private String write() {
        Request.Food food = plan.request().food();
        line(food.meat().name());
        line(String.format(
                Locale.ROOT,
                "%d piece%s of %s, %s half thickness",
                food.pieces(),
                food.pieces() == 1 ? "" : "s",
                mass(food.pieceMass()),
                QuantityFormat.length(food.shape().halfThickness(), KitchenUnits.METRIC)));
        plan.thawing().ifPresent(thawing -> {
            heading("THAW: in the refrigerator, covered");
            row("time", thawing.words());
        });
        text.append('\n').append(SaltSection.of(plan.request(), plan.salting()));
        cook();
        plate();
        clock();
        cautions();
        assumptions();
        return text.toString();
    }

    private void cook() {
        Plan.CookPlan cook = plan.cooking();
        Request.Cook with = plan.request().cook();
        heading("COOK: " + with.appliance().name() + " at " + temperature(with.setting()));
        CookSequence sequence = with.sequence();
        sequence.before().forEach(step -> row("before", sequence(step)));
        boolean timed = !plan.request().equipment().thermometer();
        row("take out", TakeOut.isByReading(plan) ? "when it shows " + TakeOut.sign(plan) : TakeOut.when(plan));
        cook.reasons().forEach(this::bullet);
        row(
                "after",
                timed
                        ? QuantityFormat.time(60 * Math.ceil(cook.timeToPull().high() / 60))
                        : interval(cook.timeToPull(), 1.0 / 60, 0, "%.0f", "min"));
        loads(cook.loads());
        if (!sequence.isAlone()) {
            row("", "in the stage that the thermometer ends");
        }
        sequence.after().forEach(step -> row("next", sequence(step)));
        if (sequence.after().isEmpty()) {
            row("then", "rises to " + peak(cook));
            row("", interval(cook.timeToPeak(), 1.0 / 60, 0, "%.0f", "min") + " after it is out");
        } else {
            row("hottest", peak(cook) + " in the middle");
        }
        row("rest", QuantityFormat.time(cook.rest()) + ", " + sequence.rest().words());
        row("served", interval(cook.served(), 1, -Temperature.ZERO_CELSIUS, "%.0f", "°C") + " in the middle");
        cook.check()
                .ifPresentOrElse(
                        this::check,
                        () -> SolidCheck.whyNot(plan.request())
                                .ifPresent(why -> row("checked", "not in three dimensions: " + why)));
        ConsumerMinimum minimum = cook.verdict().rule().consumerMinimum();
        row("kill", share(cook.holdShare()));
        row("", "at the worst place (" + cook.verdict().rule().holdTable().title() + ")");
        cook.holdAtTarget()
                .ifPresent(hold -> row(
                        "",
                        String.format(
                                Locale.ROOT,
                                "at %.1f °C that hold is %s",
                                Temperature.toCelsius(cook.peak().median()),
                                hold < 1 ? "under 1 s" : QuantityFormat.time(Math.ceil(hold)))));
        row("come-up", interval(cook.warmth().comeUp(), 1.0 / 60, 0, "%.0f", "min") + " through 10-54 °C, at most 6 h");
        row("official", "consumer minimum: " + minimum.describe());
        text.append(TextLayout.wrapped(cook.verdict().headline(), "  ", "  "));
        cook.verdict().reasons().forEach(this::bullet);
        cook.warmth().limits().checks().stream()
                .filter(LimitCheck::isNear)
                .forEach(check -> bullet("Near or past a limit: " + check.text() + "."));
        OfficialLimits.Serving serving = OfficialLimits.serving();
        row(
                "serve",
                "keep it at " + temperature(serving.hotHolding()) + " or above, or eat it within "
                        + QuantityFormat.time(serving.out()));
        row("", QuantityFormat.time(serving.outInHotAir()) + " where the air is above 32 °C (90 °F)");
    }

    private static String peak(Plan.CookPlan cook) {
        return interval(cook.peak(), 1, -Temperature.ZERO_CELSIUS, "%.1f", "°C");
    }

    private void loads(Loads loads) {
        if (loads.count() > 1) {
            row(
                    "loads",
                    loads.count() + " of " + loads.pieces() + " pieces, one every " + QuantityFormat.time(loads.cycle())
                            + "; the first is kept hot for "
                            + QuantityFormat.time(loads.delay()) + ", and dries a little");
        }
    }

    private static String sequence(CookSequence.Step step) {
        return step.appliance().name() + " at " + temperature(step.setting()) + " for "
                + QuantityFormat.time(step.time());
    }

    private void check(SolidCheck check) {
        row(
                "checked",
                String.format(
                        Locale.ROOT,
                        "in three dimensions: %.0f min against %.0f min in layers, peak %.1f °C against %.1f °C; the"
                                + " numbers here are corrected by that",
                        check.time() / 60,
                        check.layerTime() / 60,
                        Temperature.toCelsius(check.peak()),
                        Temperature.toCelsius(check.layerPeak())));
    }

    private static String share(Interval hold) {
        if (hold.low() >= 1) {
            return "100 % or more of the required hold, predicted";
        }
        return String.format(Locale.ROOT, "%.0f %% of the required hold (low end)", Math.floor(100 * hold.low()));
    }

    private void plate() {
        Plan.Result result = plan.result();
        heading("ON THE PLATE (90 % intervals)");
        row("salt", interval(result.meanSalt(), 100, 0, "%.2f", "% mean"));
        row("", interval(result.outerSalt(), 100, 0, "%.2f", "% outer 5 mm"));
        row("", interval(result.coreSalt(), 100, 0, "%.2f", "% middle"));
        if (plan.salting().treatment().isSoak()) {
            row("uptake", interval(result.massGain(), 100, 0, "%.1f", "% of raw mass"));
        }
        row("loss", interval(result.massLoss(), 100, 0, "%.0f", "% of raw mass"));
        text.append(QualitySection.text(result.quality(), result.evaporated()));
        double served = plan.request().food().mass() * (1 - result.massLoss().median());
        row("serves", mass(served) + " in all");
        table(result);
    }

    private void table(Plan.Result result) {
        Interval sodium = result.servingSodium();
        row(
                "sodium",
                String.format(
                        Locale.ROOT,
                        "%.0f mg in 85 g, as a label rounds it (%.0f to %.0f),",
                        Sodium.declared(sodium.median()) * 1e6,
                        Sodium.declared(sodium.low()) * 1e6,
                        Sodium.declared(sodium.high()) * 1e6));
        row("", Sodium.dailyValuePercent(sodium.median()) + " % of the Daily Value of 2300 mg");
        result.juiceSalt()
                .ifPresent(juice ->
                        row("juices", interval(juice, 100, 0, "%.1f", "% salt as they run; more when reduced")));
    }

    private void clock() {
        heading("CLOCK (" + plan.request().timing().now().getZone() + ")");
        for (Plan.Step step : plan.clock()) {
            text.append(TextLayout.wrapped(step.words(), "  " + CLOCK.format(step.time()) + "  ", " ".repeat(13)));
        }
    }

    private void cautions() {
        heading("TAKE CARE");
        for (Caution caution : plan.cautions()) {
            bullet(caution.text());
        }
        SaltSection.cautions(plan.salting()).forEach(this::bullet);
    }

    private void assumptions() {
        if (plan.request().assumptions().isEmpty()) {
            return;
        }
        heading("ASSUMED, SINCE THE FILE DOES NOT SAY");
        for (Request.Assumption assumption : plan.request().assumptions()) {
            bullet(assumption.field() + ": " + assumption.value() + " (" + assumption.reason() + ")");
        }
        text.append(TextLayout.wrapped(
                "Predictions from " + plan.members() + " simulated pieces, seed " + plan.seed() + ".", 2));
    }

    private void heading(String words) {
        text.append('\n').append(TextLayout.wrapped(words, 0));
    }

    private void line(String words) {
        text.append(TextLayout.wrapped(words, 0));
    }

    private void bullet(String words) {
        text.append(TextLayout.wrapped(words, "  - ", "    "));
    }

    private void row(String name, String value) {
        text.append(TextLayout.row(name, value));
    }

    private static String mass(double kilograms) {
        return QuantityFormat.mass(kilograms, KitchenUnits.METRIC);
    }

    private static String temperature(double kelvin) {
        return String.format(
                Locale.ROOT, "%.1f °C (%.0f °F)", Temperature.toCelsius(kelvin), Temperature.toFahrenheit(kelvin));
    }

    private static String interval(Interval interval, double factor, double offset, String form, String unit) {
        Interval shown = interval.scaled(factor, offset);
        return String.format(
                Locale.ROOT,
                form + " %s (" + form + " to " + form + ")",
                shown.median(),
                unit,
                shown.low(),
                shown.high());
    }
}
