package io.github.saltfront.app.document;

import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one file. Not safe for several threads. */
final class ProblemLog {
    private static final Phrases PHRASES = Phrases.of(ProblemLog.class);

    /** Nobody reads more at once; a hostile file must not make a million. */
    static final int MOST = 100;

    private final String file;
    private final List<Problem> problems = new ArrayList<>();

    ProblemLog(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    void add(String field, int line, String message) {
        Problem problem = new Problem(field, line, message);
        if (problems.contains(problem)) {
            return; // a value may be asked for twice
        }
        if (problems.size() < MOST) {
            problems.add(problem);
        } else if (problems.size() == MOST) {
            problems.add(new Problem("", 0, PHRASES.say("there-are-more-problems-only", MOST)));
        }
    }

    boolean isFull() {
        return problems.size() > MOST;
    }

    void remove(Problem problem) {
        problems.remove(problem);
    }

    /** Returns the exception to throw where reading cannot go on; it holds what was found before, too. */
    DocumentException stop(int line, String message) {
        return stop(new Problem("", line, message));
    }

    DocumentException stop(Problem problem) {
        List<Problem> all = sorted();
        all.add(problem);
        return new DocumentException(file, all);
    }

    /** Returns the problems in the order of their lines; those without a line come last. */
    List<Problem> sorted() {
        List<Problem> sorted = new ArrayList<>(problems);
        sorted.sort(Comparator.comparingInt(p -> p.line() == 0 ? Integer.MAX_VALUE : p.line()));
        return sorted;
    }
}
