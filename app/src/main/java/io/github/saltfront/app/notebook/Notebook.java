package io.github.saltfront.app.notebook;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.request.PlanFile;
import io.github.saltfront.app.store.Database;
import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.NotedCooks;
import io.github.saltfront.app.store.SavedPlans;
import io.github.saltfront.app.store.StoredPhoto;
import io.github.saltfront.app.store.Trials;
import io.github.saltfront.catalog.Catalog;
import io.github.saltfront.plan.Plan;
import io.github.saltfront.plan.Planner;
import io.github.saltfront.plan.Request;
import io.github.saltfront.safety.ProbeError;
import io.github.saltfront.words.Phrases;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executor;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Notes cooks: reads them, plans their request as it would have been planned, and keeps what can be learned. */
public final class Notebook {
    private static final Phrases PHRASES = Phrases.of(Notebook.class);

    /** Most cooks of one notebook [-]; far beyond a life of Sundays. */
    public static final int MOST_COOKS = 20_000;

    /** Most pictures of one cook [-]. */
    public static final int MOST_PHOTOS = 40;

    private static final long SEED = 1;
    private static final String REQUEST = "request";
    private static final String NAME = "cook";
    private static final int LONGEST_CAPTION = 300;

    private final NotedCooks cooks;
    private final Thermometers thermometers;
    private final Trials trials;
    private final SavedPlans plans;
    private final String programVersion;

    /**
     * Opens the notebook of a database.
     *
     * @param database the database
     * @param programVersion version of the program, kept beside what it computes
     */
    public Notebook(Database database, String programVersion) {
        cooks = database.notedCooks();
        thermometers = new Thermometers(database.instrumentChecks());
        trials = database.trials();
        plans = database.savedPlans();
        this.programVersion = programVersion;
    }

    /** Returns the cooks as they are kept. */
    public NotedCooks cooks() {
        return cooks;
    }

    /** Returns the thermometers. */
    public Thermometers thermometers() {
        return thermometers;
    }

    /** Returns the trials. */
    public Trials trials() {
        return trials;
    }

    /** Returns the saved plans. */
    public SavedPlans plans() {
        return plans;
    }

    /** Returns what was learned from the cooks. */
    public Learning learning() {
        return new Learning(cooks, Catalog.load());
    }

    /**
     * Notes a cook.
     *
     * @param content the cook file as JSON, with its request as an object
     * @param id id of a cook to change; empty for a new one
     * @param readings readings of the thermometer, if there are new ones
     * @param executor where to run parts of the ensemble
     * @return the cook as it was kept
     * @throws io.github.saltfront.app.document.DocumentException with all that is wrong with the note or its request
     * @throws io.github.saltfront.plan.PlanningException if the request cannot be met
     */
    public NotedCook note(byte[] content, Optional<String> id, Optional<CookReadings> readings, Executor executor) {
        ObjectNode json = NotebookJson.object(content, PHRASES.say("the-cook"));
        JsonNode request = json.remove(REQUEST);
        Document document = DocumentReader.read(
                NAME, NotebookJson.text(json).getBytes(StandardCharsets.UTF_8), DocumentFormat.JSON);
        CookNote note = CookFile.read(document, LocalDate.now());
        if (!(request instanceof ObjectNode)) {
            document.root().problem(REQUEST, PHRASES.say("the-request-is-missing-expected"));
        }
        document.requireNoErrors();
        return note(note, withPresent((ObjectNode) request, note), id, readings, executor);
    }

    /**
     * Notes a cook whose parts were read apart.
     *
     * @param note the note
     * @param request its request
     * @param id id of a cook to change; empty for a new one
     * @param readings readings of the thermometer, if there are new ones
     * @param executor where to run parts of the ensemble
     * @return the cook as it was kept
     */
    public NotedCook note(
            CookNote note,
            ObjectNode request,
            Optional<String> id,
            Optional<CookReadings> readings,
            Executor executor) {
        Request read = read(request);
        Optional<ProbeError> probe = note.measured()
                .pull()
                .map(CookNote.Pull::thermometer)
                .filter(name -> !name.isEmpty())
                .flatMap(name -> thermometers.errorOn(name, note.cooked()));
        Plan plan = Planner.plan(read, executor, SEED);
        Evidence evidence = Evidence.of(note, plan, probe, executor);
        Map<String, Object> document = note.toJson();
        document.put(REQUEST, request);
        Optional<NotedCook> before = id.flatMap(cooks::find);
        long now = System.currentTimeMillis();
        NotedCook cook = new NotedCook(
                before.map(NotedCook::id).orElseGet(() -> UUID.randomUUID().toString()),
                note.title(),
                note.cooked().toString(),
                note.place().profile(),
                NotebookJson.text(document),
                NotebookJson.text(PlannedFigures.of(plan)),
                NotebookJson.text(evidence.toJson()),
                readings.map(CookReadings::text)
                        .orElseGet(() -> before.map(NotedCook::readings).orElse("{}")),
                programVersion,
                before.map(NotedCook::created).orElse(now),
                now,
                note.tags());
        cooks.put(cook);
        return cook;
    }

    /** Reads a request; that it was planned with a notebook does not matter to what is learned from it. */
    Request read(ObjectNode request) {
        byte[] bytes = NotebookJson.text(request).getBytes(StandardCharsets.UTF_8);
        return PlanFile.read(
                DocumentReader.read(REQUEST, bytes, DocumentFormat.JSON), Catalog.load(), ZonedDateTime.now());
    }

    /** A cook is noted when its serving time is past; without the time at which it was planned, three days before are taken. */
    static ObjectNode withPresent(ObjectNode request, CookNote note) {
        if (request.has("now")) {
            return request;
        }
        String serve = request.path("serve").asString("").replace(' ', 'T');
        String now = note.cooked() + "T12:00";
        try {
            if (serve.contains("+") || serve.endsWith("Z") || serve.contains("[")) {
                now = ZonedDateTime.parse(serve).minusDays(3).toString();
            } else if (serve.startsWith("2")) {
                now = LocalDateTime.parse(serve).minusDays(3).toString();
            }
        } catch (DateTimeParseException e) {
            return request; // the reader of requests says what is wrong with it
        }
        request.put("now", now);
        return request;
    }

    /**
     * Adds a picture to a cook, drawn anew.
     *
     * @param cook the cook
     * @param caption what it shows
     * @param content the picture
     * @return the picture as it is kept
     * @throws IllegalArgumentException if it cannot be taken
     */
    public StoredPhoto addPhoto(NotedCook cook, String caption, byte[] content) {
        if (cooks.photosOf(cook.id()).size() >= MOST_PHOTOS) {
            throw new IllegalArgumentException(PHRASES.say("this-cook-has-pictures-expected", MOST_PHOTOS));
        }
        PhotoFile photo = PhotoFile.of(content);
        StoredPhoto stored = new StoredPhoto(
                UUID.randomUUID().toString(),
                cook.id(),
                caption.length() > LONGEST_CAPTION ? caption.substring(0, LONGEST_CAPTION) : caption,
                photo.width(),
                photo.height(),
                System.currentTimeMillis());
        cooks.addPhoto(stored, photo.jpeg());
        return stored;
    }

    /**
     * Finds cooks by their ids.
     *
     * @param ids ids, or their beginnings
     * @return the cooks in the same order
     * @throws IllegalArgumentException if one is not there
     */
    public List<NotedCook> get(List<String> ids) {
        return ids.stream()
                .map(id -> cooks.find(id)
                        .orElseThrow(() -> new IllegalArgumentException(PHRASES.say("there-is-no-cook-or", id))))
                .toList();
    }
}
