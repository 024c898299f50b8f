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
import picocli.CommandLine.Spec;

/** {@code notebook list}: the cooks. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "List the cooks, the latest first.",
        footer = {"", "Example: ./run notebook list --tag sunday"})
final class NotebookListCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Option(names = "--word", description = "Only cooks whose title, notes or request hold this.")
    private String word = "";

    @Option(names = "--tag", description = "Only cooks with this tag.")
    private String tag = "";

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Override
    public Integer call() {
        List<NotedCook> cooks = data.notebook().cooks().list(word, tag);
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? Json.text(NotebookViews.list(cooks, Version.text())) : NotebookText.list(cooks));
        out.flush();
        return 0;
    }
}
