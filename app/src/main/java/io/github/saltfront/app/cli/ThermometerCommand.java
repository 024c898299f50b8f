package io.github.saltfront.app.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code thermometer}: the bench on which thermometers are checked. */
@Command(
        name = "thermometer",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        subcommands = {ThermometerCheckCommand.class, ThermometerHistoryCommand.class},
        description = "Check thermometers in ice and boiling water, and keep their corrections.")
final class ThermometerCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
