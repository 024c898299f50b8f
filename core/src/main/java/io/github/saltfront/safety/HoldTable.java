package io.github.saltfront.safety;

import io.github.saltfront.units.Checks;
import io.github.saltfront.units.Temperature;
import io.github.saltfront.words.Phrases;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * An official table of holds: how long the coldest point must stay at a temperature [s].
 *
 * <p>Between the printed rows, which stand at whole degrees Fahrenheit and are converted exactly, log10 of the hold is
 * linear in temperature. Below the first row nothing is credited. From the last row with a printed time upward, that row's
 * time is required: the rows printed as 0 s mean "under 10 s" and are no numbers to calculate with. The {@link #rate} is
 * {@code 1/hold}, so its integral along a history is the share of the required hold; 1 means fulfilled.
 *
 * <p>The tables rest on survival curves with a shoulder. A share below 1 is therefore not that share of the log reduction,
 * and no partial log figure may be shown.
 *
 * @see "fsis2021, pp. 35-39 and 59; wac2022, 246-215-03400"
 */
public final class HoldTable implements LethalRate {
    private static final Phrases PHRASES = Phrases.of(HoldTable.class);

    /** Factor on the holds of salted meat; our allowance, no rule: the 95 % band of a published broth model (blackburn1997). */
    public static final double SALT_ALLOWANCE = 2.45;

    /** Temperature from which salt no longer shows in the time for a 6.5-log10 kill [K] (juneja2003, ground beef, 0-4.5 % salt). */
    public static final double SALT_CEILING = Temperature.fromCelsius(64);

    private final String title;
    private final String edition;
    private final double logReduction;
    private final double[] temperatures;
    private final double[] holds;
    private final double instantTemperature;
    private final PiecewiseExponential rate;

    /**
     * Takes the rows.
     *
     * @param rows hold [s] by temperature [deg F]; zero stands for "under 10 s"
     */
    HoldTable(String title, String edition, double logReduction, Map<Double, Double> rows) {
        this.title = title;
        this.edition = edition;
        this.logReduction = logReduction;
        TreeMap<Double, Double> sorted = new TreeMap<>(rows);
        this.instantTemperature = sorted.entrySet().stream()
                .filter(e -> e.getValue() == 0)
                .mapToDouble(e -> Temperature.fromFahrenheit(e.getKey()))
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        sorted.values().removeIf(hold -> hold == 0);
        Checks.require(!sorted.isEmpty(), title + " has no row with a printed time; expected at least one.");
        this.temperatures = sorted.keySet().stream()
                .mapToDouble(Temperature::fromFahrenheit)
                .toArray();
        this.holds = sorted.values().stream().mapToDouble(Double::doubleValue).toArray();
        double[] rates = new double[holds.length];
        for (int i = 0; i < holds.length; i++) {
            Checks.requirePositive("hold in " + title, holds[i], "s");
            Checks.require(
                    i == 0 || holds[i] < holds[i - 1],
                    title + ": holds must fall with temperature, got " + holds[Math.max(i - 1, 0)] + " s and then "
                            + holds[i] + " s.");
            rates[i] = 1 / holds[i];
        }
        this.rate = new PiecewiseExponential(temperatures, rates);
    }

    /**
     * Returns the 7-log10 Salmonella table of a bird at a fat content.
     *
     * @param bird kind of poultry
     * @param fatFraction fat in the raw meat [kg/kg], 0-1; between two columns the next higher one is taken, above 12 % and
     *     when empty the 12 % column, which asks for the longest holds
     * @return the table
     * @throws IllegalArgumentException if the fraction lies outside 0-1
     */
    public static HoldTable poultry(Bird bird, OptionalDouble fatFraction) {
        return OfficialHolds.poultry(bird, fatFraction);
    }

    /**
     * Returns the 6.5-log10 Salmonella table for meat without poultry, the default for meat.
     *
     * @return the table
     */
    public static HoldTable meat() {
        return OfficialHolds.meat("meat-6.5-log");
    }

    /**
     * Returns the 7-log10 column of the same table.
     *
     * @return the table
     */
    public static HoldTable meatSevenLog() {
        return OfficialHolds.meat("meat-7-log");
    }

    /**
     * Returns the 5-log10 table for meat. It needs proof that the raw meat carries few bacteria, so no rule of this package
     * uses it.
     *
     * @return the table
     */
    public static HoldTable meatFiveLog() {
        return OfficialHolds.meat("meat-5-log");
    }

    /**
     * Returns the chart of the retail food code for whole meat roasts.
     *
     * @return the table
     */
    public static HoldTable foodCodeRoast() {
        return OfficialHolds.meat("food-code-roast");
    }

    /**
     * Returns the one figure there is for fish and shellfish, 145 F (62.8 deg C) for 15 s, as a table of one row. It has no log
     * reduction, and no rule of this package credits a hold below or beside it.
     *
     * @return the table
     */
    public static HoldTable fish() {
        return OfficialHolds.fish();
    }

    /**
     * Returns this table without its rows below a temperature, so that nothing colder is credited.
     *
     * @param lowest lowest temperature to keep [K]
     * @return a table that credits nothing below
     * @throws IllegalArgumentException if no row would be left
     */
    public HoldTable creditedFrom(double lowest) {
        Map<Double, Double> rows = rows();
        rows.keySet().removeIf(fahrenheit -> Temperature.fromFahrenheit(fahrenheit) < lowest);
        return new HoldTable(title, edition, logReduction, rows);
    }

    /**
     * Returns this table with its holds below {@link #SALT_CEILING} made longer by {@link #SALT_ALLOWANCE}. The official
     * tables carry no salt, and salt shields bacteria from heat. The allowance is ours and never shortens a hold.
     *
     * @return a table that asks for at least as long at every temperature
     */
    public HoldTable lengthenedForSalt() {
        Map<Double, Double> rows = rows();
        rows.replaceAll((fahrenheit, hold) ->
                Temperature.fromFahrenheit(fahrenheit) < SALT_CEILING ? SALT_ALLOWANCE * hold : hold);
        return new HoldTable(
                PHRASES.say("times-below-64-c-for", title, Phrases.decimal(String.valueOf(SALT_ALLOWANCE))),
                edition,
                logReduction,
                rows);
    }

    /** Returns the rows in the scale in which they are printed: hold [s] by temperature [deg F]. */
    private Map<Double, Double> rows() {
        Map<Double, Double> rows = new TreeMap<>();
        for (int i = 0; i < holds.length; i++) {
            rows.put(Math.rint(Temperature.toFahrenheit(temperatures[i])), holds[i]);
        }
        if (instantTemperature < Double.POSITIVE_INFINITY) {
            rows.put(Math.rint(Temperature.toFahrenheit(instantTemperature)), 0.0);
        }
        return rows;
    }

    /**
     * Returns the hold that the table asks for.
     *
     * @param kelvin temperature of the coldest point [K]
     * @return required hold [s], or empty below the first row, where the table has no figure
     */
    public OptionalDouble requiredHold(double kelvin) {
        double perSecond = rate(kelvin);
        return perSecond > 0 ? OptionalDouble.of(1 / perSecond) : OptionalDouble.empty();
    }

    /**
     * Returns the lowest temperature at which a hold still comes to no more than a time.
     *
     * @param seconds time available [s]
     * @return temperature [K], or empty if even the hottest row asks for longer
     */
    public OptionalDouble temperatureForHold(double seconds) {
        Checks.requirePositive("hold", seconds, "s");
        int last = holds.length - 1;
        if (seconds < holds[last]) {
            return OptionalDouble.empty();
        }
        if (seconds >= holds[0]) {
            return OptionalDouble.of(temperatures[0]);
        }
        int i = 1;
        while (holds[i] > seconds) {
            i++;
        }
        double weight = Math.log(holds[i - 1] / seconds) / Math.log(holds[i - 1] / holds[i]);
        return OptionalDouble.of(temperatures[i - 1] + weight * (temperatures[i] - temperatures[i - 1]));
    }

    @Override
    public double rate(double kelvin) {
        return rate.rate(kelvin);
    }

    @Override
    public double meanRate(double from, double to) {
        return rate.meanRate(from, to);
    }

    /** Returns the temperature below which nothing is credited [K]. */
    public double lowestTemperature() {
        return temperatures[0];
    }

    /** Returns the highest temperature with a printed time [K]; hotter than that its rate is kept. */
    public double highestTimedTemperature() {
        return temperatures[temperatures.length - 1];
    }

    /** Returns the temperature from which the table prints 0 s, meaning under 10 s [K]; infinite if it never does. */
    public double instantTemperature() {
        return instantTemperature;
    }

    /** Returns the decimal reduction of Salmonella that a fulfilled hold stands for [-]; 0 where the source prints none. */
    public double logReduction() {
        return logReduction;
    }

    /** Returns what the table is, for people. */
    public String title() {
        return title;
    }

    /** Returns document, date and table number. */
    public String edition() {
        return edition;
    }
}
