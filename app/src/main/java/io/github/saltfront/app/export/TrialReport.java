package io.github.saltfront.app.export;

import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.app.request.TrialFindings;
import io.github.saltfront.trial.Allocation;
import io.github.saltfront.trial.Discrimination;
import io.github.saltfront.trial.Estimate;
import io.github.saltfront.trial.MeanDifference;
import io.github.saltfront.trial.RatingsAnalysis;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a trial found as a page that somebody else can check: the effect with its interval first, then how it was laid out, what it could
 * have shown, how it was analyzed and under which assumptions, and every answer.
 */
public final class TrialReport {
    private static final Phrases PHRASES = Phrases.of(TrialReport.class);

    private static final int WIDTH = 560;
    private static final int ROW = 46;
    private static final int LEFT = 20;
    private static final int RIGHT = 540;

    private final StringBuilder page = new StringBuilder();
    private final TrialFindings findings;

    private TrialReport(TrialFindings findings) {
        this.findings = findings;
    }

    /** An effect to draw, on an axis with a line at no effect. */
    private record Effect(String name, Estimate estimate, double none, double low, double high, String unit) {}

    /**
     * Writes the report.
     *
     * @param title what the trial is about
     * @param file the trial, if it is at hand
     * @param design its design, if it is at hand
     * @param findings the findings
     * @param answers every answer as CSV
     * @return a page without scripts and without requests to any host
     */
    public static String write(
            String title,
            Optional<TrialFile> file,
            Optional<TrialDesign> design,
            TrialFindings findings,
            String answers) {
        TrialReport report = new TrialReport(findings);
        report.head(title);
        report.result();
        if (file.isPresent() && design.isPresent()) {
            report.layout(file.get(), design.get());
        }
        report.method();
        report.answers(answers);
        return report.page.append("</main></body></html>\n").toString();
    }

    private void head(String title) {
        page.append("<!DOCTYPE html>\n<html lang=\"" + Language.spoken().tag() + "\"><head><meta charset=\"utf-8\"/>")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/><title>")
                .append(LethalityPage.escape(title))
                .append("</title><style>\n")
                .append("""
                        body{font:17px/1.55 Georgia,serif;color:#14252a;background:#fff;margin:0}
                        main{max-width:46rem;margin:0 auto;padding:1.2rem}
                        h1{font-size:1.7rem;line-height:1.2}h2{font-size:1.2rem;margin-top:2rem}
                        table{border-collapse:collapse;font-size:.92rem}td,th{border-bottom:1px solid #c3cfcf;padding:.3rem .8rem .3rem 0;text-align:left;vertical-align:top}
                        pre{white-space:pre-wrap;font:15px/1.5 Georgia,serif;background:#f2f5f4;padding:1rem;border-radius:8px}
                        svg{max-width:100%;height:auto}details{margin-top:1rem}.scroll{overflow-x:auto}
                        """)
                .append("</style></head><body><main><h1>")
                .append(LethalityPage.escape(title))
                .append("</h1>\n");
    }

    private void result() {
        page.append("<h2>" + PHRASES.say("what-was-found") + "</h2>\n");
        List<Effect> effects = effects();
        picture(effects);
        page.append("<pre>")
                .append(LethalityPage.escape(TrialAnalysisText.of(findings)))
                .append("</pre>\n");
    }

