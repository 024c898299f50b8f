package io.github.saltfront.app.web;

import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.export.TrialAnalysisText;
import io.github.saltfront.app.export.TrialDesignText;
import io.github.saltfront.app.export.TrialJson;
import io.github.saltfront.app.export.TrialPdf;
import io.github.saltfront.app.export.TrialReport;
import io.github.saltfront.app.export.TrialTables;
import io.github.saltfront.app.notebook.TasterTokens;
import io.github.saltfront.app.request.TrialAnswers;
import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.app.request.TrialFindings;
import io.github.saltfront.app.store.StoredAnswer;
import io.github.saltfront.app.store.StoredTrial;
import io.github.saltfront.app.store.Trials;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import tools.jackson.databind.JsonNode;

/** Trials for the cook: design, papers, answers as they arrive, and what they show. Tasters have {@link TastingApi}. */
final class TrialApi {
    private static final Phrases PHRASES = Phrases.of(TrialApi.class);

    private static final double LEVEL = 0.95;
    private static final String ONE = "/api/trials/{id}";

    private final Trials trials;
    private final WebOptions options;

    TrialApi(Trials trials, WebOptions options) {
        this.trials = trials;
        this.options = options;
    }

    List<Route> routes() {
        List<Route> routes = new ArrayList<>(List.of(
                new Route(HandlerType.GET, "/api/trials", this::list),
                new Route(HandlerType.POST, "/api/trials", this::add),
                new Route(HandlerType.GET, ONE, this::read),
                new Route(HandlerType.DELETE, ONE, this::delete),
                new Route(HandlerType.GET, "/api/trials/{id}/sheets.pdf", this::sheets),
                new Route(HandlerType.GET, "/api/trials/{id}/codes.pdf", this::codes),
                new Route(HandlerType.GET, "/api/trials/{id}/answers.csv", this::answers),
                new Route(HandlerType.GET, "/api/trials/{id}/analysis", this::analysis),
                new Route(HandlerType.GET, "/api/trials/{id}/report.html", this::report)));
        routes.addAll(new TastingApi(trials).routes());
        return routes;
    }

    private void list(Context context) {
        Map<String, Integer> counts = trials.counts();
        Api.json(
                context,
                Map.of(
                        "trials",
                        trials.list().stream()
                                .map(trial -> head(trial, counts.getOrDefault(trial.id(), 0)))
                                .toList()));
    }

