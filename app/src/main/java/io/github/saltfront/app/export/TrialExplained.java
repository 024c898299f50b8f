package io.github.saltfront.app.export;

import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.trial.HoldEqual;
import io.github.saltfront.trial.PreferenceProtocol;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.RightWrongProtocol;
import io.github.saltfront.trial.TrialDesign;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Explains a trial before it is done: why blind, why by lot, what it can show and what it cannot; in three depths. */
public final class TrialExplained {
    private static final List<String> SECTIONS =
            List.of("In one minute", "As a lesson", "As statistics has it", "Questions for students");

    private final TrialFile file;
    private final TrialDesign design;
    private final ExplainPage page;

    private TrialExplained(TrialFile file, TrialDesign design) {
        this.file = file;
        this.design = design;
        page = new ExplainPage("Why it is done this way: " + file.title());
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
        page.text("For after the tasting: this page names the samples.");
        page.contents(SECTIONS);
        page.section(1, SECTIONS.get(0));
        page.text(
                "Whoever knows what is on the plate tastes what they expect. So nobody knows: every portion has a code that says nothing,"
                        + " the order is drawn by lot, and the lot also says which piece is treated how.");
        page.text(file.trial().tasters() + " people are asked: "
                + file.trial().protocol().question() + " " + String.join(" ", TrialDesignText.power(file)));
        page.section(2, SECTIONS.get(1));
        lesson();
        page.section(3, SECTIONS.get(2));
        statistics();
        page.section(4, SECTIONS.get(3));
        questions();
        return page.end();
    }

    private void lesson() {
        List<String> samples = file.trial().samples();
        page.head("Pieces by lot");
        page.text(
                "No two animals are alike. Within each animal or package the lot gives every treatment its share, so that a good animal"
                        + " favors none: "
                        + design.allocation().assignments().stream()
                                .map(a -> a.piece().id() + " " + samples.get(a.treatment()))
                                .collect(Collectors.joining(", "))
                        + ".");
        page.head("Orders by lot");
        page.text("The first bite tastes stronger than the second. So each order is served equally often: "
                + design.orderCounts().entrySet().stream()
                        .map(e -> e.getKey().stream().map(samples::get).collect(Collectors.joining(", then ")) + " "
                                + e.getValue() + " times")
                        .collect(Collectors.joining("; "))
                + ".");
        page.head("What is held equal");
        page.table(
                List.of("when", "what", "why"),
                HoldEqual.load().stream()
                        .map(h -> List.of(h.when(), h.text(), h.why()))
                        .toList());
    }

    private void statistics() {
        if (file.trial().protocol() instanceof RightWrongProtocol test) {
            double guess = test.method().guessRate();
            page.text(String.format(
                    Locale.ROOT,
                    "Who cannot tell still names the right one by guessing, with a chance of %.0f in 100. The number of right answers of n is"
                            + " then binomial, and the trial asks whether there are more than guessing explains.",
                    100 * guess));
            page.formula("P(K ≥ k) = Σ C(n, j) pʲ (1 − p)ⁿ⁻ʲ,  j = k … n,  p = "
                    + String.format(Locale.ROOT, "%.3f", guess));
            page.text(
                    "The size of the difference is told as the share of people who can tell, and as d′: how far apart the two lie on the scale"
                            + " of one taster's noise. 1 is small, 2 is clear.");
        } else if (file.trial().protocol() instanceof PreferenceProtocol) {
            page.text(
                    "If neither is liked better, each answer is the toss of a coin. The share that prefers one is given with its exact"
                            + " interval; the chance counts both ends, since either could have won.");
        } else if (file.trial().protocol() instanceof RatingProtocol) {
            page.text(
                    "Some people give high scores to everything. A mixed model takes each taster's level off before it compares the samples.");
            page.formula("score = sample + taster + rest,  taster ~ N(0, σₜ²),  rest ~ N(0, σ²)");
        }
        page.text(
                "\"No difference shown\" is not \"no difference\": the interval says which differences are left open. One trial is one"
                        + " evening; what holds is found again.");
    }

    private void questions() {
        int n = 1;
        if (file.trial().protocol() instanceof RightWrongProtocol test) {
            double expected = test.method().guessRate()
                    * file.trial().tasters()
                    * file.trial().rounds();
            page.question(
                    n++,
                    "How many right answers would there be on average if nobody could tell?",
                    String.format(
                            Locale.ROOT,
                            "%d answers times %.3f, that is %.1f.",
                            file.trial().tasters() * file.trial().rounds(),
                            test.method().guessRate(),
                            expected));
        }
        page.question(
                n++,
                "Somebody wants to stop as soon as the result looks good. What is wrong with that?",
                "Luck wanders. Whoever looks often enough and stops at the best moment finds a difference where there is none far more often"
                        + " than " + String.format(Locale.ROOT, "%.0f", 100 * file.alpha()) + " times in 100.");
        page.question(
                n++,
                "All treated pieces come from one chicken, all others from another. What does the trial compare?",
                "Two chickens. The treatment cannot be told from the animal; that is why the lot is drawn within each.");
        page.question(
                n,
                "The trial shows no difference. May the menu say that the two are the same?",
                "No. It may say how large a difference could have been missed: see the upper end of the interval.");
    }
}
