package io.github.saltfront.app.web;

import io.github.saltfront.app.notebook.CookFile;
import io.github.saltfront.app.notebook.CookReadings;
import io.github.saltfront.app.notebook.Notebook;
import io.github.saltfront.app.notebook.NotebookArchive;
import io.github.saltfront.app.notebook.NotebookViews;
import io.github.saltfront.app.notebook.PhotoFile;
import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.StoredPhoto;
import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import tools.jackson.databind.JsonNode;

/** The notebook: cooks, their pictures and logs, comparisons, what was learned, and all of it as one archive. */
final class NotebookApi {
    private static final Phrases PHRASES = Phrases.of(NotebookApi.class);

    private static final String ONE = "/api/notebook/{id}";

    private final Notebook notebook;
    private final PlanService service;
    private final String programVersion;

    NotebookApi(Notebook notebook, PlanService service, String programVersion) {
        this.notebook = notebook;
        this.service = service;
        this.programVersion = programVersion;
    }

    List<Route> routes() {
        return List.of(
                new Route(HandlerType.GET, "/api/notebook", this::list),
                new Route(HandlerType.POST, "/api/notebook", this::add),
                new Route(HandlerType.GET, ONE, this::read),
                new Route(HandlerType.PUT, ONE, this::change),
                new Route(HandlerType.DELETE, ONE, this::delete),
                new Route(HandlerType.POST, "/api/notebook/{id}/restore", this::restore),
                new Route(HandlerType.PUT, "/api/notebook/{id}/log", this::log),
                new Route(HandlerType.POST, "/api/notebook/{id}/photos", this::addPhoto),
                new Route(HandlerType.GET, "/api/notebook-photo/{id}", this::photo),
                new Route(HandlerType.DELETE, "/api/notebook-photo/{id}", this::deletePhoto),
                new Route(HandlerType.GET, "/api/notebook-compare", this::compare),
                new Route(HandlerType.GET, "/api/notebook-learned", this::learned),
                new Route(HandlerType.POST, "/api/notebook-learned", this::forget),
                new Route(HandlerType.GET, "/api/notebook-file", this::export),
                new Route(HandlerType.POST, "/api/notebook-file", this::importFile));
    }

    private static String query(Context context, String name) {
        return Optional.ofNullable(context.queryParam(name)).orElse("");
    }

    private void list(Context context) {
        Api.json(
                context,
                NotebookViews.list(
                        notebook.cooks().list(query(context, "word"), query(context, "tag")), programVersion));
    }

    private void add(Context context) {
        byte[] body = Bodies.json(context, Api.LARGEST_REQUEST);
        NotedCook cook = service.running(
                threads -> refusing("", () -> notebook.note(body, Optional.empty(), Optional.empty(), threads)));
        context.status(201);
        Api.json(context, view(cook));
    }

    private void change(Context context) {
        NotedCook before = find(context);
        byte[] body = Bodies.json(context, Api.LARGEST_REQUEST);
        NotedCook cook = service.running(threads ->
                refusing("", () -> notebook.note(body, Optional.of(before.id()), Optional.empty(), threads)));
        Api.json(context, view(cook));
    }

    private Map<String, Object> view(NotedCook cook) {
        return NotebookViews.cook(cook, notebook.cooks().photosOf(cook.id()), programVersion);
    }

    /** Problems of what was sent are the sender's to mend. */
    private static <T> T refusing(String field, Supplier<T> work) {
        try {
            return work.get();
        } catch (IllegalArgumentException e) {
            throw new Refused(400, field, String.valueOf(e.getMessage()));
        }
    }

    private NotedCook find(Context context) {
        return notebook.cooks().find(context.pathParam("id")).orElseThrow(NotebookApi::unknown);
    }

    private static Refused unknown() {
        return new Refused(404, "id", PHRASES.say("there-is-no-such-cook"));
    }

    private void read(Context context) {
        Api.json(context, view(find(context)));
    }

    private void delete(Context context) {
        notebook.cooks().delete(find(context).id(), System.currentTimeMillis());
        context.status(204);
    }

    private void restore(Context context) {
        if (!notebook.cooks().restore(context.pathParam("id"))) {
            throw unknown();
        }
        Api.json(context, view(find(context)));
    }

