package io.github.saltfront.app.web;

import io.github.saltfront.app.export.TimedDayJson;
import io.github.saltfront.plan.TimedDay;
import io.github.saltfront.plan.TimedDays;
import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** The day of a plan while somebody drags the end of a stage. */
final class StagesApi {
    private static final Phrases PHRASES = Phrases.of(StagesApi.class);

    private final PlanService service;
    private final String programVersion;

    StagesApi(PlanService service, String programVersion) {
        this.service = service;
        this.programVersion = programVersion;
    }

    List<Route> routes() {
        return List.of(new Route(HandlerType.POST, "/api/stages", this::stages));
    }

    private void stages(Context context) {
        JsonNode body = WebJson.object(Bodies.json(context, Api.LARGEST_REQUEST));
        TimedDays days = service.days(WebJson.bytes(body.path("request")));
        List<Double> lengths = lengths(body.path("lengths_s"), days);
        TimedDay day = service.running(executor -> days.with(lengths, executor));
        Api.json(context, TimedDayJson.of(days, day, programVersion));
    }

    /** As planned where none are given; what is wrong is told before anything is computed. */
    private static List<Double> lengths(JsonNode node, TimedDays days) {
        if (node.isMissingNode()) {
            return days.plannedLengths();
        }
        List<TimedDay.Bounds> bounds = days.bounds();
        if (!node.isArray() || node.size() != bounds.size()) {
            throw new Refused(
                    400,
                    "lengths_s",
                    PHRASES.say(
                            "got-expected-a-list-of",
                            (node.isArray() ? PHRASES.say("lengths", node.size()) : PHRASES.say("no-list")),
                            bounds.size()));
        }
        List<Double> lengths = new ArrayList<>();
        for (int i = 0; i < bounds.size(); i++) {
            TimedDay.Bounds allowed = bounds.get(i);
            double length = node.get(i).asDouble(Double.NaN);
            if (!(length >= allowed.shortest() && length <= allowed.longest())) {
                throw new Refused(
                        400,
                        "lengths_s." + i,
                        PHRASES.say(
                                "got-expected-to-s-take",
                                node.get(i),
                                Math.round(allowed.shortest()),
                                Math.round(allowed.longest())));
            }
            lengths.add(length);
        }
        return lengths;
    }
}
