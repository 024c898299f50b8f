package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.TrialAnalysisText;
import io.github.saltfront.app.export.TrialJson;
import io.github.saltfront.app.export.TrialReport;
import io.github.saltfront.app.request.TrialAnswers;
import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.app.request.TrialFindings;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.units.Dimension;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
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

    @Option(
            names = "--report",
            paramLabel = "OUT.html",
            description = "Also write a page with the effect first, the design, the method and every answer.")
    private Optional<Path> report = Optional.empty();

    @Option(names = "--trial", paramLabel = "TRIAL", description = "The trial file, for the design in the report.")
    private Optional<Path> trial = Optional.empty();

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
        report.ifPresent(path -> OutputFile.write(path, page(findings)));
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? Json.text(TrialJson.findings(findings, Version.text())) : TrialAnalysisText.of(findings));
        out.flush();
        return 0;
    }

    private String page(TrialFindings findings) {
        Optional<TrialFile> design = trial.map(path -> TrialFile.read(DocumentReader.read(path)));
        String answers;
        try {
            answers = Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException("The file " + file + " cannot be read; check its name.", e);
        }
        return TrialReport.write(
                design.map(TrialFile::title).orElse("A trial"),
                design,
                design.map(d -> TrialDesign.draw(d.trial())),
                findings,
                answers);
    }
}
