package io.github.saltfront.app.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The contents of one file. Ask {@link #root} for everything a request can hold, then call {@link #requireNoErrors} before
 * any of the answers is used: until then, answers to wrong or missing values are placeholders. Not safe for several threads.
 */
public final class Document {
    private final ProblemLog problems;
    private final Raw.Mapping top;
    private final Node root;
    private boolean swept;

    Document(ProblemLog problems, Raw.Mapping top) {
        this.problems = problems;
        this.top = top;
        this.root = Node.of(problems, "", top);
    }

    /** Returns the name of the file. */
    public String file() {
        return problems.file();
    }

    /**
     * Returns everything that stands in the file, single values as the text that stands there: written as JSON it is the same
     * request.
     *
     * @return maps, lists and texts
     */
    public Map<String, Object> contents() {
        Map<String, Object> contents = new LinkedHashMap<>();
        top.entries().forEach((key, raw) -> contents.put(key, content(raw)));
        return contents;
    }

    private static Object content(Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            Map<String, Object> contents = new LinkedHashMap<>();
            mapping.entries().forEach((key, value) -> contents.put(key, content(value)));
            return contents;
        }
        if (raw instanceof Raw.Sequence sequence) {
            return sequence.entries().stream().map(Document::content).toList();
        }
        return ((Raw.Scalar) raw).text();
    }

    /** Returns the top level. */
    public Node root() {
        return root;
    }

    /**
     * Returns everything that is wrong, in the order of the lines. Keys that were not asked for until now are among it.
     *
     * @return problems, empty if there are none
     */
    public List<Problem> problems() {
        if (!swept) {
            swept = true;
            root.reportUnknownKeys();
        }
        return problems.sorted();
    }

    /**
     * Checks that every value asked for was there and right, and that every key was asked for.
     *
     * @throws DocumentException with all problems if there are any
     */
    public void requireNoErrors() {
        List<Problem> all = problems();
        if (!all.isEmpty()) {
            throw new DocumentException(file(), all);
        }
    }
}
