package io.github.saltfront.app.document;

import java.util.Locale;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;

/** Turns a parser's complaint about the form of a file into one a cook can act on. */
final class SyntaxMessage {
    private static final String CLOSE = "close the quote or bracket that was opened here";

    private SyntaxMessage() {}

    static Problem of(JacksonException e, DocumentFormat format) {
        if (e.getCause() instanceof MarkedYamlEngineException marked) {
            // What was left open is told by the line of its start, not by that of the end of the file.
            boolean open = yamlFix(marked.getProblem()).equals(CLOSE);
            int line = (open ? marked.getContextMark() : marked.getProblemMark())
                    .map(mark -> mark.getLine() + 1)
                    .orElse(0);
            return problem(line, format, marked.getProblem());
        }
        int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
        return problem(line, format, String.valueOf(e.getOriginalMessage()));
    }

    private static Problem problem(int line, DocumentFormat format, String parserWords) {
        String words =
                parserWords.lines().findFirst().orElse("").split(" \\(start marker|\\. \\(Do not|: enable `", 2)[0];
        String fix = format == DocumentFormat.JSON ? jsonFix(words) : yamlFix(words);
        return new Problem("", line, "The file is not valid " + format + " (" + words + "); " + fix + ".");
    }

    private static String yamlFix(String words) {
        String lower = words.toLowerCase(Locale.ROOT);
        if (lower.contains("(tab)")) {
            return "indent with spaces instead of tabs";
        }
        if (lower.contains("mapping values are not allowed")) {
            return "write each entry as \"key: value\" with even indentation, and put a value that contains a colon and a"
                    + " space in quotes";
        }
        if (lower.contains("could not find expected ':'")) {
            return "write each entry as \"key: value\" with a space after the colon";
        }
        if (lower.contains("cannot start any token") || lower.contains("but found '<scalar>'")) {
            return "put the whole value in single quotes";
        }
        if (lower.contains("unexpected end of stream") || lower.contains("expected ',' or")) {
            return CLOSE;
        }
        if (lower.contains("unknown escape")) {
            return "use single quotes, in which a backslash is an ordinary sign";
        }
        if (lower.contains("property name")) {
            return "use a plain word as key";
        }
        return "check indentation, quotes and brackets on this line and above it";
    }

    private static String jsonFix(String words) {
        if (words.contains("NaN") || words.contains("INF") || words.contains("Infinity")) {
            return "write a finite number";
        }
        if (words.contains("Leading zeroes")) {
            return "write numbers without leading zeros";
        }
        if (words.contains("property name")) {
            return "put keys in double quotes and remove a comma before a closing bracket";
        }
        if (words.contains("end-of-input")) {
            return "close every quote and bracket that was opened";
        }
        if (words.contains("comment")) {
            return "JSON has no comments; remove it or name the file .yaml";
        }
        return "check quotes, commas and brackets on this line and above it";
    }
}
