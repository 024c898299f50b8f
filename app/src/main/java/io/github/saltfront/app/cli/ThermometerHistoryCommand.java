package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.NotebookViews;
import io.github.saltfront.app.notebook.ThermometerText;
import io.github.saltfront.app.notebook.Thermometers;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code thermometer history [NAME]}: checks, corrections and when the next is due. */
@Command(
        name = "history",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Show the checks of a thermometer, or of all: the correction that counts, its drift, and when the next"
                        + " check is due.",
        footer = {"", "Example: ./run thermometer history blue-pen"})
final class ThermometerHistoryCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "Name of the thermometer; all if left out.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--json", description = "Write JSON, a list.")
    private boolean json;

    @Override
    public Integer call() {
        Thermometers bench = new Thermometers(data.open().instrumentChecks());
        List<String> names = name.map(List::of).orElseGet(() -> bench.checks().instruments());
        if (name.isPresent() && bench.checks().of(name.get()).isEmpty()) {
            throw new IllegalArgumentException("The thermometer \"" + name.get()
                    + "\" was never checked here; there are " + bench.checks().instruments() + ".");
        }
        LocalDate today = LocalDate.now();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(Json.text(names.stream()
                    .map(n ->
                            NotebookViews.thermometer(n, bench.checks().of(n), bench.history(n), today, Version.text()))
                    .toList()));
        } else if (names.isEmpty()) {
            out.println("No thermometer was checked yet. Try: ./run thermometer check --help");
        } else {
            names.forEach(n -> out.print(ThermometerText.of(n, bench.checks().of(n), bench.history(n), today)));
        }
        out.flush();
        return 0;
    }
}
