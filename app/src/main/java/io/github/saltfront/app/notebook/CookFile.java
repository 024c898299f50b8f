package io.github.saltfront.app.notebook;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.learn.SaltTaste;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.words.Phrases;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a cook file: what was measured, said and noted. The request is read apart, by the reader of requests. */
public final class CookFile {
    private static final Phrases PHRASES = Phrases.of(CookFile.class);

    /** Name of the kitchen where none is given. */
    public static final String USUAL_PROFILE = "home";

    private static final int LONGEST_TITLE = 200;
    private static final int LONGEST_NOTES = 20_000;
    private static final int LONGEST_NAME = 60;
    private static final int MOST_TAGS = 30;
    private static final int MOST_RATINGS = 200;
    private static final int LOWEST = 1;
    private static final int HIGHEST = 9;

    private CookFile() {}

    /**
     * Reads a note.
     *
     * @param document the document, without its request or with the request as the name of a file
     * @param today the day it is, for notes that do not say when it was
     * @return the note; usable once the document has no errors
     */
    public static CookNote read(Document document, LocalDate today) {
        Node root = document.root();
        String title = limited(root, "title", root.text("title"), LONGEST_TITLE);
        LocalDate cooked = root.findParsed("cooked", PHRASES.say("a-day-such-as-2026"), CookFile::day)
                .orElse(today);
        String profile = name(root, "profile").orElse(USUAL_PROFILE);
        String butcher = name(root, "butcher").orElse("");
        CookNote.Measured measured = measured(root.findChild("measured"));
        List<String> tags = root.findTexts("tags").stream()
                .map(tag -> tag.toLowerCase(Locale.ROOT).strip())
                .distinct()
                .sorted()
                .toList();
        if (tags.size() > MOST_TAGS || tags.stream().anyMatch(tag -> tag.length() > LONGEST_NAME)) {
            root.problem("tags", PHRASES.say("got-too-many-or-too"));
        }
        String notes = limited(root, "notes", root.findText("notes").orElse(""), LONGEST_NOTES);
        return new CookNote(title, cooked, new CookNote.Place(profile, butcher), measured, tags, notes, ratings(root));
    }

    private static String limited(Node node, String key, String text, int longest) {
        if (text.length() > longest) {
            node.problem(key, PHRASES.say("got-characters-expected-at-most", text.length(), longest));
            return "";
        }
        return text;
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.length() > 10 ? text.substring(0, 10) : text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(PHRASES.say("got-expected-a-day-such", text), e);
        }
    }

    static Optional<String> name(Node node, String key) {
        return node.findParsed(key, PHRASES.say("a-name-of-up-to"), text -> {
            if (text.strip().isEmpty() || text.length() > LONGEST_NAME) {
                throw new IllegalArgumentException(PHRASES.say("got-a-name-of-characters", text.length()));
            }
            return text.strip();
        });
    }

    private static CookNote.Measured measured(Optional<Node> found) {
        if (found.isEmpty()) {
            return new CookNote.Measured(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    new CookNote.Masses(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
                    Optional.empty(),
                    OptionalDouble.empty());
        }
        Node node = found.get();
        return new CookNote.Measured(
                node.findQuantityInRange("thickness", Dimension.LENGTH, "2 mm", "400 mm"),
                node.findQuantityInRange("refrigerator", Dimension.TEMPERATURE, "-5 °C", "20 °C"),
                node.findQuantityInRange("oven", Dimension.TEMPERATURE, "30 °C", "450 °C"),
                masses(node),
                node.findChild("pull").map(CookFile::pull),
                node.findQuantityInRange("peak", Dimension.TEMPERATURE, "20 °C", "110 °C"));
    }

    private static CookNote.Masses masses(Node node) {
        CookNote.Masses masses = new CookNote.Masses(
                node.findQuantityInRange("raw", Dimension.MASS, "5 g", "200 kg"),
                node.findQuantityInRange("salted", Dimension.MASS, "5 g", "200 kg"),
                node.findQuantityInRange("cooked", Dimension.MASS, "5 g", "200 kg"));
        requireNear(node, "salted", masses.gain(), -0.3, 0.5);
        requireNear(node, "cooked", masses.loss(), -0.5, 0.9);
        return masses;
    }

    private static void requireNear(Node node, String key, OptionalDouble share, double low, double high) {
        double value = share.orElse(0);
        if (!(low <= value && value <= high)) {
            node.problem(key, PHRASES.say("got-a-mass-that-differs", 100 * Math.abs(value)));
        }
    }

    private static CookNote.Pull pull(Node node) {
        return new CookNote.Pull(
                node.quantityInRange("reading", Dimension.TEMPERATURE, "20 °C", "110 °C"),
                node.quantityInRange("time", Dimension.TIME, "30 s", "2 d"),
                name(node, "thermometer").orElse(""));
    }

    private static List<CookNote.Rating> ratings(Node root) {
        Map<String, SaltTaste.Rating> words = new LinkedHashMap<>();
        for (SaltTaste.Rating rating : SaltTaste.Rating.values()) {
            words.put(rating.words(), rating);
        }
        List<CookNote.Rating> ratings = new ArrayList<>();
        for (Node node : root.findList("ratings")) {
            ratings.add(new CookNote.Rating(
                    name(node, "taster").orElse("taster " + (ratings.size() + 1)),
                    node.findChoice("saltiness", words),
                    node.findInteger("juice", LOWEST, HIGHEST),
                    node.findInteger("tenderness", LOWEST, HIGHEST),
                    node.findInteger("crispness", LOWEST, HIGHEST)));
        }
        if (ratings.size() > MOST_RATINGS) {
            root.problem("ratings", PHRASES.say("got-ratings-expected-at-most", ratings.size()));
        }
        return ratings;
    }
}
