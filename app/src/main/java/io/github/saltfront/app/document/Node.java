package io.github.saltfront.app.document;

import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.NearestName;
import io.github.saltfront.units.QuantityParser;
import io.github.saltfront.words.Phrases;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/**
 * A group of keys with values. A method without {@code find} wants the key to be there; one with {@code find} lets it be
 * absent. A value that is missing or wrong is recorded in the document and answered by a placeholder (NaN, the lower limit,
 * an empty text, the first choice, an empty node), so that one pass finds everything; see {@link Document#requireNoErrors}.
 * A key is known once it was asked for by any method.
 */
public final class Node {
    private static final Phrases PHRASES = Phrases.of(Node.class);

    private static final int TEXT_LONGEST = 2000;

    private final ProblemLog problems;
    private final String path;
    private final int line;
    private final Optional<Map<String, Raw>> entries;
    private final Set<String> asked = new LinkedHashSet<>();
    private final Map<String, Problem> missing = new LinkedHashMap<>();
    private final Map<String, Node> children = new LinkedHashMap<>();
    private boolean kindUnknown;

    private Node(ProblemLog problems, String path, int line, Optional<Map<String, Raw>> entries) {
        this.problems = problems;
        this.path = path;
        this.line = line;
        this.entries = entries;
    }

    static Node of(ProblemLog problems, String path, Raw.Mapping mapping) {
        return new Node(problems, path, mapping.line(), Optional.of(mapping.entries()));
    }

    /** Returns where the node stands, such as {@code stages[2]}; empty for the top level. */
    public String path() {
        return path;
    }

    /** Returns the line on which the node starts, from 1. */
    public int line() {
        return line;
    }

    /**
     * Tells whether a key is there.
     *
     * @param key the key, known from now on
     * @return true if it is there, whatever its value
     */
    public boolean has(String key) {
        return raw(key).isPresent();
    }

    /**
     * Tells whether a key holds a group of keys.
     *
     * @param key the key, known from now on
     * @return true for a group, false for a single value, a list or no such key
     */
    public boolean isGroup(String key) {
        return raw(key).filter(Raw.Mapping.class::isInstance).isPresent();
    }

    /**
     * Records a problem that only the caller can see.
     *
     * @param key the key at fault, known from now on; it need not be there
     * @param message got, expected and fix in whole sentences
     */
    public void problem(String key, String message) {
        Optional<Raw> raw = raw(key);
        if (entries.isPresent()) {
            problems.add(RawReader.join(path, key), raw.map(Raw::line).orElse(line), message);
        }
    }

