package io.github.saltfront.app.follow;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.live.LiveSetup;
import io.github.saltfront.safety.DeclaredProbeError;
import io.github.saltfront.safety.Placement;
import io.github.saltfront.safety.ProbeError;
import io.github.saltfront.safety.UnknownProbeError;
import io.github.saltfront.words.Language;
import io.github.saltfront.words.Phrases;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;

/**
 * What is said when a cook begins, beside the request.
 *
 * @param title its title; empty for the name of the meat
 * @param started when the meat went into the heat [ms since 1970]; empty for now
 * @param unit C or F, for readings that do not say
 * @param probeError largest error of the thermometer in the meat [K], if it was checked
 * @param distance how much colder the coldest spot may be than the tip [K], if the cook vouches for it
 * @param speed seconds of the cook in a second of the clock [-]
 * @param language language its alarms and advice are written in
 */
public record CookOptions(
        String title,
        Optional<Long> started,
        String unit,
        OptionalDouble probeError,
        OptionalDouble distance,
        double speed,
        Language language) {
    private static final Phrases PHRASES = Phrases.of(CookOptions.class);

    /** Nothing said. */
    public static final CookOptions USUAL = new CookOptions(
            "", Optional.empty(), "C", OptionalDouble.empty(), OptionalDouble.empty(), 1, Language.ENGLISH);

    private static final int LONGEST_TITLE = 200;

    /**
     * Returns these options with another speed.
     *
     * @param times seconds of the cook in a second of the clock [-]
     * @return the options
     */
    public CookOptions withSpeed(double times) {
        return new CookOptions(title, started, unit, probeError, distance, times, language);
    }

    /**
     * Reads what is sent beside the request.
     *
     * @param body JSON object
     * @return the options
     * @throws io.github.saltfront.app.document.DocumentException with all that is wrong
     */
    public static CookOptions read(byte[] body) {
        Document document = DocumentReader.read("cook", body, DocumentFormat.JSON);
        Node root = document.root();
        CookOptions options = new CookOptions(
                root.findParsed("title", PHRASES.say("a-title"), CookOptions::title)
                        .orElse(""),
                root.findParsed("started", PHRASES.say("a-time-with-its-zone"), ReadingText::instant),
                root.findChoice("unit", Map.of("C", "C", "F", "F")).orElse("C"),
                root.findNumber("probe_error_k", 0.05, 5),
                root.findNumber("distance_k", 0, 20),
                1,
                Language.spoken());
        document.requireNoErrors();
        return options;
    }

    private static String title(String text) {
        if (text.length() > LONGEST_TITLE) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-letters-expected-at-most", text.length(), LONGEST_TITLE));
        }
        return text.strip();
    }

    /** What is to be kept; title, start and speed have places of their own. */
    String stored() {
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("unit", unit);
        content.put("language", language.tag());
        probeError.ifPresent(error -> content.put("probe_error_k", error));
        distance.ifPresent(below -> content.put("distance_k", below));
        return FollowJson.text(content);
    }

    static CookOptions ofStored(String text) {
        JsonNode node = FollowJson.stored(text);
        return new CookOptions(
                "",
                Optional.empty(),
                node.path("unit").asString("C"),
                number(node, "probe_error_k"),
                number(node, "distance_k"),
                1,
                Language.find(node.path("language").asString("en")).orElse(Language.ENGLISH));
    }

    private static OptionalDouble number(JsonNode node, String key) {
        return node.has(key) ? OptionalDouble.of(node.get(key).asDouble()) : OptionalDouble.empty();
    }

    LiveSetup setup(LiveSetup planned) {
        ProbeError error =
                probeError.isPresent() ? new DeclaredProbeError(probeError.getAsDouble()) : new UnknownProbeError();
        Placement place = distance.isPresent() ? Placement.colderBy(distance.getAsDouble()) : Placement.unknown();
        return planned.withProbe(error, place);
    }
}
