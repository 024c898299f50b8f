package io.github.saltfront.app.probe;

import java.util.List;
import java.util.stream.Collectors;

/** A log that cannot be read. Carries every problem found, not only the first. */
public final class LogReadException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<LogProblem> problems;

    /**
     * Takes the problems.
     *
     * @param problems at least one
     */
    public LogReadException(List<LogProblem> problems) {
        super(problems.stream().map(LogProblem::describe).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** Returns all problems in order of line. */
    public List<LogProblem> problems() {
        return problems;
    }
}
