package io.github.saltfront.app.export;

import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.plan.Slack;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Locale;

/** What else could be done, what matters most and what to do when the evening slips, as plain text. */
public final class AdviceText {
    private static final Phrases PHRASES = Phrases.of(AdviceText.class);

    private AdviceText() {}

    /**
     * Returns the text.
     *
     * @param found a plan and its alternatives
     * @return lines of at most 64 columns
     */
    public static String of(PlanSearch.Found found) {
        StringBuilder text = new StringBuilder();
        section(text, PHRASES.say("if-it-does-not-go"), Slack.of(found.plan()).words(found.plan()));
        section(text, PHRASES.say("what-matters-most"), WayWords.sensitivities(found.plan()));
        section(
                text,
                PHRASES.say("what-would-change-it"),
                found.levers().stream()
                        .map(lever -> lever.change() + ": " + lever.effect() + ".")
                        .toList());
        if (found.tried() == 0) {
            text.append("\n" + PHRASES.say("other-ways") + "\n");
            text.append(TextLayout.wrapped(PHRASES.say("not-looked-for-add-ways"), 2));
            return text.toString();
        }
        text.append("\n" + PHRASES.say("other-ways") + "\n");
        if (found.alternatives().isEmpty()) {
            text.append(TextLayout.wrapped(PHRASES.say("none-of-them-wins-anything"), 2));
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
