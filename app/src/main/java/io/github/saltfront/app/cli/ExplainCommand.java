package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.FrontsGif;
import io.github.saltfront.app.export.FrontsSvg;
import io.github.saltfront.app.export.PlanExplained;
import io.github.saltfront.app.export.SvgPicture;
import io.github.saltfront.app.export.TrialExplained;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.PlanningException;
import io.github.saltfront.plan.Request;
import io.github.saltfront.trial.TrialDesign;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code explain FILE -o page.html}: why a plan or a trial is as it is, for teaching. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Explain a plan or a trial from its own numbers: in one minute, as a lesson, and as the model has it, with questions for"
                    + " students. The page is one file without scripts."
        },
        footer = {
            "",
            "Examples: ./run explain examples/sunday-chicken.yaml -o why.html --gif fronts.gif",
            "          ./run explain examples/trial/wet-or-dry.yaml -o why.html"
        })
final class ExplainCommand implements Callable<Integer> {
    private static final long SEED = 1;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "A request for a plan, or a trial file, as YAML or JSON.")
    private Path file = Path.of("");

    @Option(
            names = {"-o", "--output"},
            required = true,
            paramLabel = "PAGE.html",
            description = "Page to write.")
    private Path output = Path.of("");

    @Option(
            names = "--gif",
            paramLabel = "FILM.gif",
            description = "Also write the two fronts as a short silent film, and fold it into the page; plans only.")
    private Optional<Path> gif = Optional.empty();

    @Option(
            names = "--pictures",
            paramLabel = "FOLDER",
            description = "Also write the two fronts as pictures, fronts.svg and fronts.png, for slides; plans only.")
    private Optional<Path> pictures = Optional.empty();

    @Override
    public Integer call() {
        Document document = DocumentReader.read(file);
        if (document.root().has("samples")) {
            if (gif.isPresent() || pictures.isPresent()) {
                throw new IllegalArgumentException((gif.isPresent() ? "--gif" : "--pictures")
                        + ": a trial has no fronts, expected a plan; leave it out.");
            }
            TrialFile trial = TrialFile.read(document);
            OutputFile.write(output, TrialExplained.write(trial, TrialDesign.draw(trial.trial())));
            return done();
        }
        Request request = PlanFile.read(document, Catalog.load(), ZonedDateTime.now());
        ExecutorService threads = DataFile.threads();
        Plan plan;
        try (Progress progress = Progress.start("planning", spec.commandLine().getErr(), Terminal.isErr())) {
            plan = Planner.plan(request, threads, SEED);
        } catch (PlanningException e) {
            spec.commandLine().getErr().println(ErrorMessages.problem(e).at(file.toString()));
            spec.commandLine().getErr().flush();
            return ErrorMessages.code(e);
        } finally {
            threads.shutdownNow();
        }
        Fronts fronts = Fronts.of(plan);
        Optional<byte[]> film = gif.map(path -> FrontsGif.of(fronts));
        film.ifPresent(bytes -> OutputFile.write(gif.orElseThrow(), bytes));
        pictures.ifPresent(folder -> draw(fronts, folder));
        OutputFile.write(output, PlanExplained.write(plan, fronts, film));
        return done();
    }

    private static void draw(Fronts fronts, Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new IllegalArgumentException(
                    "--pictures: got " + folder + ", which is no folder and cannot be made one; choose another.", e);
        }
        String svg = FrontsSvg.of(fronts);
        OutputFile.write(folder.resolve("fronts.svg"), svg);
        OutputFile.write(folder.resolve("fronts.png"), SvgPicture.png(svg, 2 * FrontsSvg.WIDTH));
    }

    private int done() {
        spec.commandLine().getOut().println("Written: " + output);
        gif.ifPresent(path -> spec.commandLine().getOut().println("Written: " + path));
        pictures.ifPresent(folder -> spec.commandLine().getOut().println("Written: pictures in " + folder));
        spec.commandLine().getOut().flush();
        return 0;
    }
}
