package io.github.saltfront.app.document;

import io.github.saltfront.words.Phrases;
import java.util.Locale;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;

/** Turns a parser's complaint about the form of a file into one a cook can act on. */
final class SyntaxMessage {
    private static final Phrases PHRASES = Phrases.of(SyntaxMessage.class);

    private static String close() {
        return PHRASES.say("close");
    }

    private SyntaxMessage() {}

    static Problem of(JacksonException e, DocumentFormat format) {
        if (e.getCause() instanceof MarkedYamlEngineException marked) {
            // What was left open is told by the line of its start, not by that of the end of the file.
            boolean open = yamlFix(marked.getProblem()).equals(close());
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
        return new Problem("", line, PHRASES.say("the-file-is-not-valid", format, words, fix));
    }

    private static String yamlFix(String words) {
        String lower = words.toLowerCase(Locale.ROOT);
        if (lower.contains("(tab)")) {
            return PHRASES.say("indent-with-spaces-instead-of");
        }
        if (lower.contains("mapping values are not allowed")) {
            return PHRASES.say("write-each-entry-as-key");
        }
        if (lower.contains("could not find expected ':'")) {
            return PHRASES.say("write-each-entry-as-key-2");
        }
        if (lower.contains("cannot start any token") || lower.contains("but found '<scalar>'")) {
            return PHRASES.say("put-the-whole-value-in");
        }
        if (lower.contains("unexpected end of stream") || lower.contains("expected ',' or")) {
            return close();
        }
        if (lower.contains("unknown escape")) {
            return PHRASES.say("use-single-quotes-in-which");
        }
        if (lower.contains("property name")) {
            return PHRASES.say("use-a-plain-word-as");
        }
        return PHRASES.say("check-indentation-quotes-and-brackets");
    }

    private static String jsonFix(String words) {
        if (words.contains("NaN") || words.contains("INF") || words.contains("Infinity")) {
            return PHRASES.say("write-a-finite-number");
        }
        if (words.contains("Leading zeroes")) {
            return PHRASES.say("write-numbers-without-leading-zeros");
        }
        if (words.contains("property name")) {
            return PHRASES.say("put-keys-in-double-quotes");
        }
        if (words.contains("end-of-input")) {
            return PHRASES.say("close-every-quote-and-bracket");
        }
        if (words.contains("comment")) {
            return PHRASES.say("json-has-no-comments-remove");
        }
        return PHRASES.say("check-quotes-commas-and-brackets");
    }
}
