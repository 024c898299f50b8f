package io.github.saltfront.app.follow;

import io.github.saltfront.app.export.OutlookJson;
import io.github.saltfront.app.store.CookStore;
import io.github.saltfront.app.store.StoredCook;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Reading;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** All cooks of a server. After a restart those that were not ended go on from what is on the disk. */
public final class CookRegistry implements AutoCloseable {
    private static final Phrases PHRASES = Phrases.of(CookRegistry.class);

    /** Cooks that are followed at once. */
    static final int MOST_OPEN = 40;

    private static final int MOST_SOURCES = 8;

    /** A cook of which nobody says the end is ended by itself [ms]; nothing computes beyond. */
    private static final long LONGEST_MS = 4 * 86_400_000L;

    private static final Logger LOG = Logger.getLogger(CookRegistry.class.getName());

    private final CookStore store;
    private final Kitchen kitchen;
    private final String programVersion;
    private final Map<String, RunningCook> open = new LinkedHashMap<>();

    /**
     * Creates the registry.
     *
     * @param store where cooks are kept; closed with this
     * @param planner makes the plan of a request; waits if it must
     * @param executor where to run parts of simulations
     * @param settings how cooks are followed
     */
    public CookRegistry(CookStore store, Function<byte[], Plan> planner, Executor executor, FollowSettings settings) {
        this.store = store;
        this.programVersion = settings.programVersion();
        kitchen = new Kitchen(planner, executor, settings);
    }

    /**
     * Takes up all cooks that were not ended: from then on they take readings.
     *
     * @return starts to follow them, which keeps the processors busy for a while; to be run once, when the way is free for readings
     */
    public Runnable takeUp() {
        long now = kitchen.now();
        List<RunningCook> taken = new ArrayList<>();
        for (StoredCook stored : store.cooks()) {
            if (stored.ended().isPresent()) {
                continue;
            }
            double age = (now - stored.started()) * stored.speed();
            if (age > LONGEST_MS) {
                store.end(stored.id(), now);
                continue;
            }
            RunningCook cook = new RunningCook(stored, store, kitchen);
            synchronized (open) {
                open.put(cook.id(), cook);
            }
            taken.add(cook);
        }
        return () -> taken.forEach(RunningCook::start);
    }

    /**
     * Begins a cook.
     *
     * @param request request of its plan, as JSON
     * @param options what else was said
     * @return its id
     * @throws io.github.saltfront.app.document.DocumentException with all problems of the request
     * @throws io.github.saltfront.plan.PlanningException if it cannot be planned
     */
    public String begin(byte[] request, CookOptions options) {
        long now = kitchen.now();
        long started = options.started().orElse(now);
        if (started > now + 90_000 || started < now - LONGEST_MS / 2) {
            throw Problems.of("started", PHRASES.say("got-another-time-expected-one"));
        }
        synchronized (open) {
            if (open.size() >= MOST_OPEN) {
                throw Problems.of("", PHRASES.say("there-are-cooks-already-expected", MOST_OPEN));
            }
        }
        String kept = withTime(request, started);
        Plan plan = kitchen.plan(kept);
        String title = options.title().isEmpty() ? LiveSetup.of(plan).meat().name() : options.title();
        StoredCook stored = new StoredCook(
                UUID.randomUUID().toString(),
                title,
                kept,
                options.stored(),
                programVersion,
                started,
                options.speed(),
                OptionalLong.empty());
        store.begin(stored);
        RunningCook cook = new RunningCook(stored, store, kitchen);
        synchronized (open) {
            open.put(cook.id(), cook);
        }
        cook.start();
        return cook.id();
    }

    /** The request with the time it was asked at, so that it means the same after a restart. */
    private static String withTime(byte[] request, long started) {
        JsonNode node = FollowJson.read(request);
        if (node instanceof ObjectNode object && !object.has("now")) {
            object.put("now", CookJson.iso(started));
            return FollowJson.text(object);
        }
        return new String(request, StandardCharsets.UTF_8);
    }

    /**
     * Finds a cook.
     *
     * @param id its id
     * @return the cook, ended or not
     */
    Optional<RunningCook> find(String id) {
        synchronized (open) {
            RunningCook cook = open.get(id);
            if (cook != null) {
                return Optional.of(cook);
            }
        }
        return store.find(id).map(stored -> new RunningCook(stored, store, kitchen));
    }

    private RunningCook get(String id) {
        return find(id).orElseThrow(() -> new NoSuchCook(id));
    }

