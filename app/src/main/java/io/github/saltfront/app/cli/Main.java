package io.github.saltfront.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry point of the command line. */
@Command(
        name = "saltfront",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            PlanCommand.class,
            SimulateCommand.class,
            BrineCommand.class,
            LethalityCommand.class,
            CoolCommand.class,
            CatalogCommand.class,
        },
        description = "Salt, water, heat and kill in one piece of meat through one day.")
public final class Main implements Runnable {
    private Main() {}

    /**
     * Runs a command and ends the process with its exit code: 0 done, 1 no feasible or converged result, 2 wrong input.
     *
     * @param args command and its arguments
     */
    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    /** Returns the command line, as a test may drive it. */
    static CommandLine commandLine() {
        return new CommandLine(new Main())
                .setExecutionExceptionHandler(new ErrorMessages())
                .setUsageHelpWidth(80);
    }

    @Override
    public void run() {
        commandLine().usage(System.out);
    }
}
