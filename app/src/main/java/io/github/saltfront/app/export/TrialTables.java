package io.github.saltfront.app.export;

import io.github.saltfront.app.request.TrialAnswers;
import io.github.saltfront.trial.Allocation;
import io.github.saltfront.trial.PreferenceProtocol;
import io.github.saltfront.trial.RightWrongProtocol;
import io.github.saltfront.trial.Serving;
import io.github.saltfront.trial.Sheet;
import io.github.saltfront.trial.TrialDesign;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Tables to fill in: answers and weights. They hold the key and are for the cook. */
public final class TrialTables {
    private static final Phrases PHRASES = Phrases.of(TrialTables.class);

    /** What a formula begins with, in plain and in wide letters. */
    private static final String FORMULA = "=+-@\uff1d\uff0b\uff0d\uff20";

    private TrialTables() {}

    /**
     * Returns the table of answers with its last column empty.
     *
     * @param design the design
     * @return CSV text that {@code trial analyze} reads
     */
    public static String answers(TrialDesign design) {
        return answers(design, (taster, round, code) -> "");
    }

    /** What tasters answered. */
    @FunctionalInterface
    public interface Answers {
        /**
         * Returns an answer.
         *
         * @param taster the taster, from 1
         * @param round the round, from 1
         * @param code code of the sample that is rated; empty where one answer is given for the whole plate
         * @return the answer; empty if there is none
         */
        String answer(int taster, int round, String code);
    }

    /**
     * Returns the table of answers with its last column filled in.
     *
     * @param design the design
     * @param answers what tasters answered
     * @return CSV text that {@code trial analyze} reads
     */
    public static String answers(TrialDesign design, Answers answers) {
        StringBuilder text = new StringBuilder(PHRASES.say("for-the-cook-only-holds"));
        boolean preference = design.request().protocol() instanceof PreferenceProtocol;
        boolean test = design.request().protocol() instanceof RightWrongProtocol;
        text.append(header(design, preference, test)).append('\n');
        for (Sheet sheet : design.sheets()) {
            List<String> start = List.of(
                    design.request().protocol().id(),
                    Integer.toString(sheet.taster()),
                    Integer.toString(sheet.round()));
            if (!preference && !test) {
                for (Serving serving : sheet.servings()) {
                    String score = answers.answer(sheet.taster(), sheet.round(), serving.code());
                    text.append(line(start, List.of(serving.code(), sample(design, serving), score)));
                }
                continue;
            }
            List<String> cells = new ArrayList<>();
            for (Serving serving : sheet.servings()) {
                cells.add(serving.code());
                if (preference) {
                    cells.add(sample(design, serving));
                }
            }
            if (design.request().protocol() instanceof RightWrongProtocol protocol) {
                int place = protocol.method()
                        .rightPlace(
                                sheet.servings().stream().map(Serving::sample).toList());
                cells.add(sheet.servings().get(place).code());
            }
            cells.add(answers.answer(sheet.taster(), sheet.round(), ""));
            text.append(line(start, cells));
        }
        return text.toString();
    }

    private static String header(TrialDesign design, boolean preference, boolean test) {
        StringBuilder header = new StringBuilder("method,taster,round");
        if (!preference && !test) {
            return header.append(",code,sample,score").toString();
        }
        for (int i = 1; i <= design.sheets().get(0).servings().size(); i++) {
            header.append(",code_").append(i);
            if (preference) {
                header.append(",sample_").append(i);
            }
        }
        return header.append(test ? ",right_code,answer_code" : ",answer_code").toString();
    }

    /**
     * Returns the table of weights with its last two columns empty.
     *
     * @param design the design
     * @return CSV text that {@code trial analyze} reads
     */
    public static String weights(TrialDesign design) {
        StringBuilder text = new StringBuilder(PHRASES.say("weigh-each-piece-before-the"));
        for (Allocation.Assignment assignment : design.allocation().assignments()) {
            text.append(line(
                    List.of(TrialAnswers.YIELD, assignment.piece().id()),
                    List.of(
                            assignment.piece().block(),
                            design.request().samples().get(assignment.treatment()),
                            "",
                            "")));
        }
        return text.toString();
    }

    private static String sample(TrialDesign design, Serving serving) {
        return design.request().samples().get(serving.sample());
    }

    private static String line(List<String> start, List<String> rest) {
        List<String> all = new ArrayList<>(start);
        all.addAll(rest);
        return all.stream().map(TrialTables::cell).collect(Collectors.joining(",")) + "\n";
    }

    /**
     * Returns a cell that no spreadsheet takes for a formula and that keeps commas and quotes.
     *
     * @param text the text
     * @return the cell; with a ' before it where it begins like a formula
     */
    public static String cell(String text) {
        String plain =
                text.replace('\n', ' ').replace('\r', ' ').replace('\t', ' ').strip();
        String safe = !plain.isEmpty() && FORMULA.indexOf(plain.charAt(0)) >= 0 ? "'" + plain : plain;
        return safe.matches("[^,\";]*") ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
