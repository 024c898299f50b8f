package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;

/**
 * The official minimum temperature for consumers, with the rest that belongs to it.
 *
 * <p>A log meets it when the coldest spot stays at or above the temperature for the rest time, or for {@value #SHORTEST_STAY} s where the
 * chart prints none: a single hot reading may be a probe that was moved. This is our reading and stricter than the chart,
 * which lets a piece cool while it rests.
 *
 * @param id key of the line in the table
 * @param product what the chart names
 * @param temperature minimum temperature [K]
 * @param rest rest that belongs to it [s], 0 if none is printed
 * @param printed the line as printed
 */
public record ConsumerMinimum(String id, String product, double temperature, double rest, String printed) {
    /** Shortest stay that counts as reached [s]; what the food code asked for at 165 F before its 2017 edition. */
    public static final double SHORTEST_STAY = 15;

    private static final Phrases PHRASES = Phrases.of(ConsumerMinimum.class);

    /** Document and date of the chart. */
    public static final String EDITION = "USDA FSIS Safe Minimum Internal Temperature Chart, 14 Apr 2025";

    /**
     * Reads one line of the official chart.
     *
     * @param id key of the line, such as {@code poultry}
     * @return the minimum
     * @throws io.github.saltfront.data.DataException if there is no such line
     */
    public static ConsumerMinimum get(String id) {
        CsvTable.Row row =
                CsvTable.load(ConsumerMinimum.class, "consumer_minimums.csv").row("id", id);
        return new ConsumerMinimum(
                id,
                row.words("product"),
                Temperature.fromFahrenheit(row.number("temperature_f")),
                row.number("rest_s"),
                row.text("printed"));
    }

    /** Returns the stay at or above the temperature that this package asks for [s]. */
    public double requiredStay() {
        return Math.max(rest, SHORTEST_STAY);
    }

    /**
     * Returns whether a history meets the minimum.
     *
     * @param history temperature of the coldest spot
     * @return whether it stays long enough at or above the temperature
     */
    public boolean isMetBy(TemperatureHistory history) {
        StayTracker tracker = new StayTracker(temperature);
        history.walk(tracker);
        return tracker.longest() >= requiredStay() - 1e-9;
    }

    /**
     * Returns whether the lower bound of a measured record meets the minimum.
     *
     * @param measured record
     * @return whether it stays long enough at or above the temperature
     */
    public boolean isMetBy(MeasuredRecord measured) {
        StayTracker tracker = new StayTracker(temperature);
        measured.walkLower(tracker);
        return tracker.longest() >= requiredStay() - 1e-9;
    }

    /** Returns the minimum for people, in both scales. */
    public String describe() {
        int fahrenheit = (int) Math.rint(Temperature.toFahrenheit(temperature));
        // rounded up: a display in whole degrees must not ask for less than the chart
        int celsius = (int) Math.ceil(Temperature.toCelsius(temperature) - 1e-9);
        return rest > 0
                ? PHRASES.say("with-rest", celsius, fahrenheit, (int) (rest / 60))
                : Phrases.figures("%d °C (%d °F)", celsius, fahrenheit);
    }
}
