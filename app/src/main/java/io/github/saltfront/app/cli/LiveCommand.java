package io.github.saltfront.app.cli;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.follow.CookOptions;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.app.web.WebServer;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.live.Reading;
import io.github.saltfront.plan.PlanningException;
import io.github.saltfront.words.Language;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code live}: a cook on the live page, from now on, from a growing log, or replayed. */
@Command(
        name = "live",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Follow a cook on the live page of the web program: large figures, an alarm when it should come out, readings by hand,"
                    + " by HTTP, by MQTT or from a log."
        },
        footer = {
            "",
            "A replayed cook is kept in a file that is gone with the program, unless --data names one. Without --data other cooks"
                    + " are in saltfront.db in your folder for program data.",
            "",
            "Example: ./run live --replay examples/live/loin.csv --speed 60"
        },
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:done", "1:the request cannot be met", "2:wrong input"})
final class LiveCommand implements Callable<Integer> {
    private static final double FASTEST = 3600;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "REQUEST",
            description = "The request of the plan. Default: the one beside the log, of the same name.")
    private Optional<Path> request = Optional.empty();

    @Option(names = "--replay", paramLabel = "LOG.csv", description = "Play this log as if it came in now.")
    private Optional<Path> replay = Optional.empty();

    @Option(
            names = "--speed",
            paramLabel = "TIMES",
            defaultValue = "1",
            description = "How many times as fast to play it, e.g. 60. Default: ${DEFAULT-VALUE}.")
    private double speed = 1;

    @Option(
            names = "--watch",
            paramLabel = "LOG.csv",
            description = "Take readings from this log while it grows. Its last row counts as taken now.")
    private Optional<Path> watch = Optional.empty();

    @Mixin
    private LogProbes probes = new LogProbes();

    @Mixin
    private ProbeFlags probe = new ProbeFlags();

    @Mixin
    private ServerFlags server = new ServerFlags();

    @Override
    public Integer call() throws InterruptedException, IOException {
        check();
        Path file = requestFile();
        Document document = DocumentReader.read(file);
        PlanFile.read(document, Catalog.load(), ZonedDateTime.now());
        List<Reading> log = replay.map(probes::read).orElse(List.of());
        Optional<GrowingLog> growing = watch.map(path -> new GrowingLog(path, probes));
        List<Reading> first = growing.isPresent() ? growing.get().poll() : List.of();
        WebServer web = server.start(replay.isPresent() ? passing() : DataFile.usual());
        String id;
        try {
            id = web.cooks().begin(request(document), options(first));
        } catch (PlanningException e) {
            web.close();
            CommandLine line = spec.commandLine();
            line.getErr().println(ErrorMessages.problem(e).at(file.toString()));
            line.getErr().flush();
            return ErrorMessages.code(e);
        } catch (RuntimeException e) {
            web.close();
            throw e;
        }
        if (replay.isPresent()) {
            LogFeed.replay(web.cooks(), id, log, speed);
        }
        if (growing.isPresent()) {
            LogFeed.watch(web.cooks(), id, first, growing.get());
        }
        server.serve(web, "live.html#cook=" + id, spec.commandLine().getOut());
        return 0;
    }

    private void check() {
        if (replay.isPresent() && watch.isPresent()) {
            throw new IllegalArgumentException("--replay and --watch exclude each other; give one of them.");
        }
        if (!(speed >= 1 && speed <= FASTEST)) {
            throw new IllegalArgumentException("--speed: got " + speed + ", expected 1 to 3600, such as 60.");
        }
        if (speed != 1 && replay.isEmpty()) {
            throw new IllegalArgumentException("--speed needs --replay; a cook that goes on has its own speed.");
        }
    }

    private Path requestFile() {
        if (request.isPresent()) {
            return request.get();
        }
        Path log = replay.or(() -> watch)
                .orElseThrow(
                        () -> new IllegalArgumentException(
                                "live needs a REQUEST, or a log with a request beside it; give a file such as examples/live/loin.yaml."));
        String stem = log.toString().replaceFirst("\\.[^./\\\\]*$", "");
        for (String ending : new String[] {".yaml", ".yml", ".json"}) {
            Path beside = Path.of(stem + ending);
            if (Files.exists(beside)) {
                return beside;
            }
        }
        throw new IllegalArgumentException(
                "there is no request beside the log, expected " + stem + ".yaml; give the request as REQUEST.");
    }

    /** The request without the time it was written for: the meat goes in now. */
    private static byte[] request(Document document) {
        Map<String, Object> contents = document.contents();
        contents.remove("now");
        return Json.text(contents).getBytes(StandardCharsets.UTF_8);
    }

    private CookOptions options(List<Reading> first) {
        double passed =
                Math.max(0, first.isEmpty() ? 0 : first.get(first.size() - 1).time());
        Optional<Long> started = watch.isPresent()
                ? Optional.of(System.currentTimeMillis() - Math.round(1000 * passed))
                : Optional.empty();
        return new CookOptions("", started, "C", probe.error(), probe.distance(), speed, Language.spoken());
    }

    /** A file for a cook that nobody wants to keep. */
    private static Path passing() {
        try {
            Path folder = Files.createTempDirectory("saltfront-replay");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> LogFeed.remove(folder)));
            return folder.resolve("replay.db");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
