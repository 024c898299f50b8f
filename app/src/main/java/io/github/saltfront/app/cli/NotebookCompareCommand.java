package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.NotebookText;
import io.github.saltfront.app.notebook.NotebookViews;
import io.github.saltfront.app.store.NotedCook;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook compare}: cooks side by side. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Put two or more cooks side by side.",
        footer = {"", "Example: ./run notebook compare 3f2a 91bc"})
final class NotebookCompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Parameters(paramLabel = "ID", arity = "2..12", description = "Their ids, or the beginnings of them.")
    private List<String> ids = List.of();

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Override
    public Integer call() {
        List<NotedCook> cooks = data.notebook().get(ids);
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? Json.text(NotebookViews.compare(cooks, Version.text())) : NotebookText.compare(cooks));
        out.flush();
        return 0;
    }
}