    private RunningCook going(String id) {
        RunningCook cook = get(id);
        if (cook.isEnded()) {
            throw Problems.of("", PHRASES.say("this-cook-is-over-begin"));
        }
        return cook;
    }

    /**
     * Lists the cooks.
     *
     * @return content for a JSON writer, cooks that go on first
     */
    public Map<String, Object> list() {
        List<Map<String, Object>> over = new ArrayList<>();
        for (StoredCook stored : store.cooks()) {
            if (stored.ended().isPresent()) {
                Map<String, Object> head = new HashMap<>();
                head.put("id", stored.id());
                head.put("title", stored.title());
                head.put("status", "ended");
                head.put("started", CookJson.iso(stored.started()));
                head.put("ended", CookJson.iso(stored.ended().getAsLong()));
                over.add(head);
            }
        }
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("cooks", going());
        json.put("ended", over);
        return json;
    }

    /**
     * Lists the cooks that go on.
     *
     * @return content for a JSON writer
     */
    public List<Map<String, Object>> going() {
        List<RunningCook> cooks;
        synchronized (open) {
            cooks = new ArrayList<>(open.values());
        }
        return cooks.stream().map(CookJson::head).toList();
    }

    /**
     * Returns a cook with all that a page shows.
     *
     * @param id its id
     * @return content for a JSON writer
     * @throws NoSuchCook if there is none
     */
    public Map<String, Object> state(String id) {
        RunningCook cook = get(id);
        return CookJson.whole(cook, programVersion, cook.sources());
    }

    /**
     * Returns the outlook as the document that {@code follow --json} writes.
     *
     * @param id id of the cook
     * @return content for a JSON writer; empty as long as nothing is computed
     * @throws NoSuchCook if there is none
     */
    public Optional<Map<String, Object>> outlook(String id) {
        return get(id).look().map(look -> OutlookJson.of(look.setup(), List.of(look.outlook()), programVersion));
    }

    /** How readings are sent. */
    public enum Form {
        /** JSON. */
        JSON,
        /** Lines of probe, time, value, unit, or the file of a logger with a column for each probe. */
        CSV
    }

    /**
     * Takes readings. When this returns, those that are accepted are on the disk.
     *
     * @param id id of the cook
     * @param body what was sent
     * @param form how it is written
     * @return how many were accepted, how many were known, and what was refused
     * @throws NoSuchCook if there is none
     */
    public Receipt take(String id, byte[] body, Form form) {
        RunningCook cook = going(id);
        if (form == Form.CSV && LoggerFile.isOne(Payload.text(body))) {
            return feed(id, LoggerFile.readings(body, Payload.text(body)), "file");
        }
        List<ReadingText.Line> lines = lines(body, form);
        if (lines.isEmpty()) {
            throw Problems.of("readings", PHRASES.say("got-no-reading-expected-at"));
        }
        if (lines.size() > Receipt.MOST) {
            throw Problems.of("readings", PHRASES.say("got-readings-at-once-expected", lines.size(), Receipt.MOST));
        }
        return receipt(cook, lines, form == Form.CSV ? "file" : "http");
    }

    /**
     * Takes readings from within the program.
     *
     * @param id id of the cook
     * @param readings the readings
     * @param source how they came: file or replay
     * @return what became of them
     * @throws NoSuchCook if there is none
     */
    public Receipt feed(String id, List<Reading> readings, String source) {
        List<ReadingText.Line> lines = new ArrayList<>();
        for (Reading reading : readings) {
            double celsius = Math.rint(1000 * Temperature.toCelsius(reading.temperature())) / 1000;
            SentReading sent = SentReading.now(celsius)
                    .withProbe(reading.probe(), Optional.of(OutlookJson.word(reading.role())))
                    .withUnit("C")
                    .at(reading.time());
            lines.add(new ReadingText.Line(lines.size(), Optional.of(sent), ""));
        }
        return receipt(going(id), lines, source);
    }

    /**
     * Lets the clock of a replayed cook stand still at the end of its log.
     *
     * @param id id of the cook
     * @param seconds time since the meat went in [s]
     * @throws NoSuchCook if there is none
     */
    public void endClock(String id, double seconds) {
        get(id).clock().endAt(seconds);
    }

    private static List<ReadingText.Line> lines(byte[] body, Form form) {
        if (form == Form.CSV) {
            return ReadingText.csv(Payload.text(body));
        }
        try {
            return ReadingText.json(FollowJson.read(body));
        } catch (IllegalArgumentException e) {
            throw Problems.of("", String.valueOf(e.getMessage()));
        }
    }

