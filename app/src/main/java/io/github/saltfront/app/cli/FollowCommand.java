package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.OutlookJson;
import io.github.saltfront.app.export.OutlookText;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.live.Reading;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.PlanningException;
import io.github.saltfront.plan.Request;
import io.github.saltfront.safety.DeclaredProbeError;
import io.github.saltfront.safety.Placement;
import io.github.saltfront.safety.ProbeError;
import io.github.saltfront.safety.UnknownProbeError;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.QuantityParser;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code follow REQUEST LOG.csv}: what the readings of a cook tell about its end. */
@Command(
        name = "follow",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Follow a cook by the readings of its thermometer: when to take it out, whether the hold is fulfilled, and what"
                    + " to expect. Times count from when the meat went into the heat."
        },
        footer = {"", "Example: ./run follow examples/live/loin.yaml examples/live/loin.csv --every 20min"},
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:done", "1:the request cannot be met", "2:wrong input"})
final class FollowCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "REQUEST", description = "The request of the plan, as YAML or JSON.")
    private Path file = Path.of("");

    @Parameters(index = "1", paramLabel = "LOG.csv", description = "Log of the thermometer: a time column and probes.")
    private Path log = Path.of("");

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "Look ahead from this time, e.g. 40min; may be repeated.")
    private List<String> at = List.of();

    @Option(names = "--every", paramLabel = "TIME", description = "Look ahead at regular times, e.g. 10min.")
    private Optional<String> every = Optional.empty();

    @Mixin
    private LogProbes probes = new LogProbes();

    @Mixin
    private ProbeFlags probe = new ProbeFlags();

    @Option(names = "--serve-in", paramLabel = "TIME", description = "When it is to be served, e.g. 90min.")
    private Optional<String> serveIn = Optional.empty();

    @Mixin
    private FollowEvents events = new FollowEvents();

    @Option(
            names = "--watch",
            description = "Go on while the log grows, with a new outlook for what comes; end it with Ctrl+C.")
    private boolean watch;

    @Option(
            names = "--until-silent",
            paramLabel = "TIME",
            description = "With --watch: end when nothing came for so long, e.g. 20min.")
    private Optional<String> untilSilent = Optional.empty();

    @Option(names = "--json", description = "Write JSON with all numbers.")
    private boolean json;

    @Option(
            names = "--seed",
            defaultValue = "1",
            description = "Seed of the ensemble; the same seed gives the same answers. Default: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (watch) {
            return watch();
        }
        List<Reading> readings = probes.read(log);
        List<Double> moments = moments(readings);
        Request request = PlanFile.read(DocumentReader.read(file), Catalog.load(), ZonedDateTime.now());
        ExecutorService threads = DataFile.threads();
        CommandLine line = spec.commandLine();
        List<Outlook> outlooks;
        LiveSetup setup;
        try (Progress progress = Progress.start("following the cook", line.getErr(), Terminal.isErr())) {
            Plan plan = Planner.plan(request, threads, seed);
            setup = setup(plan);
            outlooks = new Replay(setup, seed, threads).run(readings, events.list(setup), moments);
        } catch (PlanningException e) {
            line.getErr().println(ErrorMessages.problem(e).at(file.toString()));
            line.getErr().flush();
            return ErrorMessages.code(e);
        } finally {
            threads.shutdownNow();
        }
        line.getOut()
                .print(
                        json
                                ? Json.text(OutlookJson.of(setup, outlooks, Version.text()))
                                : OutlookText.of(setup, outlooks));
        line.getOut().flush();
        return 0;
    }

    private LiveSetup setup(Plan plan) {
        ProbeError error = probe.error().isPresent()
                ? new DeclaredProbeError(probe.error().getAsDouble())
                : new UnknownProbeError();
        Placement place = probe.distance().isPresent()
                ? Placement.colderBy(probe.distance().getAsDouble())
                : Placement.unknown();
        LiveSetup setup = LiveSetup.of(plan).withProbe(error, place);
        return serveIn.isPresent() ? setup.servedAt(time("--serve-in", serveIn.get())) : setup;
    }

    private int watch() throws IOException, InterruptedException {
        if (!at.isEmpty() || every.isPresent()) {
            throw new IllegalArgumentException("--watch tells every change by itself; leave --at and --every away.");
        }
        double silence = untilSilent.isPresent() ? time("--until-silent", untilSilent.get()) : Double.POSITIVE_INFINITY;
        Request request = PlanFile.read(DocumentReader.read(file), Catalog.load(), ZonedDateTime.now());
        ExecutorService threads = DataFile.threads();
        CommandLine line = spec.commandLine();
        try {
            LiveSetup setup = setup(Planner.plan(request, threads, seed));
            FollowWatch watching = new FollowWatch(setup, seed, threads, line.getOut(), line.getErr(), json);
            watching.run(new GrowingLog(log, probes), events.list(setup), silence);
        } catch (PlanningException e) {
            line.getErr().println(ErrorMessages.problem(e).at(file.toString()));
            line.getErr().flush();
            return ErrorMessages.code(e);
        } finally {
            threads.shutdownNow();
        }
        return 0;
    }

    private List<Double> moments(List<Reading> readings) {
        double last =
                Math.max(0, readings.stream().mapToDouble(Reading::time).max().orElse(0));
        List<Double> moments = new ArrayList<>();
        at.forEach(text -> moments.add(time("--at", text)));
        if (every.isPresent()) {
            double step = time("--every", every.get());
            if (!(step >= 1)) {
                throw new IllegalArgumentException("--every must be at least 1 s, got \"" + every.get() + "\".");
            }
            for (double t = step; t < last; t += step) {
                moments.add(t);
            }
        }
        if (at.isEmpty()) {
            moments.add(last);
        }
        return moments.stream().sorted().distinct().toList();
    }

    static double time(String option, String text) {
        try {
            return QuantityParser.parse(text, Dimension.TIME);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(option + ": " + e.getMessage(), e);
        }
    }
}
