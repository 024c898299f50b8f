package io.github.saltfront.app.notebook;

import io.github.saltfront.app.export.TrialTables;
import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.StoredAnswer;
import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.app.store.StoredPhoto;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** The notebook as tables for a spreadsheet. Text that a spreadsheet would take for a formula is made harmless. */
final class NotebookTables {
    static final String README = """
            A Saltfront notebook.

            notebook.json      everything; this file and the pictures are read back by "notebook import"
            cooks.csv          one row is one cook; planned values beside measured ones, units in the names
            ratings.csv        one row is what one taster said of one cook
            readings.csv       one row is one reading of a thermometer
            thermometers.csv   one row is one check of a thermometer
            answers.csv        one row is what one taster answered in one round of a trial
            photos.csv         one row is one picture; the files are in photos/

            UTF-8, commas, a point for decimals. A text that begins with = + - @ has a ' before it, so that no
            spreadsheet takes it for a formula. docs/notebook.md of the program describes every column.
            """;

    private NotebookTables() {}

    static String cooks(List<NotedCook> cooks) {
        StringBuilder text = new StringBuilder(String.join(",", CookFigures.NAMES)).append('\n');
        for (NotedCook cook : cooks) {
            Map<String, Object> figures = CookFigures.of(cook);
            line(
                    text,
                    CookFigures.NAMES.stream()
                            .map(name -> Optional.ofNullable(figures.get(name)).orElse(""))
                            .toList());
        }
        return text.toString();
    }

    static String ratings(List<NotedCook> cooks) {
        StringBuilder text = new StringBuilder("cook_id,taster,saltiness,juice,tenderness,crispness\n");
        for (NotedCook cook : cooks) {
            for (JsonNode rating : NotebookJson.read(cook.document()).path("ratings")) {
                List<Object> cells = new ArrayList<>(List.of(cook.id()));
                for (String name : List.of("taster", "saltiness", "juice", "tenderness", "crispness")) {
                    JsonNode value = rating.path(name);
                    cells.add(value.isNumber() ? (Object) value.asInt() : value.asString(""));
                }
                line(text, cells);
            }
        }
        return text.toString();
    }

    static String readings(List<NotedCook> cooks) {
        StringBuilder text = new StringBuilder("cook_id,time_s,core_c\n");
        for (NotedCook cook : cooks) {
            CookReadings readings = CookReadings.read(NotebookJson.read(cook.readings()));
            for (int i = 0; i < readings.timesS().size(); i++) {
                line(
                        text,
                        List.of(
                                cook.id(),
                                readings.timesS().get(i),
                                readings.coreC().get(i)));
            }
        }
        return text.toString();
    }

    static String checks(List<StoredCheck> checks) {
        StringBuilder text =
                new StringBuilder("id,instrument,day,ice_c,boiling_c,boiling_point_c,boiling_bound_k,step_k,note\n");
        for (StoredCheck check : checks) {
            List<Object> cells = new ArrayList<>(List.of(check.id(), check.instrument(), check.day(), check.iceC()));
            cells.add(check.boiling().map(b -> (Object) b.readingC()).orElse(""));
            cells.add(check.boiling().map(b -> (Object) b.pointC()).orElse(""));
            cells.add(check.boiling().map(b -> (Object) b.boundK()).orElse(""));
            cells.add(check.stepK());
            cells.add(check.note());
            line(text, cells);
        }
        return text.toString();
    }

    static String answers(List<ArchivedTrial> trials) {
        StringBuilder text = new StringBuilder("trial_id,title,taster,round,code,answer,note\n");
        for (ArchivedTrial trial : trials) {
            for (StoredAnswer answer : trial.answers()) {
                line(
                        text,
                        List.of(
                                trial.trial().id(),
                                trial.trial().title(),
                                answer.taster(),
                                answer.round(),
                                answer.code(),
                                answer.answer(),
                                answer.note()));
            }
        }
        return text.toString();
    }

    static String photos(List<StoredPhoto> photos) {
        StringBuilder text = new StringBuilder("id,cook_id,file,caption,width,height\n");
        for (StoredPhoto photo : photos) {
            line(
                    text,
                    List.of(
                            photo.id(),
                            photo.cook(),
                            "photos/" + photo.id() + ".jpg",
                            photo.caption(),
                            photo.width(),
                            photo.height()));
        }
        return text.toString();
    }

    private static void line(StringBuilder text, List<Object> cells) {
        text.append(String.join(",", cells.stream().map(NotebookTables::cell).toList()))
                .append('\n');
    }

    private static String cell(Object value) {
        if (value instanceof Double number) {
            // significant digits enough for any scale, without the noise of binary fractions
            return Double.isFinite(number)
                    ? new BigDecimal(number, new MathContext(7))
                            .stripTrailingZeros()
                            .toPlainString()
                    : "";
        }
        return value instanceof Number ? String.valueOf(value) : TrialTables.cell(String.valueOf(value));
    }
}
