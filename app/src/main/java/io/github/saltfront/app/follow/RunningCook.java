package io.github.saltfront.app.follow;

import io.github.saltfront.app.follow.Follower.Look;
import io.github.saltfront.app.store.CookStore;
import io.github.saltfront.app.store.StoredCook;
import io.github.saltfront.app.store.StoredEvent;
import io.github.saltfront.app.store.StoredReading;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.live.Outlook;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.PlanningException;
import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Predicate;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A cook that is followed. Readings and events are checked and kept at once by whoever brings them; what they mean is computed
 * behind, by a thread of this cook's own, so that nobody waits for a simulation.
 */
final class RunningCook implements AutoCloseable {
    private static final Phrases PHRASES = Phrases.of(RunningCook.class);

    private static final Logger LOG = Logger.getLogger(RunningCook.class.getName());
    private static final String ALARM = "alarm";
    private static final String ACKNOWLEDGED = "acknowledged";
    static final String ENDING = "ending";
    private static final String RECORD = "record";

    private final StoredCook stored;
    private final CookOptions options;
    private final CookStore store;
    private final Kitchen kitchen;
    private final CookClock clock;
    private final Inbox inbox = new Inbox();
    private final List<StoredReading> readings = new ArrayList<>();
    private final List<ToldEvent> events = new ArrayList<>();
    private final List<CookAlarm> alarms = new ArrayList<>();
    private final Map<String, String> roles = new LinkedHashMap<>();
    private final Map<Long, MqttSource> sources = new LinkedHashMap<>();
    private Optional<String> record = Optional.empty();
    private Optional<Look> look = Optional.empty();
    private Optional<String> failure = Optional.empty();
    private Optional<Thread> thread = Optional.empty();
    private boolean ended;
    private volatile boolean closed;

    /** Takes a cook from its record. */
    RunningCook(StoredCook stored, CookStore store, Kitchen kitchen) {
        this.stored = stored;
        this.store = store;
        this.kitchen = kitchen;
        options = CookOptions.ofStored(stored.options());
        clock = new CookClock(stored.started(), stored.speed());
        ended = stored.ended().isPresent();
        store.readings(stored.id()).forEach(this::remember);
        store.events(stored.id()).forEach(this::remember);
    }

    String id() {
        return stored.id();
    }

    StoredCook stored() {
        return stored;
    }

    CookClock clock() {
        return clock;
    }

    /** Starts the computation, unless it is closed already. */
    void start() {
        Thread worker = new Thread(this::work, "cook " + stored.id());
        worker.setDaemon(true);
        worker.setPriority(Thread.NORM_PRIORITY - 1);
        synchronized (this) {
            if (closed) {
                return;
            }
            thread = Optional.of(worker);
            worker.start();
        }
        connect();
    }

    /** Connects the sources that stand and leaves those that were removed. */
    private void connect() {
        List<ToldEvent> wanted = standing().stream()
                .filter(event -> event.kind().equals(MqttSettings.KIND))
                .toList();
        synchronized (sources) {
            if (closed) {
                return;
            }
            sources.entrySet().removeIf(entry -> {
                boolean gone = wanted.stream().noneMatch(event -> event.number() == entry.getKey());
                if (gone) {
                    entry.getValue().close();
                }
                return gone;
            });
            for (ToldEvent event : wanted) {
                sources.computeIfAbsent(
                        event.number(),
                        number -> new MqttSource(number, MqttSettings.of(event.content()), this, this::tellSources));
            }
        }
        tellSources();
    }

    private void tellSources() {
        kitchen.tell(stored.id(), "sources", FollowJson.text(Map.of("sources", sources())));
    }

    /** How the sources stand. */
    List<Map<String, Object>> sources() {
        synchronized (sources) {
            return sources.values().stream().map(MqttSource::state).toList();
        }
    }

    private synchronized void remember(StoredReading reading) {
        roles.putIfAbsent(reading.probe(), reading.role());
        readings.add(reading);
    }

