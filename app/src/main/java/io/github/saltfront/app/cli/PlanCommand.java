package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.PlanJson;
import io.github.saltfront.app.export.PlanText;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.PlanningException;
import io.github.saltfront.plan.Request;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code plan FILE}: from a request to a plan. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Plan salting, cooking and the clock for a piece of meat.",
        footer = {"", "Example: ./run plan examples/sunday-chicken.yaml"})
final class PlanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The request as YAML or JSON.")
    private Path file = Path.of("");

    @Option(names = "--json", description = "Write JSON with all numbers.")
    private boolean json;

    @Option(
            names = "--seed",
            defaultValue = "1",
            description = "Seed of the ensemble; the same seed gives the same plan. Default: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Override
    public Integer call() {
        Catalog catalog = Catalog.load();
        Request request = PlanFile.read(DocumentReader.read(file), catalog, ZonedDateTime.now());
        ExecutorService threads =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), task -> {
                    Thread thread = new Thread(task, "ensemble");
                    thread.setDaemon(true);
                    return thread;
                });
        CommandLine line = spec.commandLine();
        Plan plan;
        try (Progress progress = Progress.start("planning", line.getErr(), Terminal.isErr())) {
            plan = Planner.plan(request, threads, seed);
        } catch (PlanningException e) {
            line.getErr().println(ErrorMessages.problem(e).at(file.toString()));
            line.getErr().flush();
            return ErrorMessages.code(e);
        } finally {
            threads.shutdownNow();
        }
        line.getOut().print(json ? Json.text(PlanJson.of(plan, Version.text())) : PlanText.of(plan));
        line.getOut().flush();
        return plan.cooking().verdict().isMet() ? 0 : ErrorMessages.INFEASIBLE;
    }
}
