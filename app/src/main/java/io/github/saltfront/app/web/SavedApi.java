package io.github.saltfront.app.web;

import io.github.saltfront.app.store.SavedPlan;
import io.github.saltfront.app.store.SavedPlans;
import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import tools.jackson.databind.JsonNode;

/** The saved plans: list, read, save, rename, duplicate, delete with undo, and all of them as one file. */
final class SavedApi {
    private static final Phrases PHRASES = Phrases.of(SavedApi.class);

    /** Largest file to import [byte]. */
    static final int LARGEST_FILE = 20_000_000;

    private static final String FILE_SCHEMA = "saltfront.saved-plans";
    private static final int LONGEST_TITLE = 200;
    private static final int LONGEST_ID = 64;

    private final SavedPlans plans;
    private final PlanService service;
    private final String programVersion;

    SavedApi(SavedPlans plans, PlanService service, String programVersion) {
        this.plans = plans;
        this.service = service;
        this.programVersion = programVersion;
    }

    List<Route> routes() {
        return List.of(
                new Route(HandlerType.GET, "/api/saved", this::list),
                new Route(HandlerType.POST, "/api/saved", this::add),
                new Route(HandlerType.GET, "/api/saved/{id}", this::read),
                new Route(HandlerType.PUT, "/api/saved/{id}", this::rename),
                new Route(HandlerType.DELETE, "/api/saved/{id}", this::delete),
                new Route(HandlerType.POST, "/api/saved/{id}/copy", this::copy),
                new Route(HandlerType.POST, "/api/saved/{id}/restore", this::restore),
                new Route(HandlerType.GET, "/api/saved-file", this::export),
                new Route(HandlerType.POST, "/api/saved-file", this::importFile));
    }

    private void list(Context context) {
        String word = context.queryParam("word");
        List<Map<String, Object>> json = plans.list(word == null ? "" : word).stream()
                .map(SavedApi::head)
                .toList();
        Api.json(context, Map.of("plans", json));
    }

    private void read(Context context) {
        Api.json(context, whole(find(context)));
    }

    private void add(Context context) {
        JsonNode body = WebJson.object(Bodies.json(context, Api.LARGEST_REQUEST));
        JsonNode request = body.path("request");
        service.read(WebJson.bytes(request)); // all that is wrong with it is said now
        SavedPlan plan = fresh(title(body), WebJson.text(request), programVersion);
        plans.add(plan);
        context.status(201);
        Api.json(context, whole(plan));
    }

    private void rename(Context context) {
        String title = title(WebJson.object(Bodies.json(context, Api.LARGEST_REQUEST)));
        require(plans.rename(id(context), title, System.currentTimeMillis()));
        Api.json(context, head(find(context)));
    }

    private void copy(Context context) {
        SavedPlan original = find(context);
        String title = PHRASES.say("copy", original.title());
        SavedPlan plan = fresh(
                title.length() > LONGEST_TITLE ? original.title() : title,
                original.request(),
                original.programVersion());
        plans.add(plan);
        context.status(201);
        Api.json(context, head(plan));
    }

    private void delete(Context context) {
        require(plans.delete(id(context), System.currentTimeMillis()));
        context.status(204);
    }

    private void restore(Context context) {
        require(plans.restore(id(context)));
        Api.json(context, head(find(context)));
    }

    private void export(Context context) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", FILE_SCHEMA);
        json.put("version", 1);
        json.put("plans", plans.list("").stream().map(SavedApi::whole).toList());
        Api.json(context, json);
    }

    private void importFile(Context context) {
        JsonNode file = WebJson.object(Bodies.json(context, LARGEST_FILE));
        if (!FILE_SCHEMA.equals(file.path("schema").asString(""))
                || file.path("version").asInt(0) != 1) {
            throw new Refused(400, "", PHRASES.say("this-is-no-export-of"));
        }
        List<SavedPlan> read = new ArrayList<>();
        for (JsonNode node : file.path("plans")) {
            service.read(WebJson.bytes(node.path("request")));
            read.add(new SavedPlan(
                    importedId(node),
                    title(node),
                    WebJson.text(node.path("request")),
                    node.path("program_version").asString(programVersion),
                    node.path("created").asLong(System.currentTimeMillis()),
                    node.path("changed").asLong(System.currentTimeMillis())));
        }
        int added = plans.addMissing(read);
        Api.json(context, Map.of("added", added, "known", read.size() - added));
    }

    private static String importedId(JsonNode node) {
        String id = node.path("id").asString("");
        if (!id.matches("[A-Za-z0-9-]{1," + LONGEST_ID + "}")) {
            throw new Refused(400, "id", PHRASES.say("a-plan-of-this-file"));
        }
        return id;
    }

    private static SavedPlan fresh(String title, String request, String version) {
        long now = System.currentTimeMillis();
        return new SavedPlan(UUID.randomUUID().toString(), title, request, version, now, now);
    }

    private static String title(JsonNode body) {
        String title = body.path("title").asString("").strip();
        if (title.chars().anyMatch(Character::isISOControl)) {
            throw new Refused(400, "title", PHRASES.say("got-a-title-with-control"));
        }
        if (title.isEmpty() || title.length() > LONGEST_TITLE) {
            throw new Refused(400, "title", PHRASES.say("got-a-title-of-characters", title.length(), LONGEST_TITLE));
        }
        return title;
    }

    private static String id(Context context) {
        return context.pathParam("id");
    }

    private SavedPlan find(Context context) {
        return plans.find(id(context)).orElseThrow(SavedApi::unknown);
    }

    private static void require(boolean found) {
        if (!found) {
            throw unknown();
        }
    }

    private static Refused unknown() {
        return new Refused(404, "id", PHRASES.say("there-is-no-such-saved"));
    }

    private static Map<String, Object> head(SavedPlan plan) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", plan.id());
        json.put("title", plan.title());
        json.put("program_version", plan.programVersion());
        json.put("created", plan.created());
        json.put("changed", plan.changed());
        return json;
    }

    private static Map<String, Object> whole(SavedPlan plan) {
        Map<String, Object> json = head(plan);
        json.put("request", WebJson.object(plan.request().getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        return json;
    }
}