    private synchronized void remember(StoredEvent event) {
        ToldEvent told = ToldEvent.of(event);
        if (event.kind().equals(ALARM)) {
            alarms.add(new CookAlarm(
                    event.number(),
                    CookAlarm.Kind.valueOf(told.content().path("alarm").asString()),
                    told.content().path("text").asString(),
                    told.time(),
                    event.received(),
                    OptionalLong.empty()));
        } else if (event.kind().equals(ACKNOWLEDGED)) {
            long number = told.content().path("alarm").asLong();
            alarms.replaceAll(a -> a.number() == number && a.isOpen() ? a.acknowledgedAt(event.received()) : a);
        } else if (event.kind().equals(RECORD)) {
            record = Optional.of(told.content().path("page").asString());
        } else {
            events.add(told);
        }
    }

    /** How a heap of readings was taken. */
    record Taken(int accepted, int known, Map<String, List<Integer>> refused) {}

    /**
     * Takes readings. Those that can be kept are; the others are told.
     *
     * @param lines the readings
     * @param source how they came
     * @param now present time [ms since 1970]
     * @return done when those that are accepted are on the disk
     */
    CompletableFuture<Taken> take(List<ReadingText.Line> lines, String source, long now) {
        Map<String, String> known;
        synchronized (this) {
            known = new LinkedHashMap<>(roles);
        }
        ReadingCheck check = new ReadingCheck(stored.id(), clock, options.unit(), known);
        List<StoredReading> good = new ArrayList<>();
        Map<String, List<Integer>> refused = new LinkedHashMap<>();
        for (ReadingText.Line line : lines) {
            try {
                if (line.reading().isEmpty()) {
                    throw new IllegalArgumentException(line.problem());
                }
                StoredReading reading = check.check(line.reading().get(), source, now);
                known.putIfAbsent(reading.probe(), reading.role());
                if (known.size() > Kitchen.MOST_PROBES) {
                    known.remove(reading.probe());
                    throw new IllegalArgumentException(
                            PHRASES.say("there-are-probes-already-expected", Kitchen.MOST_PROBES));
                }
                good.add(reading);
            } catch (IllegalArgumentException e) {
                refused.computeIfAbsent(String.valueOf(e.getMessage()), m -> new ArrayList<>())
                        .add(line.number());
            }
        }
        if (good.isEmpty()) {
            return CompletableFuture.completedFuture(new Taken(0, 0, refused));
        }
        return store.append(good).thenApply(fresh -> {
            fresh.forEach(this::remember);
            if (!fresh.isEmpty()) {
                inbox.add(fresh);
                kitchen.tell(stored.id(), "readings", FollowJson.text(CookJson.fresh(fresh, fahrenheit())));
            }
            return new Taken(fresh.size(), good.size() - fresh.size(), refused);
        });
    }

    /**
     * Takes an event.
     *
     * @param content its content, with kind and time
     * @param now present time [ms since 1970]
     * @return the event, when it is on the disk
     */
    ToldEvent tell(Map<String, Object> content, long now) {
        String kind = String.valueOf(content.get("kind"));
        ToldEvent told = keep(kind, content, now);
        if (kind.equals(MqttSettings.KIND) || isSource(told)) {
            connect();
            return told;
        }
        if (kind.equals(ToldEvent.UNDO) || told.turnsToFahrenheit()) {
            inbox.anew();
        } else {
            inbox.add(told);
        }
        answer(alarm -> isAnsweredBy(alarm, told), now);
        kitchen.tell(stored.id(), "told", FollowJson.text(CookJson.told(this)));
        return told;
    }

    private void answer(Predicate<CookAlarm> which, long now) {
        openAlarms().stream().filter(which).forEach(alarm -> keep(ACKNOWLEDGED, Map.of("alarm", alarm.number()), now));
    }