    private static Map<String, Object> head(StoredTrial trial, int answered) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", trial.id());
        json.put("title", trial.title());
        json.put("created", trial.created());
        json.put("answered", answered);
        return json;
    }

    private void add(Context context) {
        byte[] body = Bodies.json(context, Api.LARGEST_REQUEST);
        TrialFile file = TrialFile.read(DocumentReader.read("trial", body, DocumentFormat.JSON));
        draw(file);
        StoredTrial trial = new StoredTrial(
                UUID.randomUUID().toString(),
                file.title(),
                new String(body, StandardCharsets.UTF_8),
                System.currentTimeMillis());
        trials.add(trial, TasterTokens.draw(file.trial().tasters()));
        context.status(201);
        Api.json(context, whole(trial, context));
    }

    static TrialFile file(StoredTrial trial) {
        return TrialFile.read(
                DocumentReader.read("trial", trial.document().getBytes(StandardCharsets.UTF_8), DocumentFormat.JSON));
    }

    static TrialDesign draw(TrialFile file) {
        try {
            return TrialDesign.draw(file.trial());
        } catch (IllegalArgumentException e) {
            throw new Refused(400, "pieces", String.valueOf(e.getMessage()));
        }
    }

    private Map<String, Object> whole(StoredTrial trial, Context context) {
        TrialFile file = file(trial);
        TrialDesign design = draw(file);
        List<StoredAnswer> answers = trials.answers(trial.id());
        List<String> addresses = addresses(trial, context);
        List<Map<String, Object>> tasters = new ArrayList<>();
        for (int i = 0; i < addresses.size(); i++) {
            int taster = i + 1;
            tasters.add(Map.of(
                    "taster",
                    taster,
                    "address",
                    addresses.get(i),
                    "answered",
                    answers.stream().anyMatch(a -> a.taster() == taster)));
        }
        Map<String, Object> json = head(trial, (int) tasters.stream()
                .filter(t -> Boolean.TRUE.equals(t.get("answered")))
                .count());
        json.put("tasters", tasters);
        json.put("reachable", options.lan());
        json.put("words", TrialDesignText.of(file, design));
        json.put("design", TrialJson.design(file, design, options.programVersion()));
        return json;
    }

    /** Phones do not know the name localhost; in a network the first address of this computer is taken instead. */
    private List<String> addresses(StoredTrial trial, Context context) {
        String host = String.valueOf(context.host());
        String port = host.replaceFirst("^.*:", ":");
        List<String> local = Addresses.local();
        boolean own = host.startsWith("localhost") || host.startsWith("127.");
        String base = options.lan() && own && !local.isEmpty() ? local.get(0) + port : host;
        return trials.tokens(trial.id()).stream()
                .map(token -> "http://" + base + TastingApi.PAGE + "#" + token)
                .toList();
    }

    private StoredTrial find(Context context) {
        return trials.find(context.pathParam("id"))
                .orElseThrow(() -> new Refused(404, "id", PHRASES.say("there-is-no-such-trial")));
    }

    private void read(Context context) {
        Api.json(context, whole(find(context), context));
    }

    private void delete(Context context) {
        trials.delete(find(context).id(), System.currentTimeMillis());
        context.status(204);
    }

    private void sheets(Context context) {
        TrialFile file = file(find(context));
        send(context, "score-sheets.pdf", "application/pdf", TrialPdf.sheets(draw(file), file.sheetTitle()));
    }

    private void codes(Context context) {
        StoredTrial trial = find(context);
        byte[] pdf = TrialPdf.codes(file(trial).sheetTitle(), addresses(trial, context));
        send(context, "codes.pdf", "application/pdf", pdf);
    }

    private static void send(Context context, String name, String type, byte[] content) {
        context.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        context.contentType(type).result(content);
    }

    private String table(StoredTrial trial) {
        List<StoredAnswer> answers = trials.answers(trial.id());
        return TrialTables.answers(
                draw(file(trial)),
                (taster, round, code) -> answers.stream()
                        .filter(a -> a.taster() == taster
                                && a.round() == round
                                && a.code().equals(code))
                        .map(StoredAnswer::answer)
                        .findFirst()
                        .orElse(""));
    }

    private void answers(Context context) {
        byte[] csv = table(find(context)).getBytes(StandardCharsets.UTF_8);
        send(context, "answers.csv", "text/csv; charset=utf-8", csv);
    }

    private TrialFindings findings(StoredTrial trial) {
        if (trials.answers(trial.id()).isEmpty()) {
            throw new Refused(422, "", PHRASES.say("no-taster-has-answered-yet"));
        }
        return TrialAnswers.read("answers", table(trial), LEVEL);
    }

    private void analysis(Context context) {
        TrialFindings findings = findings(find(context));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("words", TrialAnalysisText.of(findings));
        json.put("analysis", TrialJson.findings(findings, options.programVersion()));
        Api.json(context, json);
    }

    private void report(Context context) {
        StoredTrial trial = find(context);
        TrialFile file = file(trial);
        String page = TrialReport.write(
                file.title(), Optional.of(file), Optional.of(draw(file)), findings(trial), table(trial));
        send(context, "trial-report.html", "text/html; charset=utf-8", page.getBytes(StandardCharsets.UTF_8));
    }

    /** Text of a member of a body, without blanks around it. */
    static String text(JsonNode node, String key) {
        return node.path(key).asString("").strip();
    }
}
