package io.github.saltfront.app.cli;

import io.github.saltfront.app.export.TrialAnalysisText;
import io.github.saltfront.app.export.TrialJson;
import io.github.saltfront.app.request.TrialAnswers;
import io.github.saltfront.app.request.TrialFindings;
import io.github.saltfront.units.Dimension;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code trial analyze FILE.csv}: what the answers show. */
@Command(
        name = "analyze",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Say what the answers or weights of a trial show: the effect, its interval, and whether it can be luck.",
        footer = {"%nExample: saltfront trial analyze examples/trial/brined-or-plain-answers.csv"})
final class TrialAnalyzeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE.csv", description = "A table that \"trial design\" wrote, filled in.")
    private Path file = Path.of("");

    @Option(names = "--level", defaultValue = "95 %", description = "Level of the intervals. Default: 95 %%.")
    private String level = "95 %";

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Override
    public Integer call() {
        InputErrors errors = new InputErrors();
        double share = errors.within("--level", level, Dimension.FRACTION, 0.5, 0.999, "50 % and 99.9 %");
        if (!errors.isEmpty()) {
            throw new IllegalArgumentException("trial analyze: " + String.join(" ", errors.messages()));
        }
        TrialFindings findings = TrialAnswers.read(file, share);
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? Json.text(TrialJson.findings(findings, Version.text())) : TrialAnalysisText.of(findings));
        out.flush();
        return 0;
    }
}
