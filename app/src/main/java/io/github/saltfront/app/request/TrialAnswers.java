package io.github.saltfront.app.request;

import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.app.document.Problem;
import io.github.saltfront.data.CsvTable;
import io.github.saltfront.data.DataException;
import io.github.saltfront.trial.Discrimination;
import io.github.saltfront.trial.Preference;
import io.github.saltfront.trial.RatingProtocol;
import io.github.saltfront.trial.RatingsAnalysis;
import io.github.saltfront.trial.Score;
import io.github.saltfront.trial.TastingMethod;
import io.github.saltfront.trial.WeighedPiece;
import io.github.saltfront.trial.YieldComparison;
import io.github.saltfront.words.Phrases;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads a table of answers, as the design of a trial prepares it, and has it analyzed. The column method says how. */
public final class TrialAnswers {
    private static final Phrases PHRASES = Phrases.of(TrialAnswers.class);

    /** Word for answers that name no sample. */
    public static final String NO_PREFERENCE = "none";

    /** Method of a table of weights. */
    public static final String YIELD = "yield";

    private static final int LARGEST = 1_000_000;
    private static final int MOST_PROBLEMS = 20;

    private final String file;
    private final CsvTable table;
    private final double level;
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> tasters = new LinkedHashSet<>();
    private int unanswered;

    private TrialAnswers(String file, CsvTable table, double level) {
        this.file = file;
        this.table = table;
        this.level = level;
    }

