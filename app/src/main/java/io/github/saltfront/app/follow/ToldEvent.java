package io.github.saltfront.app.follow;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.app.store.StoredEvent;
import io.github.saltfront.live.CookEvent;
import io.github.saltfront.units.Dimension;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;

/**
 * Something the cook did or said, as it is kept.
 *
 * @param number its number
 * @param kind what it is
 * @param time when it was, since the meat went into the heat [s]
 * @param content the whole of it
 */
record ToldEvent(long number, String kind, double time, JsonNode content) {
    private static final Phrases PHRASES = Phrases.of(ToldEvent.class);

    static final String DOOR = "door";
    static final String SETTING = "setting";
    static final String TURNED = "turned";
    static final String HEAT_BEGUN = "heat-begun";
    static final String TAKEN_OUT = "taken-out";
    static final String PROBE_MOVED = "probe-moved";
    static final String UNIT = "unit";
    static final String NOTE = "note";
    static final String UNDO = "undo";

    private static final Map<String, String> KINDS = kinds();
    private static final int MOST_HEATS = 20;
    private static final int LONGEST_NOTE = 2000;

    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (String kind : new String[] {DOOR, SETTING, TURNED, HEAT_BEGUN, TAKEN_OUT, PROBE_MOVED, UNIT, NOTE, UNDO}) {
            kinds.put(kind, kind);
        }
        return kinds;
    }

    static ToldEvent of(StoredEvent stored) {
        JsonNode content = FollowJson.stored(stored.content());
        return new ToldEvent(
                stored.number(), stored.kind(), content.path("time_s").asDouble(0), content);
    }

    /**
     * Reads what a program or the page sent.
     *
     * @param body JSON object with the kind of the event and what belongs to it
     * @return the content to keep, with the kind and {@code time_s}
     * @throws io.github.saltfront.app.document.DocumentException with all that is wrong
     */
    static Map<String, Object> read(byte[] body, CookClock clock, long now) {
        Document document = DocumentReader.read("event", body, DocumentFormat.JSON);
        Node root = document.root();
        Map<String, Object> content = new LinkedHashMap<>();
        String kind = root.choice("kind", KINDS);
        content.put("kind", kind);
        content.put("time_s", time(root, clock, now));
        switch (kind) {
            case DOOR ->
                content.put(
                        "duration_s",
                        root.findQuantityInRange("duration", Dimension.TIME, "1 s", "1 h")
                                .orElse(60));
            case SETTING ->
                content.put(
                        "setting_c",
                        Temperature.toCelsius(
                                root.quantityInRange("setting", Dimension.TEMPERATURE, "0 °C", "500 °C")));
            case HEAT_BEGUN -> content.put("number", root.integer("number", 2, MOST_HEATS));
            case PROBE_MOVED -> content.put("probe", root.text("probe"));
            case UNIT -> {
                content.put("probe", root.text("probe"));
                content.put("unit", root.choice("unit", Map.of("C", "C", "F", "F")));
            }
            case NOTE -> content.put("text", root.parsed("text", PHRASES.say("a-few-words"), ToldEvent::note, ""));
            case UNDO -> content.put("undone", root.integer("undone", 1, Integer.MAX_VALUE));
            default -> {
                // turned and taken out have a time only
            }
        }
        document.requireNoErrors();
        return content;
    }

    static String note(String text) {
        if (text.length() > LONGEST_NOTE) {
            throw new IllegalArgumentException(
                    PHRASES.say("got-letters-expected-at-most", text.length(), LONGEST_NOTE));
        }
        return text;
    }

    private static double time(Node root, CookClock clock, long now) {
        double present = Math.max(0, clock.at(now));
        OptionalDouble minutes = root.findNumber("time_min", 0, 5760);
        Optional<Long> instant = root.findParsed("time", PHRASES.say("a-time-with-its-zone"), ReadingText::instant);
        double time = minutes.isPresent()
                ? 60 * minutes.getAsDouble()
                : instant.map(clock::at).orElse(present);
        if (time > present + 90 * clock.speed() || time < 0) {
            root.problem(
                    minutes.isPresent() ? "time_min" : "time",
                    PHRASES.say(
                            "got-a-time-expected-one",
                            (time < 0
                                    ? PHRASES.say("before-the-meat-went-in")
                                    : PHRASES.say("that-is-still-to-come"))));
        }
        return Math.max(0, Math.min(time, present + 90));
    }

    /** Returns what the core is told; empty for what is only kept. */
    Optional<CookEvent> event() {
        return switch (kind) {
            case DOOR ->
                Optional.of(new CookEvent.DoorOpened(
                        time, content.path("duration_s").asDouble()));
            case SETTING ->
                Optional.of(new CookEvent.SettingChanged(
                        time, Temperature.fromCelsius(content.path("setting_c").asDouble())));
            case TURNED -> Optional.of(new CookEvent.Flipped(time));
            case HEAT_BEGUN ->
                Optional.of(new CookEvent.HeatBegun(time, content.path("number").asInt()));
            case TAKEN_OUT -> Optional.of(new CookEvent.TakenOut(time));
            case PROBE_MOVED -> Optional.of(new CookEvent.ProbeMoved(time, probe()));
            case UNIT ->
                content.path("unit").asString().equals("C")
                        ? Optional.of(new CookEvent.UnitConfirmed(time, probe()))
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    String probe() {
        return content.path("probe").asString("");
    }

    /** Returns whether it concerns a probe, which must have readings before. */
    boolean concernsProbe() {
        return kind.equals(PROBE_MOVED) || kind.equals(UNIT);
    }

    /** Returns whether the readings of a probe that were sent as Celsius are Fahrenheit. */
    boolean turnsToFahrenheit() {
        return kind.equals(UNIT) && content.path("unit").asString().equals("F");
    }

    /** Returns it in a few words. */
    String words() {
        return switch (kind) {
            case DOOR ->
                PHRASES.say(
                        "door-open-for-min",
                        Math.max(1, Math.round(content.path("duration_s").asDouble() / 60)));
            case SETTING -> PHRASES.say("set-to-c", content.path("setting_c").asDouble());
            case TURNED -> PHRASES.say("turned-over");
            case HEAT_BEGUN -> PHRASES.say("into-heat", content.path("number").asInt());
            case TAKEN_OUT -> PHRASES.say("taken-out-of-the-heat");
            case PROBE_MOVED -> PHRASES.say("probe-moved", probe());
            case UNIT ->
                PHRASES.say("probe-reads", probe(), content.path("unit").asString());
            case NOTE -> content.path("text").asString("");
            default -> kind;
        };
    }
}