    Receipt receipt(RunningCook cook, List<ReadingText.Line> lines, String source) {
        try {
            return Receipt.of(cook.take(lines, source, kitchen.now()).join());
        } catch (CompletionException e) {
            LOG.log(Level.SEVERE, "readings could not be kept", e);
            throw new IllegalStateException("the readings could not be kept; is the disk full?", e);
        }
    }

    /**
     * Takes an event. When this returns it is on the disk.
     *
     * @param id id of the cook
     * @param body JSON object with the kind of the event and what belongs to it
     * @return the event as it is kept
     * @throws NoSuchCook if there is none
     */
    public Map<String, Object> tell(String id, byte[] body) {
        RunningCook cook = going(id);
        long now = kitchen.now();
        Map<String, Object> content = ToldEvent.read(body, cook.clock(), now);
        if (ToldEvent.UNDO.equals(content.get("kind")) && !cook.has(content.get("undone"))) {
            throw Problems.of("undone", PHRASES.say("there-is-no-such-event"));
        }
        return CookJson.event(cook.tell(content, now));
    }

    /**
     * Connects a cook to a broker.
     *
     * @param id id of the cook
     * @param body JSON object with the broker, the topic and what the messages hold
     * @return number of the source, under which it can be undone
     * @throws NoSuchCook if there is none
     */
    public long connect(String id, byte[] body) {
        RunningCook cook = going(id);
        if (cook.sources().size() >= MOST_SOURCES) {
            throw Problems.of("", PHRASES.say("there-are-sources-already-remove", MOST_SOURCES));
        }
        return cook.tell(MqttSettings.read(body), kitchen.now()).number();
    }

    /**
     * Acknowledges an alarm.
     *
     * @param id id of the cook
     * @param number number of the alarm
     * @throws NoSuchCook if there is none
     */
    public void acknowledge(String id, long number) {
        if (!get(id).acknowledge(number, kitchen.now())) {
            throw new NoSuchCook(id);
        }
    }

    /**
     * Ends a cook.
     *
     * @param id its id
     * @param body JSON object with weights and notes on the taste; all may be left out
     * @return content for a JSON writer: what was measured beside what was expected
     * @throws NoSuchCook if there is none
     */
    public Map<String, Object> end(String id, byte[] body) {
        RunningCook cook = going(id);
        Map<String, Object> ending = CookEnding.read(body, cook.outlook());
        cook.end(ending, programVersion, kitchen.now());
        synchronized (open) {
            open.remove(id);
        }
        return ending;
    }

    /**
     * Returns a cook that is over as the notebook takes it.
     *
     * @param id its id
     * @param ending what {@link #end} returned
     * @return the note and its readings
     * @throws NoSuchCook if there is none
     */
    public CookNoted noted(String id, Map<String, Object> ending) {
        return CookNoted.of(get(id), ending);
    }

    /**
     * Returns the record of a cook as a page of its own: what its readings show by themselves.
     *
     * @param id its id
     * @return HTML; empty without readings that count
     * @throws NoSuchCook if there is none
     */
    public Optional<String> record(String id) {
        return get(id).record(programVersion);
    }

    /**
     * Returns the front of heat as the readings make it likely.
     *
     * @param id its id
     * @return content for a JSON writer; empty as long as nothing is computed
     * @throws NoSuchCook if there is none
     */
    public Optional<Map<String, Object>> front(String id) {
        return get(id).look().map(FrontJson::of);
    }

    /**
     * Returns the log of a cook as a table with a column for each probe, as {@code follow} and {@code live --replay} read it.
     *
     * @param id its id
     * @return CSV text
     * @throws NoSuchCook if there is none
     */
    public String csv(String id) {
        return CookLog.csv(get(id));
    }

    /**
     * Returns all that is known of a cook.
     *
     * @param id its id
     * @return content for a JSON writer
     * @throws NoSuchCook if there is none
     */
    public Map<String, Object> log(String id) {
        return CookLog.json(get(id), programVersion);
    }

    /**
     * Lets somebody hear what happens to cooks.
     *
     * @param listener who hears it
     */
    public void add(CookListener listener) {
        kitchen.add(listener);
    }

    /**
     * Takes a listener away.
     *
     * @param listener who heard it
     */
    public void remove(CookListener listener) {
        kitchen.remove(listener);
    }

    @Override
    public void close() {
        List<RunningCook> cooks;
        synchronized (open) {
            cooks = new ArrayList<>(open.values());
        }
        cooks.forEach(RunningCook::close);
        store.close();
    }
}
