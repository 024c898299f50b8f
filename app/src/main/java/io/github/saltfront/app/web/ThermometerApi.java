package io.github.saltfront.app.web;

import io.github.saltfront.app.notebook.CheckInput;
import io.github.saltfront.app.notebook.NotebookViews;
import io.github.saltfront.app.notebook.Thermometers;
import io.github.saltfront.app.store.StoredCheck;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** The thermometer bench. */
final class ThermometerApi {
    private final Thermometers bench;
    private final String programVersion;

    ThermometerApi(Thermometers bench, String programVersion) {
        this.bench = bench;
        this.programVersion = programVersion;
    }

    List<Route> routes() {
        return List.of(
                new Route(HandlerType.GET, "/api/thermometers", this::list),
                new Route(HandlerType.POST, "/api/thermometers", this::add));
    }

    private void list(Context context) {
        LocalDate today = LocalDate.now();
        Api.json(
                context,
                Map.of(
                        "thermometers",
                        bench.checks().instruments().stream()
                                .map(name -> view(name, today))
                                .toList()));
    }

    private Map<String, Object> view(String name, LocalDate today) {
        return NotebookViews.thermometer(name, bench.checks().of(name), bench.history(name), today, programVersion);
    }

    private void add(Context context) {
        JsonNode body = WebJson.object(Bodies.json(context, Api.LARGEST_REQUEST));
        StoredCheck check;
        try {
            check = new CheckInput(
                            body.path("instrument").asString(""),
                            body.path("ice").asString(""),
                            text(body, "boiling"),
                            text(body, "altitude"),
                            text(body, "pressure"),
                            body.path("step").asString("0.1 K"),
                            text(body, "day"),
                            body.path("note").asString(""))
                    .check(LocalDate.now(), System.currentTimeMillis());
        } catch (IllegalArgumentException e) {
            throw new Refused(400, "", String.valueOf(e.getMessage()));
        }
        bench.checks().add(check);
        context.status(201);
        Api.json(context, view(check.instrument(), LocalDate.now()));
    }

    private static Optional<String> text(JsonNode body, String key) {
        String text = body.path(key).asString("").strip();
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
