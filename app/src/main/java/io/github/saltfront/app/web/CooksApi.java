package io.github.saltfront.app.web;

import io.github.saltfront.app.follow.CookNoted;
import io.github.saltfront.app.follow.CookOptions;
import io.github.saltfront.app.follow.CookRegistry;
import io.github.saltfront.app.follow.Receipt;
import io.github.saltfront.app.notebook.Notebook;
import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The cooks that are followed: begin, readings and events in, outlook and log out. */
final class CooksApi {
    private static final Phrases PHRASES = Phrases.of(CooksApi.class);

    /** Largest heap of readings [byte]. */
    static final int LARGEST_HEAP = 1_000_000;

    private static final String CSV = "text/csv";

    private final CookRegistry cooks;
    private final EventStreams streams;
    private final Notebook notebook;
    private final PlanService service;

    CooksApi(CookRegistry cooks, EventStreams streams, Notebook notebook, PlanService service) {
        this.cooks = cooks;
        this.streams = streams;
        this.notebook = notebook;
        this.service = service;
    }

    List<Route> routes() {
        return List.of(
                new Route(HandlerType.GET, "/api/cooks", context -> Api.json(context, cooks.list())),
                new Route(HandlerType.POST, "/api/cooks", this::begin),
                new Route(HandlerType.GET, "/api/cooks/{id}", context -> Api.json(context, cooks.state(id(context)))),
                new Route(HandlerType.GET, "/api/cooks/{id}/outlook", this::outlook),
                new Route(HandlerType.POST, "/api/cooks/{id}/readings", this::readings),
                new Route(HandlerType.POST, "/api/cooks/{id}/events", this::event),
                new Route(HandlerType.POST, "/api/cooks/{id}/sources", this::connect),
                new Route(HandlerType.POST, "/api/cooks/{id}/alarms/{number}", this::acknowledge),
                new Route(HandlerType.POST, "/api/cooks/{id}/end", this::end),
                new Route(HandlerType.GET, "/api/cooks/{id}/front", this::front),
                new Route(HandlerType.GET, "/api/cooks/{id}/record.html", this::record),
                new Route(HandlerType.GET, "/api/cooks/{id}/log.csv", this::csv),
                new Route(HandlerType.GET, "/api/cooks/{id}/log.json", this::log),
                new Route(HandlerType.GET, "/api/cooks/{id}/stream", streams.handler()));
    }

    static String id(Context context) {
        return context.pathParam("id");
    }

    private void begin(Context context) {
        JsonNode body = WebJson.object(Bodies.json(context, Api.LARGEST_REQUEST));
        JsonNode request = body.get("request");
        if (request == null || !request.isObject()) {
            throw new Refused(400, "request", PHRASES.say("got-no-request-expected-what"));
        }
        byte[] others = WebJson.bytes(((ObjectNode) body).deepCopy().without("request"));
        String id = cooks.begin(WebJson.bytes(request), CookOptions.read(others));
        context.status(201);
        context.header("Location", "/api/cooks/" + id);
        Api.json(context, cooks.state(id));
    }

    private void outlook(Context context) {
        Optional<Map<String, Object>> outlook = cooks.outlook(id(context));
        if (outlook.isEmpty()) {
            context.header("Retry-After", "5");
            throw new Refused(503, "", PHRASES.say("the-first-outlook-is-still"));
        }
        Api.json(context, outlook.get());
    }

    private void readings(Context context) {
        boolean lines =
                String.valueOf(context.contentType()).toLowerCase(Locale.ROOT).startsWith(CSV);
        byte[] body = lines ? Bodies.read(context, LARGEST_HEAP) : Bodies.json(context, LARGEST_HEAP);
        Receipt receipt = cooks.take(id(context), body, lines ? CookRegistry.Form.CSV : CookRegistry.Form.JSON);
        context.status(receipt.isRefused() ? 400 : 200);
        Api.json(context, receipt.json());
    }

    private void event(Context context) {
        byte[] body = Bodies.json(context, Api.LARGEST_REQUEST);
        context.status(201);
        Api.json(context, cooks.tell(id(context), body));
    }

    private void connect(Context context) {
        byte[] body = Bodies.json(context, Api.LARGEST_REQUEST);
        context.status(201);
        Api.json(context, Map.of("number", cooks.connect(id(context), body)));
    }

    private void acknowledge(Context context) {
        Bodies.json(context, Api.LARGEST_REQUEST);
        long number;
        try {
            number = Long.parseLong(context.pathParam("number"));
        } catch (NumberFormatException e) {
            throw new Refused(404, "number", PHRASES.say("there-is-no-such-alarm"));
        }
        cooks.acknowledge(id(context), number);
        context.status(204);
    }

    private void end(Context context) {
        ObjectNode body = (ObjectNode)
                WebJson.object(Bodies.json(context, Api.LARGEST_REQUEST)).deepCopy();
        JsonNode wanted = body.remove("notebook");
        Map<String, Object> ending = new LinkedHashMap<>(cooks.end(id(context), WebJson.bytes(body)));
        if (wanted != null && wanted.asBoolean(false)) {
            CookNoted noted = cooks.noted(id(context), ending);
            byte[] content = WebJson.bytes(noted.content());
            ending.put(
                    "notebook_id",
                    service.running(threads -> notebook.note(content, Optional.empty(), noted.readings(), threads))
                            .id());
        }
        Api.json(context, ending);
    }

    private void front(Context context) {
        Optional<Map<String, Object>> front = cooks.front(id(context));
        if (front.isEmpty()) {
            throw new Refused(404, "", PHRASES.say("there-is-no-front-of"));
        }
        Api.json(context, front.get());
    }

    private void record(Context context) {
        Optional<String> page = cooks.record(id(context));
        if (page.isEmpty()) {
            throw new Refused(404, "", PHRASES.say("there-is-no-record-no"));
        }
        // a page to be kept holds its own style, and no script
        context.header(
                "Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'");
        context.contentType("text/html; charset=utf-8").result(page.get());
    }

    private void csv(Context context) {
        byte[] text = cooks.csv(id(context)).getBytes(StandardCharsets.UTF_8);
        context.header("Content-Disposition", "attachment; filename=\"cook.csv\"");
        context.contentType(CSV + "; charset=utf-8").result(text);
    }

    private void log(Context context) {
        context.header("Content-Disposition", "attachment; filename=\"cook.json\"");
        Api.json(context, cooks.log(id(context)));
    }
}
