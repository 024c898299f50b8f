package io.github.saltfront.app.export;

import io.github.saltfront.app.request.TrialFindings;
import io.github.saltfront.trial.Discrimination;
import io.github.saltfront.trial.Estimate;
import io.github.saltfront.trial.ForcedChoice;
import io.github.saltfront.trial.MeanDifference;
import io.github.saltfront.trial.Preference;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.RatingsAnalysis;
import io.github.saltfront.trial.SoughtEffect;
import io.github.saltfront.trial.YieldComparison;
import io.github.saltfront.units.QuantityFormat;
import io.github.saltfront.words.Phrases;
import java.util.Locale;

/** What the answers of a trial show, in words: never a probability without the effect and its interval. */
public final class TrialAnalysisText {
    private static final Phrases PHRASES = Phrases.of(TrialAnalysisText.class);

    private static final int FEW = 12;

    private final TrialFindings findings;
    private final StringBuilder text = new StringBuilder();

    private TrialAnalysisText(TrialFindings findings) {
        this.findings = findings;
    }

    /**
     * Returns the text.
     *
     * @param findings the findings
     * @return lines of at most 64 columns
     */
    public static String of(TrialFindings findings) {
        return new TrialAnalysisText(findings).write();
    }

    private String write() {
        if (findings instanceof TrialFindings.RightWrong test) {
            discrimination(test.found(), test.tasters());
        } else if (findings instanceof TrialFindings.Preferred preferred) {
            preference(preferred);
        } else if (findings instanceof TrialFindings.Rated rated) {
            ratings(rated.found());
        } else if (findings instanceof TrialFindings.Weighed weighed) {
            yields(weighed.found());
        } else {
            throw new AssertionError(findings);
        }
        text.append('\n');
        if (findings.unanswered() > 0) {
            line(PHRASES.say("rows-left-out-because-they", findings.unanswered()));
        }
        line(TrialWords.interval(level()));
        line(PHRASES.say("the-finding-holds-for-people"));
        return text.toString();
    }

    private String level() {
        return TrialWords.level(findings.level());
    }

    private void discrimination(Discrimination found, int tasters) {
        boolean choice = found.method() instanceof ForcedChoice;
        line(found.method().title());
        line(PHRASES.say("of-answers-are-right-by", found.right(), found.tastings(), found.expectedByGuessing()));
        text.append('\n');
        if (found.isDifferenceShown()) {
            line(PHRASES.say("a-difference-is-shown"));
        } else {
            line(PHRASES.say("no-difference-is-shown-that"));
        }
        head(PHRASES.say("how-large-intervals", level()));
        row(PHRASES.say("right"), PHRASES.say("of-the-answers", TrialWords.share(found.shareRight())));
        row(PHRASES.say("can-tell"), PHRASES.say("of-the-people-if-the", TrialWords.share(found.discriminators())));
        row("d'", TrialWords.distance(found.distance()));
        line(meaning(found.distance(), choice));
        if (found.isDifferenceShown()) {
            if (found.distance().low() == 0) {
                line(PHRASES.say("the-interval-of-d-begins"));
            }
        } else {
            line(PHRASES.say(
                    "what-these-answers-leave-open",
                    level(),
                    100 * found.largestDiscriminators(),
                    Double.isInfinite(found.largestDistance())
                            ? PHRASES.say("any-size")
                            : Phrases.figures("%.1f", found.largestDistance())));
        }
        head(PHRASES.say("could-it-be-luck"));
        line(PHRASES.say("if-nobody-could-tell-or", found.right(), TrialWords.chance(found.probabilityByGuessing())));
        line(found.needed()
                .map(n -> PHRASES.say("to-call-the-samples-different", n, found.tastings()))
                .orElse(PHRASES.say("with-so-few-answers-not")));
        caution(tasters, found.tastings(), !found.isDifferenceShown());
    }

    private static String meaning(Estimate distance, boolean choice) {
        String ask = choice ? PHRASES.say("asked-which-of-two-is") : PHRASES.say("asked-directly-which-of-two");
        return PHRASES.say(
                "d-is-the-distance-of",
                ask,
                100 * SoughtEffect.namedRight(distance.value()),
                100 * SoughtEffect.namedRight(distance.low()),
                100 * SoughtEffect.namedRight(distance.high()));
    }

    private void caution(int tasters, int answers, boolean noDifference) {
        if (tasters == 1) {
            line(PHRASES.say("all-answers-are-by-one"));
        } else if (answers > tasters) {
            line(PHRASES.say(
                    "some-people-tasted-more-than",
                    answers,
                    tasters,
                    (noDifference
                            ? PHRASES.say("their-answers-resemble-each-other")
                            : PHRASES.say("that-is-fair-for-showing"))));
        }
        if (answers < FEW) {
            line(PHRASES.say("fewer-than-answers-see-only", FEW));
        }
    }

