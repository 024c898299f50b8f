package io.github.saltfront.catalog;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.data.DataException;
import io.github.saltfront.quality.Band;
import io.github.saltfront.units.Temperature;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads cells of the catalog tables into SI. The only place of this package that knows the tables' units. */
final class Cells {
    private static final double GRAM = 1e-3;
    private static final double MILLIMETER = 1e-3;
    private static final double MILLILITER = 1e-6;
    private static final double PERCENT = 1e-2;

    private Cells() {}

    /** Other names of an entry; its English name among them where it has another one. */
    static List<String> aliases(CsvTable.Row row) {
        List<String> others = list(row, "aliases");
        String english = row.text("name");
        return english.equals(row.words("name"))
                ? others
                : Stream.concat(Stream.of(english), others.stream()).toList();
    }

    static double grams(CsvTable.Row row, String column) {
        return row.number(column) * GRAM;
    }

    static double millimeters(CsvTable.Row row, String column) {
        return row.number(column) * MILLIMETER;
    }

    static double milliliters(CsvTable.Row row, String column) {
        return row.number(column) * MILLILITER;
    }

    static double percent(CsvTable.Row row, String column) {
        return row.number(column) * PERCENT;
    }

    /** Columns {@code stem_low_unit}, {@code stem_unit}, {@code stem_high_unit} times a factor. */
    static Band band(CsvTable.Row row, String stem, String unit, double factor) {
        return new Band(
                row.number(stem + "_low" + unit) * factor,
                row.number(stem + unit) * factor,
                row.number(stem + "_high" + unit) * factor);
    }

    static Optional<Band> findBand(CsvTable.Row row, String stem, String unit, double factor) {
        return row.findNumber(stem + unit).isEmpty() ? Optional.empty() : Optional.of(band(row, stem, unit, factor));
    }

    static Band celsius(CsvTable.Row row, String stem) {
        return new Band(
                Temperature.fromCelsius(row.number(stem + "_low_c")),
                Temperature.fromCelsius(row.number(stem + "_c")),
                Temperature.fromCelsius(row.number(stem + "_high_c")));
    }

    /** Two columns without a middle; the middle is their mean. */
    static Optional<Band> findRange(CsvTable.Row row, String lowColumn, String highColumn, double factor) {
        if (row.findNumber(lowColumn).isEmpty()) {
            return Optional.empty();
        }
        double low = row.number(lowColumn) * factor;
        double high = row.number(highColumn) * factor;
        return Optional.of(new Band(low, (low + high) / 2, high));
    }

    static boolean yes(CsvTable.Row row, String column) {
        return switch (row.text(column)) {
            case "yes" -> true;
            case "no" -> false;
            default ->
                throw new DataException("line " + row.line() + ", column \"" + column
                        + "\": expected yes or no, found \"" + row.text(column) + "\".");
        };
    }

    static List<String> list(CsvTable.Row row, String column) {
        return Stream.of(row.text(column).split(";", -1))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .toList();
    }

    static <E extends Enum<E>> E constant(Class<E> type, CsvTable.Row row, String column) {
        return constant(type, row.text(column), "line " + row.line() + ", column \"" + column + "\"");
    }

    static <E extends Enum<E>> E constant(Class<E> type, String text, String place) {
        String name = text.toUpperCase(Locale.ROOT).replace('-', '_');
        for (E value : type.getEnumConstants()) {
            if (value.name().equals(name)) {
                return value;
            }
        }
        throw new DataException(
                place + ": expected one of " + List.of(type.getEnumConstants()) + ", found \"" + text + "\".");
    }
}
