package io.github.saltfront.app.export;

import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Meal;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Slack;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A meal as plain text: one clock, what uses what, and the short of every dish. */
public final class MealText {
    private static final Phrases PHRASES = Phrases.of(MealText.class);

    private static final String CLOCK = "EEE HH:mm";

    private final Meal meal;
    private final StringBuilder text = new StringBuilder();

    private MealText(Meal meal) {
        this.meal = meal;
    }

    /**
     * Returns the text.
     *
     * @param meal the meal
     * @return lines of at most 64 columns
     */
    public static String of(Meal meal) {
        return new MealText(meal).write();
    }

    private String write() {
        List<String> names =
                meal.courses().stream().map(course -> course.dish().name()).toList();
        text.append(TextLayout.wrapped(String.join(", ", names), 0));
        section(PHRASES.say("how-it-fits"), meal.notes());
        clock();
        uses();
        meal.courses().forEach(this::course);
        section(PHRASES.say("if-it-does-not-go"), slack());
        Set<String> cautions = new LinkedHashSet<>();
        for (Meal.Course course : meal.courses()) {
            course.plan().cautions().forEach(caution -> cautions.add(caution.text()));
            cautions.addAll(SaltSection.cautions(course.plan().salting()));
        }
        section(PHRASES.say("take-care"), List.copyOf(cautions));
        return text.toString();
    }

    private void clock() {
        Plan first = meal.courses().get(0).plan();
        heading(PHRASES.say("clock-in", first.request().timing().now().getZone()));
        double work = 0;
        for (Meal.Step step : meal.clock()) {
            work += step.minutes();
            String when = "  " + Phrases.time(CLOCK, step.step().time()) + "  ";
            text.append(TextLayout.wrapped(step.dish() + ": " + step.step().words(), when, " ".repeat(13)));
        }
        text.append(TextLayout.wrapped(PHRASES.say("in-all-about-min-of", work), 2));
    }

    private void uses() {
        heading(PHRASES.say("appliances"));
        for (Meal.Use use : meal.uses()) {
            text.append(TextLayout.wrapped(
                    PHRASES.say(
                            "at-c",
                            Phrases.within(Catalog.load()
                                    .appliances()
                                    .get(use.appliance())
                                    .name()),
                            Temperature.toCelsius(use.setting()),
                            use.dish()),
                    "  " + Phrases.time(CLOCK, use.from()) + PHRASES.say("until") + Phrases.time("HH:mm", use.to())
                            + "  ",
                    " ".repeat(22)));
        }
    }

    private void course(Meal.Course course) {
        Plan plan = course.plan();
        Plan.CookPlan cook = plan.cooking();
        heading(course.dish().name().toUpperCase(Locale.ROOT));
        text.append(SaltSection.of(plan.request(), plan.salting()));
        text.append('\n');
        text.append(TextLayout.wrapped(
                PHRASES.say(
                        "cook-at",
                        plan.request().cook().appliance().name(),
                        celsius(plan.request().cook().setting())),
                0));
        row(PHRASES.say("take-out"), TakeOut.when(plan));
        cook.reasons().forEach(reason -> text.append(TextLayout.wrapped(reason, "  - ", "    ")));
        row(PHRASES.say("after"), band(cook.timeToPull().scaled(1.0 / 60, 0), "%.0f") + " min");
        if (cook.loads().count() > 1) {
            row(
                    PHRASES.say("loads"),
                    PHRASES.say(
                            "of-one-every",
                            cook.loads().count(),
                            cook.loads().pieces(),
                            QuantityFormat.time(cook.loads().cycle())));
        }
        row(
                PHRASES.say("served"),
                PHRASES.say("c-in-the-middle", band(cook.served().scaled(1, -Temperature.ZERO_CELSIUS), "%.0f")));
        row(
                PHRASES.say("loss"),
                PHRASES.say("of-raw-mass", band(plan.result().massLoss().scaled(100, 0), "%.0f")));
        row(
                PHRASES.say("salt"),
                PHRASES.say("mean", band(plan.result().meanSalt().scaled(100, 0), "%.2f")));
        text.append(TextLayout.wrapped(cook.verdict().headline(), "  ", "  "));
    }

    private List<String> slack() {
        List<String> all = new ArrayList<>();
        for (Meal.Course course : meal.courses()) {
            Slack.of(course.plan())
                    .words(course.plan())
                    .forEach(words -> all.add(course.dish().name() + ": " + words));
        }
        return all;
    }

    private void section(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            heading(heading);
            sentences.forEach(sentence -> text.append(TextLayout.wrapped(sentence, "  - ", "    ")));
        }
    }

    private void heading(String words) {
        text.append('\n').append(TextLayout.wrapped(words, 0));
    }

    private void row(String name, String value) {
        text.append(TextLayout.row(name, value));
    }

    private static String celsius(double kelvin) {
        return Phrases.figures("%.1f °C (%.0f °F)", Temperature.toCelsius(kelvin), Temperature.toFahrenheit(kelvin));
    }

    private static String band(Interval band, String form) {
        return Phrases.figures(PHRASES.say("to", form, form, form), band.median(), band.low(), band.high());
    }
}
