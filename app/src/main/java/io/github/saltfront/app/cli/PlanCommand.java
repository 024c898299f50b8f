package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.notebook.CookFile;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Nearest;
import io.github.saltfront.plan.PlanSearch;
import io.github.saltfront.plan.PlanningException;
import io.github.saltfront.plan.Request;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code plan FILE}: from a request to a plan. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Plan salting, cooking and the clock for a piece of meat.",
        footer = {
            "",
            "Examples: ./run plan examples/sunday-chicken.yaml",
            "          ./run plan examples/sunday-chicken.yaml --format svg -o fronts.svg"
        })
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The request as YAML or JSON.")
    private Path file = Path.of("");

    @Option(names = "--json", description = "Write JSON with all numbers; the same as --format json.")
    private boolean json;

    @Option(
            names = "--format",
            paramLabel = "FORM",
            description = "What to write: ${COMPLETION-CANDIDATES}. Default: the ending of OUT, else text.")
    private @Nullable PlanFormat format;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "OUT",
            description = "File to write; default is standard output. It appears only when it is complete.")
    private @Nullable Path output;

    @Option(
            names = "--ways",
            description =
                    "Also try the ways that the request leaves open, and tell what they win and lose; takes some seconds.")
    private boolean ways;

    @Option(
            names = "--seed",
            defaultValue = "1",
            description = "Seed of the ensemble; the same seed gives the same plan. Default: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Option(
            names = "--link",
            paramLabel = "ADDRESS",
            description =
                    "Address of a page that the card shows as a code to scan, such as that of the running server.")
    private @Nullable String link;

    @Option(
            names = "--notebook",
            arity = "0..1",
            paramLabel = "KITCHEN",
            fallbackValue = CookFile.USUAL_PROFILE,
            description = "Use what this kitchen has learned from its cooks; home if no name is given.")
    private Optional<String> notebook = Optional.empty();

    @Mixin
    private DataFile data = new DataFile();

    @Override
    public Integer call() {
        PlanFormat form = form();
        Catalog catalog = Catalog.load();
        Document document = DocumentReader.read(file);
        Request request = learned(PlanFile.read(document, catalog, ZonedDateTime.now()), document, catalog);
        ExecutorService threads = DataFile.threads();
        CommandLine line = spec.commandLine();
        PlanSearch.Found found;
        try (Progress progress = Progress.start("planning", line.getErr(), Terminal.isErr())) {
            found = ways ? PlanSearch.find(request, threads, seed) : PlanSearch.planOnly(request, threads, seed);
        } catch (PlanningException e) {
            line.getErr().println(ErrorMessages.problem(e).at(file.toString()));
            tellNearest(request, threads, line);
            line.getErr().flush();
            return ErrorMessages.code(e);
        } finally {
            threads.shutdownNow();
        }
        write(form.bytes(found, link), line);
        return found.plan().cooking().verdict().isMet() ? 0 : ErrorMessages.INFEASIBLE;
    }

    /** The file of data is touched only where a notebook is asked for. */
    private Request learned(Request request, Document document, Catalog catalog) {
        Optional<PlanFile.NotebookUse> use =
                notebook.map(name -> new PlanFile.NotebookUse(name, "")).or(() -> PlanFile.notebook(document));
        return use.map(u -> data.notebook()
                        .learning()
                        .knowledge(u.profile(), u.butcher())
                        .applied(request))
                .orElse(request);
    }

    /** What could be done instead, each planned in full before it is told. */
    private void tellNearest(Request request, ExecutorService threads, CommandLine line) {
        List<Nearest> offers;
        try (Progress progress = Progress.start("looking for what can be done", line.getErr(), Terminal.isErr())) {
            offers = Nearest.of(request, threads, seed);
        }
        if (!offers.isEmpty()) {
            line.getErr().println("What can be done instead:");
            offers.forEach(offer -> line.getErr().println("  - " + offer.words()));
        }
    }

    private PlanFormat form() {
        if (json && format != null && format != PlanFormat.JSON) {
            throw new IllegalArgumentException("--json and --format " + format + " exclude each other; leave one out.");
        }
        if (json) {
            return PlanFormat.JSON;
        }
        PlanFormat form = format != null ? format : output == null ? PlanFormat.TEXT : PlanFormat.ofFile(output);
        if (form.isBinary() && output == null) {
            throw new IllegalArgumentException(
                    "Got --format " + form + " without a file to write, expected one; add -o plan." + form + ".");
        }
        return form;
    }

    private void write(byte[] content, CommandLine line) {
        if (output != null) {
            OutputFile.write(output, content);
            return;
        }
        line.getOut().print(new String(content, StandardCharsets.UTF_8));
        line.getOut().flush();
    }
}
