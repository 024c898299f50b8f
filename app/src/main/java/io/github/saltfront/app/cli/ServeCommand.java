package io.github.saltfront.app.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code serve}: the web program, until it is ended. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Start the web program and open it in the browser.",
        footer = {
            "",
            "Without --data the file is saltfront.db in your folder for program data.",
            "",
            "Example: ./run serve --lan"
        })
final class ServeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private ServerFlags flags = new ServerFlags();

    @Override
    public Integer call() throws InterruptedException {
        flags.serve(flags.start(DataFile.usual()), "", spec.commandLine().getOut());
        return 0;
    }
}
