package io.github.saltfront.app.web;

import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.app.document.Problem;
import io.github.saltfront.app.follow.NoSuchCook;
import io.github.saltfront.numerics.ConvergenceException;
import io.github.saltfront.plan.PlanningException;
import io.github.saltfront.words.Phrases;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Turns what goes wrong into a status and the list of problems: 400 wrong input, 422 not feasible, 500 our own fault. */
final class Failures {
    private static final Phrases PHRASES = Phrases.of(Failures.class);

    private static final int WRONG = 400;
    private static final int INFEASIBLE = 422;
    private static final int INTERNAL = 500;
    private static final Logger LOG = Logger.getLogger(Failures.class.getName());

    private Failures() {}

    static void register(RoutesConfig routes) {
        routes.exception(Refused.class, (e, context) -> {
            answer(context, e.status(), e.field(), String.valueOf(e.getMessage()));
        });
        routes.exception(DocumentException.class, (e, context) -> {
            List<Map<String, String>> problems =
                    e.problems().stream().map(Failures::problem).toList();
            context.status(WRONG).contentType(WebJson.TYPE).result(WebJson.problems(problems));
        });
        routes.exception(NoSuchCook.class, (e, context) -> answer(context, 404, "id", String.valueOf(e.getMessage())));
        routes.exception(PlanningException.class, (e, context) -> {
            // a time to serve is the user's to move, everything else is not feasible
            int status = e.field().equals("serve") ? WRONG : INFEASIBLE;
            answer(context, status, e.field(), sentence(String.valueOf(e.getMessage())));
        });
        routes.exception(HttpResponseException.class, (e, context) -> {
            answer(context, e.getStatus(), "", sentence(String.valueOf(e.getMessage())));
        });
        routes.exception(Exception.class, Failures::other);
    }

    private static Map<String, String> problem(Problem problem) {
        return Map.of("field", problem.field(), "message", problem.message());
    }

    private static void other(Exception e, Context context) {
        Throwable cause = e instanceof CompletionException && e.getCause() != null ? e.getCause() : e;
        if (cause instanceof ConvergenceException) {
            answer(context, INFEASIBLE, "", sentence(String.valueOf(cause.getMessage())));
            return;
        }
        LOG.log(Level.SEVERE, "a request failed: " + context.method() + " " + context.path(), e);
        String message = RequestLanguage.of(context)
                .speaking(() -> PHRASES.say(
                        "saltfront-failed-on-its-own", cause.getClass().getSimpleName()));
        answer(context, INTERNAL, "", message);
    }

    private static void answer(Context context, int status, String field, String message) {
        context.status(status).contentType(WebJson.TYPE).result(WebJson.problem(field, message));
    }

    private static String sentence(String message) {
        return message.isEmpty() ? message : Character.toUpperCase(message.charAt(0)) + message.substring(1);
    }
}
