package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.MealJson;
import io.github.saltfront.app.export.MealText;
import io.github.saltfront.app.export.PlanCalendar;
import io.github.saltfront.app.request.MealFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Meal;
import io.github.saltfront.plan.MealPlanner;
import io.github.saltfront.plan.PlanningException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans several dishes for one time. */
@Command(
        name = "meal",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Plan several dishes for one time: one clock, one oven or two.",
        footer = {"", "Example: ./run meal examples/meal/sunday-table.yaml"})
final class MealCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "The request as YAML or JSON.")
    private Path file = Path.of("");

    @Option(names = "--json", description = "Write JSON with all numbers.")
    private boolean json;

    @Option(names = "--calendar", description = "Write a calendar with alarms (iCalendar).")
    private boolean calendar;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "OUT",
            description = "File to write; default is standard output. It appears only when it is complete.")
    private @Nullable Path output;

    @Option(
            names = "--seed",
            defaultValue = "1",
            description = "Seed of the ensembles; the same seed gives the same plan. Default: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Override
    public Integer call() {
        if (json && calendar) {
            throw new IllegalArgumentException("--json and --calendar exclude each other; leave one out.");
        }
        MealFile wish = MealFile.read(DocumentReader.read(file), Catalog.load(), ZonedDateTime.now());
        ExecutorService threads = DataFile.threads();
        CommandLine line = spec.commandLine();
        Meal meal;
        try (Progress progress = Progress.start("planning", line.getErr(), Terminal.isErr())) {
            meal = MealPlanner.plan(wish.dishes(), wish.counts(), threads, seed);
        } catch (PlanningException e) {
            line.getErr().println(ErrorMessages.problem(e).at(file.toString()));
            line.getErr().flush();
            return ErrorMessages.code(e);
        } finally {
            threads.shutdownNow();
        }
        write(text(meal), line);
        boolean met = meal.courses().stream()
                .allMatch(course -> course.plan().cooking().verdict().isMet());
        return met ? 0 : ErrorMessages.INFEASIBLE;
    }

    private String text(Meal meal) {
        if (json) {
            return Json.text(MealJson.of(meal, Version.text()));
        }
        return calendar ? PlanCalendar.of(meal) : MealText.of(meal);
    }

    private void write(String content, CommandLine line) {
        if (output != null) {
            OutputFile.write(output, content.getBytes(StandardCharsets.UTF_8));
            return;
        }
        line.getOut().print(content);
        line.getOut().flush();
    }
}
