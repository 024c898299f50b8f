package io.github.saltfront.app.document;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used, with everything that is wrong with it. The message holds one line for each problem. */
public final class DocumentException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final transient List<Problem> problems;

    /**
     * Creates the exception.
     *
     * @param file name of the file
     * @param problems what is wrong, at least one
     */
    public DocumentException(String file, List<Problem> problems) {
        super(problems.stream().map(p -> p.at(file)).collect(Collectors.joining("\n")));
        this.file = file;
        this.problems = List.copyOf(problems);
    }

    /** Returns the name of the file. */
    public String file() {
        return file;
    }

    /** Returns what is wrong, in the order of the lines. */
    public List<Problem> problems() {
        return problems;
    }
}
