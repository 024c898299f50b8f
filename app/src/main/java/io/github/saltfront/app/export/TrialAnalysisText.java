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
import java.util.Locale;

/** What the answers of a trial show, in words: never a probability without the effect and its interval. */
public final class TrialAnalysisText {
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
            line("Rows left out because they have no answer: " + findings.unanswered() + ".");
        }
        line(String.format(Locale.ROOT, TrialWords.INTERVAL, level()));
        line(
                "The finding holds for people, meat and a kitchen like these. One evening is one evening: do it again before you teach it.");
        return text.toString();
    }

    private String level() {
        return TrialWords.level(findings.level());
    }

    private void discrimination(Discrimination found, int tasters) {
        boolean choice = found.method() instanceof ForcedChoice;
        line(found.method().title());
        line(String.format(
                Locale.ROOT,
                "%d of %d answers are right. By guessing alone it would be %.1f on average.",
                found.right(),
                found.tastings(),
                found.expectedByGuessing()));
        text.append('\n');
        if (found.isDifferenceShown()) {
            line("A difference is shown.");
        } else {
            line("No difference is shown. That is not the same as no difference.");
        }
        head("HOW LARGE (" + level() + " % intervals)");
        row("right", TrialWords.share(found.shareRight()) + " of the answers");
        row("can tell", TrialWords.share(found.discriminators()) + " of the people, if the others guess");
        row("d'", TrialWords.distance(found.distance()));
        line(meaning(found.distance(), choice));
        if (found.isDifferenceShown()) {
            if (found.distance().low() == 0) {
                line("The interval of d' begins at 0: this is only just a finding.");
            }
        } else {
            line(String.format(
                    Locale.ROOT,
                    "What these answers leave open, at %s %%: up to %.0f of 100 people may be able to tell (d' up to %s). If that is"
                            + " too many for you to call the samples alike, ask more people.",
                    level(),
                    100 * found.largestDiscriminators(),
                    Double.isInfinite(found.largestDistance())
                            ? "any size"
                            : String.format(Locale.ROOT, "%.1f", found.largestDistance())));
        }
        head("COULD IT BE LUCK");
        line(String.format(
                Locale.ROOT,
                "If nobody could tell, %d or more right answers would come up with a chance of %s (exact).",
                found.right(),
                TrialWords.chance(found.probabilityByGuessing())));
        line(found.needed()
                .map(n -> "To call the samples different it takes " + n + " right answers of " + found.tastings() + ".")
                .orElse("With so few answers not even all right ones would be enough."));
        caution(tasters, found.tastings(), !found.isDifferenceShown());
    }

    private static String meaning(Estimate distance, boolean choice) {
        String ask = choice ? "asked which of two is the stronger" : "asked directly which of two is the stronger";
        return String.format(
                Locale.ROOT,
                "d' is the distance of the samples on people's tongues. This one means: %s, %.0f of 100 people would name the right one"
                        + " (%.0f to %.0f; 50 is guessing).",
                ask,
                100 * SoughtEffect.namedRight(distance.value()),
                100 * SoughtEffect.namedRight(distance.low()),
                100 * SoughtEffect.namedRight(distance.high()));
    }

    private void caution(int tasters, int answers, boolean noDifference) {
        if (tasters == 1) {
            line("All answers are by one person: this is about that person only.");
        } else if (answers > tasters) {
            line("Some people tasted more than once (" + answers + " tastings, " + tasters + " tasters). "
                    + (noDifference
                            ? "Their answers resemble each other, so more is left open than the numbers above say."
                            : "That is fair for showing a difference; that everybody can tell, it does not show."));
        }
        if (answers < FEW) {
            line("Fewer than " + FEW + " answers see only very large differences.");
        }
    }

    private void preference(TrialFindings.Preferred preferred) {
        Preference found = preferred.found();
        boolean firstAhead = found.first() >= found.second();
        String ahead = firstAhead ? preferred.first() : preferred.second();
        String behind = firstAhead ? preferred.second() : preferred.first();
        int more = Math.max(found.first(), found.second());
        line("Paired preference: " + preferred.first() + " or " + preferred.second());
        line(more + " of " + found.decided() + " like " + ahead + " better, " + (found.decided() - more) + " like "
                + behind
                + " better"
                + (found.without() > 0 ? ", " + found.without() + " have no preference and are left aside." : "."));
        text.append('\n');
        line(
                found.isPreferenceShown()
                        ? "A preference for " + ahead + " is shown."
                        : "No preference is shown. That is not the same as no preference.");
        head("HOW LARGE (" + level() + " % interval)");
        Estimate share = found.shareOfFirst();
        Estimate leading =
                firstAhead ? share : new Estimate(1 - share.high(), 1 - share.value(), 1 - share.low(), share.level());
        row(
                "like it",
                TrialWords.share(leading) + " of people who decide like " + ahead + " better; 50 % is an even split");
        line("The interval is Clopper and Pearson's, which is exact and errs on the wide side.");
        head("COULD IT BE LUCK");
        line(String.format(
                Locale.ROOT,
                "If people on the whole liked both equally, a split this uneven or more, either way, would come up with a chance of %s"
                        + " (exact).",
                TrialWords.chance(found.probabilityIfEven())));
        line(found.needed()
                .map(n -> "To call it a preference it takes " + n + " of " + found.decided() + ".")
                .orElse("With so few answers not even full agreement would be enough."));
        caution(preferred.tasters(), found.decided() + found.without(), !found.isPreferenceShown());
    }

    private void ratings(RatingsAnalysis found) {
        line("Liking on nine points: " + found.scores() + " scores by " + found.tasters() + " tasters"
                + (found.missing() > 0 ? ", " + found.missing() + " missing" : ""));
        head("HOW MUCH EACH IS LIKED (" + level() + " % intervals)");
        for (RatingsAnalysis.SampleMean mean : found.means()) {
            Estimate points = mean.mean();
            long word = Math.max(RatingProtocol.LOWEST, Math.min(RatingProtocol.HIGHEST, Math.round(points.value())));
            row(
                    mean.sample(),
                    String.format(
                            Locale.ROOT,
                            "%.1f (%.1f to %.1f), about \"%s\"",
                            points.value(),
                            points.low(),
                            points.high(),
                            RatingProtocol.words().get((int) word - 1)));
        }
        int pairs = found.differences().size();
        head("DIFFERENCES (" + level() + " % intervals" + (pairs > 1 ? ", widened to hold all together)" : ")"));
        for (RatingsAnalysis.Difference pair : found.differences()) {
            row(pair.first() + " less " + pair.second(), TrialWords.difference(pair.difference(), "points"));
            line(
                    pair.isShown()
                            ? "  A difference is shown. If there were none, one this large or larger would come up with a chance of "
                                    + TrialWords.chance(pair.probabilityIfEqual()) + "."
                            : String.format(
                                    Locale.ROOT,
                                    "  No difference is shown (chance if there were none: %s). Up to %.1f points either way are left open.",
                                    TrialWords.chance(pair.probabilityIfEqual()),
                                    pair.largest()));
        }
        if (pairs > 1) {
            line(String.format(
                    Locale.ROOT,
                    "All samples together: if they were liked equally, means this far apart would come up with a chance of %s (F = %.2f).",
                    TrialWords.chance(found.probabilityIfEqual()),
                    found.fisherRatio()));
        }
        head("HOW PEOPLE USE THE SCALE");
        line(String.format(
                Locale.ROOT,
                "Tasters differ from each other by about %.1f points (standard deviation) and this is taken off; what is left over is %.1f"
                        + " points.",
                found.tasterDeviation(),
                found.restDeviation()));
        line("Averages of liking settle at about 40 to 50 people; with fewer, read the intervals and not the means.");
    }

    private void yields(YieldComparison found) {
        MeanDifference yields = found.yields();
        line("Mass kept: " + found.first() + " against " + found.second());
        row(found.first(), String.format(Locale.ROOT, "%.1f %% of the mass before", 100 * yields.firstMean()));
        row(found.second(), String.format(Locale.ROOT, "%.1f %% of the mass before", 100 * yields.secondMean()));
        text.append('\n');
        line(
                yields.isShown()
                        ? "A difference is shown."
                        : "No difference is shown. That is not the same as no difference.");
        head("HOW LARGE (" + level() + " % interval)");
        Estimate points = yields.difference().mapped(v -> 100 * v);
        row(found.first() + " less " + found.second(), TrialWords.difference(points, "percentage points"));
        line(
                yields.paired()
                        ? "Compared block by block (" + yields.firstCount()
                                + " animals or packages), so differences between them cancel."
                        : "Compared as two groups of " + yields.firstCount() + " and " + yields.secondCount()
                                + " pieces (Welch). Blocks with both treatments would tell more.");
        head("COULD IT BE LUCK");
        line(String.format(
                Locale.ROOT,
                "If both kept the same, a difference this large or larger, either way, would come up with a chance of %s (t test, %s"
                        + " degrees of freedom).",
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
