package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.CheckInput;
import io.github.saltfront.app.notebook.ThermometerText;
import io.github.saltfront.app.notebook.Thermometers;
import io.github.saltfront.app.store.StoredCheck;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code thermometer check NAME}: a check in ice water and, better, also in boiling water. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Note what a thermometer showed in ice water and in boiling water.",
            "Ice water: a glass full of crushed ice, filled up with water, stirred, the tip in the middle for a minute.",
            "Boiling water: a rolling boil, the tip off the bottom; water boils cooler higher up, so say how high you are or what"
                    + " the barometer at your place shows (not the one reduced to sea level)."
        },
        footer = {"", "Example: ./run thermometer check blue-pen --ice 0.4 --boiling 99.1 --altitude 250"})
final class ThermometerCheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private DataFile data = new DataFile();

    @Parameters(paramLabel = "NAME", description = "Name of the thermometer, such as blue-pen.")
    private String name = "";

    @Option(names = "--ice", required = true, description = "Reading in ice water, e.g. 0.4 or 32.7F.")
    private String ice = "";

    @Option(names = "--boiling", description = "Reading in boiling water, e.g. 99.1 or 210.4F.")
    private Optional<String> boiling = Optional.empty();

    @Option(names = "--altitude", description = "Height above the sea, e.g. 1600 or 5280ft.")
    private Optional<String> altitude = Optional.empty();

    @Option(
            names = "--pressure",
            description = "Pressure of the air at your place, e.g. 985hPa. Better than the altitude.")
    private Optional<String> pressure = Optional.empty();

    @Option(
            names = "--step",
            defaultValue = "0.1",
            description = "Smallest step of its display [°C]. Default: ${DEFAULT-VALUE}.")
    private String step = "0.1";

    @Option(names = "--day", description = "Day of the check, e.g. 2026-11-28. Default: today.")
    private Optional<String> day = Optional.empty();

    @Option(names = "--note", description = "Anything worth keeping, such as a new battery.")
    private String note = "";

    @Override
    public Integer call() {
        StoredCheck check = new CheckInput(name, ice, boiling, altitude, pressure, step, day, note)
                .check(LocalDate.now(), System.currentTimeMillis());
        Thermometers bench = new Thermometers(data.open().instrumentChecks());
        bench.checks().add(check);
        PrintWriter out = spec.commandLine().getOut();
        out.print(ThermometerText.of(
                check.instrument(),
                bench.checks().of(check.instrument()),
                bench.history(check.instrument()),
                LocalDate.now()));
        out.flush();
        return 0;
    }
}
