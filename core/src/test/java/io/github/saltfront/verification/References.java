package io.github.saltfront.verification;

import io.github.saltfront.data.CsvTable;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Rows of the tables of exact solutions; each row names the source of its formula. */
final class References {
    private static final CsvTable ANALYTIC = CsvTable.load(References.class, "analytic_checks.csv");

    private References() {}

    static List<CsvTable.Row> group(String name) {
        return ANALYTIC.rows().stream()
                .filter(r -> r.text("group").equals(name))
                .toList();
    }

    static CsvTable.Row row(String id) {
        return ANALYTIC.row("id", id);
    }

    /** Number that follows {@code key=} in the inputs of a row. */
    static double input(CsvTable.Row row, String key) {
        return number(row.text("inputs"), key);
    }

    static double number(String text, String key) {
        Matcher m = Pattern.compile("(?:^|[;, ])" + Pattern.quote(key) + "=(inf|[-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)")
                .matcher(text);
        if (!m.find()) {
            throw new IllegalArgumentException("no " + key + "= in \"" + text + "\".");
        }
        return m.group(1).equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(m.group(1));
    }

    /** Area exponent of the geometry of a row. */
    static double exponent(CsvTable.Row row) {
        String geometry = row.text("geometry");
        if (geometry.startsWith("slab") || geometry.startsWith("plane")) {
            return 0;
        }
        if (geometry.startsWith("sphere")) {
            return 2;
        }
        if (geometry.startsWith("infinite cylinder") || geometry.startsWith("cylinder")) {
            return 1;
        }
        throw new IllegalArgumentException("no one-dimensional geometry: " + geometry);
    }
}
