package io.github.saltfront.safety;

import io.github.saltfront.data.CsvTable;
import io.github.saltfront.data.DataException;
import io.github.saltfront.units.Temperature;

/**
 * Growth rate of bacteria against temperature, without lag and without competition: an upper bound, for information only. A model
 * without lag condemns cooling that the official limits accept, so it decides nothing.
 */
public sealed interface GrowthModel permits CardinalTemperatureModel, SquareRootModel {
    /**
     * Returns the growth rate.
     *
     * @param kelvin temperature [K]
     * @return rate, zero where nothing grows [log10/s]
     */
    double rate(double kelvin);

    /**
     * Returns the growth along a history.
     *
     * @param history temperature over time
     * @return growth without lag [log10], not negative
     */
    default double growth(TemperatureHistory history) {
        double sum = 0;
        for (int i = 1; i < history.size(); i++) {
            double from = history.temperature(i - 1);
            double to = history.temperature(i);
            double duration = history.time(i) - history.time(i - 1);
            // Simpson on pieces of at most 0.1 K: the curves end in a corner at their highest temperature
            int pieces = Math.max(1, (int) Math.ceil(Math.abs(to - from) / 0.1));
            double step = (to - from) / pieces;
            double mean = 0;
            for (int k = 0; k < pieces; k++) {
                double low = from + k * step;
                mean += rate(low) + 4 * rate(low + step / 2) + rate(low + step);
            }
            sum += duration * mean / (6 * pieces);
        }
        return sum;
    }

    /**
     * Reads a published model.
     *
     * @param id key in the table, such as {@code salmonella-chicken}
     * @return the model
     * @throws DataException if there is no such row
     */
    static GrowthModel get(String id) {
        CsvTable.Row row = CsvTable.load(GrowthModel.class, "growth_models.csv").row("id", id);
        double rate = row.number("mu_opt") / perSecond(row.text("rate_unit"));
        double lowest = Temperature.fromCelsius(row.number("t_min_c"));
        double best = Temperature.fromCelsius(row.number("t_opt_c"));
        return row.text("form").equals("cardinal")
                ? new CardinalTemperatureModel(rate, lowest, best, Temperature.fromCelsius(row.number("t_max_c")))
                : new SquareRootModel(rate, lowest, best);
    }

    private static double perSecond(String unit) {
        return switch (unit) {
            case "log10/h" -> 3600;
            case "ln/h" -> 3600 * Math.log(10);
            case "log10/day" -> 86400;
            default ->
                throw new DataException(
                        "growth_models.csv: unknown rate unit \"" + unit + "\", expected log10/h, ln/h or log10/day.");
        };
    }
}
