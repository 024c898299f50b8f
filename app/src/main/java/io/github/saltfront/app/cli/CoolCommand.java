package io.github.saltfront.app.cli;

import io.github.saltfront.app.export.CoolingJson;
import io.github.saltfront.app.export.CoolingText;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.catalog.Cut;
import io.github.saltfront.matter.Composition;
import io.github.saltfront.plan.CoolingAdvice;
import io.github.saltfront.plan.CoolingMedium;
import io.github.saltfront.plan.HotFood;
import io.github.saltfront.plan.MeatModel;
import io.github.saltfront.plan.PieceShape;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.Temperature;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code cool}: will cooked food reach the official limits of cooling, and what would make it. */
@Command(
        name = "cool",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Says whether hot food cools within the official times, and the smallest change that makes it.",
        footer = {
            "%nExamples:",
            "  saltfront cool --cut pork-loin-roast --mass \"2 kg\"",
            "  saltfront cool --pot --mass \"8 kg\" --depth \"20 cm\" --in ice-bath --stirred"
        },
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:predicted to keep both limits", "1:predicted to break one", "2:wrong input"})
public final class CoolCommand implements Callable<Integer> {
    private static final int KEEPS = 0;
    private static final int BREAKS = 1;
    private static final int WRONG_INPUT = 2;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--cut", description = "Cut of the catalog, for meat.")
    private Optional<String> cut = Optional.empty();

    @Option(names = "--pot", description = "A round pot of stock, soup or sauce instead of meat.")
    private boolean pot;

    @Option(names = "--mass", required = true, description = "Mass of one piece, or of what is in the pot: \"2 kg\".")
    private String mass = "";

    @Option(names = "--thickness", description = "Thickness of the piece, e.g. \"80 mm\". Default: usual for the cut.")
    private Optional<String> thickness = Optional.empty();

    @Option(names = "--depth", description = "Depth of the liquid in the pot, e.g. \"15 cm\".")
    private Optional<String> depth = Optional.empty();

    @Option(names = "--stirred", description = "The liquid is stirred all the while.")
    private boolean stirred;

    @Option(
            names = "--in",
            defaultValue = "refrigerator",
            description = "refrigerator, blast-chiller or ice-bath. Default: refrigerator.")
    private String medium = "refrigerator";

    @Option(
            names = "--refrigerator",
            description = "Temperature it holds with the food in it, e.g. \"3 C\". Default: 4 C, blast chiller 1 C.")
    private Optional<String> refrigerator = Optional.empty();

    @Option(
            names = "--start",
            defaultValue = "60 C",
            description = "Temperature of the food at the start, 57.4 to 100 C. Default: 60 C, as kept hot.")
    private String start = "60 C";

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    /** Takes its fields from the command line. */
    public CoolCommand() {}

    @Override
    public Integer call() {
        InputErrors errors = new InputErrors();
        Optional<HotFood> food = food(errors);
        Optional<CoolingMedium> into = into(errors);
        if (food.isEmpty() || into.isEmpty() || !errors.isEmpty()) {
            PrintWriter err = spec.commandLine().getErr();
            errors.messages().forEach(m -> err.println("cool: " + m));
            err.flush();
            return WRONG_INPUT;
        }
        CoolingAdvice advice = CoolingAdvice.of(food.get(), into.get());
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? Json.text(CoolingJson.of(advice, Version.text())) : CoolingText.of(advice));
        out.flush();
        return advice.asked().keepsLimits() ? KEEPS : BREAKS;
    }

    private Optional<HotFood> food(InputErrors errors) {
        double kilograms = errors.within("--mass", mass, Dimension.MASS, 0.02, 100, "20 g and 100 kg");
        double hot = errors.within(
                "--start",
                start,
                Dimension.TEMPERATURE,
                HotFood.CLOCK_START + 0.1,
                Temperature.fromCelsius(100),
                "57.4 and 100 C; the official clocks begin at 57.2 C (135 F)");
        if (pot == cut.isPresent()) {
            errors.add("--cut", "name a cut for meat, or give --pot for a liquid, but not both.");
            return Optional.empty();
        }
        return pot ? liquid(errors, kilograms, hot) : meat(errors, kilograms, hot);
    }

    private Optional<HotFood> liquid(InputErrors errors, double kilograms, double hot) {
        thickness.ifPresent(t -> errors.add("--thickness", "is for meat; a pot has a --depth."));
        if (depth.isEmpty()) {
            errors.add("--depth", "is missing: the depth of the liquid decides; measure it, e.g. \"15 cm\".");
            return Optional.empty();
        }
        double deep = errors.within("--depth", depth.get(), Dimension.LENGTH, 0.01, 1, "1 cm and 1 m");
        return errors.get(
                "--pot", Optional.<HotFood>empty(), () -> Optional.of(HotFood.pot(kilograms, deep, stirred, hot)));
    }

    private Optional<HotFood> meat(InputErrors errors, double kilograms, double hot) {
        depth.ifPresent(d -> errors.add("--depth", "is for a --pot; meat has a --thickness."));
        if (stirred) {
            errors.add("--stirred", "is for a --pot.");
        }
        Optional<Cut> found = errors.get(
                "--cut",
                Optional.<Cut>empty(),
                () -> Optional.of(Catalog.load().cuts().get(cut.orElse(""))));
        OptionalDouble thick = thickness
                .map(t -> OptionalDouble.of(
                        errors.within("--thickness", t, Dimension.LENGTH, 0.002, 0.4, "2 and 400 mm")))
                .orElse(OptionalDouble.empty());
        if (found.isEmpty() || !errors.isEmpty()) {
            return Optional.empty();
        }
        Composition composition = MeatModel.of(found.get()).composition();
        return errors.get(
                "--thickness",
                Optional.<HotFood>empty(),
                () -> Optional.of(HotFood.piece(
                        found.get().name(),
                        composition,
                        PieceShape.of(found.get(), kilograms, thick),
                        kilograms,
                        hot)));
    }

    private Optional<CoolingMedium> into(InputErrors errors) {
        List<String> ids = CoolingMedium.load().stream().map(CoolingMedium::id).toList();
        if (!ids.contains(medium)) {
            errors.add("--in", "must be one of " + String.join(", ", ids) + ", got \"" + medium + "\".");
            return Optional.empty();
        }
        CoolingMedium found = CoolingMedium.get(medium);
        if (refrigerator.isEmpty()) {
            return Optional.of(found);
        }
        if (medium.equals(CoolingMedium.ICE_BATH)) {
            errors.add("--refrigerator", "has no meaning for an ice bath, which holds its own temperature.");
            return Optional.empty();
        }
        return Optional.of(found.at(errors.within(
                "--refrigerator",
                refrigerator.get(),
                Dimension.TEMPERATURE,
                Temperature.fromCelsius(-20),
                Temperature.fromCelsius(15),
                "-20 and 15 C")));
    }
}
