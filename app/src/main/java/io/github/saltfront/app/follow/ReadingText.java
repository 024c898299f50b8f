package io.github.saltfront.app.follow;

import io.github.saltfront.words.Phrases;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** Reads readings as programs and people send them: JSON objects, or lines of probe, time, value, unit. */
final class ReadingText {
    private static final Phrases PHRASES = Phrases.of(ReadingText.class);

    private static final Set<String> KEYS = Set.of("probe", "role", "time", "time_s", "time_min", "value", "unit");
    private static final List<String> COLUMNS = List.of("probe", "time", "value", "unit");
    private static final int LONGEST_SHOWN = 40;

    private ReadingText() {}

    /** A reading, or what is wrong with it. */
    record Line(int number, Optional<SentReading> reading, String problem) {}

    /** Reads one object, a list of them, or an object that holds a list under {@code readings}. */
    static List<Line> json(JsonNode body) {
        JsonNode list = body.isObject() && body.has("readings") ? body.get("readings") : body;
        List<Line> lines = new ArrayList<>();
        if (list.isArray()) {
            for (int i = 0; i < list.size(); i++) {
                lines.add(line(i, list.get(i)));
            }
        } else {
            lines.add(line(0, list));
        }
        return lines;
    }

    private static Line line(int number, JsonNode node) {
        try {
            return new Line(number, Optional.of(reading(node)), "");
        } catch (IllegalArgumentException e) {
            return new Line(number, Optional.empty(), String.valueOf(e.getMessage()));
        }
    }

    private static SentReading reading(JsonNode node) {
        if (!node.isObject()) {
            throw new IllegalArgumentException(PHRASES.say("got-expected-an-object-such", shown(node.toString())));
        }
        for (String key : node.propertyNames()) {
            if (!KEYS.contains(key)) {
                throw new IllegalArgumentException(PHRASES.say("got-the-key-expected-probe", shown(key)));
            }
        }
        if (!node.has("value")) {
            throw new IllegalArgumentException(PHRASES.say("a-reading-needs-a-value"));
        }
        SentReading reading = SentReading.now(number("value", node.get("value")))
                .withProbe(text(node, "probe").orElse(SentReading.USUAL_PROBE), text(node, "role"));
        Optional<String> unit = text(node, "unit");
        reading = unit.isPresent() ? reading.withUnit(unit.get()) : reading;
        if (node.has("time_s")) {
            return reading.at(number("time_s", node.get("time_s")));
        }
        if (node.has("time_min")) {
            return reading.at(60 * number("time_min", node.get("time_min")));
        }
        Optional<String> time = text(node, "time");
        return time.isPresent() ? reading.at(instant(time.get())) : reading;
    }

    private static Optional<String> text(JsonNode node, String key) {
        JsonNode value = node.get(key);
        if (value == null || value.isNull()) {
            return Optional.empty();
        }
        if (!value.isString()) {
            throw new IllegalArgumentException(PHRASES.say("got-for-expected-text-in", shown(value.toString()), key));
        }
        return Optional.of(value.asString());
    }

    private static double number(String key, JsonNode value) {
        return value.isNumber()
                ? value.asDouble()
                : number(key, value.isString() ? value.asString() : value.toString());
    }

    /** A number with a decimal point or comma; anything else, NaN too, is refused. */
    static double number(String key, String text) {
        String plain = text.strip().replace(',', '.').replace('\u2212', '-');
        if (!plain.matches("[+-]?([0-9]{1,9}(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]{1,2})?")) {
            throw new IllegalArgumentException(PHRASES.say("got-for-expected-a-number", shown(text), key));
        }
        return Double.parseDouble(plain);
    }

    static long instant(String text) {
        try {
            return OffsetDateTime.parse(text.strip().replaceFirst("(?<=\\d) (?=\\d)", "T"))
                    .toInstant()
                    .toEpochMilli();
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(PHRASES.say("got-for-time-expected-a", shown(text)), e);
        } catch (DateTimeException | ArithmeticException e) {
            throw new IllegalArgumentException(PHRASES.say("got-for-time-which-no", shown(text)), e);
        }
    }

    /** Reads lines of probe, time, value and unit, or of what a header names; time and unit may be empty. */
    static List<Line> csv(String text) {
        List<Line> lines = new ArrayList<>();
        List<String> columns = COLUMNS;
        int number = 0;
        for (String raw : text.split("\\R", -1)) {
            number++;
            String line = raw.strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            List<String> cells = cells(line);
            if (lines.isEmpty() && cells.stream().anyMatch(cell -> cell.equalsIgnoreCase("value"))) {
                columns = cells.stream()
                        .map(cell -> cell.toLowerCase(Locale.ROOT))
                        .toList();
                continue;
            }
            lines.add(csvLine(number, columns, cells));
        }
        return lines;
    }

    private static List<String> cells(String line) {
        String separator = line.indexOf(';') >= 0 ? ";" : line.indexOf('\t') >= 0 ? "\t" : ",";
        List<String> cells = new ArrayList<>();
        for (String cell : line.split(separator, -1)) {
            cells.add(cell.strip());
        }
        return cells;
    }

    private static Line csvLine(int number, List<String> columns, List<String> cells) {
        try {
            if (cells.size() > columns.size()) {
                throw new IllegalArgumentException(
                        PHRASES.say("got-cells-expected-with-a", cells.size(), String.join(",", columns)));
            }
            Optional<String> value = cell(columns, cells, "value");
            SentReading reading = SentReading.now(number("value", value.orElse("")))
                    .withProbe(
                            cell(columns, cells, "probe").orElse(SentReading.USUAL_PROBE),
                            cell(columns, cells, "role"));
            Optional<String> unit = cell(columns, cells, "unit");
            reading = unit.isPresent() ? reading.withUnit(unit.get()) : reading;
            Optional<String> seconds = cell(columns, cells, "time_s");
            Optional<String> minutes = cell(columns, cells, "time_min");
            Optional<String> time = cell(columns, cells, "time");
            if (seconds.isPresent()) {
                reading = reading.at(number("time_s", seconds.get()));
            } else if (minutes.isPresent()) {
                reading = reading.at(60 * number("time_min", minutes.get()));
            } else if (time.isPresent()) {
                reading = reading.at(instant(time.get()));
            }
            return new Line(number, Optional.of(reading), "");
        } catch (IllegalArgumentException e) {
            return new Line(number, Optional.empty(), String.valueOf(e.getMessage()));
        }
    }

    private static Optional<String> cell(List<String> columns, List<String> cells, String name) {
        int at = columns.indexOf(name);
        return at >= 0 && at < cells.size() && !cells.get(at).isEmpty() ? Optional.of(cells.get(at)) : Optional.empty();
    }

    /** Part of a text that is no harm to show. */
    static String shown(String text) {
        String clean = text.codePoints()
                .limit(LONGEST_SHOWN)
                .map(c -> Character.isISOControl(c) || !Character.isDefined(c) ? '\uFFFD' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return clean.length() < text.length() ? clean + " ..." : clean;
    }
}
