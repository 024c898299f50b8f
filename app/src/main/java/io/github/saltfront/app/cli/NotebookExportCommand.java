package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.NotebookArchive;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook export}: all of it as a file. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Write the whole notebook as one zip archive of CSV, JSON and pictures.",
        footer = {"", "Example: ./run notebook export notebook.zip"})
final class NotebookExportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Parameters(paramLabel = "ZIP", description = "File to write. It appears only when it is complete.")
    private Path file = Path.of("");

    @Override
    public Integer call() throws IOException {
        NotebookArchive archive = new NotebookArchive(data.notebook());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        archive.write(bytes, Version.text());
        OutputFile.write(file, bytes.toByteArray());
        spec.commandLine().getOut().println("Written: " + file);
        spec.commandLine().getOut().flush();
        return 0;
    }
}
