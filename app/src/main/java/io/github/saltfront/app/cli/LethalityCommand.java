package io.github.saltfront.app.cli;

import io.github.saltfront.app.export.LethalityJson;
import io.github.saltfront.app.export.LethalityPage;
import io.github.saltfront.app.export.LethalityResult;
import io.github.saltfront.app.export.LethalityText;
import io.github.saltfront.app.notebook.NotebookViews;
import io.github.saltfront.app.notebook.Thermometers;
import io.github.saltfront.app.probe.LogReadException;
import io.github.saltfront.app.probe.LogReading;
import io.github.saltfront.app.probe.TemperatureLogReader;
import io.github.saltfront.matter.IapwsIf97Saturation;
import io.github.saltfront.matter.StandardAtmosphere;
import io.github.saltfront.safety.DeclaredProbeError;
import io.github.saltfront.safety.InstrumentCheck;
import io.github.saltfront.safety.InstrumentHistory;
import io.github.saltfront.safety.Kitchen;
import io.github.saltfront.safety.MeasuredRecord;
import io.github.saltfront.safety.Placement;
import io.github.saltfront.safety.ProbeError;
import io.github.saltfront.safety.SafetyRule;
import io.github.saltfront.safety.UnknownProbeError;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Judges a temperature log. Exit code 0 met, 1 not met or cannot tell, 2 wrong input. */
@Command(
        name = "lethality",
        mixinStandardHelpOptions = true,
        description =
                "Says what a temperature log shows: the share of the official hold, the official minimum, and what is missing.",
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:met", "1:not met, or cannot tell", "2:wrong input"})
public final class LethalityCommand implements Callable<Integer> {
    private static final int MET = 0;
    private static final int NOT_MET = 1;
    private static final int WRONG_INPUT = 2;
    private static final double DISPLAY_STEP = 0.1;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "LOG.csv", description = "Temperature log: a time column and one or more probes.")
    private String log;

    @Option(names = "--meat", required = true, description = "chicken, turkey, duck, beef, pork, lamb, veal, mixed ...")
    private String meat;

    @Option(names = "--ground", description = "The meat is ground.")
    private boolean ground;

    @Option(names = "--injected", description = "The meat is injected, tumbled, bladed or stuffed.")
    private boolean injected;

    @Option(
            names = "--salted",
            description =
                    "Salt, brine or marinade went in: below 64 °C the hold must be 2.45 times as long (our allowance).")
    private boolean salted;

    @Option(names = "--fat", description = "Fat in the raw meat [%%], e.g. 5. Unknown: the strictest column, 12.")
    private Optional<String> fat;

    @Option(names = "--vulnerable", description = "Pregnant, very young, old or ill guests eat.")
    private boolean vulnerable;

    @Option(names = "--kitchen", description = "home, teaching or professional. Default: home.", defaultValue = "home")
    private String kitchen;

    @Option(names = "--unit", description = "C or F, where the log does not say.")
    private Optional<String> unit;

    @Option(names = "--time-unit", description = "s, min or h, where the log does not say.")
    private Optional<String> timeUnit;

    @Option(names = "--probe", description = "Column to use, e.g. \"thigh\". Default: the lowest of all at each time.")
    private Optional<String> probe;

    @Option(names = "--ice-reading", description = "Reading in ice water, e.g. 0.4 or 32.7F.")
    private Optional<String> iceReading;

    @Option(
            names = "--boiling-reading",
            description = "Reading in boiling water, e.g. 99.1 or 210.4F; needs --altitude.")
    private Optional<String> boilingReading;

    @Option(names = "--altitude", description = "Height above the sea, e.g. 1600 or 5280ft.")
    private Optional<String> altitude;

    @Option(names = "--probe-error", description = "Largest error of the thermometer [°C], if it was not checked here.")
    private Optional<String> probeError;

    @Option(
            names = "--thermometer",
            paramLabel = "NAME",
            description =
                    "Take off the error found in the last check of this thermometer; see the command thermometer.")
    private Optional<String> thermometer;

    @Mixin
    private DataFile data = new DataFile();

    @Option(
            names = "--distance",
            description = "How much colder the coldest spot may have been [°C]; 0 if probed there.")
    private Optional<String> distance;

    @Option(names = "--longest-gap", description = "Longest time between rows [min]. Default: 5.", defaultValue = "5")
    private String longestGap;

    @Option(
            names = "--response",
            description = "Response time of the probe, e.g. 5s. Default: 5s.",
            defaultValue = "5s")
    private String response;

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    @Option(names = "--report", paramLabel = "FILE", description = "Also write a page with the whole record.")
    private Optional<String> report;

    /** Takes its fields from the command line. */
    public LethalityCommand() {
        // picocli sets the fields; these keep them defined when the class is made by hand
        this.log = "";
        this.meat = "";
        this.kitchen = "home";
        this.longestGap = "5";
        this.response = "5s";
        this.fat = Optional.empty();
        this.unit = Optional.empty();
        this.timeUnit = Optional.empty();
        this.probe = Optional.empty();
        this.iceReading = Optional.empty();
        this.boilingReading = Optional.empty();
        this.altitude = Optional.empty();
        this.probeError = Optional.empty();
        this.thermometer = Optional.empty();
        this.distance = Optional.empty();
        this.report = Optional.empty();
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        try {
            return judge();
        } catch (LogReadException e) {
            return fail(e.getMessage() == null ? "the log cannot be read." : e.getMessage());
        } catch (NoSuchFileException e) {
            return fail("no file \"" + e.getFile() + "\"; check the path.");
        } catch (UncheckedIOException e) {
            return fail(String.valueOf(e.getMessage()));
        } catch (IOException e) {
            return fail("cannot read: " + e.getMessage());
        } catch (InvalidPathException e) {
            return fail("\"" + e.getInput() + "\" is not a path.");
        } catch (IllegalArgumentException e) {
            return fail(String.valueOf(e.getMessage()));
        }
    }

    private int judge() throws LogReadException, IOException {
        SafetyRule rule = rule();
        ProbeError error = probeError();
        Placement placement = distance.isPresent()
                ? Placement.colderBy(Quantities.difference("--distance", distance.get()))
                : Placement.unknown();
        double gap = Quantities.duration("--longest-gap", longestGap);
        double lag = Quantities.duration("--response", response);
        Path file = Path.of(log);
        LogReading reading = TemperatureLogReader.read(file, LogFlags.options(unit, timeUnit, probe));
        MeasuredRecord measured = new MeasuredRecord(reading.log(), error, placement, lag, gap);
        LethalityResult result = LethalityResult.of(reading, measured, rule, version());
        PrintWriter out = spec.commandLine().getOut();
        out.print(json ? LethalityJson.write(result) + System.lineSeparator() : LethalityText.write(result));
        out.flush();
        if (report.isPresent()) {
            OutputFile.write(Path.of(report.get()), LethalityPage.write(result, String.valueOf(file.getFileName())));
        }
        return result.verdict().isMet() ? MET : NOT_MET;
    }

    private SafetyRule rule() {
        OptionalDouble fraction =
                fat.isPresent() ? OptionalDouble.of(Quantities.percent("--fat", fat.get())) : OptionalDouble.empty();
        Kitchen place = switch (kitchen.toLowerCase(Locale.ROOT)) {
            case "home" -> Kitchen.HOME;
            case "teaching" -> Kitchen.TEACHING;
            case "professional" -> Kitchen.PROFESSIONAL;
            default ->
                throw new IllegalArgumentException(
                        "--kitchen: got \"" + kitchen + "\", expected home, teaching or professional.");
        };
        return new SafetyRule(MeatWords.find(meat, ground, injected), fraction, vulnerable, place, salted);
    }

    private ProbeError probeError() {
        if (thermometer.isPresent()) {
            if (iceReading.isPresent() || boilingReading.isPresent() || probeError.isPresent()) {
                throw new IllegalArgumentException(
                        "--thermometer and readings or an error given here exclude each other; leave one out.");
            }
            return checked(thermometer.get());
        }
        if (iceReading.isEmpty()) {
            if (boilingReading.isPresent()) {
                throw new IllegalArgumentException(
                        "--boiling-reading needs --ice-reading too; ice water is the better check.");
            }
            return probeError.isPresent()
                    ? new DeclaredProbeError(Quantities.difference("--probe-error", probeError.get()))
                    : new UnknownProbeError();
        }
        if (probeError.isPresent()) {
            throw new IllegalArgumentException(
                    "--probe-error and --ice-reading exclude each other; give the readings alone.");
        }
        double ice = Quantities.temperature("--ice-reading", iceReading.get());
        if (boilingReading.isEmpty()) {
            return InstrumentCheck.icePoint(ice, DISPLAY_STEP);
        }
        if (altitude.isEmpty()) {
            throw new IllegalArgumentException("--boiling-reading needs --altitude: water boils cooler higher up.");
        }
        double height = Quantities.height("--altitude", altitude.get());
        double boilingPoint = IapwsIf97Saturation.temperature(StandardAtmosphere.pressure(height));
        return InstrumentCheck.twoPoint(
                ice,
                Quantities.temperature("--boiling-reading", boilingReading.get()),
                boilingPoint,
                InstrumentCheck.BOILING_BOUND_FROM_ALTITUDE,
                DISPLAY_STEP);
    }

    /** The last check; when it is overdue that is said, and the correction still taken: an old one is better than none. */
    private ProbeError checked(String name) {
        Thermometers bench = new Thermometers(data.open().instrumentChecks());
        LocalDate today = LocalDate.now();
        ProbeError error = bench.errorOn(name, today)
                .orElseThrow(() -> new IllegalArgumentException("--thermometer: got \"" + name
                        + "\", which was never checked here, expected one of "
                        + bench.checks().instruments() + "; check it first: thermometer check " + name + "."));
        long left = bench.history(name).daysLeft(today, InstrumentHistory.USUAL_DAYS, NotebookViews.SHOWN_AT);
        if (left <= 0) {
            PrintWriter err = spec.commandLine().getErr();
            err.println(
                    "The thermometer \"" + name + "\" is due for a check; its correction is older than it should be.");
            err.flush();
        }
        return error;
    }

    private int fail(String message) {
        PrintWriter err = spec.commandLine().getErr();
        err.println(message);
        err.flush();
        return WRONG_INPUT;
    }

    private static String version() {
        String version = LethalityCommand.class.getPackage().getImplementationVersion();
        return version == null ? "development" : version;
    }
}
