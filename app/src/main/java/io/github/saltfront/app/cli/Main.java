package io.github.saltfront.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Entry point of the command line. */
@Command(
        name = "saltfront",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            PlanCommand.class,
            SimulateCommand.class,
            BrineCommand.class,
            FollowCommand.class,
            LiveCommand.class,
            LethalityCommand.class,
            CoolCommand.class,
            TrialCommand.class,
            CatalogCommand.class,
            SchemaCommand.class,
            ServeCommand.class,
        },
        description = "Salt, water, heat and kill in one piece of meat through one day.")
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Main() {}

    /**
     * Runs a command and ends the process with its exit code: 0 done, 1 no feasible or converged result, 2 wrong input.
     *
     * @param args command and its arguments; none starts the web program
     */
    public static void main(String[] args) {
        System.exit(commandLine().execute(args.length == 0 ? new String[] {"serve"} : args));
    }

    /** Returns the command line, as a test may drive it. */
    static CommandLine commandLine() {
        return new CommandLine(new Main())
                .setExecutionExceptionHandler(new ErrorMessages())
                .setParameterExceptionHandler(new OptionErrors())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpWidth(80);
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
