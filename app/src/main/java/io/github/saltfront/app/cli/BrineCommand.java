package io.github.saltfront.app.cli;

import io.github.saltfront.plan.BrineOrder;
import io.github.saltfront.plan.BrineSheet;
import io.github.saltfront.plan.Mending;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Works a bath out: what to weigh, how strong it is, where it ends and how long it takes. */
@Command(
        name = "brine",
        mixinStandardHelpOptions = true,
        description = "Works out a wet brine: what to weigh, how strong it is on every basis, how long to soak.",
        footer = {
            "%nExamples:",
            "  saltfront brine --cut chicken-breast-skinless --mass \"1.2 kg\" --water \"1 kg\" --strength \"6 %%\"",
            "  saltfront brine --cut pork-loin-chop --mass \"2 lb\" --vessel bag --target \"0.75 %%\"",
            "  saltfront brine --cut pork-loin-chop --mass \"2 lb\" --water \"4 kg\" --mend \"1.8 %%\""
        },
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:done", "1:refused, with the reason", "2:wrong input"})
public final class BrineCommand implements Callable<Integer> {
    private static final int DONE = 0;
    private static final int REFUSED = 1;
    private static final int WRONG_INPUT = 2;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private BrineOptions options = new BrineOptions();

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    /** Takes its fields from the command line. */
    public BrineCommand() {}

    @Override
    public Integer call() {
        InputErrors errors = new InputErrors();
        Optional<BrineOrder> order = options.read(errors);
        if (order.isEmpty() || !errors.isEmpty()) {
            return fail(errors);
        }
        PrintWriter out = spec.commandLine().getOut();
        if (options.mend().isPresent()) {
            return mend(order.get(), options.mend().get(), errors, out);
        }
        Optional<String> refusal = BrineSheet.refusal(order.get());
        if (refusal.isPresent()) {
            out.print(json ? BrineJson.refused(refusal.get()) : BrineText.refused(refusal.get()));
            out.flush();
            return REFUSED;
        }
        Optional<BrineSheet> sheet =
                errors.get("brine", Optional.<BrineSheet>empty(), () -> Optional.of(BrineSheet.of(order.get())));
        if (sheet.isEmpty()) {
            return fail(errors);
        }
        out.print(
                json
                        ? BrineJson.write(sheet.get(), options.catalog())
                        : BrineText.write(sheet.get(), options.catalog()));
        out.flush();
        return DONE;
    }

    private int mend(BrineOrder order, String present, InputErrors errors, PrintWriter out) {
        Optional<Mending> mending =
                errors.get("--mend", Optional.<Mending>empty(), () -> Optional.of(BrineMending.of(order, present)));
        if (mending.isEmpty()) {
            return fail(errors);
        }
        out.print(json ? BrineMending.json(mending.get(), Version.text()) : BrineMending.text(mending.get()));
        out.flush();
        return DONE;
    }

    private int fail(InputErrors errors) {
        PrintWriter err = spec.commandLine().getErr();
        errors.messages().forEach(m -> err.println("brine: " + m));
        err.flush();
        return WRONG_INPUT;
    }
}
