package io.github.saltfront.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry point of the command line. */
@Command(
        name = "saltfront",
        mixinStandardHelpOptions = true,
        description = "Salt, water, heat and kill in one piece of meat through one day.",
        subcommands = {BrineCommand.class})
public final class Main implements Runnable {
    private Main() {}

    /**
     * Runs a command and ends the process with its exit code: 0 done, 1 no feasible or converged result, 2 wrong input.
     *
     * @param args command and its arguments
     */
    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }

    @Override
    public void run() {
        new CommandLine(this).usage(System.out);
    }
}