    /**
     * Returns which one of several keys is there; none or more than one is a problem.
     *
     * @param keys at least two keys that exclude each other, known from now on
     * @return the one that is there; empty after a problem
     */
    public Optional<String> oneOf(String... keys) {
        List<String> found = new ArrayList<>();
        for (String key : keys) {
            if (has(key)) {
                found.add(key);
            }
        }
        if (found.size() > 1) {
            problem(found.get(1), PHRASES.say("got-expected-one-of-them", Wording.joined(found, "and")));
        } else if (found.isEmpty()) {
            missing(keys[0], PHRASES.say("one-of", Wording.joined(List.of(keys), "or")));
        }
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /**
     * Returns a text.
     *
     * @param key the key
     * @return the text without spaces around it; empty after a problem
     */
    public String text(String key) {
        return required(key, PHRASES.say("a-text"), this::findText).orElse("");
    }

    /**
     * Returns a text, if it is there.
     *
     * @param key the key
     * @return the text without spaces around it
     */
    public Optional<String> findText(String key) {
        return scalar(key, PHRASES.say("a-text")).filter(text -> {
            boolean fits = text.length() <= TEXT_LONGEST;
            if (!fits) {
                problem(key, PHRASES.say("the-text-has-characters-expected", text.length(), TEXT_LONGEST));
            }
            return fits;
        });
    }

    /**
     * Returns what a text stands for.
     *
     * @param <T> type of the result
     * @param key the key
     * @param expected what is expected, as the end of "expected ..."
     * @param reader turns the text into the result; an {@link IllegalArgumentException} becomes a problem with its message
     * @param placeholder result after a problem
     * @return the result
     */
    public <T> T parsed(String key, String expected, Function<String, T> reader, T placeholder) {
        return required(key, expected, k -> findParsed(k, expected, reader)).orElse(placeholder);
    }

    /**
     * Returns what a text stands for, if it is there.
     *
     * @param <T> type of the result
     * @param key the key
     * @param expected what is expected, as the end of "expected ..."
     * @param reader turns the text into the result; an {@link IllegalArgumentException} becomes a problem with its message
     * @return the result
     */
    public <T> Optional<T> findParsed(String key, String expected, Function<String, T> reader) {
        Optional<String> text = scalar(key, expected);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(reader.apply(text.get()));
        } catch (IllegalArgumentException e) {
            problem(key, String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    /**
     * Returns a quantity.
     *
     * @param key the key
     * @param dimension kind of quantity
     * @return the value in SI; NaN after a problem
     */
    public double quantity(String key, Dimension dimension) {
        return parsed(key, Wording.words(dimension), text -> QuantityParser.parse(text, dimension), Double.NaN);
    }

    /**
     * Returns a quantity, if it is there.
     *
     * @param key the key
     * @param dimension kind of quantity
     * @return the value in SI
     */
    public OptionalDouble findQuantity(String key, Dimension dimension) {
        return toDouble(findParsed(key, Wording.words(dimension), text -> QuantityParser.parse(text, dimension)));
    }

    /**
     * Returns a quantity within limits.
     *
     * @param key the key
     * @param dimension kind of quantity
     * @param low lowest value, written with its unit as a cook would
     * @param high highest value, likewise
     * @return the value in SI; NaN after a problem
     */
    public double quantityInRange(String key, Dimension dimension, String low, String high) {
        return parsed(key, Wording.words(dimension), text -> inRange(text, dimension, low, high), Double.NaN);
    }

    /**
     * Returns a quantity within limits, if it is there.
     *
     * @param key the key
     * @param dimension kind of quantity
     * @param low lowest value, written with its unit as a cook would
     * @param high highest value, likewise
     * @return the value in SI
     */
    public OptionalDouble findQuantityInRange(String key, Dimension dimension, String low, String high) {
        return toDouble(findParsed(key, Wording.words(dimension), text -> inRange(text, dimension, low, high)));
    }

    /**
     * Returns a number without unit.
     *
     * @param key the key
     * @param low lowest value [-]
     * @param high highest value [-]
     * @return the number; NaN after a problem
     */
    public double number(String key, double low, double high) {
        String expected = PlainNumber.words(low, high);
        return parsed(key, expected, text -> PlainNumber.parse(text, low, high), Double.NaN);
    }

    /**
     * Returns a number without unit, if it is there.
     *
     * @param key the key
     * @param low lowest value [-]
     * @param high highest value [-]
     * @return the number
     */
    public OptionalDouble findNumber(String key, double low, double high) {
        return toDouble(findParsed(key, PlainNumber.words(low, high), text -> PlainNumber.parse(text, low, high)));
    }

    /**
     * Returns a whole number.
     *
     * @param key the key
     * @param low lowest value
     * @param high highest value
     * @return the number; {@code low} after a problem
     */
    public int integer(String key, int low, int high) {
        return parsed(key, PlainNumber.wholeWords(low, high), text -> PlainNumber.parseWhole(text, low, high), low);
    }

    /**
     * Returns a whole number, if it is there.
     *
     * @param key the key
     * @param low lowest value
     * @param high highest value
     * @return the number
     */
    public OptionalInt findInteger(String key, int low, int high) {
        Optional<Integer> found =
                findParsed(key, PlainNumber.wholeWords(low, high), text -> PlainNumber.parseWhole(text, low, high));
        return found.isPresent() ? OptionalInt.of(found.get()) : OptionalInt.empty();
    }

    /**
     * Returns a yes or no.
     *
     * @param key the key
     * @return true for on, yes or true, false for off, no or false and after a problem
     */
    public boolean flag(String key) {
        return parsed(key, FlagText.words(), FlagText::parse, false);
    }

    /**
     * Returns a yes or no, if it is there.
     *
     * @param key the key
     * @return true for on, yes or true, false for off, no or false
     */
    public Optional<Boolean> findFlag(String key) {
        return findParsed(key, FlagText.words(), FlagText::parse);
    }

    /**
     * Returns what one of several words stands for. Case does not matter, nor whether words are joined by "-", "_" or a space.
     *
     * @param <T> type of the result
     * @param key the key
     * @param choices the words and what they stand for, not empty
     * @return the result; that of the first word after a problem
     */
    public <T> T choice(String key, Map<String, T> choices) {
        return parsed(key, Choices.words(choices), text -> Choices.pick(text, choices), Choices.first(choices));
    }

    /**
     * Returns what one of several words stands for, if it is there.
     *
     * @param <T> type of the result
     * @param key the key
     * @param choices the words and what they stand for, not empty
     * @return the result
     */
    public <T> Optional<T> findChoice(String key, Map<String, T> choices) {
        return findParsed(key, Choices.words(choices), text -> Choices.pick(text, choices));
    }

    /**
     * Returns a constant of an enum by its name.
     *
     * @param <E> the enum
     * @param key the key
     * @param type the enum
     * @return the constant; the first after a problem
     */
    public <E extends Enum<E>> E choice(String key, Class<E> type) {
        return choice(key, Choices.of(type));
    }

    /**
     * Returns a constant of an enum by its name, if it is there.
     *
     * @param <E> the enum
     * @param key the key
     * @param type the enum
     * @return the constant
     */
    public <E extends Enum<E>> Optional<E> findChoice(String key, Class<E> type) {
        return findChoice(key, Choices.of(type));
    }

    /**
     * Returns what the word stands for that decides which other keys this node has. As {@link #choice(String, Map)}, but after a
     * problem with it no key of the node is called missing or unknown, since that cannot be told.
     *
     * @param <T> type of the result
     * @param key the key, usually {@code kind}
     * @param kinds the words and what they stand for, not empty
     * @return the result; that of the first word after a problem
     */
    public <T> T kind(String key, Map<String, T> kinds) {
        Optional<T> found = required(key, Choices.words(kinds), k -> findChoice(k, kinds));
        kindUnknown |= found.isEmpty();
        return found.orElse(Choices.first(kinds));
    }

    /**
     * Returns a group of keys.
     *
     * @param key the key
     * @return the group; after a problem one that answers with placeholders and reports nothing
     */
    public Node child(String key) {
        Optional<Node> child = required(key, PHRASES.say("a-group-of-keys"), this::findChild);
        return child.orElse(new Node(problems, RawReader.join(path, key), line, Optional.empty()));
    }

    /**
     * Returns a group of keys, if it is there.
     *
     * @param key the key
     * @return the group
     */
    public Optional<Node> findChild(String key) {
        return raw(key).flatMap(raw -> group(RawReader.join(path, key), raw));
    }

    /**
     * Returns a list of groups of keys with at least one entry.
     *
     * @param key the key
     * @return the entries that are groups, in order; empty after a problem
     */
    public List<Node> list(String key) {
        Optional<List<Node>> found = required(key, PHRASES.say("a-list"), this::findEntries);
        if (found.isPresent() && found.get().isEmpty() && entriesOf(key).isEmpty()) {
            problem(key, PHRASES.say("the-list-is-empty-expected"));
        }
        return found.orElse(List.of());
    }

    /**
     * Returns a list of groups of keys.
     *
     * @param key the key
     * @return the entries that are groups, in order; empty if the key is not there
     */
    public List<Node> findList(String key) {
        return findEntries(key).orElse(List.of());
    }

    /**
     * Returns a list of texts.
     *
     * @param key the key
     * @return the texts, in order; empty if the key is not there
     */
    public List<String> findTexts(String key) {
        List<String> texts = new ArrayList<>();
        List<Raw> found = entriesOf(key);
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i) instanceof Raw.Scalar scalar && !scalar.isEmpty()) {
                texts.add(scalar.text().strip());
            } else {
                String place = RawReader.join(path, key) + "[" + i + "]";
                problems.add(
                        place, found.get(i).line(), PHRASES.say("got-expected-a-text", Wording.shown(found.get(i))));
            }
        }
        return Collections.unmodifiableList(texts);
    }

