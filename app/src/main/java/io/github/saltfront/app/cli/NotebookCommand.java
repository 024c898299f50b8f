package io.github.saltfront.app.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code notebook}: what was cooked, and what was learned from it. */
@Command(
        name = "notebook",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        subcommands = {
            NotebookAddCommand.class,
            NotebookListCommand.class,
            NotebookShowCommand.class,
            NotebookCompareCommand.class,
            NotebookLearnedCommand.class,
            NotebookDeleteCommand.class,
            NotebookExportCommand.class,
            NotebookImportCommand.class
        },
        description = "Note cooks, compare them, and see what your kitchen has learned from them.")
final class NotebookCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
