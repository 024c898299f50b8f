package io.github.saltfront.app.notebook;

import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.request.TrialFile;
import io.github.saltfront.app.store.StoredAnswer;
import io.github.saltfront.app.store.StoredTrial;
import io.github.saltfront.app.store.Trials;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.words.Phrases;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * A trial of the archive of a notebook. The words that open the sheets of its tasters stay at home; where it is read back new ones
 * are drawn.
 *
 * @param trial the trial
 * @param tasters how many taste
 * @param answers what they said
 */
record ArchivedTrial(StoredTrial trial, int tasters, List<StoredAnswer> answers) {
    private static final Phrases PHRASES = Phrases.of(ArchivedTrial.class);

    private static final int LONGEST = 300;

    ArchivedTrial {
        answers = List.copyOf(answers);
    }

    static List<ArchivedTrial> all(Trials trials) {
        return trials.list().stream()
                .map(trial -> new ArchivedTrial(trial, trials.tokens(trial.id()).size(), trials.answers(trial.id())))
                .toList();
    }

    Map<String, Object> toJson() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", trial.id());
        json.put("created", trial.created());
        json.put("document", NotebookJson.read(trial.document()));
        List<Map<String, Object>> said = new ArrayList<>();
        for (StoredAnswer answer : answers) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("taster", answer.taster());
            one.put("round", answer.round());
            one.put("code", answer.code());
            one.put("answer", answer.answer());
            one.put("note", answer.note());
            one.put("received", answer.received());
            said.add(one);
        }
        json.put("answers", said);
        return json;
    }

    /** Reads trials back; each must be one that the program itself would draw. */
    static List<ArchivedTrial> read(JsonNode nodes) {
        List<ArchivedTrial> trials = new ArrayList<>();
        for (JsonNode node : nodes) {
            String id = node.path("id").asString("");
            if (!id.matches("[A-Za-z0-9-]{1,64}") || !node.path("document").isObject()) {
                throw new IllegalArgumentException(PHRASES.say("a-trial-of-the-archive"));
            }
            String document = NotebookJson.text(node.path("document"));
            TrialFile file;
            try {
                file = TrialFile.read(DocumentReader.read(
                        "trial " + id, document.getBytes(StandardCharsets.UTF_8), DocumentFormat.JSON));
                TrialDesign.draw(file.trial());
            } catch (DocumentException | IllegalArgumentException e) {
                throw new IllegalArgumentException(PHRASES.say("a-trial-of-the-archive-2", e.getMessage()), e);
            }
            int tasters = file.trial().tasters();
            StoredTrial trial = new StoredTrial(
                    id, file.title(), document, node.path("created").asLong(0));
            trials.add(new ArchivedTrial(trial, tasters, answers(node.path("answers"), tasters)));
        }
        return trials;
    }

    private static List<StoredAnswer> answers(JsonNode nodes, int tasters) {
        List<StoredAnswer> answers = new ArrayList<>();
        for (JsonNode node : nodes) {
            int taster = node.path("taster").asInt(0);
            int round = node.path("round").asInt(0);
            String code = node.path("code").asString("");
            if (taster < 1 || taster > tasters || round < 1 || code.length() > LONGEST) {
                throw new IllegalArgumentException(PHRASES.say("a-trial-of-the-archive-3", taster, round, tasters));
            }
            answers.add(new StoredAnswer(
                    taster,
                    round,
                    code,
                    cut(node.path("answer").asString("")),
                    cut(node.path("note").asString("")),
                    node.path("received").asLong(0)));
        }
        return answers;
    }

    private static String cut(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    }
}
