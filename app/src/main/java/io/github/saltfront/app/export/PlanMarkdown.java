package io.github.saltfront.app.export;

import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.plan.Slack;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.List;

/** A plan as Markdown, for notes and for a class. */
public final class PlanMarkdown {
    private static final Phrases PHRASES = Phrases.of(PlanMarkdown.class);

    private static final String CLOCK = "EEE HH:mm";

    private final PlanSearch.Found found;
    private final Plan plan;
    private final StringBuilder out = new StringBuilder();

    private PlanMarkdown(PlanSearch.Found found) {
        this.found = found;
        plan = found.plan();
    }

    /**
     * Returns the text.
     *
     * @param found the plan and its alternatives
     * @return Markdown
     */
    public static String of(PlanSearch.Found found) {
        return new PlanMarkdown(found).write();
    }

    private String write() {
        out.append("# ").append(safe(plan.request().food().meat().name())).append('\n');
        list(
                PHRASES.say("what-you-need"),
                ShoppingList.of(plan).stream().map(ShoppingList.Item::line).toList());
        list(
                PHRASES.say("why-salted-so"),
                plan.salting().reasons().stream().map(Plan.Reason::words).toList());
        clock();
        cook();
        list(PHRASES.say("if-it-does-not-go"), Slack.of(plan).words(plan));
        list(PHRASES.say("what-matters-most"), WayWords.sensitivities(plan));
        list(
                PHRASES.say("other-ways"),
                found.alternatives().stream()
                        .map(a -> "**" + WayWords.title(a.way(), plan) + "** " + WayWords.balance(a, found.outcome()))
                        .toList());
        list(
                PHRASES.say("take-care"),
                plan.cautions().stream().map(c -> c.text()).toList());
        return out.toString();
    }

    private void clock() {
        out.append(PHRASES.say("clock"))
                .append(plan.request().timing().now().getZone())
                .append(")\n\n| " + PHRASES.say("when") + " | " + PHRASES.say("what") + " |\n|---|---|\n");
        for (Plan.Step step : plan.clock()) {
            out.append("| ")
                    .append(Phrases.time(CLOCK, step.time()))
                    .append(" | ")
                    .append(safe(step.words()))
                    .append(" |\n");
        }
    }

    private void cook() {
        Plan.CookPlan cook = plan.cooking();
        list(
                PHRASES.say("cook"),
                List.of(
                        PHRASES.say(
                                "take-it-out",
                                TakeOut.when(plan),
                                (TakeOut.isByReading(plan)
                                        ? PHRASES.say("after-min", interval(cook.timeToPull(), 1.0 / 60, "%.0f"))
                                        : ".")),
                        PHRASES.say(
                                "it-rises-to-c-while",
                                interval(cook.peak().scaled(1, -Temperature.ZERO_CELSIUS), 1, "%.1f")),
                        PHRASES.say(
                                "official-minimum-for-consumers",
                                cook.verdict().headline(),
                                cook.verdict().rule().consumerMinimum().describe()),
                        PHRASES.say(
                                "salt-on-the-plate-sodium",
                                interval(plan.result().meanSalt(), 100, "%.2f"),
                                Phrases.figures(
                                        "%.0f mg.",
                                        Sodium.declared(plan.result()
                                                        .servingSodium()
                                                        .median())
                                                * 1e6))));
    }

    private static String interval(Interval interval, double factor, String form) {
        return Phrases.figures(
                PHRASES.say("to", form, form, form),
                factor * interval.median(),
                factor * interval.low(),
                factor * interval.high());
    }

    private void list(String heading, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        out.append("\n## ").append(heading).append("\n\n");
        lines.forEach(line -> out.append("- ").append(safe(line)).append('\n'));
    }

    /** What would be read as a mark is shown as itself. */
    private static String safe(String text) {
        return text.replace("|", "\\|").replace("<", "&lt;").replace("_", "\\_");
    }
}
