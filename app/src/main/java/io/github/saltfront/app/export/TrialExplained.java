package io.github.saltfront.app.export;

import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.trial.HoldEqual;
import io.github.saltfront.trial.PreferenceProtocol;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.RightWrongProtocol;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.words.Phrases;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Explains a trial before it is done: why blind, why by lot, what it can show and what it cannot; in three depths. */
public final class TrialExplained {
    private static final Phrases PHRASES = Phrases.of(TrialExplained.class);

    private final TrialFile file;
    private final TrialDesign design;
    private final ExplainPage page;

    private TrialExplained(TrialFile file, TrialDesign design) {
        this.file = file;
        this.design = design;
        page = new ExplainPage(PHRASES.say("why-it-is-done-this", file.title()));
    }

    /**
     * Writes the page. It names the samples and is not for tasters before they have tasted.
     *
     * @param file the trial
     * @param design its design
     * @return a page without scripts and without requests to any host
     */
    public static String write(TrialFile file, TrialDesign design) {
        return new TrialExplained(file, design).write();
    }

    private String write() {
        page.text(PHRASES.say("for-after-the-tasting-this"));
        List<String> sections = Stream.of("in-one-minute", "as-a-lesson", "as-it-is-computed", "questions")
                .map(PHRASES::say)
                .toList();
        page.contents(sections);
        page.section(1, sections.get(0));
        page.text(PHRASES.say("whoever-knows-what-is-on"));
        page.text(PHRASES.say(
                "people-are-asked",
                file.trial().tasters(),
                file.trial().protocol().question(),
                String.join(" ", TrialDesignText.power(file))));
        page.section(2, sections.get(1));
        lesson();
        page.section(3, sections.get(2));
        statistics();
        page.section(4, sections.get(3));
        questions();
        return page.end();
    }

    private void lesson() {
        List<String> samples = file.trial().samples();
        page.head(PHRASES.say("pieces-by-lot"));
        page.text(PHRASES.say(
                "no-two-animals-are-alike",
                design.allocation().assignments().stream()
                        .map(a -> a.piece().id() + " " + samples.get(a.treatment()))
                        .collect(Collectors.joining(", "))));
        page.head(PHRASES.say("orders-by-lot"));
        page.text(PHRASES.say(
                "the-first-bite-tastes-stronger",
                design.orderCounts().entrySet().stream()
                        .map(e -> e.getKey().stream().map(samples::get).collect(Collectors.joining(PHRASES.say("then")))
                                + PHRASES.say("times", e.getValue()))
                        .collect(Collectors.joining("; "))));
        page.head(PHRASES.say("what-is-held-equal"));
        page.table(
                List.of(PHRASES.say("when"), PHRASES.say("what"), PHRASES.say("why")),
                HoldEqual.load().stream()
                        .map(h -> List.of(h.when(), h.text(), h.why()))
                        .toList());
    }

    private void statistics() {
        if (file.trial().protocol() instanceof RightWrongProtocol test) {
            double guess = test.method().guessRate();
            page.text(PHRASES.say("who-cannot-tell-still-names", 100 * guess));
            page.formula(PHRASES.say("p-k-k-c-n", Phrases.figures("%.3f", guess)));
            page.text(PHRASES.say("the-size-of-the-difference"));
        } else if (file.trial().protocol() instanceof PreferenceProtocol) {
            page.text(PHRASES.say("if-neither-is-liked-better"));
        } else if (file.trial().protocol() instanceof RatingProtocol) {
            page.text(PHRASES.say("some-people-give-high-scores"));
            page.formula(PHRASES.say("score-sample-taster-rest-taster"));
        }
        page.text(PHRASES.say("no-difference-shown-is-not"));
    }

    private void questions() {
        int n = 1;
        if (file.trial().protocol() instanceof RightWrongProtocol test) {
            double expected = test.method().guessRate()
                    * file.trial().tasters()
                    * file.trial().rounds();
            page.question(
                    n++,
                    PHRASES.say("how-many-right-answers-would"),
                    PHRASES.say(
                            "answers-times-that-is",
                            file.trial().tasters() * file.trial().rounds(),
                            test.method().guessRate(),
                            expected));
        }
        page.question(
                n++,
                PHRASES.say("somebody-wants-to-stop-as"),
                PHRASES.say(
                        "luck-wanders-whoever-looks-often", String.format(Locale.ROOT, "%.0f", 100 * file.alpha())));
        page.question(
                n++, PHRASES.say("all-treated-pieces-come-from"), PHRASES.say("two-chickens-the-treatment-cannot"));
        page.question(n, PHRASES.say("the-trial-shows-no-difference"), PHRASES.say("no-it-may-say-how"));
    }
}