    private void log(Context context) {
        NotedCook cook = find(context);
        byte[] body = Bodies.read(context, CookReadings.LARGEST_LOG);
        CookReadings readings = refusing("log", () -> CookReadings.ofLog(body));
        NotedCook with = cook.reading(WebJson.text(Map.of("time_s", readings.timesS(), "core_c", readings.coreC())));
        notebook.cooks().put(with);
        Api.json(context, view(with));
    }

    private void addPhoto(Context context) {
        NotedCook cook = find(context);
        if (!String.valueOf(context.contentType()).startsWith("image/")) {
            throw new Refused(415, "photo", PHRASES.say("got-a-body-of-another"));
        }
        byte[] body = Bodies.read(context, PhotoFile.LARGEST_BYTES);
        StoredPhoto photo = service.running(threads ->
                refusing("photo", () -> notebook.addPhoto(cook, query(context, "caption"), body)));
        context.status(201);
        Api.json(context, Map.of("id", photo.id(), "width", photo.width(), "height", photo.height()));
    }

    private void photo(Context context) {
        byte[] content = notebook.cooks().read(context.pathParam("id")).orElseThrow(NotebookApi::unknown);
        context.contentType("image/jpeg").result(content);
    }

    private void deletePhoto(Context context) {
        if (!notebook.cooks().deletePhoto(context.pathParam("id"))) {
            throw unknown();
        }
        context.status(204);
    }

    private void compare(Context context) {
        List<String> ids = Arrays.stream(query(context, "ids").split(",", -1))
                .filter(id -> !id.isBlank())
                .toList();
        if (ids.size() < 2 || ids.size() > 12) {
            throw new Refused(400, "ids", PHRASES.say("got-cooks-expected-2-to", ids.size()));
        }
        Api.json(context, NotebookViews.compare(refusing("ids", () -> notebook.get(ids)), programVersion));
    }

    private void learned(Context context) {
        String name = query(context, "profile");
        String profile = name.isEmpty() ? CookFile.USUAL_PROFILE : name;
        Map<String, Object> json = NotebookViews.learned(
                profile, notebook.learning().knowledge(profile, query(context, "butcher")), programVersion);
        json.put("profiles", notebook.learning().profiles());
        Api.json(context, json);
    }

    private void forget(Context context) {
        JsonNode body = WebJson.object(Bodies.json(context, Api.LARGEST_REQUEST));
        String profile = body.path("profile").asString(CookFile.USUAL_PROFILE);
        String what = body.path("forget").asString("");
        refusing("forget", () -> {
            notebook.learning().forget(profile, what);
            return true;
        });
        Api.json(context, NotebookViews.learned(profile, notebook.learning().knowledge(profile, ""), programVersion));
    }

    private void export(Context context) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new NotebookArchive(notebook).write(bytes, programVersion);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        context.header("Content-Disposition", "attachment; filename=\"saltfront-notebook.zip\"");
        context.contentType("application/zip").result(bytes.toByteArray());
    }

    private void importFile(Context context) {
        if (!String.valueOf(context.contentType()).startsWith("application/zip")) {
            throw new Refused(
                    415, "file", "Got a body of another type, expected application/zip; choose an exported file.");
        }
        try {
            Path file = Files.createTempFile("saltfront-", ".zip");
            try {
                receive(context, file);
                NotebookArchive.Imported done =
                        service.running(threads -> refusing("file", () -> new NotebookArchive(notebook).read(file)));
                Api.json(
                        context,
                        Map.of(
                                "added",
                                done.added(),
                                "known",
                                done.known(),
                                "pictures",
                                done.pictures(),
                                "checks",
                                done.checks(),
                                "trials",
                                done.trials(),
                                "plans",
                                done.plans()));
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Straight to a file: an archive with pictures is larger than what is held in memory for others. */
    private static void receive(Context context, Path file) throws IOException {
        long left = NotebookArchive.LARGEST_ARCHIVE;
        byte[] part = new byte[1 << 16];
        try (InputStream in = context.req().getInputStream();
                OutputStream out = Files.newOutputStream(file)) {
            for (int n = in.read(part); n >= 0; n = in.read(part)) {
                left -= n;
                if (left < 0) {
                    context.header("Connection", "close");
                    throw new Refused(413, "file", PHRASES.say("the-archive-is-larger-than"));
                }
                out.write(part, 0, n);
            }
        }
    }
}
