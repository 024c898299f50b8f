package io.github.saltfront.app.export;

import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.app.request.TrialFindings;
import io.github.saltfront.trial.Discrimination;
import io.github.saltfront.trial.Estimate;
import io.github.saltfront.trial.HoldEqual;
import io.github.saltfront.trial.MeanDifference;
import io.github.saltfront.trial.Preference;
import io.github.saltfront.trial.RatingsAnalysis;
import io.github.saltfront.trial.SampleSize;
import io.github.saltfront.trial.Serving;
import io.github.saltfront.trial.Sheet;
import io.github.saltfront.trial.SoughtEffect;
import io.github.saltfront.trial.TrialDesign;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Trials under the names of the file contract. A limit that does not exist is left out. */
public final class TrialJson {
    /** Version of the contracts; grows when a name changes its meaning. */
    public static final int SCHEMA_VERSION = 1;

    private TrialJson() {}

    private static Map<String, Object> start(String schema, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", schema);
        json.put("version", SCHEMA_VERSION);
        json.put("program_version", programVersion);
        return json;
    }

    /**
     * Returns power and numbers before a trial.
     *
     * @param method name of the test
     * @param sought effect that should not be missed
     * @param alpha allowed probability of a finding where there is none [-]
     * @param power wanted power [-]
     * @param tastings number at hand, if one is
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> power(
            String method,
            SoughtEffect sought,
            double alpha,
            double power,
            OptionalInt tastings,
            String programVersion) {
        Map<String, Object> json = start("saltfront.trial-power", programVersion);
        json.put("method", method);
        json.put("effect", sought.words());
        json.put("alpha", alpha);
        json.put("wanted_power", power);
        tastings.ifPresent(n -> {
            json.put("tastings", n);
            json.put("power", sought.power(n, alpha));
        });
        size(json, sought.size(alpha, power));
        return json;
    }

    private static void size(Map<String, Object> json, Optional<SampleSize> size) {
        size.ifPresent(s -> {
            json.put("needed", s.stable());
            json.put("first_that_reaches_it", s.first());
            json.put("power_at_needed", s.powerAtStable());
        });
    }

    /**
     * Returns a design.
     *
     * @param file what was asked for
     * @param design the design
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> design(TrialFile file, TrialDesign design, String programVersion) {
        List<String> samples = file.trial().samples();
        Map<String, Object> json = start("saltfront.trial-design", programVersion);
        json.put("title", file.title());
        json.put("method", file.trial().protocol().id());
        json.put("question", file.trial().protocol().question());
        json.put("samples", samples);
        json.put("tasters", file.trial().tasters());
        json.put("rounds", file.trial().rounds());
        json.put("seed", file.trial().seed());
        json.put("alpha", file.alpha());
        json.put("what_it_can_show", TrialDesignText.power(file));
        json.put("tasters_to_balance", design.tastersToBalance());
        json.put(
                "pieces",
                design.allocation().assignments().stream()
                        .map(a -> Map.of(
                                "piece",
                                a.piece().id(),
                                "block",
                                a.piece().block(),
                                "sample",
                                samples.get(a.treatment())))
                        .toList());
        json.put("portions", design.portions());
        json.put("sheets", design.sheets().stream().map(s -> sheet(s, samples)).toList());
        json.put(
                "hold_equal",
                HoldEqual.load().stream()
                        .map(h -> Map.of("when", h.when(), "text", h.text(), "why", h.why()))
                        .toList());
        return json;
    }

    private static Map<String, Object> sheet(Sheet sheet, List<String> samples) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("taster", sheet.taster());
        json.put("round", sheet.round());
        json.put(
                "servings",
                sheet.servings().stream().map(s -> serving(s, samples)).toList());
        return json;
    }

    private static Map<String, Object> serving(Serving serving, List<String> samples) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("code", serving.code());
        json.put("sample", samples.get(serving.sample()));
        json.put("piece", serving.piece());
        return json;
    }

    /**
     * Returns findings.
     *
     * @param findings the findings
     * @param programVersion version of the program
     * @return content for a JSON writer
     */
    public static Map<String, Object> findings(TrialFindings findings, String programVersion) {
        Map<String, Object> json = start("saltfront.trial-analysis", programVersion);
        json.put("level", findings.level());
        json.put("unanswered", findings.unanswered());
        if (findings instanceof TrialFindings.RightWrong test) {
            discrimination(json, test.found(), test.tasters());
        } else if (findings instanceof TrialFindings.Preferred preferred) {
            preference(json, preferred);
        } else if (findings instanceof TrialFindings.Rated rated) {
            ratings(json, rated.found());
        } else if (findings instanceof TrialFindings.Weighed weighed) {
            MeanDifference yields = weighed.found().yields();
            json.put("method", "yield");
            json.put("first", weighed.found().first());
            json.put("second", weighed.found().second());
            json.put("first_yield_pct", 100 * yields.firstMean());
            json.put("second_yield_pct", 100 * yields.secondMean());
            json.put("difference_shown", yields.isShown());
            json.put("difference_pct", estimate(yields.difference().mapped(v -> 100 * v)));
            json.put("paired_by_block", yields.paired());
            json.put("degrees_of_freedom", yields.degrees());
            json.put("p_value_two_sided", yields.probabilityIfEqual());
        } else {
            throw new AssertionError(findings);
        }
        return json;
    }

