package io.github.saltfront.app.web;

import io.github.saltfront.app.request.TrialAnswers;
import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.app.store.StoredAnswer;
import io.github.saltfront.app.store.StoredTrial;
import io.github.saltfront.app.store.Trials;
import io.github.saltfront.trial.PreferenceProtocol;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.Serving;
import io.github.saltfront.trial.Sheet;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.words.Phrases;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The form of one taster. Its token opens this sheet and nothing else, without the access code of the program: a taster who had that
 * could read the key. What goes out says nothing of the samples.
 */
final class TastingApi {
    private static final Phrases PHRASES = Phrases.of(TastingApi.class);

    static final String PAGE = "/tasting.html";

    /** Beginning of the paths that are open to tasters. */
    static final String OPEN = "/api/tasting/";

    private static final int LARGEST = 20_000;
    private static final int LONGEST_NOTE = 1000;
    private static final String PATH = OPEN + "{token}";

    private final Trials trials;

    TastingApi(Trials trials) {
        this.trials = trials;
    }

    List<Route> routes() {
        return List.of(new Route(HandlerType.GET, PATH, this::read), new Route(HandlerType.POST, PATH, this::answer));
    }

    /** The sheets of one taster. */
    private record Place(StoredTrial trial, TrialFile file, int taster, List<Sheet> sheets) {}

    private Place find(Context context) {
        Trials.Taster taster = trials.taster(context.pathParam("token")).orElseThrow(TastingApi::unknown);
        StoredTrial trial = trials.find(taster.trial()).orElseThrow(TastingApi::unknown);
        TrialFile file = TrialApi.file(trial);
        List<Sheet> sheets = TrialApi.draw(file).sheets().stream()
                .filter(sheet -> sheet.taster() == taster.taster())
                .toList();
        return new Place(trial, file, taster.taster(), sheets);
    }

    private static Refused unknown() {
        return new Refused(404, "", PHRASES.say("there-is-no-tasting-under"));
    }

    private boolean hasAnswered(Place place) {
        return trials.answers(place.trial().id()).stream().anyMatch(a -> a.taster() == place.taster());
    }

    private void read(Context context) {
        Place place = find(context);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("title", place.file().sheetTitle());
        json.put("taster", place.taster());
        json.put("question", place.file().trial().protocol().question());
        json.put("answered", hasAnswered(place));
        boolean rates = place.file().trial().protocol() instanceof RatingProtocol;
        json.put("kind", rates ? "rate" : "choose");
        json.put("no_preference", place.file().trial().protocol() instanceof PreferenceProtocol);
        json.put("words", rates ? RatingProtocol.words() : List.of());
        json.put(
                "rounds",
                place.sheets().stream()
                        .map(sheet -> Map.of(
                                "round",
                                sheet.round(),
                                "codes",
                                sheet.servings().stream().map(Serving::code).toList()))
                        .toList());
        Api.json(context, json);
    }

    private void answer(Context context) {
        Place place = find(context);
        JsonNode body = WebJson.object(Bodies.json(context, LARGEST));
        if (hasAnswered(place)) {
            throw new Refused(409, "", PHRASES.say("your-answers-are-here-already"));
        }
        String note = TrialApi.text(body, "note");
        if (note.length() > LONGEST_NOTE) {
            throw new Refused(400, "note", PHRASES.say("got-a-note-of-characters", note.length()));
        }
        long now = System.currentTimeMillis();
        List<StoredAnswer> answers = new ArrayList<>();
        for (JsonNode each : body.path("answers")) {
            answers.add(checked(place, each, note, now));
        }
        if (answers.isEmpty()) {
            throw new Refused(400, "answers", PHRASES.say("no-answer-is-given-yet"));
        }
        trials.answer(place.trial().id(), answers);
        Api.json(context, Map.of("received", answers.size()));
    }

    private static StoredAnswer checked(Place place, JsonNode each, String note, long now) {
        int round = each.path("round").asInt(0);
        Sheet sheet = place.sheets().stream()
                .filter(s -> s.round() == round)
                .findFirst()
                .orElseThrow(() -> new Refused(400, "answers", PHRASES.say("there-is-no-round-on", round)));
        List<String> codes = sheet.servings().stream()
                .map(Serving::code)
                .filter(code -> !code.equals(TrialDesign.REFERENCE))
                .toList();
        String code = TrialApi.text(each, "code");
        String answer = TrialApi.text(each, "answer");
        boolean right;
        if (place.file().trial().protocol() instanceof RatingProtocol) {
            right = codes.contains(code) && answer.matches("[1-9]");
        } else {
            boolean none = place.file().trial().protocol() instanceof PreferenceProtocol
                    && answer.equals(TrialAnswers.NO_PREFERENCE);
            right = code.isEmpty() && (codes.contains(answer) || none);
        }
        if (!right) {
            throw new Refused(400, "answers", PHRASES.say("an-answer-names-no-sample"));
        }
        return new StoredAnswer(place.taster(), round, code, answer, note, now);
    }
}
