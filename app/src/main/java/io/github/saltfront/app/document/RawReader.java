package io.github.saltfront.app.document;

import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/**
 * Builds the tree of a file from its tokens. Stops at what this program has no use for and which makes files hard to
 * check: anchors and aliases (a short file can grow without bound), tags, a second document, very deep nesting.
 */
final class RawReader {
    private static final Phrases PHRASES = Phrases.of(RawReader.class);

    /** Requests nest about five deep. */
    static final int DEEPEST = 20;

    private static final int KEY_SHOWN = 40;

    private final JsonParser parser;
    private final ProblemLog problems;

    RawReader(JsonParser parser, ProblemLog problems) {
        this.parser = parser;
        this.problems = problems;
    }

    Raw.Mapping read() {
        JsonToken first = parser.nextToken();
        if (first == null) {
            throw problems.stop(0, PHRASES.say("the-file-holds-no-entries"));
        }
        Raw top = value(first, "", 0);
        int line = parser.currentTokenLocation().getLineNr();
        if (parser.nextToken() != null) {
            throw problems.stop(
                    Math.max(line, parser.currentTokenLocation().getLineNr()), PHRASES.say("the-file-holds-a-second"));
        }
        if (top instanceof Raw.Mapping mapping) {
            return mapping;
        }
        String got = top instanceof Raw.Sequence ? PHRASES.say("a-list") : PHRASES.say("a-single-text");
        throw problems.stop(top.line(), PHRASES.say("the-file-holds-at-its", got));
    }

    private Raw value(JsonToken token, String path, int depth) {
        int line = parser.currentTokenLocation().getLineNr();
        refuseReferences(line, path);
        if (depth > DEEPEST) {
            throw problems.stop(line, PHRASES.say("the-entries-are-nested-more", DEEPEST));
        }
        return switch (token) {
            case START_OBJECT -> mapping(line, path, depth);
            case START_ARRAY -> sequence(line, path, depth);
            case VALUE_NULL -> new Raw.Scalar("", line);
            default -> new Raw.Scalar(parser.getString(), line);
        };
    }

    private void refuseReferences(int line, String path) {
        boolean anchor = parser.canReadObjectId() && parser.getObjectId() != null;
        boolean tag = parser.canReadTypeId() && parser.getTypeId() != null;
        boolean alias = parser instanceof tools.jackson.dataformat.yaml.YAMLParser yaml && yaml.isCurrentAlias();
        if (anchor || alias || tag) {
            String got = tag ? PHRASES.say("a-tag") : PHRASES.say("an-anchor-or-alias-or");
            throw problems.stop(new Problem(path, line, PHRASES.say("found-expected-a-plain-value", got)));
        }
    }

    private Raw sequence(int line, String path, int depth) {
        List<Raw> entries = new ArrayList<>();
        for (JsonToken token = next(); token != JsonToken.END_ARRAY; token = next()) {
            entries.add(value(token, path + "[" + entries.size() + "]", depth + 1));
        }
        return new Raw.Sequence(Collections.unmodifiableList(entries), line);
    }

    private Raw mapping(int line, String path, int depth) {
        Map<String, Raw> entries = new LinkedHashMap<>();
        for (JsonToken token = next(); token != JsonToken.END_OBJECT; token = next()) {
            String key = parser.getString();
            int keyLine = parser.currentTokenLocation().getLineNr();
            String keyPath = join(path, key);
            Raw value = value(next(), keyPath, depth + 1);
            Raw first = entries.putIfAbsent(key, value);
            if (first != null) {
                problems.add(keyPath, keyLine, PHRASES.say("the-key-stands-twice-first", first.line()));
            }
        }
        return new Raw.Mapping(Collections.unmodifiableMap(entries), line);
    }

    /** The parser reports an end inside brackets itself; this is only for the type. */
    private JsonToken next() {
        JsonToken token = parser.nextToken();
        if (token == null) {
            throw problems.stop(0, PHRASES.say("the-file-ends-too-early"));
        }
        return token;
    }

    static String join(String path, String key) {
        String shown = key.length() > KEY_SHOWN ? key.substring(0, KEY_SHOWN) + "..." : key;
        return path.isEmpty() ? shown : path + "." + shown;
    }
}
