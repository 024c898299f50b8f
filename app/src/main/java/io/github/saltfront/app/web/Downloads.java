package io.github.saltfront.app.web;

import io.github.saltfront.app.export.CardPdf;
import io.github.saltfront.app.export.FrontsSvg;
import io.github.saltfront.app.export.PlanCalendar;
import io.github.saltfront.app.export.PlanMarkdown;
import io.github.saltfront.app.export.RecipeJsonLd;
import io.github.saltfront.app.export.SvgPicture;
import io.github.saltfront.plan.Fronts;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** A plan as a file to keep: card, calendar, recipe, notes and pictures. */
final class Downloads {
    private final PlanService service;

    Downloads(PlanService service) {
        this.service = service;
    }

    List<Route> routes() {
        return List.of(
                route(
                        "card.pdf",
                        "application/pdf",
                        body -> CardPdf.of(service.find(body), service.fronts(body), Optional.empty())),
                route(
                        "calendar.ics",
                        "text/calendar; charset=utf-8",
                        body -> utf8(PlanCalendar.of(service.plan(body)))),
                route(
                        "recipe.jsonld",
                        "application/ld+json",
                        body -> WebJson.bytes(RecipeJsonLd.of(service.plan(body)))),
                route("plan.md", "text/markdown; charset=utf-8", body -> utf8(PlanMarkdown.of(service.find(body)))),
                route("fronts.svg", "image/svg+xml", body -> utf8(picture(body))),
                route("fronts.png", "image/png", body -> SvgPicture.png(picture(body), 2 * FrontsSvg.WIDTH)));
    }

    /** Writes a file from the body of a request. */
    @FunctionalInterface
    private interface Writer {
        byte[] write(byte[] body);
    }

    private static Route route(String name, String type, Writer writer) {
        Handler handler = context -> send(context, name, type, writer);
        return new Route(HandlerType.POST, "/api/download/" + name, handler);
    }

    private static void send(Context context, String name, String type, Writer writer) {
        byte[] content = writer.write(Bodies.json(context, Api.LARGEST_REQUEST));
        context.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        context.contentType(type).result(content);
    }

    private String picture(byte[] body) {
        Fronts fronts = service.fronts(body);
        return FrontsSvg.of(fronts);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
