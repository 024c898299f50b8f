package io.github.saltfront.app.cli;

import io.github.saltfront.app.export.CatalogJson;
import io.github.saltfront.catalog.Catalog;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code catalog}: cuts, salts, liquids and appliances with their sources. */
@Command(
        name = "catalog",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "List cuts, salts, liquids and appliances with their sources.",
        footer = {"", "Example: ./run catalog cuts turkey"})
final class CatalogCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            paramLabel = "KIND",
            description = "cuts, salts, liquids or appliances; all if left out.")
    private @Nullable String kind;

    @Parameters(arity = "0..1", index = "1", paramLabel = "WORD", description = "Only entries that hold this word.")
    private @Nullable String word;

    @Option(names = "--json", description = "Write JSON with all fields.")
    private boolean json;

    @Override
    public Integer call() {
        Map<String, List<Map<String, Object>>> all = CatalogJson.of(Catalog.load());
        if (kind != null && !all.containsKey(kind)) {
            throw new IllegalArgumentException("Got the kind \"" + kind + "\", expected one of "
                    + String.join(", ", all.keySet()) + "; choose one of them.");
        }
        Map<String, List<Map<String, Object>>> chosen = CatalogJson.chosen(all, kind, word);
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? Json.text(CatalogJson.document(chosen)) : CatalogJson.text(chosen));
        out.flush();
        return 0;
    }
}
