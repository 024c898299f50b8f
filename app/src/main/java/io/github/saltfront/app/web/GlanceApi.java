package io.github.saltfront.app.web;

import io.github.saltfront.app.export.FrontsJson;
import io.github.saltfront.app.export.PlanJson;
import io.github.saltfront.plan.Fronts;
import io.github.saltfront.plan.Plan;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** A rough look at a changed plan while somebody moves a slider. */
final class GlanceApi {
    private final PlanService service;
    private final String programVersion;

    GlanceApi(PlanService service, String programVersion) {
        this.service = service;
        this.programVersion = programVersion;
    }

    List<Route> routes() {
        return List.of(new Route(HandlerType.POST, "/api/glance", this::glance));
    }

    private void glance(Context context) {
        JsonNode body = WebJson.object(Bodies.json(context, 2 * Api.LARGEST_REQUEST));
        Plan plan = service.glance(WebJson.bytes(body.path("request")), WebJson.bytes(body.path("before")));
        Fronts fronts = service.running(executor -> Fronts.glance(plan));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("plan", PlanJson.of(plan, programVersion));
        json.put("fronts", FrontsJson.of(fronts, programVersion));
        Api.json(context, json);
    }
}
