package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.words.Phrases;
import java.util.List;

/**
 * How long a food keeps in a refrigerator at 40 F (4.4 deg C) or less, by the official chart for consumers.
 *
 * @param id key
 * @param food what the chart names
 * @param daysLow shorter time of the chart, the one to plan with [d]
 * @param daysHigh longer time of the chart [d]
 * @see "coldstorage"
 */
public record ColdStorage(String id, String food, int daysLow, int daysHigh) {
    private static final Phrases PHRASES = Phrases.of(ColdStorage.class);

    /** Reads the chart. */
    public static List<ColdStorage> load() {
        return CsvTable.load(ColdStorage.class, "cold_storage.csv").rows().stream()
                .map(ColdStorage::of)
                .toList();
    }

    /**
     * Reads one line of the chart.
     *
     * @param id key of the line, such as {@code cooked-meat}
     * @return the line
     * @throws io.github.saltfront.data.DataException if there is no such line
     */
    public static ColdStorage get(String id) {
        return of(CsvTable.load(ColdStorage.class, "cold_storage.csv").row("id", id));
    }

    private static ColdStorage of(CsvTable.Row row) {
        return new ColdStorage(
                row.text("id"), row.words("food"), (int) row.number("days_low"), (int) row.number("days_high"));
    }

    /** Returns the line for people. */
    public String describe() {
        return PHRASES.say("to-days-at-4-c", food, daysLow, daysHigh);
    }
}
