package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.CookEntry;
import io.github.saltfront.app.notebook.Notebook;
import io.github.saltfront.app.notebook.NotebookText;
import io.github.saltfront.app.store.NotedCook;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook add}: a new cook. */
@Command(
        name = "add",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Note a cook from a cook file: what was planned, measured, tasted and photographed.",
        footer = {"", "Example: ./run notebook add examples/notebook/sunday.yaml"})
final class NotebookAddCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Parameters(paramLabel = "FILE", description = "The cook file as YAML or JSON; \"./run schema cook\" describes it.")
    private Path file = Path.of("");

    @Option(names = "--replace", paramLabel = "ID", description = "Put it in place of a cook that was noted before.")
    private Optional<String> replace = Optional.empty();

    @Override
    public Integer call() {
        Notebook notebook = data.notebook();
        CookEntry entry = CookEntry.read(file);
        Optional<String> id =
                replace.map(text -> notebook.get(java.util.List.of(text)).get(0).id());
        ExecutorService threads = DataFile.threads();
        NotedCook cook;
        try (Progress progress =
                Progress.start("planning what was cooked", spec.commandLine().getErr(), Terminal.isErr())) {
            cook = entry.addTo(notebook, id, threads);
        } finally {
            threads.shutdownNow();
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(NotebookText.show(cook, notebook.cooks().photosOf(cook.id())));
        out.flush();
        return 0;
    }
}
