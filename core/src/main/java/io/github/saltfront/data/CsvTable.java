package io.github.saltfront.data;

import io.github.saltfront.words.Language;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A comma separated table with a header (RFC 4180 quoting), read whole. Lines that start with {@code #} before the header
 * are comments; blank lines are passed over. Values are text until asked for as numbers, so that an empty cell, which
 * means "not known", is never read as zero.
 */
public final class CsvTable {
    private final String name;
    private final List<String> header;
    private final List<Row> rows;

    private CsvTable(
            String name,
            List<String> header,
            List<List<String>> cells,
            List<Integer> lines,
            Map<String, String> translations) {
        this.name = name;
        this.header = List.copyOf(header);
        Map<String, Integer> index = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            if (index.put(header.get(i), i) != null) {
                throw new DataException(name + ", header: column \"" + header.get(i) + "\" stands twice.");
            }
        }
        List<Row> read = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).size() != header.size()) {
                throw new DataException(name + ", line " + lines.get(i) + ": found "
                        + cells.get(i).size() + " cells, expected " + header.size() + " as in the header.");
            }
            read.add(new Row(name, lines.get(i), index, cells.get(i), translations));
        }
        this.rows = Collections.unmodifiableList(read);
    }

    /**
     * Reads a table that lies beside a class on the class path. Words for people are translated by a table of the same name with
     * the tag of the language at its end, such as {@code cautions_de.csv}, with the columns {@code english} and the tag.
     *
     * @param beside class in whose package folder the resource lies
     * @param resource file name, such as {@code choi_okos.csv}
     * @return the table
     * @throws DataException if the resource is missing or malformed
     */
    public static CsvTable load(Class<?> beside, String resource) {
        InputStream stream = beside.getResourceAsStream(resource);
        if (stream == null) {
            throw new DataException(
                    "Table \"" + resource + "\" is not on the class path beside " + beside.getName() + ".");
        }
        try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return read(resource, reader, translations(beside, resource));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> translations(Class<?> beside, String resource) throws IOException {
        Language language = Language.spoken();
        String name = resource.replaceFirst("\\.csv$", "_" + language.tag() + ".csv");
        InputStream stream = language == Language.ENGLISH ? null : beside.getResourceAsStream(name);
        if (stream == null) {
            return Map.of();
        }
        try (Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            Map<String, String> translations = new HashMap<>();
            read(name, reader).rows().forEach(row -> translations.put(row.text("english"), row.text(language.tag())));
            return translations;
        }
    }

    /**
     * Reads a table from text.
     *
     * @param name what to call the table in messages
     * @param source the text; read to its end, not closed
     * @return the table
     * @throws DataException if the text is malformed
     * @throws IOException if the source cannot be read
     */
    public static CsvTable read(String name, Reader source) throws IOException {
        return read(name, source, Map.of());
    }

    private static CsvTable read(String name, Reader source, Map<String, String> translations) throws IOException {
        BufferedReader reader = new BufferedReader(source);
        List<String> header = new ArrayList<>();
        List<List<String>> cells = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        int number = 0;
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            number++;
            if (line.isBlank() || (header.isEmpty() && line.startsWith("#"))) {
                continue;
            }
            int first = number;
            StringBuilder record = new StringBuilder(line);
            while (hasOpenQuote(record)) {
                String next = reader.readLine();
                number++;
                if (next == null) {
                    throw new DataException(name + ", line " + first + ": a quoted cell is not closed.");
                }
                record.append('\n').append(next);
            }
            List<String> split = split(record);
            if (header.isEmpty()) {
                header.addAll(split);
            } else {
                cells.add(split);
                lines.add(first);
            }
        }
        if (header.isEmpty()) {
            throw new DataException(name + ": the table is empty, expected a header line.");
        }
        return new CsvTable(name, header, cells, lines, translations);
    }

    private static boolean hasOpenQuote(CharSequence text) {
        return text.chars().filter(c -> c == '"').count() % 2 != 0;
    }

    private static List<String> split(CharSequence record) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < record.length(); i++) {
            char c = record.charAt(i);
            if (c == '"') {
                if (quoted && i + 1 < record.length() && record.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else {
                    quoted = !quoted;
                }
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    /** Returns the name used in messages. */
    public String name() {
        return name;
    }

    /** Returns the column names in order. */
    public List<String> header() {
        return header;
    }

    /** Returns all rows in order. */
    public List<Row> rows() {
        return rows;
    }

    /**
     * Returns the row whose column holds a text.
     *
     * @param column column name
     * @param text text to look for, compared exactly
     * @return the first such row
     * @throws DataException if there is none
     */
    public Row row(String column, String text) {
        for (Row row : rows) {
            if (row.text(column).equals(text)) {
                return row;
            }
        }
        throw new DataException(name + ": no row with " + column + " = \"" + text + "\".");
    }

    /** One row of a table. */
    public static final class Row {
        private final String table;
        private final int line;
        private final Map<String, Integer> index;
        private final List<String> cells;
        private final Map<String, String> translations;

        private Row(
                String table,
                int line,
                Map<String, Integer> index,
                List<String> cells,
                Map<String, String> translations) {
            this.table = table;
            this.line = line;
            this.index = index;
            this.cells = List.copyOf(cells);
            this.translations = translations;
        }

        /** Returns the line of the file on which the row starts, from 1. */
        public int line() {
            return line;
        }

        /**
         * Returns a cell as it stands.
         *
         * @param column column name
         * @return the text, empty if the cell is empty
         * @throws DataException if there is no such column
         */
        public String text(String column) {
            Integer i = index.get(column);
            if (i == null) {
                throw new DataException(table + ": no column \"" + column + "\"; there are " + index.keySet() + ".");
            }
            return cells.get(i);
        }

        /**
         * Returns words for people, in the language that was spoken when the table was read.
         *
         * @param column column name
         * @return the words; English where they are not translated
         * @throws DataException if there is no such column
         */
        public String words(String column) {
            String english = text(column);
            return translations.getOrDefault(english, english);
        }

        /**
         * Returns a cell as a number.
         *
         * @param column column name
         * @return the number, in the unit the column's name states
         * @throws DataException if the cell is empty or not a finite number
         */
        public double number(String column) {
            return findNumber(column)
                    .orElseThrow(() -> new DataException(table + ", line " + line + ", column \"" + column
                            + "\": expected a number, found nothing."));
        }

        /**
         * Returns a cell as a number, if it is not empty.
         *
         * @param column column name
         * @return the number, or empty if the cell is empty
         * @throws DataException if the cell holds something else
         */
        public OptionalDouble findNumber(String column) {
            String text = text(column);
            if (text.isEmpty()) {
                return OptionalDouble.empty();
            }
            try {
                double value = Double.parseDouble(text);
                if (Double.isFinite(value)) {
                    return OptionalDouble.of(value);
                }
            } catch (NumberFormatException e) {
                // falls through to the one message below
            }
            throw new DataException(table + ", line " + line + ", column \"" + column
                    + "\": expected a finite number with a decimal point, found \"" + text + "\".");
        }
    }
}