    /**
     * Reads and analyzes a file.
     *
     * @param path the file, CSV in UTF-8 with commas or semicolons
     * @param level level of the intervals [-], 0.5 to 0.9999
     * @return the findings
     * @throws DocumentException with everything that is wrong
     */
    public static TrialFindings read(Path path, double level) {
        String name = path.toString();
        try (InputStream stream = Files.newInputStream(path)) {
            byte[] bytes = stream.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw fault(name, 0, PHRASES.say("the-file-is-larger-than"));
            }
            return read(name, new String(bytes, StandardCharsets.UTF_8), level);
        } catch (NoSuchFileException e) {
            throw fault(name, 0, PHRASES.say("there-is-no-such-file"));
        } catch (IOException e) {
            throw fault(
                    name, 0, PHRASES.say("the-file-cannot-be-read", e.getClass().getSimpleName()));
        }
    }

    /**
     * Reads and analyzes a text.
     *
     * @param name what to call it in messages
     * @param text CSV with commas or semicolons
     * @param level level of the intervals [-], 0.5 to 0.9999
     * @return the findings
     * @throws DocumentException with everything that is wrong
     */
    public static TrialFindings read(String name, String text, double level) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        // spreadsheets of many countries write semicolons
        String commas = plain.indexOf(',') < 0 ? plain.replace(';', ',') : plain;
        try {
            CsvTable table = CsvTable.read(name, new StringReader(commas));
            return new TrialAnswers(name, table, level).analyze();
        } catch (DataException e) {
            throw fault(name, 0, String.valueOf(e.getMessage()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static DocumentException fault(String file, int line, String message) {
        return new DocumentException(file, List.of(new Problem("", line, message)));
    }

    private TrialFindings analyze() {
        require("method");
        List<String> methods =
                table.rows().stream().map(r -> r.text("method")).distinct().toList();
        if (methods.size() != 1) {
            throw fault(file, 0, PHRASES.say("got-the-methods-in-one", methods));
        }
        String method = methods.get(0).toLowerCase(Locale.ROOT);
        try {
            return switch (method) {
                case "preference" -> preference();
                case "ratings" -> ratings();
                case YIELD -> yields();
                default -> rightWrong(TastingMethod.get(method));
            };
        } catch (IllegalArgumentException e) {
            throw fault(file, 0, Words.sentence(e));
        }
    }

    private void require(String... columns) {
        for (String column : columns) {
            if (!table.header().contains(column)) {
                problem(1, PHRASES.say("the-column-is-missing-there", column, table.header()));
            }
        }
        finish();
    }

    private void problem(int line, String message) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new Problem("", line, message));
        }
    }

    private void finish() {
        if (!problems.isEmpty()) {
            throw new DocumentException(file, problems);
        }
    }

    private TrialFindings rightWrong(TastingMethod method) {
        require("taster", "right_code", "answer_code");
        int right = 0;
        int answered = 0;
        for (CsvTable.Row row : table.rows()) {
            String answer = row.text("answer_code");
            if (answer.isEmpty()) {
                unanswered++;
                continue;
            }
            requireCode(row, answer);
            tasters.add(row.text("taster"));
            answered++;
            right += answer.equals(row.text("right_code")) ? 1 : 0;
        }
        requireAnswers(answered);
        return new TrialFindings.RightWrong(
                new Discrimination(method, right, answered, level), tasters.size(), unanswered);
    }

    /** An answer must be a code of its own sheet; anything else is a slip of the pen that would count as wrong. */
    private void requireCode(CsvTable.Row row, String answer) {
        List<String> codes = new ArrayList<>();
        for (String column : table.header()) {
            if (column.matches("code_[0-9]+") && !row.text(column).equals("R")) {
                codes.add(row.text(column));
            }
        }
        if (!codes.isEmpty() && !codes.contains(answer)) {
            problem(row.line(), PHRASES.say("got-the-answer-expected-one", answer, codes));
        }
    }

    private void requireAnswers(int answered) {
        if (answered == 0 && problems.isEmpty()) {
            problem(0, PHRASES.say("no-row-has-an-answer"));
        }
        finish();
    }

    private TrialFindings preference() {
        require("taster", "code_1", "sample_1", "code_2", "sample_2", "answer_code");
        Map<String, Integer> counts = new LinkedHashMap<>();
        int none = 0;
        int answered = 0;
        for (CsvTable.Row row : table.rows()) {
            counts.putIfAbsent(row.text("sample_1"), 0);
            counts.putIfAbsent(row.text("sample_2"), 0);
            String answer = row.text("answer_code");
            if (answer.isEmpty()) {
                unanswered++;
                continue;
            }
            tasters.add(row.text("taster"));
            answered++;
            if (answer.equalsIgnoreCase(NO_PREFERENCE)) {
                none++;
            } else {
                requireCode(row, answer);
                String sample = answer.equals(row.text("code_1")) ? row.text("sample_1") : row.text("sample_2");
                counts.merge(sample, 1, Integer::sum);
            }
        }
        if (counts.size() != 2) {
            problem(0, PHRASES.say("got-the-samples-expected-two", counts.keySet()));
        }
        requireAnswers(answered);
        // the alphabet, not the first serving, says which is named first
        List<String> names = counts.keySet().stream().sorted().toList();
        Preference found =
                new Preference(counts.getOrDefault(names.get(0), 0), counts.getOrDefault(names.get(1), 0), none, level);
        return new TrialFindings.Preferred(found, names.get(0), names.get(1), tasters.size(), unanswered);
    }

    private TrialFindings ratings() {
        require("taster", "sample", "score");
        List<Score> scores = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            OptionalDouble score = number(row, "score");
            if (score.isEmpty()) {
                unanswered++;
            } else if (score.getAsDouble() < RatingProtocol.LOWEST || score.getAsDouble() > RatingProtocol.HIGHEST) {
                problem(row.line(), PHRASES.say("got-the-score-expected-1", row.text("score")));
            } else if (row.text("taster").isEmpty() || row.text("sample").isEmpty()) {
                problem(row.line(), PHRASES.say("the-taster-or-the-sample"));
            } else {
                scores.add(new Score(row.text("taster"), row.text("sample"), score.getAsDouble()));
            }
        }
        requireAnswers(scores.size());
        List<Score> sorted = new ArrayList<>(scores);
        sorted.sort(java.util.Comparator.comparing(Score::sample));
        return new TrialFindings.Rated(RatingsAnalysis.of(sorted, level), level, unanswered);
    }

    private TrialFindings yields() {
        require("sample", "before_g", "after_g");
        boolean blocks = table.header().contains("block");
        List<WeighedPiece> pieces = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            OptionalDouble before = number(row, "before_g");
            OptionalDouble after = number(row, "after_g");
            if (before.isEmpty() || after.isEmpty()) {
                unanswered++;
                continue;
            }
            try {
                pieces.add(new WeighedPiece(
                        blocks ? row.text("block") : "",
                        row.text("sample"),
                        before.getAsDouble() / 1000,
                        after.getAsDouble() / 1000));
            } catch (IllegalArgumentException e) {
                problem(row.line(), Words.sentence(e));
            }
        }
        requireAnswers(pieces.size());
        List<WeighedPiece> sorted = new ArrayList<>(pieces);
        sorted.sort(java.util.Comparator.comparing(WeighedPiece::treatment));
        return new TrialFindings.Weighed(YieldComparison.of(sorted, level), unanswered);
    }

    private OptionalDouble number(CsvTable.Row row, String column) {
        try {
            return row.findNumber(column);
        } catch (DataException e) {
            problem(row.line(), PHRASES.say("got-in-the-column-expected", row.text(column), column));
            return OptionalDouble.empty();
        }
    }
}
