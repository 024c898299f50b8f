package io.github.saltfront.app.web;

import io.github.saltfront.app.export.AdviceJson;
import io.github.saltfront.app.export.CatalogJson;
import io.github.saltfront.app.export.FrontsJson;
import io.github.saltfront.app.export.OffersJson;
import io.github.saltfront.app.export.PlanJson;
import io.github.saltfront.app.schema.Schemas;
import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** The JSON interface: plans, the catalog and the schemas, the same documents as on the command line. */
final class Api {
    private static final Phrases PHRASES = Phrases.of(Api.class);

    /** Largest request [byte]; one takes about a thousand. */
    static final int LARGEST_REQUEST = 100_000;

    private final PlanService service;
    private final String programVersion;

    Api(PlanService service, String programVersion) {
        this.service = service;
        this.programVersion = programVersion;
    }

    /** Returns the routes, which the OpenAPI document describes. */
    List<Route> routes() {
        return List.of(
                new Route(HandlerType.POST, "/api/plan", this::plan),
                new Route(HandlerType.POST, "/api/fronts", this::fronts),
                new Route(HandlerType.POST, "/api/offers", this::offers),
                new Route(HandlerType.GET, "/api/catalog", this::catalog),
                new Route(HandlerType.GET, "/api/catalog/{kind}", this::catalogKind),
                new Route(HandlerType.GET, "/api/schema/{name}", Api::schema),
                new Route(HandlerType.GET, "/api/openapi.json", Api::description));
    }

    static void json(Context context, Object content) {
        context.contentType(WebJson.TYPE).result(WebJson.bytes(content));
    }

    private void plan(Context context) {
        byte[] body = Bodies.json(context, LARGEST_REQUEST);
        boolean alone = "no".equals(context.queryParam("alternatives"));
        json(
                context,
                alone
                        ? PlanJson.of(service.plan(body), programVersion)
                        : AdviceJson.of(service.find(body), programVersion));
    }

    private void fronts(Context context) {
        byte[] body = Bodies.json(context, LARGEST_REQUEST);
        json(context, FrontsJson.of(service.fronts(body), programVersion));
    }

    private void offers(Context context) {
        byte[] body = Bodies.json(context, LARGEST_REQUEST);
        json(context, OffersJson.of(service.read(body), service.offers(body), programVersion));
    }

    private void catalog(Context context) {
        json(context, CatalogJson.document(CatalogJson.of(service.catalog())));
    }

    private void catalogKind(Context context) {
        String kind = context.pathParam("kind");
        Map<String, List<Map<String, Object>>> all = CatalogJson.of(service.catalog());
        if (!all.containsKey(kind)) {
            throw new Refused(
                    404, "kind", PHRASES.say("got-another-kind-expected-one", String.join(", ", all.keySet())));
        }
        json(context, CatalogJson.document(CatalogJson.chosen(all, kind, context.queryParam("word"))));
    }

    private static void schema(Context context) {
        String text;
        try {
            text = Schemas.text(context.pathParam("name"));
        } catch (IllegalArgumentException e) {
            throw new Refused(404, "name", String.valueOf(e.getMessage()));
        }
        context.contentType(WebJson.TYPE).result(text);
    }

    private static void description(Context context) {
        try (InputStream stream = Api.class.getResourceAsStream("openapi.json")) {
            if (stream == null) {
                throw new IllegalStateException("the OpenAPI document is not in the program's archive.");
            }
            context.contentType(WebJson.TYPE).result(stream.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
