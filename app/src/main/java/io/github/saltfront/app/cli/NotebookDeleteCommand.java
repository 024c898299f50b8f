package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.Notebook;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook delete}: a cook away. */
@Command(
        name = "delete",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Delete a cook; --restore brings it back within 30 days.",
        footer = {"", "Example: ./run notebook delete 3f2a"})
final class NotebookDeleteCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Parameters(paramLabel = "ID", description = "Its id; to delete, the beginning is enough.")
    private String id = "";

    @Option(names = "--restore", description = "Bring it back; needs the whole id.")
    private boolean restore;

    @Override
    public Integer call() {
        Notebook notebook = data.notebook();
        PrintWriter out = spec.commandLine().getOut();
        if (restore) {
            if (!notebook.cooks().restore(id)) {
                throw new IllegalArgumentException("There is no deleted cook \"" + id + "\"; give the whole id.");
            }
            out.println("It is back.");
        } else {
            String whole = notebook.get(List.of(id)).get(0).id();
            notebook.cooks().delete(whole, System.currentTimeMillis());
            out.println("Deleted. To bring it back: ./run notebook delete --restore " + whole);
        }
        out.flush();
        return 0;
    }
}