    private Optional<List<Node>> findEntries(String key) {
        List<Node> groups = new ArrayList<>();
        List<Raw> found = entriesOf(key);
        for (int i = 0; i < found.size(); i++) {
            group(RawReader.join(path, key) + "[" + i + "]", found.get(i)).ifPresent(groups::add);
        }
        boolean isList = raw(key).filter(Raw.Sequence.class::isInstance).isPresent();
        return isList ? Optional.of(Collections.unmodifiableList(groups)) : Optional.empty();
    }

    private List<Raw> entriesOf(String key) {
        Optional<Raw> raw = raw(key);
        if (raw.isPresent() && raw.get() instanceof Raw.Sequence sequence) {
            return sequence.entries();
        }
        raw.ifPresent(other -> problem(key, PHRASES.say("got-expected-a-list-begin", Wording.shown(other))));
        return List.of();
    }

    private Optional<Node> group(String place, Raw raw) {
        if (raw instanceof Raw.Mapping mapping) {
            return Optional.of(children.computeIfAbsent(place, p -> of(problems, p, mapping)));
        }
        problems.add(place, raw.line(), PHRASES.say("got-expected-a-group-of", Wording.shown(raw)));
        return Optional.empty();
    }

    private Optional<String> scalar(String key, String expected) {
        Optional<Raw> raw = raw(key);
        if (raw.isPresent() && raw.get() instanceof Raw.Scalar scalar && !scalar.isEmpty()) {
            return Optional.of(scalar.text().strip());
        }
        raw.ifPresent(other -> problem(key, PHRASES.say("got-expected-give-a-value", Wording.shown(other), expected)));
        return Optional.empty();
    }

