package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.TrialDesignText;
import io.github.saltfront.app.export.TrialJson;
import io.github.saltfront.app.export.TrialPdf;
import io.github.saltfront.app.export.TrialSheets;
import io.github.saltfront.app.export.TrialTables;
import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.trial.TrialDesign;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code trial design FILE}: who gets what, coded and in which order. */
@Command(
        name = "design",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Share out pieces, codes and serving orders by lot, and print score sheets.",
        footer = {
            "%nExample: saltfront trial design examples/trial/brined-or-plain.yaml --sheets sheets.html --answers answers.csv"
        })
final class TrialDesignCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The trial as YAML or JSON.")
    private Path file = Path.of("");

    @Option(
            names = "--sheets",
            paramLabel = "OUT",
            description = "Write blank score sheets, one page per taster: .html or .pdf.")
    private Optional<Path> sheets = Optional.empty();

    @Option(names = "--answers", paramLabel = "OUT.csv", description = "Write the table of answers to fill in.")
    private Optional<Path> answers = Optional.empty();

    @Option(names = "--weights", paramLabel = "OUT.csv", description = "Write the table of weights to fill in.")
    private Optional<Path> weights = Optional.empty();

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Override
    public Integer call() {
        TrialFile trial = TrialFile.read(DocumentReader.read(file));
        TrialDesign design = TrialDesign.draw(trial.trial());
        sheets.ifPresent(path -> writeSheets(path, design, trial.sheetTitle()));
        answers.ifPresent(path -> OutputFile.write(path, TrialTables.answers(design)));
        weights.ifPresent(path -> OutputFile.write(path, TrialTables.weights(design)));
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                json ? Json.text(TrialJson.design(trial, design, Version.text())) : TrialDesignText.of(trial, design));
        out.flush();
        return 0;
    }

    private static void writeSheets(Path path, TrialDesign design, String title) {
        if (path.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            OutputFile.write(path, TrialPdf.sheets(design, title));
        } else {
            OutputFile.write(path, TrialSheets.write(design, title));
        }
    }
}
