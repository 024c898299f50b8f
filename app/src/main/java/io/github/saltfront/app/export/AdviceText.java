package io.github.saltfront.app.export;

import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.plan.Slack;
import java.util.List;
import java.util.Locale;

/** What else could be done, what matters most and what to do when the evening slips, as plain text. */
public final class AdviceText {
    private AdviceText() {}

    /**
     * Returns the text.
     *
     * @param found a plan and its alternatives
     * @return lines of at most 64 columns
     */
    public static String of(PlanSearch.Found found) {
        StringBuilder text = new StringBuilder();
        section(text, "IF IT DOES NOT GO TO PLAN", Slack.of(found.plan()).words(found.plan()));
        section(text, "WHAT MATTERS MOST", WayWords.sensitivities(found.plan()));
        section(
                text,
                "WHAT WOULD CHANGE IT",
                found.levers().stream()
                        .map(lever -> lever.change() + ": " + lever.effect() + ".")
                        .toList());
        if (found.tried() == 0) {
            text.append("\nOTHER WAYS\n");
            text.append(TextLayout.wrapped("Not looked for; add --ways for what other ways win and lose.", 2));
            return text.toString();
        }
        text.append("\nOTHER WAYS\n");
        if (found.alternatives().isEmpty()) {
            text.append(TextLayout.wrapped("None of them wins anything that counts over this plan.", 2));
        }
        for (PlanSearch.Alternative alternative : found.alternatives()) {
            String title = WayWords.title(alternative.way(), found.plan());
            text.append(TextLayout.wrapped(
                    title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1) + ". "
                            + WayWords.balance(alternative, found.outcome()),
                    "  - ",
                    "    "));
        }
        text.append(TextLayout.wrapped(WayWords.tried(found), 2));
        return text.toString();
    }

    private static void section(StringBuilder text, String heading, List<String> sentences) {
        if (sentences.isEmpty()) {
            return;
        }
        text.append('\n').append(heading).append('\n');
        sentences.forEach(sentence -> text.append(TextLayout.wrapped(sentence, "  - ", "    ")));
    }
}