    /** Asks with a finder and, only if the key is not there at all, records that it is missing. */
    private <T> Optional<T> required(String key, String expected, Function<String, Optional<T>> finder) {
        Optional<T> found = finder.apply(key);
        if (found.isEmpty() && !has(key)) {
            missing(key, expected);
        }
        return found;
    }

    private void missing(String key, String expected) {
        if (entries.isEmpty() || kindUnknown || missing.containsKey(key)) {
            return;
        }
        Problem problem =
                new Problem(RawReader.join(path, key), line, PHRASES.say("the-key-is-missing-expected", expected, key));
        missing.put(key, problem);
        problems.add(problem.field(), problem.line(), problem.message());
    }

    private Optional<Raw> raw(String key) {
        asked.add(key);
        return entries.map(map -> map.get(key));
    }

    /** Records every key that was not asked for, here and below; one that is a slip of a missing key takes its place. */
    void reportUnknownKeys() {
        Map<String, Raw> present = kindUnknown ? Map.of() : entries.orElse(Map.of());
        for (Map.Entry<String, Raw> entry : present.entrySet()) {
            if (!asked.contains(entry.getKey()) && !problems.isFull()) {
                reportUnknownKey(entry.getKey(), entry.getValue());
            }
        }
        children.values().forEach(Node::reportUnknownKeys);
    }

    private void reportUnknownKey(String key, Raw value) {
        List<String> near = NearestName.suggest(key, asked, 1);
        near.stream().map(missing::get).filter(java.util.Objects::nonNull).forEach(problems::remove);
        String fix;
        if (!key.isEmpty() && Character.isDigit(key.charAt(0))) {
            fix = PHRASES.say("inside-a-comma-begins-a");
        } else if (near.isEmpty()) {
            fix = PHRASES.say("remove-it");
        } else {
            fix = PHRASES.say("did-you-mean", near.get(0));
        }
        problems.add(
                RawReader.join(path, key),
                value.line(),
                PHRASES.say(
                        "the-key-is-not-known",
                        (asked.isEmpty()
                                ? ""
                                : PHRASES.say("expected-one-of", Wording.joined(List.copyOf(asked), "or"))),
                        fix));
    }

    private static Double inRange(String text, Dimension dimension, String low, String high) {
        double value = QuantityParser.parse(text, dimension);
        if (!(QuantityParser.parse(low, dimension) <= value && value <= QuantityParser.parse(high, dimension))) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-expected-from-to-check", Wording.clipped(text), dimension.noun(), low, high));
        }
        return value;
    }

    private static OptionalDouble toDouble(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
