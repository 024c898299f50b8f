package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.NotebookArchive;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook import}: an exported notebook. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Add the cooks of an exported notebook that are not here yet.",
        footer = {"", "Example: ./run notebook import notebook.zip"})
final class NotebookImportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Parameters(paramLabel = "ZIP", description = "What \"notebook export\" wrote.")
    private Path file = Path.of("");

    @Override
    public Integer call() {
        NotebookArchive.Imported done = new NotebookArchive(data.notebook()).read(file);
        spec.commandLine()
                .getOut()
                .printf(
                        "%d cooks added, %d were here already; %d pictures, %d checks of thermometers, %d trials, %d plans.%n",
                        done.added(), done.known(), done.pictures(), done.checks(), done.trials(), done.plans());
        spec.commandLine().getOut().flush();
        return 0;
    }
}
