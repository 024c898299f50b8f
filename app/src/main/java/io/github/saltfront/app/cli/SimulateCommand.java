package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.HistoryJson;
import io.github.saltfront.app.request.SimulationFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.SimulatedDay;
import io.github.saltfront.safety.LimitCheck;
import io.github.saltfront.transport.History;
import io.github.saltfront.transport.Simulation;
import io.github.saltfront.transport.SolidSimulation;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code simulate FILE}: the whole history of one piece as JSON or CSV. */
@Command(
        name = "simulate",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Carry one piece through its stages and write the whole history.",
        footer = {"", "Example: ./run simulate examples/slab.yaml --csv -o slab.csv"})
final class SimulateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "Piece and stages as YAML or JSON.")
    private Path file = Path.of("");

    @Option(names = "--csv", description = "Write the series as CSV; default is JSON.")
    private boolean csv;

    @Option(names = "--json", description = "Write JSON, the default.")
    private boolean json;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "OUT",
            description = "File to write; default is standard output. It appears only when it is complete.")
    private @Nullable Path output;

    @Override
    public Integer call() {
        if (csv && json) {
            throw new IllegalArgumentException("--csv and --json exclude each other; leave one out.");
        }
        SimulationFile simulation = SimulationFile.read(DocumentReader.read(file), Catalog.load());
        String what = simulation.threeDimensional() ? "simulating in three dimensions" : "simulating";
        CommandLine line = spec.commandLine();
        String text;
        List<LimitCheck> near;
        try (Progress progress = Progress.start(what, line.getErr(), Terminal.isErr())) {
            History history = run(simulation);
            near = SimulatedDay.of(history, simulation.rule()).limits().checks().stream()
                    .filter(LimitCheck::isNear)
                    .toList();
            text = csv ? HistoryJson.csv(history) : Json.text(HistoryJson.of(simulation, history, Version.text()));
        }
        near.forEach(check -> line.getErr().println("near or past an official limit: " + check.text()));
        line.getErr().flush();
        if (output == null) {
            line.getOut().print(text);
            line.getOut().flush();
        } else {
            OutputFile.write(output, text);
        }
        return 0;
    }

    private static History run(SimulationFile file) {
        return file.threeDimensional()
                ? SolidSimulation.run(file.piece(), file.stages(), file.settings(), file.output(), file.cells())
                : Simulation.run(file.piece(), file.stages(), file.settings(), file.output());
    }
}
