package io.github.saltfront.app.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code trial}: side-by-side trials, before and after. */
@Command(
        name = "trial",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        subcommands = {TrialPowerCommand.class, TrialDesignCommand.class, TrialAnalyzeCommand.class},
        description = "Side-by-side trials: how many tasters, who gets what, and what the answers show.")
final class TrialCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
