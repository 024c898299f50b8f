package io.github.saltfront.app.cli;

import io.github.saltfront.app.export.TrialJson;
import io.github.saltfront.app.export.TrialPowerText;
import io.github.saltfront.trial.SoughtEffect;
import io.github.saltfront.trial.TastingMethod;
import io.github.saltfront.units.Dimension;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code trial power}: how many tasters a trial needs, or what a number of them can show. */
@Command(
        name = "power",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Say how many tasters a trial needs, or what a number of them can show.",
        footer = {
            "%nExamples:",
            "  saltfront trial power --method triangle --distance 1.5",
            "  saltfront trial power --method 2-afc --can-tell \"40 %%\" --tasters 24",
            "  saltfront trial power --method preference --majority \"70 %%\"",
            "  saltfront trial power --method ratings --gap 1 --spread 2"
        })
final class TrialPowerCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--method",
            required = true,
            description = "triangle, duo-trio, 2-afc to 10-afc, preference, ratings, or yield.")
    private String method = "";

    @Option(names = "--distance", description = "d' between the samples, e.g. 1 (small), 1.5, 2 (clear).")
    private Optional<Double> distance = Optional.empty();

    @Option(names = "--can-tell", description = "Share of people who can tell, e.g. \"40 %%\"; instead of --distance.")
    private Optional<String> canTell = Optional.empty();

    @Option(names = "--majority", description = "For preference: share that likes one better, e.g. \"70 %%\".")
    private Optional<String> majority = Optional.empty();

    @Option(names = "--gap", description = "For ratings and yield: difference of the means, e.g. 1 point.")
    private Optional<Double> gap = Optional.empty();

    @Option(
            names = "--spread",
            description = "For ratings and yield: standard deviation of the differences, e.g. 2 points.")
    private Optional<Double> spread = Optional.empty();

    @Option(names = "--tasters", description = "Number at hand; left out, only the number needed is told.")
    private Optional<Integer> tasters = Optional.empty();

    @Option(names = "--alpha", defaultValue = "5 %", description = "Allowed chance of a false finding. Default: 5 %%.")
    private String alpha = "5 %";

    @Option(names = "--power", defaultValue = "80 %", description = "Wanted chance to find it. Default: 80 %%.")
    private String power = "80 %";

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Override
    public Integer call() {
        InputErrors errors = new InputErrors();
        double a = errors.within("--alpha", alpha, Dimension.FRACTION, 0.001, 0.2, "0.1 % and 20 %");
        double p = errors.within("--power", power, Dimension.FRACTION, 0.5, 0.999, "50 % and 99.9 %");
        tasters.filter(n -> n < 2 || n > 5000)
                .ifPresent(n -> errors.add("--tasters", "must be between 2 and 5000, got " + n + "."));
        Optional<SoughtEffect> sought = sought(errors);
        if (!errors.isEmpty() || sought.isEmpty()) {
            PrintWriter err = spec.commandLine().getErr();
            errors.messages().forEach(m -> err.println("trial power: " + m));
            err.flush();
            return ErrorMessages.WRONG_INPUT;
        }
        OptionalInt n = tasters.isPresent() ? OptionalInt.of(tasters.get()) : OptionalInt.empty();
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                json
                        ? Json.text(TrialJson.power(method, sought.get(), a, p, n, Version.text()))
                        : TrialPowerText.of(title(), unit(), sought.get(), a, p, n));
        out.flush();
        return 0;
    }

    private Optional<SoughtEffect> sought(InputErrors errors) {
        return switch (method) {
            case "preference" -> majority(errors);
            case "ratings", "yield" -> gap(errors);
            default -> rightWrong(errors);
        };
    }

    private Optional<SoughtEffect> majority(InputErrors errors) {
        if (majority.isEmpty() || distance.isPresent() || canTell.isPresent() || gap.isPresent()) {
            errors.add("--majority", "is what a preference needs, and nothing else, e.g. --majority \"70 %\".");
            return Optional.empty();
        }
        double share = errors.within("--majority", majority.get(), Dimension.FRACTION, 0.51, 1, "51 % and 100 %");
        return errors.get("--majority", Optional.empty(), () -> Optional.of(new SoughtEffect.Majority(share)));
    }

    private Optional<SoughtEffect> gap(InputErrors errors) {
        if (gap.isEmpty() || spread.isEmpty() || distance.isPresent() || canTell.isPresent() || majority.isPresent()) {
            errors.add(
                    "--gap", "and --spread are what " + method + " needs, and nothing else, e.g. --gap 1 --spread 2.");
            return Optional.empty();
        }
        return errors.get("--gap", Optional.empty(), () -> Optional.of(new SoughtEffect.Gap(gap.get(), spread.get())));
    }

    private Optional<SoughtEffect> rightWrong(InputErrors errors) {
        Optional<TastingMethod> test =
                errors.get("--method", Optional.empty(), () -> Optional.of(TastingMethod.get(method)));
        if (distance.isPresent() == canTell.isPresent() || majority.isPresent() || gap.isPresent()) {
            errors.add(
                    "--distance",
                    "or --can-tell is what " + method + " needs, one of them and nothing else, e.g. --distance 1.5.");
            return Optional.empty();
        }
        if (test.isEmpty()) {
            return Optional.empty();
        }
        if (distance.isPresent()) {
            return errors.get(
                    "--distance",
                    Optional.empty(),
                    () -> Optional.of(new SoughtEffect.Distance(test.get(), distance.get())));
        }
        double share = errors.within("--can-tell", canTell.get(), Dimension.FRACTION, 0.01, 1, "1 % and 100 %");
        return Optional.of(new SoughtEffect.Tellers(test.get(), share));
    }

    private String title() {
        return switch (method) {
            case "preference" -> "Paired preference";
            case "ratings" -> "Liking on nine points, two samples by the same tasters";
            case "yield" -> "Mass kept, two treatments in matched pieces";
            default -> TastingMethod.get(method).title();
        };
    }

    private String unit() {
        return switch (method) {
            case "yield" -> "pairs of pieces";
            case "ratings" -> "tasters";
            default -> "tastings";
        };
    }
}
