package io.github.saltfront.app.export;

import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.Interval;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.plan.Slack;
import io.github.saltfront.plan.Sodium;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Optional;

/** A plan on one page to hang up in the kitchen: large numbers, the clock, the picture of the two fronts. Well-formed XML too. */
public final class KitchenCard {
    private static final Phrases PHRASES = Phrases.of(KitchenCard.class);

    private static final String CLOCK = "EEE HH:mm";
    private static final int CAUTIONS = 5;

    private final PlanSearch.Found found;
    private final Plan plan;
    private final StringBuilder out = new StringBuilder();

    private KitchenCard(PlanSearch.Found found) {
        this.found = found;
        plan = found.plan();
    }

    /**
     * Returns the card as a page of its own, without scripts and without a request to any host.
     *
     * @param found the plan and its alternatives
     * @param fronts its fronts
     * @param link address shown as a code to scan
     * @return the page
     */
    public static String page(PlanSearch.Found found, Fronts fronts, Optional<String> link) {
        return new KitchenCard(found).write(FrontsSvg.of(fronts), link.map(QrPicture::svg), link);
    }

    /** The card with pictures given as elements. */
    static String page(PlanSearch.Found found, String picture, Optional<String> code, Optional<String> link) {
        return new KitchenCard(found).write(picture, code, link);
    }

    private String write(String picture, Optional<String> code, Optional<String> link) {
        head();
        code.ifPresent(element -> out.append("<div class=\"code\">")
                .append(element)
                .append("<div>")
                .append(escape(link.orElse("")))
                .append("</div></div>\n"));
        title();
        numbers();
        out.append("<table class=\"two\"><tr><td>\n");
        clock();
        out.append("</td><td>\n");
        list(
                PHRASES.say("what-you-need"),
                ShoppingList.of(plan).stream().map(ShoppingList.Item::line).toList());
        list(PHRASES.say("if-it-does-not-go"), Slack.of(plan).words(plan));
        out.append("</td></tr></table>\n<div class=\"picture\">")
                .append(picture)
                .append("</div>\n");
        care();
        out.append("</body></html>\n");
        return out.toString();
    }

    private void head() {
        out.append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\""
                        + Language.spoken().tag() + "\"><head><meta charset=\"utf-8\"/>")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/><title>")
                .append(escape(plan.request().food().meat().name()))
                .append("</title><style>\n@page { size: A4; margin: 10mm; }\n")
                .append(
                        "body { font-family: Helvetica, Arial, sans-serif; font-size: 12px; line-height: 1.35; color: #1b1b1b;")
                .append(" background: #fff; max-width: 190mm; margin: 0 auto; }\n")
                .append("h1 { font-size: 20px; margin: 0; } h2 { font-size: 13px; margin: 8px 0 2px; }\n")
                .append("ul { margin: 0; padding-left: 16px; } p { margin: 2px 0; }\n")
                .append("table { border-collapse: collapse; width: 100%; } td { vertical-align: top; }\n")
                .append(".two > tbody > tr > td, .two > tr > td { width: 50%; padding-right: 10px; }\n")
                .append(
                        ".big td { border: 1px solid #1b1b1b; padding: 4px 8px; } .big b { font-size: 19px; display: block; }\n")
                .append(
                        ".clock td { border-bottom: 1px solid #aaa; padding: 2px 6px 2px 0; } .when { white-space: nowrap;")
                .append(" font-weight: bold; width: 70px; }\n")
                .append(".picture svg, .picture img { width: 100%; height: auto; } .code { float: right; width: 84px;")
                .append(
                        " font-size: 8px; overflow-wrap: anywhere; } .code svg, .code img { width: 84px; height: 84px; }\n")
                .append(".care { font-size: 10px; }\n</style></head><body>\n");
    }

    private void title() {
        Plan.CookPlan cook = plan.cooking();
        out.append("<h1>").append(escape(plan.request().food().meat().name())).append("</h1>\n<p>");
        int pieces = plan.request().food().pieces();
        out.append(escape(PHRASES.say(
                        "piece-in-all-at-c",
                        pieces,
                        pieces == 1 ? "" : "s",
                        ShoppingList.both(plan.request().food().mass()),
                        plan.request().cook().appliance().name(),
                        Temperature.toCelsius(plan.request().cook().setting()),
                        Temperature.toFahrenheit(plan.request().cook().setting()))))
                .append("</p>\n<p>")
                .append(escape(cook.verdict().headline()))
                .append(PHRASES.say("official-minimum-for-consumers"))
                .append(escape(cook.verdict().rule().consumerMinimum().describe()))
                .append(".</p>\n");
    }

    private void numbers() {
        Plan.CookPlan cook = plan.cooking();
        out.append("<table class=\"big\"><tr>");
        cell(
                TakeOut.isByReading(plan) ? PHRASES.say("take-it-out-at") : PHRASES.say("take-it-out-after"),
                TakeOut.sign(plan));
        cell(PHRASES.say("after-about"), minutes(cook.timeToPull()));
        cell(PHRASES.say("rest"), Phrases.figures("%.0f min", cook.rest() / 60));
        cell(
                PHRASES.say("salt"),
                plan.salting().salt() > 0 ? TextLayout.grams(plan.salting().salt()) : PHRASES.say("none"));
        cell(
                PHRASES.say("sodium-in-85-g"),
                Phrases.figures(
                        "%.0f mg", Sodium.declared(plan.result().servingSodium().median()) * 1e6));
        out.append("</tr></table>\n");
    }

    private static String minutes(Interval time) {
        return PHRASES.say("min-to", time.median() / 60, time.low() / 60, time.high() / 60);
    }

    private void cell(String name, String value) {
        out.append("<td>")
                .append(escape(name))
                .append(" <b>")
                .append(escape(value))
                .append("</b></td>");
    }

    private void clock() {
        out.append("<h2>" + PHRASES.say("clock") + " (")
                .append(escape(plan.request().timing().now().getZone().toString()));
        out.append(")</h2>\n<table class=\"clock\">");
        for (Plan.Step step : plan.clock()) {
            out.append("<tr><td class=\"when\">")
                    .append(Phrases.time(CLOCK, step.time()))
                    .append("</td><td>")
                    .append(escape(step.words()))
                    .append("</td></tr>\n");
        }
        out.append("</table>\n");
    }

    private void list(String heading, List<String> lines) {
        out.append("<h2>").append(escape(heading)).append("</h2><ul>");
        lines.forEach(line -> out.append("<li>").append(escape(line)).append("</li>\n"));
        out.append("</ul>\n");
    }

    private void care() {
        out.append("<div class=\"care\">");
        list(
                PHRASES.say("take-care"),
                plan.cautions().stream().limit(CAUTIONS).map(c -> c.text()).toList());
        out.append("<p>")
                .append(escape(found.tried() == 0 ? "" : WayWords.tried(found) + " "))
                .append(PHRASES.say("a-plan-predicts-only-a"))
                .append("</p></div>\n");
    }

    private static String escape(String text) {
        return LethalityPage.escape(text);
    }
}