    private synchronized boolean isSource(ToldEvent undo) {
        long number = undo.content().path("undone").asLong(-1);
        return events.stream()
                .anyMatch(event -> event.number() == number && event.kind().equals(MqttSettings.KIND));
    }

    private static boolean isAnsweredBy(CookAlarm alarm, ToldEvent told) {
        return switch (told.kind()) {
            case ToldEvent.TAKEN_OUT ->
                alarm.kind() == CookAlarm.Kind.PULL_NOW
                        || alarm.kind() == CookAlarm.Kind.GET_READY
                        || alarm.kind() == CookAlarm.Kind.NEXT_HEAT;
            case ToldEvent.HEAT_BEGUN ->
                alarm.kind() == CookAlarm.Kind.NEXT_HEAT
                        || alarm.kind() == CookAlarm.Kind.PULL_NOW
                        || alarm.kind() == CookAlarm.Kind.GET_READY;
            case ToldEvent.UNIT, ToldEvent.PROBE_MOVED ->
                alarm.kind() == CookAlarm.Kind.PROBE && alarm.text().contains('"' + told.probe() + '"');
            default -> false;
        };
    }

    private ToldEvent keep(String kind, Map<String, Object> content, long now) {
        StoredEvent event = store.append(new StoredEvent(0, stored.id(), kind, FollowJson.text(content), now))
                .join();
        remember(event);
        return ToldEvent.of(event);
    }

    /** Acknowledges an alarm; false if there is none of this number. */
    boolean acknowledge(long number, long now) {
        synchronized (this) {
            if (alarms.stream().noneMatch(alarm -> alarm.number() == number)) {
                return false;
            }
        }
        keep(ACKNOWLEDGED, Map.of("alarm", number), now);
        kitchen.tell(stored.id(), "told", FollowJson.text(CookJson.told(this)));
        return true;
    }

    /** The record as a page: as it was when the cook ended, or as it stands; empty without readings that count. */
    Optional<String> record(String programVersion) {
        synchronized (this) {
            if (record.isPresent()) {
                return record;
            }
        }
        return look().flatMap(seen -> CookRecord.page(this, seen, programVersion));
    }

    /** Ends the cook; its record is kept as it stands now, so that no later program judges otherwise. */
    void end(Map<String, Object> ending, String programVersion, long now) {
        record(programVersion).ifPresent(page -> keep(RECORD, Map.of("page", page), now));
        keep(ENDING, ending, now);
        store.end(stored.id(), now);
        synchronized (this) {
            ended = true;
        }
        kitchen.tell(stored.id(), "told", FollowJson.text(CookJson.told(this)));
        close();
    }

