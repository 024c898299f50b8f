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
import io.github.saltfront.words.Phrases;

/** A plan as plain text, narrow enough for a phone. */
public final class PlanText {
    private static final Phrases PHRASES = Phrases.of(PlanText.class);

    private static final String CLOCK = "EEE HH:mm";

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
        line(PHRASES.say(
                "piece-of-half-thickness",
                food.pieces(),
                food.pieces() == 1 ? "" : "s",
                mass(food.pieceMass()),
                QuantityFormat.length(food.shape().halfThickness(), KitchenUnits.METRIC)));
        plan.thawing().ifPresent(thawing -> {
            heading(PHRASES.say("thaw-in-the-refrigerator-covered"));
            row(PHRASES.say("time"), thawing.words());
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
        heading(PHRASES.say("cook-at", with.appliance().name(), temperature(with.setting())));
        CookSequence sequence = with.sequence();
        sequence.before().forEach(step -> row(PHRASES.say("before"), sequence(step)));
        boolean timed = !plan.request().equipment().thermometer();
        row(
                PHRASES.say("take-out"),
                TakeOut.isByReading(plan) ? PHRASES.say("when-it-shows", TakeOut.sign(plan)) : TakeOut.when(plan));
        cook.reasons().forEach(this::bullet);
        row(
                PHRASES.say("after"),
                timed
                        ? QuantityFormat.time(60 * Math.ceil(cook.timeToPull().high() / 60))
                        : interval(cook.timeToPull(), 1.0 / 60, 0, "%.0f", "min"));
        loads(cook.loads());
        if (!sequence.isAlone()) {
            row("", PHRASES.say("in-the-stage-that-the"));
        }
        sequence.after().forEach(step -> row(PHRASES.say("next"), sequence(step)));
        if (sequence.after().isEmpty()) {
            row(PHRASES.say("then"), PHRASES.say("rises-to", peak(cook)));
            row("", PHRASES.say("after-it-is-out", interval(cook.timeToPeak(), 1.0 / 60, 0, "%.0f", "min")));
        } else {
            row(PHRASES.say("hottest"), PHRASES.say("in-the-middle", peak(cook)));
        }
        row(
                PHRASES.say("rest"),
                QuantityFormat.time(cook.rest()) + ", " + sequence.rest().words());
        row(
                PHRASES.say("served"),
                PHRASES.say("in-the-middle", interval(cook.served(), 1, -Temperature.ZERO_CELSIUS, "%.0f", "°C")));
        cook.check()
                .ifPresentOrElse(
                        this::check,
                        () -> SolidCheck.whyNot(plan.request())
                                .ifPresent(why ->
                                        row(PHRASES.say("checked"), PHRASES.say("not-in-three-dimensions", why))));
        ConsumerMinimum minimum = cook.verdict().rule().consumerMinimum();
        row(PHRASES.say("kill"), share(cook.holdShare()));
        row(
                "",
                PHRASES.say(
                        "at-the-worst-place", cook.verdict().rule().holdTable().title()));
        cook.holdAtTarget()
                .ifPresent(hold -> row(
                        "",
                        PHRASES.say(
                                "at-c-that-hold-is",
                                Temperature.toCelsius(cook.peak().median()),
                                hold < 1 ? PHRASES.say("under-1-s") : QuantityFormat.time(Math.ceil(hold)))));
        row(
                PHRASES.say("come-up"),
                PHRASES.say("through-10-54-c-at", interval(cook.warmth().comeUp(), 1.0 / 60, 0, "%.0f", "min")));
        row(PHRASES.say("official"), PHRASES.say("consumer-minimum", minimum.describe()));
        text.append(TextLayout.wrapped(cook.verdict().headline(), "  ", "  "));
        cook.verdict().reasons().forEach(this::bullet);
        cook.warmth().limits().checks().stream()
                .filter(LimitCheck::isNear)
                .forEach(check -> bullet(PHRASES.say("near-or-past-a-limit", check.text())));
        OfficialLimits.Serving serving = OfficialLimits.serving();
        row(
                PHRASES.say("serve"),
                PHRASES.say(
                        "keep-it-at-or-above", temperature(serving.hotHolding()), QuantityFormat.time(serving.out())));
        row("", PHRASES.say("in-hot-air", QuantityFormat.time(serving.outInHotAir())));
    }

    private static String peak(Plan.CookPlan cook) {
        return interval(cook.peak(), 1, -Temperature.ZERO_CELSIUS, "%.1f", "°C");
    }

    private void loads(Loads loads) {
        if (loads.count() > 1) {
            row(
                    PHRASES.say("loads"),
                    PHRASES.say(
                            "of-pieces-one-every-the",
                            loads.count(),
                            loads.pieces(),
                            QuantityFormat.time(loads.cycle()),
                            QuantityFormat.time(loads.delay())));
        }
    }

    private static String sequence(CookSequence.Step step) {
        return PHRASES.say(
                "at-for", step.appliance().name(), temperature(step.setting()), QuantityFormat.time(step.time()));
    }

    private void check(SolidCheck check) {
        row(
                PHRASES.say("checked"),
                PHRASES.say(
                        "in-three-dimensions-min-against",
                        check.time() / 60,
                        check.layerTime() / 60,
                        Temperature.toCelsius(check.peak()),
                        Temperature.toCelsius(check.layerPeak())));
    }

    private static String share(Interval hold) {
        if (hold.low() >= 1) {
            return PHRASES.say("100-or-more-of-the");
        }
        return PHRASES.say("of-the-required-hold-low", Math.floor(100 * hold.low()));
    }

    private void plate() {
        Plan.Result result = plan.result();
        heading(PHRASES.say("on-the-plate-90-intervals"));
        row(PHRASES.say("salt"), interval(result.meanSalt(), 100, 0, "%.2f", PHRASES.say("mean")));
        row("", interval(result.outerSalt(), 100, 0, "%.2f", PHRASES.say("outer-5-mm")));
        row("", interval(result.coreSalt(), 100, 0, "%.2f", PHRASES.say("middle")));
        if (plan.salting().treatment().isSoak()) {
            row(PHRASES.say("uptake"), interval(result.massGain(), 100, 0, "%.1f", PHRASES.say("of-raw-mass")));
        }
        row(PHRASES.say("loss"), interval(result.massLoss(), 100, 0, "%.0f", PHRASES.say("of-raw-mass")));
        text.append(QualitySection.text(result.quality(), result.evaporated()));
        double served = plan.request().food().mass() * (1 - result.massLoss().median());
        row(PHRASES.say("serves"), PHRASES.say("in-all", mass(served)));
        table(result);
    }

    private void table(Plan.Result result) {
        Interval sodium = result.servingSodium();
        row(
                PHRASES.say("sodium"),
                PHRASES.say(
                        "mg-in-85-g-as",
                        Sodium.declared(sodium.median()) * 1e6,
                        Sodium.declared(sodium.low()) * 1e6,
                        Sodium.declared(sodium.high()) * 1e6));
        row("", PHRASES.say("of-the-daily-value-of", Sodium.dailyValuePercent(sodium.median())));
        result.juiceSalt()
                .ifPresent(juice -> row(
                        PHRASES.say("juices"), interval(juice, 100, 0, "%.1f", PHRASES.say("salt-as-they-run-more"))));
    }

    private void clock() {
        heading(PHRASES.say("clock-in", plan.request().timing().now().getZone()));
        for (Plan.Step step : plan.clock()) {
            text.append(
                    TextLayout.wrapped(step.words(), "  " + Phrases.time(CLOCK, step.time()) + "  ", " ".repeat(13)));
        }
    }

    private void cautions() {
        heading(PHRASES.say("take-care"));
        for (Caution caution : plan.cautions()) {
            bullet(caution.text());
        }
        SaltSection.cautions(plan.salting()).forEach(this::bullet);
    }

    private void assumptions() {
        if (plan.request().assumptions().isEmpty()) {
            return;
        }
        heading(PHRASES.say("assumed-since-the-file-does"));
        for (Request.Assumption assumption : plan.request().assumptions()) {
            bullet(assumption.field() + ": " + assumption.value() + " (" + assumption.reason() + ")");
        }
        text.append(
                TextLayout.wrapped(PHRASES.say("predictions-from-simulated-pieces", plan.members(), plan.seed()), 2));
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
        return Phrases.figures("%.1f °C (%.0f °F)", Temperature.toCelsius(kelvin), Temperature.toFahrenheit(kelvin));
    }

    private static String interval(Interval interval, double factor, double offset, String form, String unit) {
        Interval shown = interval.scaled(factor, offset);
        return Phrases.figures(PHRASES.say("s-to", form, form, form), shown.median(), unit, shown.low(), shown.high());
    }
}
