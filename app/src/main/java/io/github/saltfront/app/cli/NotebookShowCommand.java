package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.Notebook;
import io.github.saltfront.app.notebook.NotebookText;
import io.github.saltfront.app.notebook.NotebookViews;
import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.StoredPhoto;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook show}: one cook. */
@Command(
        name = "show",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Show a cook: what was planned beside what was measured.",
        footer = {"", "Example: ./run notebook show 3f2a"})
final class NotebookShowCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Parameters(paramLabel = "ID", description = "Its id, or the beginning of it.")
    private String id = "";

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Override
    public Integer call() {
        Notebook notebook = data.notebook();
        NotedCook cook = notebook.get(List.of(id)).get(0);
        List<StoredPhoto> photos = notebook.cooks().photosOf(cook.id());
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? Json.text(NotebookViews.cook(cook, photos, Version.text())) : NotebookText.show(cook, photos));
        out.flush();
        return 0;
    }
}