    private void preference(TrialFindings.Preferred preferred) {
        Preference found = preferred.found();
        boolean firstAhead = found.first() >= found.second();
        String ahead = firstAhead ? preferred.first() : preferred.second();
        String behind = firstAhead ? preferred.second() : preferred.first();
        int more = Math.max(found.first(), found.second());
        line(PHRASES.say("paired-preference-or", preferred.first(), preferred.second()));
        line(PHRASES.say(
                "of-like-better-like-better",
                more,
                found.decided(),
                ahead,
                (found.decided() - more),
                behind,
                (found.without() > 0 ? PHRASES.say("have-no-preference-and-are", found.without()) : ".")));
        text.append('\n');
        line(
                found.isPreferenceShown()
                        ? PHRASES.say("a-preference-for-is-shown", ahead)
                        : PHRASES.say("no-preference-is-shown-that"));
        head(PHRASES.say("how-large-interval", level()));
        Estimate share = found.shareOfFirst();
        Estimate leading =
                firstAhead ? share : new Estimate(1 - share.high(), 1 - share.value(), 1 - share.low(), share.level());
        row(PHRASES.say("like-it"), PHRASES.say("of-people-who-decide-like", TrialWords.share(leading), ahead));
        line(PHRASES.say("the-interval-is-clopper-and"));
        head(PHRASES.say("could-it-be-luck"));
        line(PHRASES.say("if-people-on-the-whole", TrialWords.chance(found.probabilityIfEven())));
        line(found.needed()
                .map(n -> PHRASES.say("to-call-it-a-preference", n, found.decided()))
                .orElse(PHRASES.say("with-so-few-answers-not-2")));
        caution(preferred.tasters(), found.decided() + found.without(), !found.isPreferenceShown());
    }

    private void ratings(RatingsAnalysis found) {
        line(PHRASES.say(
                "liking-on-nine-points-scores",
                found.scores(),
                found.tasters(),
                (found.missing() > 0 ? PHRASES.say("missing", found.missing()) : "")));
        head(PHRASES.say("how-much-each-is-liked", level()));
        for (RatingsAnalysis.SampleMean mean : found.means()) {
            Estimate points = mean.mean();
            long word = Math.max(RatingProtocol.LOWEST, Math.min(RatingProtocol.HIGHEST, Math.round(points.value())));
            row(
                    mean.sample(),
                    PHRASES.say(
                            "to-about",
                            points.value(),
                            points.low(),
                            points.high(),
                            RatingProtocol.words().get((int) word - 1)));
        }
        int pairs = found.differences().size();
        head(PHRASES.say(
                "differences-intervals", level(), (pairs > 1 ? PHRASES.say("widened-to-hold-all-together") : ")")));
        for (RatingsAnalysis.Difference pair : found.differences()) {
            row(
                    PHRASES.say("less", pair.first(), pair.second()),
                    TrialWords.difference(pair.difference(), PHRASES.say("points")));
            line(
                    pair.isShown()
                            ? PHRASES.say("a-difference-is-shown-if", TrialWords.chance(pair.probabilityIfEqual()))
                            : PHRASES.say(
                                    "no-difference-is-shown-chance",
                                    TrialWords.chance(pair.probabilityIfEqual()),
                                    pair.largest()));
        }
        if (pairs > 1) {
            line(PHRASES.say(
                    "all-samples-together-if-they",
                    TrialWords.chance(found.probabilityIfEqual()),
                    found.fisherRatio()));
        }
        head(PHRASES.say("how-people-use-the-scale"));
        line(PHRASES.say("tasters-differ-from-each-other", found.tasterDeviation(), found.restDeviation()));
        line(PHRASES.say("averages-of-liking-settle-at"));
    }

    private void yields(YieldComparison found) {
        MeanDifference yields = found.yields();
        line(PHRASES.say("mass-kept-against", found.first(), found.second()));
        row(found.first(), PHRASES.say("of-the-mass-before", 100 * yields.firstMean()));
        row(found.second(), PHRASES.say("of-the-mass-before", 100 * yields.secondMean()));
        text.append('\n');
        line(yields.isShown() ? PHRASES.say("a-difference-is-shown") : PHRASES.say("no-difference-is-shown-that"));
        head(PHRASES.say("how-large-interval", level()));
        Estimate points = yields.difference().mapped(v -> 100 * v);
        row(
                PHRASES.say("less", found.first(), found.second()),
                TrialWords.difference(points, PHRASES.say("percentage-points")));
        line(
                yields.paired()
                        ? PHRASES.say("compared-block-by-block-animals", yields.firstCount())
                        : PHRASES.say("compared-as-two-groups-of", yields.firstCount(), yields.secondCount()));
        head(PHRASES.say("could-it-be-luck"));
        line(PHRASES.say(
                "if-both-kept-the-same",
                TrialWords.chance(yields.probabilityIfEqual()),
                QuantityFormat.significant(yields.degrees(), 3)));
    }

    private void head(String words) {
        text.append('\n').append(words).append('\n');
    }

    private void line(String words) {
        int indent = words.startsWith("  ") ? 4 : 0;
        text.append(TextLayout.wrapped(words.strip(), indent));
    }

    private void row(String name, String value) {
        text.append(TextLayout.wrapped(value, String.format(Locale.ROOT, "  %-9s ", name), " ".repeat(12)));
    }
}
