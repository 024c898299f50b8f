package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.CookFile;
import io.github.saltfront.app.notebook.Learning;
import io.github.saltfront.app.notebook.NotebookText;
import io.github.saltfront.app.notebook.NotebookViews;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.learn.KitchenKnowledge;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code notebook learned}: what was learned. */
@Command(
        name = "learned",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Show what a kitchen has learned, each with its 90 %% interval; forget it with --reset.",
        footer = {"", "Example: ./run notebook learned --reset oven"})
final class NotebookLearnedCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Option(
            names = "--profile",
            description = "The kitchen. Default: ${DEFAULT-VALUE}.",
            defaultValue = CookFile.USUAL_PROFILE)
    private String profile = CookFile.USUAL_PROFILE;

    @Option(names = "--butcher", description = "Thickness from this butcher only.")
    private String butcher = "";

    @Option(
            names = "--reset",
            paramLabel = "WHAT",
            description =
                    "Forget: oven, refrigerator, salt, thickness, meat or all. Cooks stay; later ones count again.")
    private Optional<String> reset = Optional.empty();

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Override
    public Integer call() {
        Catalog catalog = Catalog.load();
        Learning learning = data.notebook().learning();
        reset.ifPresent(what -> learning.forget(profile, what));
        KitchenKnowledge known = learning.knowledge(profile, butcher);
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                json
                        ? Json.text(NotebookViews.learned(profile, known, Version.text()))
                        : NotebookText.learned(profile, known, catalog));
        out.flush();
        return 0;
    }
}