    private List<Effect> effects() {
        List<Effect> effects = new ArrayList<>();
        if (findings instanceof TrialFindings.RightWrong test) {
            Discrimination found = test.found();
            double guess = found.method().guessRate();
            effects.add(percent(PHRASES.say("share-of-right-answers"), found.shareRight(), guess));
            effects.add(percent(PHRASES.say("people-who-can-tell-if"), found.discriminators(), 0));
            double high = Double.isFinite(found.distance().high())
                    ? Math.max(4, found.distance().high())
                    : 6;
            effects.add(new Effect(PHRASES.say("distance-d"), found.distance(), 0, 0, high, ""));
        } else if (findings instanceof TrialFindings.Preferred preferred) {
            effects.add(percent(
                    PHRASES.say("share-that-prefers-to", preferred.first(), preferred.second()),
                    preferred.found().shareOfFirst(),
                    0.5));
        } else if (findings instanceof TrialFindings.Rated rated) {
            for (RatingsAnalysis.Difference pair : rated.found().differences()) {
                effects.add(symmetric(
                        PHRASES.say("less", pair.first(), pair.second()), pair.difference(), 3, PHRASES.say("points")));
            }
        } else if (findings instanceof TrialFindings.Weighed weighed) {
            MeanDifference yields = weighed.found().yields();
            effects.add(symmetric(
                    PHRASES.say(
                            "mass-kept-less",
                            weighed.found().first(),
                            weighed.found().second()),
                    yields.difference().mapped(v -> 100 * v),
                    5,
                    PHRASES.say("percentage-points")));
        } else {
            throw new AssertionError(findings);
        }
        return effects;
    }

    private static Effect percent(String name, Estimate share, double none) {
        return new Effect(name, share.mapped(v -> 100 * v), 100 * none, 0, 100, "%");
    }

    private static Effect symmetric(String name, Estimate estimate, double least, String unit) {
        double far = Math.max(least, 1.1 * Math.max(Math.abs(estimate.low()), Math.abs(estimate.high())));
        return new Effect(name, estimate, 0, -far, far, unit);
    }

    /** A point with its interval against the line of no effect, drawn so that gray prints do. */
    private void picture(List<Effect> effects) {
        String words = effects.stream().map(TrialReport::words).collect(Collectors.joining("; "));
        page.append(String.format(
                Locale.ROOT,
                "<svg viewBox=\"0 0 %d %d\" width=\"%d\" role=\"img\" aria-label=\"%s\" font-family=\"Georgia,serif\" font-size=\"14\">\n",
                WIDTH,
                ROW * effects.size() + 10,
                WIDTH,
                LethalityPage.escape(words)));
        for (int i = 0; i < effects.size(); i++) {
            row(effects.get(i), ROW * i + 16);
        }
        page.append("</svg>\n<p>")
                .append(PHRASES.say("dots-are-estimates", TrialWords.level(findings.level())))
                .append("</p>\n");
    }

