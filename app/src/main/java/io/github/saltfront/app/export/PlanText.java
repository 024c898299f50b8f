package io.github.saltfront.app.export;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Measure;
import io.github.saltfront.matter.SaltStrength;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Request;
import io.github.saltfront.plan.SpoonedSalt;
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
        salt();
        cook();
        plate();
        clock();
        cautions();
        assumptions();
        return text.toString();
    }

    private void salt() {
        Plan.SaltPlan salting = plan.salting();
        heading("SALT: " + treatment(salting.treatment()));
        salting.reasons().forEach(this::bullet);
        if (salting.salt() > 0) {
            String spoons = spoons(salting.salt());
            row("salt", grams(salting.salt()) + " by the scale, or " + spoons);
            row("", "of " + plan.request().salting().salt().name() + ", level");
        }
        if (salting.water() > 0) {
            row("water", grams(salting.water()));
            SaltStrength strength = SaltStrength.ofSaltPerWater(salting.saltPerWater());
            double cold = plan.request().salting().refrigerator();
            row(
                    "strength",
                    String.format(
                            Locale.ROOT, "%.1f %% of the mass of the water, that is", 100 * salting.saltPerWater()));
            row("", String.format(Locale.ROOT, "%.1f %% of the mass of the brine,", 100 * strength.saltFraction()));
            row("", String.format(Locale.ROOT, "%.0f g per liter of water", strength.saltPerWaterVolume(cold)));
        }
        if (salting.time() > 0) {
            row("time", QuantityFormat.time(salting.time()) + ", in the refrigerator");
        }
        salting.window().ifPresent(window -> {
            row("earliest", QuantityFormat.time(window.earliest()) + " to taste seasoned");
            row("best", QuantityFormat.time(window.best()));
            row("latest", QuantityFormat.time(window.latest()) + " before it may be too salty");
        });
    }

    private void cook() {
        Plan.CookPlan cook = plan.cooking();
        Request.Cook with = plan.request().cook();
        heading("COOK: " + with.appliance().name() + " at " + temperature(with.setting()));
        row("take out", "when it shows " + temperature(cook.pullTemperature()));
        cook.reasons().forEach(this::bullet);
        row("after", interval(cook.timeToPull(), 1.0 / 60, 0, "%.0f", "min"));
        row("then", "rises to " + interval(cook.peak(), 1, -Temperature.ZERO_CELSIUS, "%.1f", "°C"));
        row("", interval(cook.timeToPeak(), 1.0 / 60, 0, "%.0f", "min") + " after it is out");
        row("rest", QuantityFormat.time(cook.rest()) + ", uncovered");
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
        if (plan.salting().treatment() == Request.Treatment.WET_BRINE) {
            row("uptake", interval(result.massGain(), 100, 0, "%.1f", "% of raw mass"));
        }
        row("loss", interval(result.massLoss(), 100, 0, "%.0f", "% of raw mass"));
        double served = plan.request().food().mass() * (1 - result.massLoss().median());
        row("serves", mass(served) + " in all");
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

    private String spoons(double salt) {
        SpoonedSalt spooned =
                SpoonedSalt.of(salt, plan.request().salting().salt(), Measure.UnitSystem.US, Catalog.load());
        return SpoonWords.of(spooned);
    }

    private static String treatment(Request.Treatment treatment) {
        return switch (treatment) {
            case WET_BRINE -> "wet, in a brine";
            case DRY_SALT -> "dry, ahead";
            case SURFACE_SALT -> "on the outside, just before";
            case NONE, AUTO -> "none ahead";
        };
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
        text.append(TextLayout.wrapped(value, String.format(Locale.ROOT, "  %-9s ", name), " ".repeat(12)));
    }

    private static String mass(double kilograms) {
        return QuantityFormat.mass(kilograms, KitchenUnits.METRIC);
    }

    private static String grams(double kilograms) {
        double g = kilograms * 1000;
        return g < 100 ? String.format(Locale.ROOT, "%.1f g", g) : String.format(Locale.ROOT, "%.0f g", g);
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
