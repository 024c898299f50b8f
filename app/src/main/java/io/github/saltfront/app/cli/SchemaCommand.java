package io.github.saltfront.app.cli;

import io.github.saltfront.app.schema.Schemas;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code schema NAME}: the JSON Schema of a file or an output. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        description = "Print the JSON Schema of a request file or of an output.",
        footer = {"", "Example: ./run schema plan-request"})
final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "0..1",
            paramLabel = "NAME",
            description =
                    "plan-request, meal-request, simulation, trial or cook-file for files, others for outputs; a list if left out.")
    private @Nullable String name;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(name == null ? Schemas.list() : Schemas.text(name));
        out.flush();
        return 0;
    }
}