    private static void discrimination(Map<String, Object> json, Discrimination found, int tasters) {
        json.put("method", found.method().id());
        json.put("right", found.right());
        json.put("tastings", found.tastings());
        json.put("tasters", tasters);
        json.put("guess_rate", found.method().guessRate());
        json.put("difference_shown", found.isDifferenceShown());
        json.put("share_right", estimate(found.shareRight()));
        json.put("can_tell", estimate(found.discriminators()));
        json.put("d_prime", estimate(found.distance()));
        json.put("largest_can_tell", found.largestDiscriminators());
        finite(json, "largest_d_prime", found.largestDistance());
        json.put("p_value_one_sided", found.probabilityByGuessing());
        found.needed().ifPresent(n -> json.put("right_needed", n));
    }

    private static void preference(Map<String, Object> json, TrialFindings.Preferred preferred) {
        Preference found = preferred.found();
        json.put("method", "preference");
        json.put("first", preferred.first());
        json.put("second", preferred.second());
        json.put("prefer_first", found.first());
        json.put("prefer_second", found.second());
        json.put("no_preference", found.without());
        json.put("tasters", preferred.tasters());
        json.put("preference_shown", found.isPreferenceShown());
        json.put("share_of_first", estimate(found.shareOfFirst()));
        json.put("interval", "Clopper-Pearson");
        json.put("p_value_two_sided", found.probabilityIfEven());
        found.needed().ifPresent(n -> json.put("majority_needed", n));
    }

    private static void ratings(Map<String, Object> json, RatingsAnalysis found) {
        json.put("method", "ratings");
        json.put("model", "linear mixed model, tasters random, REML, Satterthwaite");
        json.put("tasters", found.tasters());
        json.put("scores", found.scores());
        json.put("missing", found.missing());
        json.put(
                "means",
                found.means().stream()
                        .map(m -> {
                            Map<String, Object> mean = new LinkedHashMap<>();
                            mean.put("sample", m.sample());
                            mean.put("scores", m.scores());
                            mean.put("mean", estimate(m.mean()));
                            return mean;
                        })
                        .toList());
        json.put(
                "differences",
                found.differences().stream().map(TrialJson::difference).toList());
        json.put("adjusted_for_pairs", "Bonferroni");
        json.put("taster_sd", found.tasterDeviation());
        json.put("rest_sd", found.restDeviation());
        json.put("f_ratio", found.fisherRatio());
        json.put("p_value_all_equal", found.probabilityIfEqual());
    }

    private static Map<String, Object> difference(RatingsAnalysis.Difference difference) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("first", difference.first());
        json.put("second", difference.second());
        json.put("shown", difference.isShown());
        json.put("difference", estimate(difference.difference()));
        json.put("degrees_of_freedom", difference.degrees());
        json.put("p_value_two_sided", difference.probabilityIfEqual());
        return json;
    }

    private static Map<String, Object> estimate(Estimate estimate) {
        Map<String, Object> json = new LinkedHashMap<>();
        finite(json, "low", estimate.low());
        finite(json, "value", estimate.value());
        finite(json, "high", estimate.high());
        return json;
    }

    private static void finite(Map<String, Object> json, String name, double value) {
        if (Double.isFinite(value)) {
            json.put(name, value);
        }
    }
}