    private void work() {
        try (Language.Scope scope = options.language().begin()) {
            Follower follower = anew();
            // what came while the ensemble was simulated waits already
            long wait = 0;
            while (true) {
                Inbox.Batch batch = inbox.take(wait);
                long taken = kitchen.now();
                wait = kitchen.tickMs();
                if (batch.closed()) {
                    return;
                }
                if (batch.anew()) {
                    follower = anew();
                    wait = 0;
                    continue;
                }
                Follower present = follower;
                kitchen.inTurn(() -> present.add(batch.readings()));
                follower.tell(batch.events());
                kitchen.inTurn(() -> show(present.look(clock.at(taken)), taken));
                if (follower.wantsRefresh(System.nanoTime()) && kitchen.tryHeavy()) {
                    try {
                        follower.refresh(System.nanoTime());
                    } finally {
                        kitchen.endHeavy();
                    }
                    wait = 0;
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (PlanningException e) {
            fail(String.valueOf(e.getMessage()));
        } catch (RuntimeException e) {
            if (!closed) {
                LOG.log(Level.SEVERE, "a cook cannot be computed", e);
                fail(PHRASES.say("saltfront-failed-on-its-own", e.getClass().getSimpleName()));
            }
        }
    }

    private void fail(String message) {
        synchronized (this) {
            failure = Optional.of(message);
        }
        kitchen.tell(stored.id(), "told", FollowJson.text(CookJson.told(this)));
    }

    /** Takes the cook up from its record, as at the start, after an undo and after a change of unit. */
    private Follower anew() throws InterruptedException {
        Plan plan = kitchen.plan(stored.request());
        LiveSetup setup = options.setup(LiveSetup.of(plan));
        if (plan.request().timing().serve().isPresent()) {
            long serve = plan.request().timing().serve().get().toInstant().toEpochMilli();
            setup = setup.servedAt((serve - stored.started()) / 1000.0);
        }
        List<StoredReading> all;
        List<ToldEvent> told;
        synchronized (this) {
            all = List.copyOf(readings);
            told = standing();
        }
        kitchen.beginHeavy();
        try {
            return Follower.of(setup, kitchen.members(), all, told, kitchen.executor());
        } finally {
            kitchen.endHeavy();
        }
    }

    private void show(Look seen, long now) {
        for (AlarmRules.Cause cause : AlarmRules.due(seen, alarms(), now, kitchen.alarmAgainMs())) {
            Map<String, Object> content = new LinkedHashMap<>();
            content.put("alarm", cause.kind().name());
            content.put("text", cause.text());
            content.put("time_s", seen.outlook().time());
            keep(ALARM, content, now);
            if (cause.kind() == CookAlarm.Kind.PULL_NOW) {
                answer(alarm -> alarm.kind() == CookAlarm.Kind.GET_READY, now);
            }
        }
        synchronized (this) {
            look = Optional.of(seen);
        }
        kitchen.tell(stored.id(), "look", FollowJson.text(CookJson.look(this)));
    }

    /** Events that hold: what was undone does not. */
    private synchronized List<ToldEvent> standing() {
        Set<Long> undone = events.stream()
                .filter(event -> event.kind().equals(ToldEvent.UNDO))
                .map(event -> event.content().path("undone").asLong())
                .collect(Collectors.toSet());
        return events.stream()
                .filter(event -> !event.kind().equals(ToldEvent.UNDO) && !undone.contains(event.number()))
                .toList();
    }

    synchronized List<StoredReading> readings() {
        return List.copyOf(readings);
    }

    List<ToldEvent> events() {
        return standing();
    }

    /** Returns whether an event of this number holds. */
    boolean has(@Nullable Object number) {
        return standing().stream()
                .anyMatch(event -> String.valueOf(event.number()).equals(String.valueOf(number)));
    }

    synchronized List<CookAlarm> alarms() {
        return List.copyOf(alarms);
    }

    List<CookAlarm> openAlarms() {
        return alarms().stream().filter(CookAlarm::isOpen).toList();
    }

    synchronized Optional<Look> look() {
        return look;
    }

    synchronized Optional<String> failure() {
        return failure;
    }

    synchronized boolean isEnded() {
        return ended;
    }

    /** Probes whose numbers were sent as Celsius and are Fahrenheit. */
    Set<String> fahrenheit() {
        return standing().stream()
                .filter(ToldEvent::turnsToFahrenheit)
                .map(ToldEvent::probe)
                .collect(Collectors.toSet());
    }

    /** Returns how it stands: starting, following, failed or ended. */
    String status() {
        if (isEnded()) {
            return "ended";
        }
        if (failure().isPresent()) {
            return "failed";
        }
        return look().isPresent() ? "following" : "starting";
    }

    Optional<Outlook> outlook() {
        return look().map(Look::outlook);
    }

    Kitchen kitchen() {
        return kitchen;
    }

    @Override
    public void close() {
        Optional<Thread> worker;
        synchronized (this) {
            closed = true;
            worker = thread;
        }
        synchronized (sources) {
            sources.values().forEach(MqttSource::close);
            sources.clear();
        }
        inbox.close();
        worker.ifPresent(Thread::interrupt);
    }
}
