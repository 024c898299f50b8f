package io.github.saltfront.app.cli;

import io.github.saltfront.words.Language;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** Entry point of the command line. */
@Command(
        name = "saltfront",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Salt, water, heat and kill in one piece of meat through one day.")
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Every command, in the order of the help. */
    private static final Map<String, Class<?>> COMMANDS = commands();

    @Option(
            names = "--language",
            paramLabel = "TAG",
            scope = ScopeType.INHERIT,
            description = "Language of the results: en or de. Default: en.")
    private String language = Language.ENGLISH.tag();

    private Main() {}

    private static Map<String, Class<?>> commands() {
        Map<String, Class<?>> commands = new LinkedHashMap<>();
        commands.put("plan", PlanCommand.class);
        commands.put("simulate", SimulateCommand.class);
        commands.put("meal", MealCommand.class);
        commands.put("brine", BrineCommand.class);
        commands.put("follow", FollowCommand.class);
        commands.put("live", LiveCommand.class);
        commands.put("lethality", LethalityCommand.class);
        commands.put("cool", CoolCommand.class);
        commands.put("trial", TrialCommand.class);
        commands.put("notebook", NotebookCommand.class);
        commands.put("thermometer", ThermometerCommand.class);
        commands.put("explain", ExplainCommand.class);
        commands.put("catalog", CatalogCommand.class);
        commands.put("schema", SchemaCommand.class);
        commands.put("serve", ServeCommand.class);
        return Collections.unmodifiableMap(commands);
    }

    /**
     * Runs a command and ends the process with its exit code: 0 done, 1 no feasible or converged result, 2 wrong input.
     *
     * @param args command and its arguments; none starts the web program
     */
    public static void main(String[] args) {
        String[] words = args.length == 0 ? new String[] {"serve"} : args;
        System.exit(commandLine(words[0]).execute(words));
    }

    /** Command line of one command alone, since to describe them all takes longer than most of them run; of all for any other word. */
    private static CommandLine commandLine(String command) {
        Map<String, Class<?>> needed =
                COMMANDS.containsKey(command) ? Map.of(command, COMMANDS.get(command)) : COMMANDS;
        return commandLine(needed);
    }

    /** Returns the command line, as a test may drive it. */
    static CommandLine commandLine() {
        return commandLine(COMMANDS);
    }

    private static CommandLine commandLine(Map<String, Class<?>> commands) {
        Main main = new Main();
        CommandLine line = new CommandLine(main);
        commands.forEach(line::addSubcommand);
        return line.setExecutionStrategy(main::execute)
                .setExecutionExceptionHandler(new ErrorMessages())
                .setParameterExceptionHandler(new OptionErrors())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpWidth(80);
    }

    private int execute(ParseResult parsed) {
        Language spoken = Language.find(language)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--language: got \"" + language + "\", expected one of " + String.join(", ", Language.tags())
                                + "; choose one of them."));
        try (Language.Scope scope = spoken.begin()) {
            return new CommandLine.RunLast().execute(parsed);
        }
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
