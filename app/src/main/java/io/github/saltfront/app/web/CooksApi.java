package io.github.saltfront.app.web;

import io.github.saltfront.app.follow.CookOptions;
import io.github.saltfront.app.follow.CookRegistry;
import io.github.saltfront.app.follow.Receipt;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The cooks that are followed: begin, readings and events in, outlook and log out. */
final class CooksApi {
    /** Largest heap of readings [byte]. */
    static final int LARGEST_HEAP = 1_000_000;

    private static final String CSV = "text/csv";

    private final CookRegistry cooks;
    private final EventStreams streams;

    CooksApi(CookRegistry cooks, EventStreams streams) {
        this.cooks = cooks;
        this.streams = streams;
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
            throw new Refused(
                    400, "request", "Got no request, expected what a request file holds; send the plan's request.");
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
            throw new Refused(503, "", "The first outlook is still being computed; ask again in a few seconds.");
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
            throw new Refused(404, "number", "There is no such alarm; take a number from the list.");
        }
        cooks.acknowledge(id(context), number);
        context.status(204);
    }

    private void end(Context context) {
        Api.json(context, cooks.end(id(context), Bodies.json(context, Api.LARGEST_REQUEST)));
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