    private void row(Effect effect, double y) {
        double bar = y + 16;
        page.append(String.format(
                Locale.ROOT,
                "<text x=\"%d\" y=\"%.0f\">%s</text><line x1=\"%d\" x2=\"%d\" y1=\"%.0f\" y2=\"%.0f\" stroke=\"#c3cfcf\"/>",
                LEFT,
                y,
                LethalityPage.escape(words(effect)),
                LEFT,
                RIGHT,
                bar,
                bar));
        page.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"%.0f\" y2=\"%.0f\" stroke=\"#14252a\" stroke-dasharray=\"3 3\"/>",
                x(effect, effect.none()),
                x(effect, effect.none()),
                bar - 9,
                bar + 9));
        page.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"%.0f\" y2=\"%.0f\" stroke=\"#17657f\" stroke-width=\"6\" stroke-linecap=\"round\"/>",
                x(effect, effect.estimate().low()),
                x(effect, effect.estimate().high()),
                bar,
                bar));
        page.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%.0f\" r=\"6\" fill=\"#ad410c\" stroke=\"#fff\"/>\n",
                x(effect, effect.estimate().value()),
                bar));
    }

    private static double x(Effect effect, double value) {
        double inside = Math.max(effect.low(), Math.min(effect.high(), value));
        return LEFT + (RIGHT - LEFT) * (inside - effect.low()) / (effect.high() - effect.low());
    }

    private static String words(Effect effect) {
        return PHRASES.say(
                "to",
                effect.name(),
                number(effect.estimate().value()),
                number(effect.estimate().low()),
                number(effect.estimate().high()),
                effect.unit());
    }

    private static String number(double value) {
        return Double.isInfinite(value) ? PHRASES.say("no-end") : Phrases.figures("%.1f", value);
    }

    private void layout(TrialFile file, TrialDesign design) {
        page.append("<h2>" + PHRASES.say("how-it-was-laid-out") + "</h2>\n<table>");
        List<String> samples = file.trial().samples();
        line(PHRASES.say("question"), file.trial().protocol().question());
        line(PHRASES.say("samples"), String.join(", ", samples));
        line(PHRASES.say("method"), file.trial().protocol().id());
        line(
                PHRASES.say("tasters-and-rounds"),
                PHRASES.say("tasters-each", file.trial().tasters(), file.trial().rounds()));
        line(
                PHRASES.say("lot"),
                PHRASES.say("pieces-serving-orders-and-codes", file.trial().seed()));
        line(
                PHRASES.say("pieces"),
                design.allocation().assignments().stream()
                        .map(a -> a.piece().id() + ": " + samples.get(a.treatment()))
                        .collect(Collectors.joining("; ")));
        line(PHRASES.say("blocks"), blocks(design.allocation()));
        line(PHRASES.say("serving-orders"), orders(design, samples));
        line(PHRASES.say("codes"), PHRASES.say("three-digits-none-twice-in"));
        line(PHRASES.say("what-it-could-have-shown"), String.join(" ", TrialDesignText.power(file)));
        page.append("</table>\n");
    }

    private static String blocks(Allocation allocation) {
        long blocks = allocation.assignments().stream()
                .map(a -> a.piece().block())
                .distinct()
                .count();
        return blocks > 1
                ? PHRASES.say("animals-or-packages-within-each", blocks)
                : PHRASES.say("one-differences-between-animals-are");
    }

    private static String orders(TrialDesign design, List<String> samples) {
        return design.orderCounts().entrySet().stream()
                .map(e ->
                        e.getKey().stream().map(samples::get).collect(Collectors.joining(" - ")) + ": " + e.getValue())
                .collect(Collectors.joining("; "));
    }

    private void line(String name, String value) {
        page.append("<tr><th scope=\"row\">")
                .append(LethalityPage.escape(name))
                .append("</th><td>")
                .append(LethalityPage.escape(value))
                .append("</td></tr>\n");
    }

    private void method() {
        page.append("<h2>" + PHRASES.say("how-it-was-analyzed") + "</h2>\n<ul>");
        if (findings instanceof TrialFindings.RightWrong) {
            item(PHRASES.say("the-number-of-right-answers"));
            item(PHRASES.say("the-interval-of-the-share"));
            item(PHRASES.say("assumed-tasters-answer-independently"));
        } else if (findings instanceof TrialFindings.Preferred) {
            item(PHRASES.say("answers-for-the-first-sample"));
            item(PHRASES.say("the-interval-of-the-share-2"));
        } else if (findings instanceof TrialFindings.Rated) {
            item(PHRASES.say("linear-mixed-model-by-restricted"));
            item(PHRASES.say("intervals-of-pairs-hold-all"));
        } else {
            item(PHRASES.say("mass-after-cooking-per-mass"));
            item(PHRASES.say("assumed-pieces-are-independent-within"));
        }
        item(PHRASES.say("one-question-was-asked-and"));
        item(PHRASES.say("no-difference-shown-is-not"));
        page.append("</ul>\n");
    }

    private void item(String words) {
        page.append("<li>").append(LethalityPage.escape(words)).append("</li>\n");
    }

    private void answers(String csv) {
        List<String> lines =
                csv.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
        page.append("<details><summary>")
                .append(PHRASES.say("every-answer", Math.max(0, lines.size() - 1)))
                .append("</summary><div class=\"scroll\"><pre>")
                .append(LethalityPage.escape(String.join("\n", lines)))
                .append("</pre></div></details>\n");
    }
}
